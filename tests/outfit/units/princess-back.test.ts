import { describe, expect, it } from 'vitest';
import { type Length, toInches } from '../../../src/length/length.ts';
import { princessBack } from '../../../src/outfit/units/princess-back.ts';
import { princessFront } from '../../../src/outfit/units/princess-front.ts';
import { flattenOutline } from '../../../src/shape/flatten.ts';
import { sidesCross } from '../../../src/shape/offset-crossing.ts';
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

const WAYS = ['shoulder', 'armhole'] as const;
const runs = (from: string) => ({
  shoulder:
    from === 'shoulder'
      ? ['princess-front-centre.shoulder', 'princess-front-side.shoulder']
      : ['princess-front-centre.shoulder'],
  side: ['princess-front-side.side'],
});

describe('a body with panel seams', () => {
  it('closes at every seam, wherever the panel seams start', () => {
    for (const from of WAYS) {
      for (const behind of WAYS) {
        for (const [units, measures] of [['in', MIDDLING] as const, ['mm', undefined] as const]) {
          for (const waist of [{}, { waist: '8 in', below: '2 in', side: '10 in', hem: '11 in' }]) {
            const front = put(emptyOutfit(units, measures), princessFront, { entries: { from, ...waist } });
            const outfit = put(front, princessBack, { entries: { from: behind }, at: runs(from) });
            for (const join of garmentOf(outfit).joins) expect(differsBy(outfit, join.id)).toBeLessThan(0.01);
            for (const piece of garmentOf(outfit).pieces)
              expect(sidesCross(flattenOutline(piece.outline))).toBe(false);
            expect(
              outOfOrder(soundOrder(outfit), [
                'princess-back-panel-seam/stitch',
                'princess-back-side-seam/baste',
                'princess-back-try/fit',
                'princess-back-side-seam/stitch',
              ]),
            ).toEqual([]);
          }
        }
      }
    }
  });

  it('goes as far below the waist as its front, and is flared as that is', () => {
    const entries = { below: '4', side: '11', waist: '8', hem: '11' };
    const front = put(emptyOutfit(), princessFront, { entries });
    const { proposed } = built(front, princessBack, { at: runs('shoulder') });
    expect(toInches(proposed.below!.value as Length)).toBeCloseTo(4, 3);
    expect(toInches(proposed.hem!.value as Length)).toBeCloseTo(11, 3);
  });

  it('refuses a panel without width', () => {
    const outfit = emptyOutfit();
    for (const panel of ['0', '10', '-1'])
      expect(refusedAt(outfit, princessFront, { entries: { panel } })).toEqual(['panel']);
    expect(refusedAt(outfit, princessFront, { entries: { panel: '8', from: 'armhole' } })).toEqual(['panel']);
  });
});
