import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { besideNeck } from '../../../src/outfit/units/flat-collar-outline.ts';
import type { Path } from '../../../src/outfit/units/neck-line.ts';
import { ringPart } from '../../../src/outfit/units/ring-part.ts';
import { flattenOutline, pointOf } from '../../../src/shape/flatten.ts';
import { edgeLengths, outlineArea, signedArea } from '../../../src/shape/measure.ts';

/** A quarter of a ring’s inner edge, turned so that it leaves the datum to the right and bends down. */
const quarter: Path = (() => {
  const seam = ringPart(0.25, mm(100), mm(101)).edges[0]!;
  const turn = (x: number, y: number) => {
    const [c, s] = [Math.SQRT1_2, Math.SQRT1_2];
    const [px, py] = [x, -(y + 100e6)];
    return pointOf(px * c - py * s + 0, px * s + py * c + 100e6);
  };
  const start = turn(-100e6 * Math.SQRT1_2, 100e6 * Math.SQRT1_2 - 100e6);
  return {
    start,
    segments: seam.segments.map((one) =>
      one.kind === 'line'
        ? { kind: 'line', to: turn(one.to.x, one.to.y) }
        : {
            kind: 'curve',
            first: turn(one.first.x, one.first.y),
            second: turn(one.second.x, one.second.y),
            to: turn(one.to.x, one.to.y),
          },
    ),
  };
})();

test('round a quarter of a circle it is a quarter of a ring', () => {
  expect(Math.hypot(quarter.start.x, quarter.start.y)).toBeLessThan(10);
  const outline = besideNeck(quarter, mm(50), 'square');
  const long = edgeLengths(outline);
  expect(long.get('neck')! / 1e6).toBeCloseTo((Math.PI / 2) * 100, 1);
  expect(long.get('outer')! / 1e6).toBeCloseTo((Math.PI / 2) * 150, 0);
  expect(long.get('front-end')! / 1e6).toBeCloseTo(50, 0);
  expect(long.get('fold')! / 1e6).toBeCloseTo(50, 3);
  expect(outlineArea(outline) / ((Math.PI / 4) * (150 ** 2 - 100 ** 2))).toBeCloseTo(1, 2);
});

test('corners are rounded off or drawn out, the neck edge stays as it is', () => {
  const square = besideNeck(quarter, mm(50), 'square');
  const round = besideNeck(quarter, mm(50), 'round');
  const point = besideNeck(quarter, mm(50), 'point');
  expect(outlineArea(round)).toBeLessThan(outlineArea(square));
  expect(outlineArea(point)).toBeGreaterThan(outlineArea(square));
  for (const one of [square, round, point]) {
    expect(edgeLengths(one).get('neck')).toBe(edgeLengths(square).get('neck'));
    expect(one.edges.map(({ name }) => name)).toEqual(['outer', 'front-end', 'neck', 'fold']);
    expect(signedArea(flattenOutline(one))).toBeGreaterThan(0);
    expect(one.edges.at(-1)?.segments.at(-1)?.to).toEqual(one.start);
  }
});
