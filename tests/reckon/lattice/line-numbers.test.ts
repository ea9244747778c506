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

  test('one for every line, beyond its lower end and in line with it', () => {
    const numbers = lineNumbers(lattice.lines, mm(25), mm(6), mm(6));
    expect(numbers.map((d) => d.kind === 'words' && d.words)).toEqual(
      lattice.lines.map((_, i) => String(i + 1)),
    );
    numbers.forEach((d, i) => {
      if (d.kind !== 'words') return;
      const { from, to, length } = lattice.lines[i]!;
      const [upper, lower] = from.y < to.y ? [from, to] : [to, from];
      const middle = { x: d.at.x, y: d.at.y - mm(2.1) };
      expect(Math.abs(Math.hypot(middle.x - lower.x, middle.y - lower.y) - mm(15))).toBeLessThan(10);
      expect(Math.abs(Math.hypot(middle.x - upper.x, middle.y - upper.y) - mm(15) - length)).toBeLessThan(10);
    });
  });

  test('none where they would run into each other', () => {
    expect(lineNumbers(lattice.lines, mm(25), mm(6), mm(20))).toEqual([]);
  });
});
