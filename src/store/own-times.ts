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

const believed = (took: number): boolean => took >= LEAST_MS && took <= MOST_MS;

/**
 * How long a step took, ms, where that can be believed: the time of counting where there is one, however long, since
 * pauses are not in it; else from when its card was opened until it was done, but not where the card was only passed by,
 * nor where it lay open for hours. Of a step that is to be done again, how long it took before.
 */
export const tookMs = (step: StepProgress): number | undefined => {
  const { openedAt, doneAt } = step;
  if (doneAt === undefined) return step.tookMs;
  const counted = counting(step);
  if (counted !== undefined && counted >= LEAST_MS) return counted;
  return openedAt !== undefined && believed(doneAt - openedAt) ? doneAt - openedAt : step.tookMs;
};

/** Minutes that steps really took, by step, where that can be believed. */
export const ownMinutes = (progress: Pick<Progress, 'steps'>): ReadonlyMap<string, number> => {
  const minutes = new Map<string, number>();
  for (const [id, step] of progress.steps) {
    const took = tookMs(step);
    if (took !== undefined) minutes.set(id, took / MS_A_MINUTE);
  }
  return minutes;
};
