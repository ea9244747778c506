import { describe, expect, it } from 'vitest';
import { mm } from '../../src/length/length.ts';
import { line, middleWords, place, ring } from '../../src/paper/drawing.ts';
import { boxOf, inkOf } from '../../src/paper/ink.ts';
import { PENS, phaseAfter } from '../../src/paper/pens.ts';

const p = (x: number, y: number) => place(mm(x), mm(y));

describe('ink', () => {
  it('gives a grain line an arrow head at each end, with its tip on the end', () => {
    const ink = inkOf([line('grain', p(10, 10), p(10, 90))]);
    const heads = ink.flatMap((one) => (one.kind === 'fill' ? [one.points] : []));
    expect(heads.map(([tip]) => tip)).toEqual([p(10, 10), p(10, 90)]);
    for (const points of heads) {
      for (const { y } of points) {
        expect(y).toBeGreaterThanOrEqual(mm(10));
        expect(y).toBeLessThanOrEqual(mm(90));
      }
    }
    expect(inkOf([line('cut', p(0, 0), p(1, 1)), ring('grain', [p(0, 0), p(1, 0), p(0, 1)])])).toHaveLength(
      2,
    );
  });

  it('leaves out a line of no points', () => {
    expect(inkOf([line('cut'), line('cut', p(1, 1))])).toEqual([]);
  });

  it('knows how far words reach, turned or not', () => {
    const level = boxOf(inkOf([middleWords('fold', p(50, 50), mm(4))]));
    expect(level.left + level.right).toBeCloseTo(2 * mm(50), -3);
    const upright = boxOf(inkOf([middleWords('fold', p(50, 50), mm(4), 90)]));
    expect(upright.bottom - upright.top).toBeCloseTo(level.right - level.left, -3);
  });
});

describe('pens', () => {
  it('differ from each other by dash or by weight, for every kind of line that a maker works by', () => {
    const kinds = (['cut', 'seam', 'stitch', 'fold', 'mark', 'body'] as const).map((kind) =>
      JSON.stringify(PENS[kind]),
    );
    expect(new Set(kinds).size).toBe(kinds.length);
    const dashes = (['seam', 'stitch', 'fold', 'mark'] as const).map((kind) =>
      JSON.stringify(PENS[kind].dash),
    );
    expect(new Set(dashes).size).toBe(4);
    expect(PENS.cut.wide).toBeGreaterThanOrEqual(1.5 * PENS.seam.wide);
  });

  it('know where in their dashes a line is', () => {
    expect(phaseAfter('cut', mm(77))).toBe(0);
    expect(phaseAfter('seam', mm(77))).toBe(mm(7));
  });
});
