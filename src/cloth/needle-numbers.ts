import { bad, good, type Result } from '../length/result.ts';
import { FIRST_NEEDLE, NEEDLE_RANGE, NEEDLE_STEP, otherNumber } from './needles.ts';
import { type Refusal, refusal } from './refusal.ts';

/**
 * The metric number of a needle from the other one printed beside it: (other - 8) x 5 + 60, which is the rule of
 * {@link otherNumber} turned round (Needle Number System, trade technical article, seen as an excerpt).
 * Refused: a number that is not whole, or outside 8 to 18, where the rule does not hold.
 */
export function metricNumber(other: number): Result<number, Refusal> {
  const metric = (other - FIRST_NEEDLE.value) * NEEDLE_STEP.value + NEEDLE_RANGE.value[0];
  if (!Number.isInteger(other) || !otherNumber(metric).ok) {
    return bad(
      refusal(
        'other',
        'The rule does not hold for this number.',
        'Give a whole number from 8 to 18, or read the packet.',
      ),
    );
  }
  return good(metric);
}
