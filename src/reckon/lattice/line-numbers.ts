import type { LatticeLine } from '../../cloth/lattice.ts';
import { type Length, nm } from '../../length/length.ts';
import { middleWords, place } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';

/** More lines than this are not numbered: nobody reads them from a drawing. */
const MOST = 80;

/**
 * The number of each line, from 1, outside the edge that it stops short of by `clear`: at the lower end of every
 * line, so that those of the two families seldom meet. None where they would run into each other.
 */
export function lineNumbers(
  lines: readonly LatticeLine[],
  spacing: Length,
  clear: Length,
  letters: Length,
): Drawn[] {
  if (lines.length > MOST || spacing < letters * 1.6) return [];
  return lines.map(({ from, to, length }, i) => {
    const [upper, lower] = from.y < to.y ? [from, to] : [to, from];
    const on = (letters + 1.5 * clear) / Math.max(1, length);
    const x = lower.x + (lower.x - upper.x) * on;
    const y = lower.y + (lower.y - upper.y) * on;
    return middleWords(String(i + 1), place(nm(x), nm(y + letters * 0.35)), letters);
  });
}
