import { describe, expect, it } from 'vitest';
import { panelledBodice } from '../../../src/outfit/units/panelled-bodice.ts';
import {
  differsBy,
  emptyOutfit,
  garmentOf,
  MIDDLING,
  outOfOrder,
  put,
  refusedAt,
  soundOrder,
} from './made-of.ts';

const GIVEN: readonly (readonly ['in' | 'mm', typeof MIDDLING | undefined])[] = [
  ['in', MIDDLING],
  ['in', undefined],
  ['mm', MIDDLING],
  ['mm', undefined],
];

describe('a panelled bodice', () => {
  it.each(GIVEN)(
    'closes at every seam and runs its panel seams over the shoulders, in %s',
    (units, measures) => {
      const outfit = put(emptyOutfit(units, measures), panelledBodice);
      expect(garmentOf(outfit).pieces.map((piece) => [piece.name, piece.cut])).toEqual([
        ['Centre front', 'pair'],
        ['Side front', 'pair'],
        ['Back', 'fold'],
        ['Side back', 'pair'],
      ]);
      for (const join of garmentOf(outfit).joins) expect(differsBy(outfit, join.id)).toBeLessThan(0.01);
      expect(
        outOfOrder(soundOrder(outfit), [
          'panelled-bodice-centre-shoulder/press',
          'panelled-bodice-panel-seam/pin',
          'panelled-bodice-panel-seam/stitch',
          'panelled-bodice-side-seam/baste',
          'panelled-bodice-try/fit',
          'panelled-bodice-side-seam/stitch',
        ]),
      ).toEqual([]);
    },
  );

  it('refuses a back that cannot be sewn at the field of the back', () => {
    const at = (entries: Record<string, string>) => refusedAt(emptyOutfit(), panelledBodice, { entries });
    expect(at({ backPanel: '12' })).toEqual(['backPanel']);
    expect(at({ backAcross: '11' })).toEqual(['backAcross']);
    expect(at({ panel: '12' })).toEqual(['panel']);
    expect(at({ shoulder: '1', slope: '2' })).toEqual(['slope']);
  });
});
