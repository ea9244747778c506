import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, zero } from '../../../src/length/length.ts';
import { readEdge } from '../../../src/outfit/chains.ts';
import {
  along,
  backwards,
  longOf,
  neckLine,
  pointsOn,
  through,
} from '../../../src/outfit/units/neck-line.ts';
import { runOf } from '../../../src/outfit/units/runs.ts';
import { pointOf } from '../../../src/shape/flatten.ts';
import { pathLength } from '../../../src/shape/measure.ts';
import { garmentOf } from './made-of.ts';
import { NECK, plainBody } from './plain-body.ts';

const garment = garmentOf(plainBody());
const laid = (overlap = zero, run: readonly string[] = NECK) => neckLine(garment, run.map(readEdge), overlap);

describe('a neck line', () => {
  test('is exactly half as long as the run, however far the shoulders overlap', () => {
    const half = runOf(garment, NECK.map(readEdge)).length / 2;
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60 }), (overlap) => {
        expect(Math.abs(longOf(laid(mm(overlap))!) - half)).toBeLessThan(mm(0.001));
      }),
      { seed: 7, numRuns: 20 },
    );
  });

  test('leaves the centre back level, to the right, and comes round to the front', () => {
    const line = laid()!;
    expect(line.start).toEqual(pointOf(0, 0));
    const { way } = along(pointsOn(line), 0);
    expect([way.x, way.y]).toEqual([expect.closeTo(1, 2), expect.closeTo(0, 1)]);
    const front = line.segments.at(-1)!.to;
    // Shoulder to shoulder: the front neck, 70 across and 92 down, turned by both slopes of 45 in 125.
    const slope = 2 * Math.atan2(45, 125);
    expect(front.x / 1e6).toBeCloseTo(75 - 70 * Math.cos(slope) + 92 * Math.sin(slope), 2);
    expect(front.y / 1e6).toBeCloseTo(22 + 70 * Math.sin(slope) + 92 * Math.cos(slope), 2);
  });

  test('swings out at the front the further the shoulders overlap', () => {
    const front = (overlap: number) => laid(mm(overlap))!.segments.at(-1)!.to.x;
    expect(front(12)).toBeGreaterThan(front(0));
    expect(front(30)).toBeGreaterThan(front(12));
  });

  test('is not made of a run that is not alike on both sides', () => {
    expect(laid(zero, ['front.neck', 'back.neck'])).toBeUndefined();
    expect(laid(zero, ['front.neck', 'back.neck', 'other:back.neck'])).toBeUndefined();
    expect(laid(zero, ['front.neck', 'other:front.neck'])).toBeUndefined();
  });
});

test('a path is as long from either end, and ends where it began', () => {
  const line = laid()!;
  const back = backwards(line);
  expect(Math.abs(longOf(back) - longOf(line))).toBeLessThan(10);
  expect(back.segments.at(-1)?.to).toEqual(line.start);
  expect(backwards(back)).toEqual(line);
});

test('a curve goes through its points, and is no shorter than they lie apart', () => {
  const points = [pointOf(0, 0), pointOf(5e6, 3e6), pointOf(9e6, 12e6)];
  const segments = through(points, pointOf(-5e6, 3e6));
  expect(segments.map(({ to }) => to)).toEqual(points.slice(1));
  expect(longOf({ start: points[0]!, segments })).toBeGreaterThanOrEqual(pathLength(points));
});
