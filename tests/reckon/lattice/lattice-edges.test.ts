import { describe, expect, test } from 'vitest';
import { latticePanel } from '../../../src/cloth/lattice-panel.ts';
import { mm, zero } from '../../../src/length/length.ts';
import { latticeEdges } from '../../../src/reckon/lattice/lattice-edges.ts';
import { holds } from '../../../src/shape/index.ts';
import { made } from '../../cloth/good.ts';

describe('the edges of a lattice', () => {
  const { outline, families } = made(
    latticePanel({ top: mm(200), bottom: mm(140), height: mm(250), spacing: mm(25), angle: 60, clear: zero }),
  );
  const { strips, ticks } = latticeEdges(outline, families);

  test('marks along the top are the same from both ends, with one in the middle', () => {
    const [top] = strips;
    const places = top?.marks.map(({ at }) => at) ?? [];
    expect(places.some((at) => Math.abs(at - mm(100)) < 10)).toBe(true);
    places.forEach((at, i) => {
      expect(Math.abs(at + (places.at(-1 - i) ?? 0) - mm(200))).toBeLessThan(10);
    });
    expect(new Set(top?.marks.map(({ name }) => name))).toEqual(new Set(['both ways']));
  });

  test('a strip for the top, a side and the bottom, all marks on it', () => {
    expect(strips).toHaveLength(3);
    for (const { span, marks } of strips) {
      for (const { at } of marks) expect(at >= 0 && at <= span).toBe(true);
    }
    expect(strips[2]?.span).toBe(mm(140));
  });

  test('every tick points outwards', () => {
    for (const tick of ticks) {
      const end = tick.kind === 'path' ? tick.points[1] : undefined;
      expect(holds(outline, end!)).toBe(false);
    }
    expect(latticeEdges([], families)).toEqual({ strips: [], ticks: [] });
  });
});
