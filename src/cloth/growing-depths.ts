import { type Length, longer, nm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Refusal, refusal } from './refusal.ts';

/**
 * Depths of tucks that grow, or shrink, by the same step each, from the first to the last; for `tucks`, which takes a
 * list. Each depth is reckoned from the first, so rounding does not add up. Follows from the measures.
 *
 * Refused: a count that is not a whole number from 2 to 1000; a depth of zero or less.
 */
export function growingDepths(
  first: Length,
  last: Length,
  count: number,
): Result<readonly Length[], Refusal> {
  if (!Number.isInteger(count) || count < 2 || count > 1000) {
    const cure = 'Give a whole number from 2 to 1000.';
    return bad(refusal('count', 'Tucks that grow are at least two.', cure));
  }
  for (const [field, depth] of [
    ['firstDepth', first],
    ['lastDepth', last],
  ] as const) {
    if (!longer(depth, nm(0))) {
      return bad(refusal(field, 'The depth is zero or less.', 'Give a depth above zero.'));
    }
  }
  return good(Array.from({ length: count }, (_, i) => nm(first + ((last - first) * i) / (count - 1))));
}
