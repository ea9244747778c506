import { type Length, nm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory } from './source.ts';

/**
 * Shrinking by more than this part of the length is taken for a slip.
 * @unit part
 */
export const MOST_SHRINKAGE: Sourced<number> = { value: 0.5, source: memory };

/**
 * Cloth to buy so that `needed` is left when it has shrunk by the part `shrinks`: N / (1 - s). Rounded up, so that it is
 * never short. Follows from the measures.
 * Refused: no cloth; a part below 0 or over 0.5, which is no cloth to sew.
 */
export function beforeShrinking(needed: Length, shrinks: number): Result<Length, Refusal> {
  if (needed <= 0) return bad(refusal('needed', 'No cloth is wanted.', 'Give a length above zero.'));
  const wrong = checked(shrinks);
  return wrong ? bad(wrong) : good(nm(Math.ceil(needed / (1 - shrinks))));
}

/**
 * The part by which a sample shrank: measure it before and after washing as the garment will be washed.
 * Refused: no sample; one that grew, or lost more than half.
 */
export function shrunk(before: Length, after: Length): Result<number, Refusal> {
  if (before <= 0) return bad(refusal('before', 'The sample has no length.', 'Give a length above zero.'));
  const part = (before - after) / before;
  return part >= 0 && part <= MOST_SHRINKAGE.value
    ? good(part)
    : bad(
        refusal(
          'after',
          'A cloth does not shrink so.',
          'Give a length from half the sample up to all of it.',
        ),
      );
}

const checked = (shrinks: number): Refusal | undefined =>
  shrinks >= 0 && shrinks <= MOST_SHRINKAGE.value
    ? undefined
    : refusal('shrinks', 'A cloth does not shrink so.', 'Give 0 to 0.5; 0.05 is 5 in the hundred.');
