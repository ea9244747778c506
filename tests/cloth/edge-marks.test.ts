import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edgeMarks } from '../../src/cloth/edge-marks.ts';
import { latticePanel } from '../../src/cloth/lattice-panel.ts';
import { mm, zero } from '../../src/length/index.ts';
import { at } from '../shape/shapes.ts';
import { made } from './good.ts';

const families = [
  { angle: 45, spacing: mm(10 / Math.SQRT2), through: at(50, 0) },
  { angle: -45, spacing: mm(10 / Math.SQRT2), through: at(50, 0) },
] as const;

describe('where lines meet an edge', () => {
  test('along the top both meet in one place, every ten millimetres from the middle', () => {
    const marks = edgeMarks(at(5, 0), at(95, 0), families);
    expect(marks.map(({ at }) => Math.round(at / mm(0.001)))).toEqual(
      [5, 15, 25, 35, 45, 55, 65, 75, 85].map((x) => x * 1000),
    );
    for (const mark of marks) expect(mark.families).toEqual([0, 1]);
  });

  test('a quarter down they meet the level apart', () => {
    const marks = edgeMarks(at(0, 2.5), at(100, 2.5), families);
    expect(marks.map(({ families: which }) => which.join())).toEqual(marks.map((_, i) => String(i % 2)));
    expect(marks).toHaveLength(20);
  });

  test('an edge along the lines of one family has marks of the other only', () => {
    const marks = edgeMarks(at(3, 0), at(53, 50), families);
    expect(marks.length).toBeGreaterThan(0);
    for (const { families: which } of marks) expect(which).toEqual([1]);
  });

  test('lines that reach the edge of a panel end at its marks', () => {
    fc.assert(
      fc.property(fc.integer({ min: 80, max: 300 }), fc.integer({ min: 15, max: 75 }), (top, angle) => {
        const size = { top: mm(top), bottom: mm(150), height: mm(200) };
        const panel = made(latticePanel({ ...size, spacing: mm(20), angle, clear: zero }));
        const corners = panel.outline;
        const meets = corners.flatMap((from, i) => {
          const to = corners[(i + 1) % corners.length]!;
          const long = Math.hypot(to.x - from.x, to.y - from.y);
          return edgeMarks(from, to, panel.families).map(({ at: along }) => ({
            x: from.x + ((to.x - from.x) * along) / long,
            y: from.y + ((to.y - from.y) * along) / long,
          }));
        });
        for (const p of panel.lattice.lines.flatMap((l) => [l.from, l.to])) {
          const near = Math.min(...meets.map((m) => Math.hypot(m.x - p.x, m.y - p.y)));
          expect(near).toBeLessThan(5000);
        }
      }),
      { numRuns: 40 },
    );
  });
});
