import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acrossAt, cutAt } from '../../src/fitting/split.ts';
import { mm, toMm } from '../../src/length/length.ts';
import { edgeLength } from '../../src/shape/measure.ts';
import type { Point, Segment } from '../../src/shape/outline.ts';

const point = fc
  .record({ x: fc.integer({ min: -300, max: 300 }), y: fc.integer({ min: 0, max: 500 }) })
  .map(({ x, y }): Point => ({ x: mm(x), y: mm(y) }));
const segment: fc.Arbitrary<Segment> = fc.oneof(
  point.map((to): Segment => ({ kind: 'line', to })),
  fc.tuple(point, point, point).map(([first, second, to]): Segment => ({ kind: 'curve', first, second, to })),
);
const heights = fc.array(
  fc.integer({ min: 1, max: 499 }).map((y) => mm(y + 0.37)),
  { maxLength: 3 },
);

describe('an edge cut at heights', () => {
  it('runs as it did, ends where it did, and passes no height within a part', () => {
    fc.assert(
      fc.property(point, segment, heights, (start, one, cuts) => {
        const parts = cutAt(start, one, cuts);
        expect(parts.at(-1)?.to).toEqual(one.to);
        const whole = edgeLength(start, { name: '', segments: [one] });
        const pieced = edgeLength(start, { name: '', segments: parts });
        expect(Math.abs(toMm(whole) - toMm(pieced))).toBeLessThan(0.01);
        let from = start;
        for (const part of parts) {
          for (const y of cuts) {
            const across = acrossAt(from, part, y);
            const ends = [from, part.to].map((end) => Math.abs(end.y - y));
            if (across.length > 0) expect(Math.min(...ends)).toBeLessThan(2_000);
          }
          from = part.to;
        }
      }),
      { seed: 8, numRuns: 300 },
    );
  });

  it('stays whole where no height is crossed', () => {
    const one: Segment = { kind: 'line', to: { x: mm(10), y: mm(10) } };
    expect(cutAt({ x: mm(0), y: mm(0) }, one, [mm(20)])).toEqual([one]);
  });
});

describe('where an edge is at a height', () => {
  it('is reckoned on the curve itself', () => {
    // A quarter turn of a curve from (0, 0) to (100, 100); at its middle both are 50.
    const curve: Segment = {
      kind: 'curve',
      first: { x: mm(0), y: mm(50) },
      second: { x: mm(100), y: mm(50) },
      to: { x: mm(100), y: mm(100) },
    };
    const [x = 0] = acrossAt({ x: mm(0), y: mm(0) }, curve, mm(50));
    expect(x / 1e6).toBeCloseTo(50, 9);
  });

  it('is both ends of an edge that lies level', () => {
    const level: Segment = { kind: 'line', to: { x: mm(30), y: mm(5) } };
    expect(acrossAt({ x: mm(10), y: mm(5) }, level, mm(5))).toEqual([mm(10), mm(30)]);
  });
});
