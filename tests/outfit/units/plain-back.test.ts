import { describe, expect, it } from 'vitest';
import { add, type Length, toInches } from '../../../src/length/length.ts';
import { facing } from '../../../src/outfit/units/facing.ts';
import { plainBack } from '../../../src/outfit/units/plain-back.ts';
import { plainFront } from '../../../src/outfit/units/plain-front.ts';
import { princessFront } from '../../../src/outfit/units/princess-front.ts';
import type { Unit } from '../../../src/outfit/units/unit.ts';
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

const AT = { shoulder: ['plain-front.shoulder'], side: ['plain-front.side'] };
const worn = (units: 'in' | 'mm', measures?: typeof MIDDLING, front: Record<string, string> = {}) =>
  put(put(emptyOutfit(units, measures), plainFront, { entries: front }), plainBack, { at: AT });

describe('a plain back', () => {
  it('is sewn to the front it was put on, and its seams are as long', () => {
    for (const front of [{}, { waist: '9 in', side: '20 in' }, { shoulder: '4 3/8 in', slope: '1 in' }]) {
      for (const units of ['in', 'mm'] as const) {
        const outfit = worn(units, units === 'in' ? MIDDLING : undefined, front);
        expect(differsBy(outfit, 'plain-back-shoulder-seam')).toBeLessThan(0.01);
        expect(differsBy(outfit, 'plain-back-side-seam')).toBeLessThan(0.01);
        expect(
          outOfOrder(soundOrder(outfit), [
            'plain-front-neck-stay/stitch',
            'plain-back-shoulder-seam/stitch',
            'plain-back-side-seam/baste',
            'plain-back-try/fit',
            'plain-back-side-seam/stitch',
          ]),
        ).toEqual([]);
      }
    }
  });

  it('has a neck and armholes that fit the wearer', () => {
    for (const size of [0.8, 0.9, 1, 1.1, 1.25]) {
      const measures = Object.fromEntries(Object.entries(MIDDLING).map(([id, inch]) => [id, inch * size]));
      const { pieces } = garmentOf(worn('in', measures));
      const [front, back] = pieces.map((piece) => edgeLengths(piece.outline));
      const round = (edge: string): number =>
        toInches(add(front!.get(edge) as Length, back!.get(edge) as Length));
      expect(2 * round('neck') - measures.neck!).toBeGreaterThan(0.25);
      expect(2 * round('neck') - measures.neck!).toBeLessThan(1.5);
      expect(round('armhole') - measures.armhole!).toBeGreaterThan(1);
      expect(round('armhole') - measures.armhole!).toBeLessThan(3);
    }
  });

  it('takes what a front leaves of half the chest', () => {
    const outfit = put(emptyOutfit('in', MIDDLING), plainFront, { entries: { chest: '11' } });
    const { proposed } = built(outfit, plainBack, { at: AT });
    expect(toInches(proposed.chest!.value as Length)).toBeCloseTo((38 + 3) / 2 - 11, 4);
    expect(proposed.armhole?.because).toContain('front');
  });

  it('is sewn over both panels of a front with panel seams', () => {
    const front = put(emptyOutfit(), princessFront);
    const at = {
      shoulder: ['princess-front-side.shoulder', 'princess-front-centre.shoulder'],
      side: ['princess-front-side.side'],
    };
    const outfit = put(front, plainBack, { at });
    expect(differsBy(outfit, 'plain-back-shoulder-seam')).toBeLessThan(0.01);
    expect(
      outOfOrder(soundOrder(outfit), [
        'princess-front-panel-seam/press',
        'plain-back-shoulder-seam/pin',
        'plain-back-try/fit',
      ]),
    ).toEqual([]);
    expect(
      garmentOf(outfit)
        .joins.at(-2)
        ?.this.map((ref) => ref.piece),
    ).toEqual(['princess-front-centre', 'princess-front-side']);
  });

  it('refuses without a front, and with a front that is not there', () => {
    const outfit = put(emptyOutfit(), plainFront);
    expect(refusedAt(outfit, plainBack as Unit)).toEqual(['at.shoulder', 'at.side']);
    expect(refusedAt(outfit, plainBack, { at: { ...AT, side: ['frotn.side'] } })).toEqual(['at.side']);
    expect(refusedAt(outfit, plainBack, { at: AT, entries: { allowance: '0' } })).toEqual(['allowance']);
    const faced = put(outfit, facing, { at: { edges: ['plain-front.neck'] } });
    const shoulder = ['facing-plain-front.shoulder'];
    expect(refusedAt(faced, plainBack, { at: { ...AT, shoulder } })).toEqual(['at.shoulder']);
  });
});
