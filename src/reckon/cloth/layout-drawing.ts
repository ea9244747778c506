import type { ClothPart } from '../../cloth/cloth-needed.ts';
import { type Length, nm, zero } from '../../length/length.ts';
import { box, line, middleWords, place, ring } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import { boundingBox } from '../../shape/measure.ts';

/**
 * A layout to scale: x across the cloth, y along it, the doubled part first with its fold on the left. In every piece
 * stands the number of its line.
 * @param lineOf number of the line of each piece that was laid
 */
export function layoutDrawn(parts: readonly ClothPart[], lineOf: readonly number[]): Drawn[] {
  const wide = Math.max(...parts.map(({ width }) => width));
  const long = parts.reduce((sum, { length }) => sum + length, 0);
  const high = Math.max(wide, long) / 25;
  const drawn: Drawn[] = [];
  let top = zero;
  for (const { layers, width, length, places } of parts) {
    const down = (y: Length): Length => nm(y + top);
    drawn.push(box('body', zero, top, width, length));
    if (layers === 2) {
      drawn.push(
        line('fold', place(zero, top), place(zero, down(length))),
        middleWords('fold', place(nm(-high * 0.4), nm(top + length / 2)), nm(high), -90),
      );
    }
    for (const { outline, piece } of places) {
      const { left, top: from, right, bottom } = boundingBox(outline);
      const size = nm(Math.min(high * 1.4, Math.min(right - left, bottom - from) * 0.7));
      const middle = place(nm((left + right) / 2), nm(down(nm((from + bottom) / 2)) + size / 3));
      drawn.push(
        ring(
          'cut',
          outline.map(({ x, y }) => place(x, down(y))),
        ),
        middleWords(String(lineOf[piece] ?? ''), middle, size),
      );
    }
    top = nm(top + length + high);
  }
  return drawn;
}
