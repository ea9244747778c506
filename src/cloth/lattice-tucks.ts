import { type Length, nm, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { directionOf } from '../shape/clip.ts';
import type { LatticeFamily, LatticeMade } from './lattice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { marksOf, type TuckMarks } from './tucks.ts';

/** One family of a lattice sewn as tucks. */
export interface LatticeTucks {
  /** Marks from half a spacing outside the first line, square to the lines, on the cloth as the family before leaves it. */
  readonly marks: readonly TuckMarks[];
  /** Cloth that these tucks take, square to the lines. */
  readonly takeUp: Length;
  /** From half a spacing before the first line to as much after the last, flat. */
  readonly span: Length;
}

/**
 * Marks where the lines of a lattice are sewn as tucks: every line of a family that lies on the piece, in order, with
 * the cloth of the tucks before it. The first family is marked on the flat cloth, the second once the first is
 * sewn and pressed; the piece is cut out when both are done. A tuck takes twice its depth, so the cloth between
 * crossings, flat, is longer by that than the finished segment.
 *
 * Refused: a depth of zero or less, or more than the spacing; a family without a line on the piece.
 */
export function latticeTucks(
  made: LatticeMade,
  families: readonly [LatticeFamily, LatticeFamily],
  depth: Length,
): Result<readonly [LatticeTucks, LatticeTucks], Refusal> {
  const found: LatticeTucks[] = [];
  for (const which of [0, 1] as const) {
    const { angle, spacing, through } = families[which];
    const n = directionOf(angle + 90);
    const numbers = made.lines
      .filter((line) => line.family === which)
      .map(({ from }) => Math.round(((from.x - through.x) * n.x + (from.y - through.y) * n.y) / spacing));
    if (numbers.length === 0) {
      const cure = 'Give a closer spacing.';
      return bad(refusal('spacing', 'No line of one direction lies on the piece.', cure));
    }
    const low = numbers.reduce((a, b) => Math.min(a, b));
    const count = numbers.reduce((a, b) => Math.max(a, b)) - low + 1;
    const marks = marksOf(
      Array.from({ length: count }, (_, i) => ({ at: nm(spacing * (i + 0.5)), depth })),
      'away',
    );
    if (!marks.ok) return marks;
    const takeUp = times(depth, 2 * count);
    found.push({ marks: marks.value, takeUp, span: nm(spacing * count + takeUp) });
  }
  const [one, two] = found;
  return one && two
    ? good([one, two])
    : bad(refusal('spacing', 'The lattice has no lines.', 'Give a closer spacing.'));
}
