import type { Progress, StepProgress } from './progress-types.ts';

/**
 * Longer than this a card was not worked at but lay open, ms: two hours. A maker gets up, eats, sleeps; what she did of
 * it cannot be told from what the clock did.
 */
export const MOST_MS = 2 * 60 * 60 * 1000;

/** Shorter than this a card was only passed by, ms: ten seconds. What was done before it was opened is marked done so. */
export const LEAST_MS = 10 * 1000;

/** Counted time speaks for a whole count where at least this share of it was counted without a pause. */
export const COUNTED_SHARE = 0.5;

const MS_A_MINUTE = 60_000;

/** Time of counting, ms: what was counted without pauses, taken for all that was counted; none where that is too little. */
const counting = ({ counts, countedMs = 0, countedThen = 0 }: StepProgress): number | undefined => {
  let all = 0;
  for (const count of counts.values()) all += count;
  if (countedMs <= 0 || countedThen <= 0 || countedThen < all * COUNTED_SHARE) return undefined;
  return (countedMs * Math.max(all, countedThen)) / countedThen;
};

/**
 * How long a step took, ms, whether that can be believed or not: the time of counting where there is one, else from when
 * its card was opened until it was done. Of a step that is to be done again, how long it took the last time.
 */
export const tookMs = (step: StepProgress): number | undefined => {
  const { openedAt, doneAt } = step;
  if (doneAt === undefined) return step.tookMs;
  return counting(step) ?? (openedAt === undefined ? step.tookMs : doneAt - openedAt);
};

/**
 * Minutes that steps really took, by step, where that can be believed: not where the card was only passed by, nor where it
 * lay open for hours. Time of counting is believed however long it is, since pauses are not in it.
 */
export const ownMinutes = (progress: Pick<Progress, 'steps'>): ReadonlyMap<string, number> => {
  const minutes = new Map<string, number>();
  for (const [id, step] of progress.steps) {
    const took = tookMs(step);
    if (took === undefined || took < LEAST_MS) continue;
    const counted = step.doneAt !== undefined && counting(step) !== undefined;
    if (counted || took <= MOST_MS) minutes.set(id, took / MS_A_MINUTE);
  }
  return minutes;
};
