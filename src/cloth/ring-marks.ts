import { type Length, nm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Refusal, refusal } from './refusal.ts';

/** One ring, or a part of one, where it is sewn to its seam. */
export interface RingMarks {
  /** Places along the seam that it is set to, from the seam's start: its two ends and its quarters. */
  readonly at: readonly Length[];
  /** The same places on the ring itself, as parts of a whole turn from its first cut end. */
  readonly turns: readonly number[];
}

/**
 * Where the rings of a frill meet their seam, ring after ring, each in quarters. Follows from the measures.
 *
 * @param turns the parts of a whole turn that are cut, from `ringParts`
 * @param radius of the seam line
 * @param slit allowance at each end of each ring, along the seam line
 * Refused: a part so small that its two allowances use it up.
 */
export function ringMarks(
  turns: readonly number[],
  radius: Length,
  slit: Length,
): Result<readonly RingMarks[], Refusal> {
  const made: RingMarks[] = [];
  const round = 2 * Math.PI * radius;
  let from = 0;
  for (const turn of turns) {
    const long = turn * round - 2 * slit;
    if (long <= 0) {
      const cure = 'Give a whole number of circles, or a narrower allowance.';
      return bad(refusal('circles', 'The last part of a ring is used up by its allowances.', cure));
    }
    const quarters = [0, 1, 2, 3, 4].map((k) => (long * k) / 4);
    made.push({
      at: quarters.map((along) => nm(from + along)),
      turns: quarters.map((along) => (slit + along) / round),
    });
    from += long;
  }
  return good(made);
}
