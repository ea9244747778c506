import { add, type Length, mm, nm, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { published } from './source.ts';
import { type StitchType, THREAD_FOR } from './stitches.ts';

/**
 * Thread that is left over, broken or tried out, as a part of what is sewn.
 * @unit part
 */
export const WASTE: Sourced<number> = {
  value: 0.15,
  source: published(
    'Measuring actual thread consumption (trade technical article)',
    'undated',
    '10 to 15 in the hundred; 15 to 20 elsewhere; seen as an excerpt',
  ),
};
/** Thread left at each end of a seam where it is cut by hand, the longer of the published 2 to 3 cm. */
export const THREAD_TAIL: Sourced<Length> = { value: mm(30), source: THREAD_FOR.source };

/** Seams that are sewn alike. */
export interface SewnSeam {
  readonly name: string;
  readonly type: StitchType;
  readonly length: Length;
  /** How many such seams; 1 if not given. */
  readonly count?: number;
}

/** A list of seams and how thread is reckoned. */
export interface ThreadUsedInput {
  readonly seams: readonly SewnSeam[];
  /** Part of the thread that is wasted, 0.15 if not given. */
  readonly waste?: number;
  /** Thread left at each end of each seam, 3 cm if not given. */
  readonly tail?: Length;
  /** Thread on one spool, to count spools. */
  readonly spool?: Length;
}

/** What {@link threadUsed} gives back. */
export interface ThreadUsedMade {
  readonly lines: readonly { readonly name: string; readonly type: StitchType; readonly thread: Length }[];
  /** Thread in the seams and at their ends, and the same with waste. */
  readonly sewn: Length;
  readonly needed: Length;
  readonly spools: number | undefined;
  readonly assumed: readonly string[];
}

/**
 * Thread for a list of seams: length times the stitch type's ratio, two tails for each seam, and waste on the whole.
 * The ratios hold for cloth and stitches of usual thickness and length; other published figures differ by a tenth.
 *
 * Refused: no seam; a seam without length; a count that is not whole and above zero; waste below 0 or over 1; a tail
 * below zero; a spool of zero or less.
 */
export function threadUsed(input: ThreadUsedInput): Result<ThreadUsedMade, Refusal> {
  const { seams, waste = WASTE.value, tail = THREAD_TAIL.value, spool } = input;
  if (seams.length === 0) return bad(refusal('seams', 'There is no seam.', 'Give one seam or more.'));
  for (const { name, length, count = 1 } of seams) {
    if (length <= 0)
      return bad(refusal('seams', `The seam "${name}" has no length.`, 'Give a length above zero.'));
    if (!Number.isInteger(count) || count < 1)
      return bad(refusal('seams', `The seam "${name}" has no number.`, 'Give a whole number above zero.'));
  }
  if (!(waste >= 0 && waste <= 1))
    return bad(refusal('waste', 'This is not a part of the thread.', 'Give 0 to 1; 0.15 is usual.'));
  if (tail < 0) return bad(refusal('tail', 'The thread end is below zero.', 'Give zero or more.'));
  if (spool !== undefined && spool <= 0)
    return bad(refusal('spool', 'The spool has no thread.', 'Give a length above zero.'));
  const lines = seams.map(({ name, type, length, count = 1 }) => ({
    name,
    type,
    thread: nm(count * (length * THREAD_FOR.value[type] + 2 * tail)),
  }));
  const sewn = add(...lines.map(({ thread }) => thread));
  const needed = times(sewn, 1 + waste);
  return good({
    lines,
    sewn,
    needed,
    spools: spool === undefined ? undefined : Math.ceil(needed / spool),
    assumed: [
      ...(input.waste === undefined ? ['Waste of 15 in the hundred.'] : []),
      ...(input.tail === undefined ? ['3 cm of thread at each end of a seam.'] : []),
      'All threads of a stitch are counted together, in one colour.',
    ],
  });
}
