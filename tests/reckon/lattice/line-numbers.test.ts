import { describe, expect, test } from 'vitest';
import { latticePanel } from '../../../src/cloth/lattice-panel.ts';
import { mm } from '../../../src/length/length.ts';
import { lineNumbers } from '../../../src/reckon/lattice/line-numbers.ts';
import { made } from '../../cloth/good.ts';

describe('numbers of lines', () => {
  const { lattice } = made(
    latticePanel({
      top: mm(200),
      bottom: mm(140),
      height: mm(250),
      spacing: mm(25),
      angle: 60,
      clear: mm(6),
    }),
  );

  test('one for every line, beyond its lower end, in line with it or in a row below', () => {
    const numbers = lineNumbers(lattice.lines, mm(25), mm(6), mm(6));
    expect(numbers.map((d) => d.kind === 'words' && d.words)).toEqual(
      lattice.lines.map((_, i) => String(i + 1)),
    );
    numbers.forEach((d, i) => {
      if (d.kind !== 'words') return;
      const { from, to, length } = lattice.lines[i]!;
      const [upper, lower] = from.y < to.y ? [from, to] : [to, from];
      const down = (15e6 * (lower.y - upper.y)) / length;
      expect(Math.abs(d.at.x - lower.x - (15e6 * (lower.x - upper.x)) / length)).toBeLessThan(10);
      // 35 in a hundred of the letters set their middle there; a row is a quarter more than the letters.
      const rows = (d.at.y - mm(2.1) - lower.y - down) / 7.5e6;
      expect(rows).toBeCloseTo(Math.round(rows), 5);
      expect(rows).toBeGreaterThan(-0.5);
    });
  });

  test('no number stands on another', () => {
    const numbers = lineNumbers(lattice.lines, mm(25), mm(6), mm(6)).flatMap((d) =>
      d.kind === 'words' ? [d] : [],
    );
    // A figure is at most six tenths of its height across.
    const half = (words: string): number => (words.length * 0.6 * 6e6) / 2;
    for (const [i, a] of numbers.entries()) {
      for (const b of numbers.slice(i + 1)) {
        const apart = Math.abs(a.at.x - b.at.x) - half(a.words) - half(b.words);
        expect(apart > 0 || Math.abs(a.at.y - b.at.y) >= 6e6, `${a.words} and ${b.words}`).toBe(true);
      }
    }
  });

  test('none where they would run into each other', () => {
    expect(lineNumbers(lattice.lines, mm(25), mm(6), mm(20))).toEqual([]);
  });
});
