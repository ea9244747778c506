import { describe, expect, it } from 'vitest';
import { toInches } from '../../../src/length/length.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { facing } from '../../../src/outfit/units/facing.ts';
import { panelledBodice } from '../../../src/outfit/units/panelled-bodice.ts';
import { plainBack } from '../../../src/outfit/units/plain-back.ts';
import { plainFront } from '../../../src/outfit/units/plain-front.ts';
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

const body = (units: 'in' | 'mm', opens = 'opening', measures?: typeof MIDDLING): Outfit =>
  put(put(emptyOutfit(units, measures), plainFront, { entries: { opens } }), plainBack, {
    at: { shoulder: ['plain-front.shoulder'], side: ['plain-front.side'] },
  });
const NECK = ['plain-front.neck', 'plain-back.neck', 'other:plain-back.neck', 'other:plain-front.neck'];
const names = (outfit: Outfit, piece: string) =>
  garmentOf(outfit)
    .pieces.find((one) => one.id === piece)
    ?.outline.edges.map((edge) => edge.name);

describe('a facing', () => {
  it('follows the neck exactly, is joined at the shoulders, and is understitched when it is turned', () => {
    for (const [units, opens] of [['in', 'opening'] as const, ['mm', 'fold'] as const]) {
      const outfit = put(body(units, opens, units === 'in' ? MIDDLING : undefined), facing, {
        at: { edges: NECK },
      });
      for (const id of ['facing-seam', 'facing-plain-back-shoulder-seam'])
        expect(differsBy(outfit, id)).toBeLessThan(0.01);
      expect(names(outfit, 'facing-plain-back')).toEqual(['neck', 'shoulder', 'outer', 'fold']);
      expect(
        outOfOrder(soundOrder(outfit), [
          'facing-outer/own-1',
          'facing-plain-back-shoulder-seam/stitch',
          'facing-plain-back-shoulder-seam/press',
          'facing-seam/stitch',
          'facing-seam/clip',
          'facing-understitching/own-1',
          'facing-understitching/own-3',
        ]),
      ).toEqual([]);
      expect(outOfOrder(soundOrder(outfit), ['plain-back-try/fit', 'facing-seam/clip'])).toEqual([]);
    }
  });

  it('goes round the corner from a front edge to the neck, and round an armhole as a ring', () => {
    const front = ['plain-front.opening', 'plain-front.lap', 'plain-front.neck', 'plain-back.neck'];
    const whole = [...front, ...front.toReversed().map((edge) => `other:${edge}`)];
    const outfit = put(body('in'), facing, { at: { edges: whole }, entries: { width: '2' } });
    expect(names(outfit, 'facing-plain-front')).toEqual([
      'opening',
      'lap',
      'neck',
      'shoulder',
      'outer',
      'hem',
    ]);
    const piece = garmentOf(outfit).pieces.find((one) => one.id === 'facing-plain-front');
    expect(toInches(edgeLengths(piece!.outline).get('hem')!)).toBeCloseTo(2, 4);
    const arm = put(outfit, facing, {
      id: 'arm',
      at: { edges: ['plain-front.armhole', 'plain-back.armhole'] },
    });
    expect(garmentOf(arm).joins.at(-1)).toMatchObject({ seam: 'turned', ring: true });
    expect(differsBy(arm, 'arm-seam')).toBeLessThan(0.01);
    soundOrder(arm);
  });

  it('is proposed no wider than the shortest shoulder it ends at', () => {
    const outfit = put(emptyOutfit(), panelledBodice);
    const neck = ['panelled-bodice-centre-front.neck', 'panelled-bodice-back.neck'];
    const { proposed } = built(outfit, facing, { at: { edges: neck } });
    expect(toInches(proposed.width!.value as never)).toBeCloseTo(5 * 0.45, 3);
    soundOrder(put(outfit, facing, { at: { edges: neck } }));
  });

  it('refuses what cannot be sewn', () => {
    const outfit = body('in');
    const at = { edges: NECK };
    expect(refusedAt(outfit, facing, { at, entries: { width: '0' } })).toEqual(['width']);
    expect(refusedAt(outfit, facing, { at, entries: { width: '9' } })).toEqual(['width']);
    expect(refusedAt(outfit, facing, { at, entries: { allowance: '0' } })).toEqual(['allowance']);
    expect(refusedAt(outfit, facing)).toEqual(['at.edges']);
    expect(refusedAt(outfit, facing, { at: { edges: ['plain-front.neck', 'plain-front.side'] } })).toEqual([
      'at.edges',
    ]);
  });
});
