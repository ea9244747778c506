import { describe, expect, it } from 'vitest';
import { toInches } from '../../../src/length/length.ts';
import { circleSkirt } from '../../../src/outfit/units/circle-skirt.ts';
import { gatheredSkirt } from '../../../src/outfit/units/gathered-skirt.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';
import {
  built,
  differsBy,
  emptyOutfit,
  garmentOf,
  MIDDLING,
  outOfOrder,
  put,
  refusedAt,
  soundOrder,
} from './made-of.ts';
import { bodyToWaist, LOWER } from './skirts.ts';

describe('a gathered skirt', () => {
  it('is as many times as wide as the waist as was asked', () => {
    const made = built(emptyOutfit('in', MIDDLING), gatheredSkirt, { entries: { fullness: '3' } });
    expect(toInches(edgeLengths(made.pieces[0]!.outline).get('waist')!)).toBeCloseTo((32.5 * 3) / 4, 5);
    expect(made.works.map((work) => work.kind)).toEqual(['own', 'gather', 'gather']);
  });

  it('has its closing seam basted for a try-on when it hangs from nothing', () => {
    for (const unit of [gatheredSkirt, circleSkirt]) {
      const outfit = put(emptyOutfit('mm'), unit);
      expect(
        outOfOrder(soundOrder(outfit), [
          `${unit.id}-opening/own-2`,
          `${unit.id}-side-seam/press`,
          `${unit.id}-centre-seam/baste`,
          `${unit.id}-try/fit`,
          `${unit.id}-centre-seam/stitch`,
        ]),
      ).toEqual([]);
      soundOrder(put(emptyOutfit('in'), unit, { entries: { opens: 'front' } }));
      soundOrder(put(emptyOutfit('in'), unit, { entries: { opens: 'closed' } }));
    }
  });

  it('hangs from a body, open or closed as that is, and is as long at the waist', () => {
    for (const unit of [gatheredSkirt, circleSkirt]) {
      for (const [opens, skirt] of [['opening', 'front'] as const, ['fold', 'closed'] as const]) {
        const body = bodyToWaist(opens, 'in', MIDDLING);
        const outfit = put(body, unit, { at: { to: LOWER } });
        expect(differsBy(outfit, `${unit.id}-waist-seam`)).toBeLessThan(0.05);
        expect(garmentOf(outfit).joins.at(-1)?.ring).toBe(skirt === 'closed');
        expect(
          outOfOrder(soundOrder(outfit), [
            'plain-back-try/fit',
            'plain-back-side-seam/press',
            `${unit.id}-waist-seam/pin`,
            `${unit.id}-waist-seam/stitch`,
          ]),
        ).toEqual([]);
      }
    }
  });

  it('refuses to open where the body does not', () => {
    const at = { to: LOWER };
    const opens = (to: 'opening' | 'fold', skirt: string) =>
      refusedAt(bodyToWaist(to), gatheredSkirt, { at, entries: { opens: skirt } });
    expect(opens('opening', 'closed')).toEqual(['opens']);
    expect(opens('fold', 'back')).toEqual(['opens']);
    const entered = (entries: Record<string, string>) => refusedAt(emptyOutfit(), gatheredSkirt, { entries });
    expect(entered({ fullness: '0.5' })).toEqual(['fullness']);
    expect(entered({ waist: '0' })).toEqual(['waist']);
    expect(entered({ length: '-2' })).toEqual(['length']);
    expect(entered({ opening: '0' })).toEqual(['opening']);
    expect(entered({ allowance: '0' })).toEqual(['allowance']);
  });
});
