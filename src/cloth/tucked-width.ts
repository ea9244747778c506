import { add, type Length, longer } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Refusal, refusal } from './refusal.ts';
import type { TucksMade } from './tucks.ts';

/** What {@link tuckedWidth} gives back. */
export interface TuckedWidth {
  /** From the last stitching line to the far edge, finished. */
  readonly after: Length;
  /** From edge to edge when the tucks are done. */
  readonly finished: Length;
  /** From edge to edge on the flat cloth, without allowances. */
  readonly flat: Length;
  readonly assumed: readonly string[];
}

/**
 * The whole width of a tucked piece, finished and flat. Without `after`, there is as much cloth after the last
 * stitching as before the first, or enough for the last tuck to lie on if that is more.
 *
 * Refused: `after` below zero; no tucks.
 */
export function tuckedWidth(made: TucksMade, after?: Length): Result<TuckedWidth, Refusal> {
  const [first, last] = [made.tucks[0], made.tucks.at(-1)];
  if (!first || !last) return bad(refusal('tucks', 'There are no tucks.', 'Give one tuck or more.'));
  if (after !== undefined && after < 0) {
    return bad(refusal('after', 'The last tuck lies past the far edge.', 'Give zero or more.'));
  }
  const lies = longer(last.foldFinished, last.finished);
  const least = lies && longer(last.depth, first.finished) ? last.depth : first.finished;
  const far = after ?? least;
  const assumed =
    after === undefined
      ? [
          least === first.finished
            ? 'As much cloth after the last tuck as before the first.'
            : 'After the last tuck, cloth for it to lie on.',
        ]
      : lies && longer(last.depth, after)
        ? ['The fold of the last tuck reaches past the far edge.']
        : [];
  const finished = add(last.finished, far);
  return good({ after: far, finished, flat: add(finished, made.takeUp), assumed });
}
