import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm, toMm } from '../../src/length/length.ts';
import { flattenEdge } from '../../src/shape/flatten.ts';
import { pathLength } from '../../src/shape/measure.ts';
import type { Point } from '../../src/shape/outline.ts';
import { cornersOf, edgesAt, halves, nearestPlace, pointAt } from '../../src/traced/corners.ts';
import { drawn, fileOf, inMm, named } from './read.ts';

const first = (d: string) => drawn(inMm(`<path d="${d}"/>`)).lines[0]!;
const at = (x: number, y: number): Point => ({ x: mm(x), y: mm(y) });

describe('corners', () => {
  it('are found where a line turns, and not where a curve runs on', () => {
    expect(cornersOf(first('M0 0h100v50h-100z'))).toEqual([0, 1, 2, 3]);
    // A smooth join of two curves in the armhole.
    expect(cornersOf(first('M0 0H100C80 30 80 60 90 80S110 100 120 100V200H0Z'))).toEqual([0, 1, 3, 4, 5]);
    expect(cornersOf(named(fileOf('layers-in-mm')).get('Sleeve')!)).toEqual([0, 2, 3, 4]);
  });

  it('take handles that lie on their ends by the next handle', () => {
    expect(cornersOf(first('M0 0C0 0 50 0 100 0S200 0 200 100H0Z'))).toEqual([0, 2, 3]);
  });

  it('of a thing rounded off lie in its bends, of a circle at four places', () => {
    expect(cornersOf(named(fileOf('inches')).get('Cuff')!)).toEqual([1.5, 3.5, 5.5, 7.5]);
    expect(cornersOf(drawn(inMm('<circle cx="50" cy="50" r="40"/>')).lines[0]!)).toHaveLength(4);
    const many = Array.from(
      { length: 90 },
      (_, i) => `${50 + 40 * Math.cos(i / 15)},${50 + 40 * Math.sin(i / 15)}`,
    );
    expect(
      cornersOf(drawn(inMm(`<polygon points="${many.join(' ')}"/>`)).lines[0]!).length,
    ).toBeGreaterThanOrEqual(3);
  });

  it('cut a line into edges that lie end to end and are together as long as it', () => {
    const front = named(fileOf('layers-in-mm')).get('Front')!;
    const whole = pathLength(flattenEdge(front.start, { name: '', segments: front.segments }, mm(0.001)));
    fc.assert(
      fc.property(
        fc
          .uniqueArray(fc.integer({ min: 0, max: 59 }), { minLength: 1, maxLength: 8 })
          .map((n) => n.map((k) => k / 10).sort((a, b) => a - b)),
        (corners) => {
          const edges = edgesAt(front, corners);
          const sum = edges.reduce(
            (all, { start, segments }) =>
              all + pathLength(flattenEdge(start, { name: '', segments }, mm(0.001))),
            0,
          );
          expect(Math.abs(sum - whole)).toBeLessThan(mm(0.002));
          for (const [i, { segments }] of edges.entries()) {
            const next = edges[(i + 1) % edges.length]!.start;
            const end = segments.at(-1)!.to;
            expect(Math.hypot(end.x - next.x, end.y - next.y)).toBeLessThanOrEqual(2);
          }
        },
      ),
      { numRuns: 200, seed: 5 },
    );
  });

  it('cut a curve as another library does', () => {
    const from = at(0, 0);
    const one = { kind: 'curve', first: at(10, 90), second: at(120, -40), to: at(100, 100) } as const;
    const { left, right } = new Bezier(0, 0, 10, 90, 120, -40, 100, 100).split(0.3);
    const [a, b] = halves(from, one, 0.3);
    const ours = [a, b].flatMap((s) => (s.kind === 'curve' ? [s.first, s.second, s.to] : []));
    const theirs = [left, right].flatMap(({ points }) => points.slice(1));
    for (const [i, p] of ours.entries()) {
      expect(toMm(p.x)).toBeCloseTo(theirs[i]!.x, 5);
      expect(toMm(p.y)).toBeCloseTo(theirs[i]!.y, 5);
    }
  });

  it('are put where the line is nearest, at a meeting of stretches where one is close', () => {
    const run = first('M0 0h100v50h-100z');
    expect(nearestPlace(run, at(99, 2), mm(5)).place).toBe(1);
    const { place, away } = nearestPlace(run, at(40, 3), mm(5));
    expect([place, away]).toEqual([expect.closeTo(0.4), mm(3)]);
    expect(pointAt(run, place)).toEqual(at(40, 0));
    const curve = first('M0 0C40 80 80 80 120 0Z');
    const top = nearestPlace(curve, at(60, 70), 0);
    expect(top.place).toBeCloseTo(0.5, 2);
    expect(toMm(pointAt(curve, top.place).y)).toBeCloseTo(60, 2);
  });
});
