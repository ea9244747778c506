import { add, type Length, longer, nm, subtract, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Refusal, refusal } from './refusal.ts';
import type { FinishedTuck, Pressed } from './tucks.ts';

/** Tucks of one depth that sit in the middle of a stretch. */
export interface TuckSpreadInput {
  /** Finished length of the stretch; it begins at the datum. */
  readonly over: Length;
  readonly depth: Length;
  /** Finished, from stitching line to stitching line. */
  readonly spacing: Length;
  readonly pressed: Pressed;
  /** How many; as many as the stretch holds if not given. */
  readonly count?: number;
}

/**
 * Finished places of tucks with as much cloth before the group as after it; the group counts from its outermost
 * stitching line to its outermost fold. Follows from the measures.
 *
 * Refused: a depth or spacing of zero or less; a depth more than the spacing; a count that is not whole, is over
 * 1000, or does not fit; a stretch too short for one tuck.
 */
export function spreadTucks(input: TuckSpreadInput): Result<readonly FinishedTuck[], Refusal> {
  const { over, depth, spacing, pressed } = input;
  if (depth <= 0) return bad(refusal('depth', 'The tucks have no depth.', 'Give a depth above zero.'));
  if (spacing <= 0)
    return bad(refusal('spacing', 'The tucks have no spacing.', 'Give a spacing above zero.'));
  if (longer(depth, spacing)) {
    const cure = 'Give a depth no more than the spacing, or a wider spacing.';
    return bad(refusal('depth', 'Each fold would lie over the next stitching line.', cure));
  }
  if (longer(depth, over)) {
    const cure = 'Make the tucks shallower or the piece larger.';
    return bad(refusal('depth', 'One tuck is deeper than the whole piece.', cure));
  }
  const most = Math.floor(subtract(over, depth) / spacing) + 1;
  const count = input.count ?? most;
  if (!Number.isInteger(count) || count < 1 || (input.count !== undefined && count > 1000)) {
    const cure = 'Give a whole number from 1 to 1000.';
    return bad(refusal('count', 'The number of tucks is not one that can be sewn.', cure));
  }
  if (count > most) {
    const cure = `Give ${most} or fewer, or a closer spacing.`;
    return bad(refusal('count', 'So many tucks do not fit on the piece.', cure));
  }
  if (count > 1000) {
    return bad(refusal('spacing', 'This is more than 1000 tucks.', 'Give a wider spacing.'));
  }
  const before = times(subtract(over, add(times(spacing, count - 1), depth)), 1 / 2);
  const first = pressed === 'away' ? before : add(before, depth);
  return good(Array.from({ length: count }, (_, i) => ({ at: nm(first + spacing * i), depth })));
}
