import type { Running } from '../order/running-types.ts';
import type { StepId } from '../order/step.ts';
import type { Progress } from '../store/progress-types.ts';
import { undoSteps } from './rework-steps.ts';

/** The part of the running order that says what may come next. */
export type OrderSoFar = Pick<Running, 'sequence' | 'constraints'>;

/**
 * Until when a step has to rest (drying, cooling, hanging), in ms since 1970; undefined where it need not.
 * Waits count from when the earlier step was done.
 */
export function restUntil(
  running: Pick<Running, 'constraints'>,
  progress: Pick<Progress, 'steps'>,
  step: StepId,
  now: number,
): number | undefined {
  let until = now;
  for (const c of running.constraints) {
    if (c.after !== step || c.wait === undefined) continue;
    const doneAt = progress.steps.get(c.before)?.doneAt;
    if (doneAt !== undefined) until = Math.max(until, doneAt + c.wait * 1000);
  }
  return until > now ? until : undefined;
}

/**
 * The step to open once `justDone` is done as well: the first of the sequence whose every earlier step is done and
 * that need not rest, and of these one that undoes something that does not fit before all others; else the one that
 * has rested soonest. Undefined where nothing is left.
 * One pass over the constraints, so that the next card shows before the order is derived anew.
 */
export function nextStep(
  running: OrderSoFar,
  progress: Pick<Progress, 'done' | 'steps'> & Partial<Pick<Progress, 'reworks'>>,
  now: number,
  justDone?: StepId,
): StepId | undefined {
  const done = new Set(progress.done);
  if (justDone !== undefined) done.add(justDone);
  const held = new Set<StepId>();
  const restsUntil = new Map<StepId, number>();
  for (const c of running.constraints) {
    if (!done.has(c.before)) held.add(c.after);
    else if (c.wait !== undefined) {
      const until = (progress.steps.get(c.before)?.doneAt ?? now) + c.wait * 1000;
      if (until > (restsUntil.get(c.after) ?? now)) restsUntil.set(c.after, until);
    }
  }
  const undoing = undoSteps(progress.reworks ?? []);
  let first: StepId | undefined;
  let soonest: StepId | undefined;
  for (const step of running.sequence) {
    if (done.has(step) || held.has(step)) continue;
    const until = restsUntil.get(step);
    if (until === undefined) {
      if (undoing.size === 0 || undoing.has(step)) return step;
      first ??= step;
    } else if (soonest === undefined || until < (restsUntil.get(soonest) ?? until)) soonest = step;
  }
  return first ?? soonest;
}
