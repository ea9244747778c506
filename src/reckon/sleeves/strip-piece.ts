import { type Length, longest, mm, nm, shortest, subtract, times, zero } from '../../length/length.ts';
import { box, line, middleWords, moved, place } from '../../paper/drawing.ts';
import type { Drawn, PatternSheet, Stroke } from '../../paper/pattern-sheet.ts';

/** Anything longer is measured on the cloth, not printed. */
export const LONGEST_SHEET: Length = mm(3000);

/** A straight piece with its allowances, its length lying level. */
export interface StripPiece {
  readonly name: string;
  readonly notes: readonly string[];
  readonly length: Length;
  readonly width: Length;
  readonly allowance: Length;
  /** Folds along its length, from the upper cut edge. */
  readonly folds?: readonly Length[];
  /** Marks across it, from the left cut end. */
  readonly marks?: readonly Length[];
  /** Marks that only cross the upper allowance. */
  readonly notches?: readonly Length[];
  /** Lines across it at both ends of its seam line, such as a gathering row. */
  readonly ends?: Stroke;
  /** Anything else on it. */
  readonly more?: readonly Drawn[];
}

/** Lines of a straight piece, its left upper corner at the datum. */
export function pieceLines(piece: StripPiece, named: boolean): readonly Drawn[] {
  const { name, length, width, allowance, folds = [], marks = [], notches = [], ends, more = [] } = piece;
  const inner = (size: Length) => nm(size - 2 * allowance);
  const high = shortest(mm(8), times(width, 1 / 10), times(length, 1 / 14));
  const low = nm(width - allowance - inner(width) * 0.12);
  const across = (stroke: Stroke, x: Length, to: Length) => line(stroke, place(x, zero), place(x, to));
  return [
    box('cut', zero, zero, length, width),
    ...(allowance > 0 ? [box('seam', allowance, allowance, inner(length), inner(width))] : []),
    ...folds.map((y) => line('fold', place(zero, y), place(length, y))),
    ...marks.map((x) => across('mark', x, width)),
    ...notches.map((x) => across('mark', x, longest(allowance, times(width, 1 / 20)))),
    ...(ends && allowance > 0
      ? [allowance, subtract(length, allowance)].map((x) => across(ends, x, width))
      : []),
    ...more,
    line('grain', place(times(length, 0.55), low), place(times(length, 0.85), low)),
    ...(named ? [middleWords(name, place(times(length, 0.3), nm(low + high / 3)), high)] : []),
  ];
}

/** The pattern of a straight piece at true size; none where it is too long to print. */
export function pieceSheets(...pieces: readonly StripPiece[]): readonly PatternSheet[] {
  return pieces
    .filter(({ length, width }) => Math.max(length, width) <= LONGEST_SHEET)
    .map((piece) => ({ name: piece.name, notes: piece.notes, drawn: pieceLines(piece, true) }));
}

/** Straight pieces one below the other, at one scale, from `top` on. */
export function stacked(pieces: readonly StripPiece[], top: Length): readonly Drawn[] {
  const gap = times(nm(Math.max(...pieces.map(({ width }) => width))), 0.2);
  let y = top;
  return pieces.flatMap((piece) => {
    const drawn = pieceLines(piece, false).map((one) => moved(one, zero, y));
    y = nm(y + piece.width + gap);
    return drawn;
  });
}
