import type { LatticeLine } from '../../cloth/lattice.ts';
import { type Length, nm } from '../../length/length.ts';
import { middleWords, place } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';

/** More lines than this are not numbered: nobody reads them from a drawing. */
const MOST = 80;

/** What a figure takes across, in parts of the height of its letters, with a little room. */
const FIGURE = 1.2;
/** From one row of numbers to the next below it, in parts of the height of the letters. */
const ROW = 1.25;

/**
 * The number of each line, from 1, outside the edge that it stops short of by `clear`: at the lower end of every line,
 * one row further down where another number stands there already. None where they would run into each other all along.
 */
export function lineNumbers(
  lines: readonly LatticeLine[],
  spacing: Length,
  clear: Length,
  letters: Length,
): Drawn[] {
  if (lines.length > MOST || spacing < letters * 1.6) return [];
  const placed: { x: number; y: number; half: number }[] = [];
  return lines.map(({ from, to, length }, i) => {
    const [upper, lower] = from.y < to.y ? [from, to] : [to, from];
    const on = (letters + 1.5 * clear) / Math.max(1, length);
    const text = String(i + 1);
    const here = {
      x: lower.x + (lower.x - upper.x) * on,
      y: lower.y + (lower.y - upper.y) * on + letters * 0.35,
      half: (text.length * FIGURE * letters) / 2,
    };
    const meets = (other: typeof here): boolean =>
      Math.abs(other.x - here.x) < other.half + here.half && Math.abs(other.y - here.y) < letters;
    // Every step goes down, past each number at most once.
    while (placed.some(meets)) here.y += letters * ROW;
    placed.push(here);
    return middleWords(text, place(nm(here.x), nm(here.y)), letters);
  });
}
