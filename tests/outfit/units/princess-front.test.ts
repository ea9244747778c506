import { describe, expect, it } from 'vitest';
import { toMm } from '../../../src/length/length.ts';
import { princessFront } from '../../../src/outfit/units/princess-front.ts';
import { flattenOutline } from '../../../src/shape/flatten.ts';
import { boundingBox } from '../../../src/shape/measure.ts';
import { built, differsBy, emptyOutfit, MIDDLING, outOfOrder, put, soundOrder } from './made-of.ts';

describe('a princess front', () => {
  it('is a centre and a side piece, with one panel seam of two equal edges', () => {
    const outfit = put(emptyOutfit('in', MIDDLING), princessFront);
    expect(differsBy(outfit, 'princess-front-panel-seam')).toBeLessThan(0.01);
    expect(
      outOfOrder(soundOrder(outfit), [
        'princess-front-centre-neck-stay/stitch',
        'princess-front-panel-seam/pin',
      ]),
    ).toEqual([]);
  });

  it('has both pieces drawn side by side, as wide together as the half front at the chest', () => {
    for (const from of ['shoulder', 'armhole']) {
      const { pieces } = built(emptyOutfit(), princessFront, { entries: { from, opens: 'fold', waist: '' } });
      const [centre, side] = pieces.map((piece) => boundingBox(flattenOutline(piece.outline)));
      expect(toMm(side!.right) - toMm(centre!.left)).toBeCloseTo(254, 3);
    }
  });
});
