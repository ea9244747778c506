import { describe, expect, test } from 'vitest';
import { latticePanel } from '../../src/cloth/lattice-panel.ts';
import { latticeTucks } from '../../src/cloth/lattice-tucks.ts';
import { mm, subtract, times, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const panel = made(
  latticePanel({ top: mm(200), bottom: mm(140), height: mm(250), spacing: mm(25), angle: 60, clear: mm(6) }),
);

describe('a lattice sewn as tucks', () => {
  const pair = made(latticeTucks(panel.lattice, panel.families, mm(3)));

  test('one tuck for every line, and each takes twice its depth', () => {
    for (const which of [0, 1] as const) {
      const { marks, takeUp, span } = pair[which];
      expect(marks).toHaveLength(panel.lattice.lines.filter((l) => l.family === which).length);
      expect(takeUp).toBe(times(mm(6), marks.length));
      expect(span).toBe(mm(31 * marks.length));
      expect(marks[0]?.firstStitching).toBe(mm(12.5));
      marks.forEach((mark, i) => {
        expect(mark.fold).toBe(mm(12.5 + 31 * i + 3));
        expect(subtract(mark.secondStitching, mark.firstStitching)).toBe(mm(6));
      });
      expect(subtract(span, marks.at(-1)!.secondStitching)).toBe(mm(12.5));
    }
  });

  test('refuses no depth, one deeper than the spacing, and a family without lines', () => {
    const tucks = (depth: number) => latticeTucks(panel.lattice, panel.families, mm(depth));
    expect(tucks(0)).toMatchObject({ error: { field: 'depth' } });
    expect(tucks(26)).toMatchObject({ error: { field: 'depth' } });
    expect(tucks(25)).toMatchObject({ ok: true });
    const none = { ...panel.lattice, lines: [], total: zero };
    expect(latticeTucks(none, panel.families, mm(3))).toMatchObject({ error: { field: 'spacing' } });
  });
});
