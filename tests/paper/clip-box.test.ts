import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm, nm } from '../../src/length/length.ts';
import { clipToBox, inkInBox, shareInBox } from '../../src/paper/clip-box.ts';
import { place } from '../../src/paper/drawing.ts';
import { inkLine, inkWords } from '../../src/paper/ink.ts';
import type { Point } from '../../src/shape/outline.ts';
import { places } from './sheets.ts';

const box = { left: mm(0), top: mm(0), right: mm(100), bottom: mm(50) };
const p = (x: number, y: number): Point => place(mm(x), mm(y));
const long = (points: readonly Point[]): number =>
  points.reduce(
    (sum, b, i) => (i === 0 ? 0 : sum + Math.hypot(b.x - points[i - 1]!.x, b.y - points[i - 1]!.y)),
    0,
  );

describe('clipping to a box', () => {
  it('cuts a line where it leaves and where it comes back', () => {
    const runs = clipToBox([p(-10, 10), p(50, 10), p(50, 70), p(80, 70), p(80, 20)], false, box);
    expect(runs.map((run) => run.points)).toEqual([
      [p(0, 10), p(50, 10), p(50, 50)],
      [p(80, 50), p(80, 20)],
    ]);
    expect(runs.map((run) => run.after)).toEqual([mm(10), mm(60 + 60 + 30 + 20)]);
  });

  it('leaves a closed line closed only where it lies inside', () => {
    const corners = [p(10, 10), p(20, 10), p(20, 20)];
    expect(clipToBox(corners, true, box)).toEqual([{ points: corners, closed: true, after: 0 }]);
    const out = clipToBox([p(90, 10), p(110, 10), p(90, 30)], true, box);
    expect(out.every((run) => !run.closed)).toBe(true);
    expect(out.flatMap((run) => run.points)).toContainEqual(p(100, 20));
  });

  it('leaves out what misses the box, and what only touches a corner of it', () => {
    expect(clipToBox([p(-10, 10), p(10, -10.5)], false, box)).toEqual([]);
    expect(clipToBox([p(-10, 10), p(10, -10)], false, box)).toEqual([]);
    expect(shareInBox(p(-10, -5), p(110, -5), box)).toBeUndefined();
  });

  it('keeps a line along the edge', () => {
    expect(clipToBox([p(-10, 0), p(60, 0)], false, box)[0]?.points).toEqual([p(0, 0), p(60, 0)]);
  });

  it('keeps the whole length, no more and no less, over boxes that lie side by side', () => {
    fc.assert(
      fc.property(fc.array(places, { minLength: 2, maxLength: 8 }), fc.boolean(), (points, closed) => {
        const cells = Array.from({ length: 36 }, (_, i) => {
          const [x, y] = [(i % 6) * 210 - 630, Math.floor(i / 6) * 210 - 630];
          // Lines along an edge belong to both boxes; these edges lie where no whole micrometre does.
          const at = (v: number) => nm(v * 1e6 + 0.5 * 1000 + 1);
          return { left: at(x), top: at(y), right: at(x + 210), bottom: at(y + 210) };
        });
        const parts = cells.flatMap((cell) => clipToBox(points, closed, cell));
        const sum = parts.reduce(
          (total, run) => total + long(run.closed ? [...run.points, run.points[0]!] : run.points),
          0,
        );
        const whole = long(closed ? [...points, points[0]!] : points);
        expect(Math.abs(sum - whole)).toBeLessThan(2 * parts.length + 10);
      }),
    );
  });

  it('goes on with the dashes where the last page left off', () => {
    const ink = inkLine('stitch', [p(-10, 10), p(50, 10)]);
    const [clipped] = inkInBox([ink], box);
    // Dashes of 3 mm and gaps of 1.3 mm: after 10 mm, the third dash has run for 1.4 mm.
    expect(clipped).toMatchObject({ kind: 'line', phase: mm(10 - 2 * 4.3) });
  });

  it('keeps words that reach in, and no others', () => {
    expect(inkInBox([inkWords('reaches in', p(-5, 10), mm(4))], box)).toHaveLength(1);
    expect(inkInBox([inkWords('far', p(-50, 10), mm(4))], box)).toHaveLength(0);
  });
});
