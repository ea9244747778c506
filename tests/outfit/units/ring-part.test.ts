import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { ringPart } from '../../../src/outfit/units/ring-part.ts';
import { flattenOutline } from '../../../src/shape/flatten.ts';
import { edgeLengths, outlineArea, signedArea } from '../../../src/shape/measure.ts';

test('edges and area are those of a part of a ring, clockwise, closed', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 0.5, noNaN: true }),
      fc.integer({ min: 10, max: 500 }),
      fc.integer({ min: 10, max: 300 }),
      (turn, inside, deep) => {
        const outline = ringPart(turn, mm(inside), mm(inside + deep));
        const long = edgeLengths(outline);
        const about = (edge: string, wanted: number) =>
          expect(long.get(edge)! / 1e6 / wanted).toBeCloseTo(1, 4);
        about('seam', 2 * Math.PI * inside * turn);
        about('outer', 2 * Math.PI * (inside + deep) * turn);
        about('front-end', deep);
        about('back-end', deep);
        expect(outlineArea(outline) / (Math.PI * turn * ((inside + deep) ** 2 - inside ** 2))).toBeCloseTo(
          1,
          3,
        );
        expect(signedArea(flattenOutline(outline))).toBeGreaterThan(0);
        expect(outline.edges.at(-1)?.segments.at(-1)?.to).toEqual(outline.start);
      },
    ),
    { seed: 4, numRuns: 60 },
  );
});
