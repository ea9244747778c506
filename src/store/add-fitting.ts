import type { Act, DeedId } from './deed.ts';
import { addChanges, type Draft, notFitting, ownList, ownMap, type StepDraft } from './draft.ts';
import { tookMs } from './own-times.ts';
import type { Progress, Seen, StepProgress } from './progress-types.ts';

/** What was seen, with some of it in another state; the same list where none of it is. */
export const nowSeen = (
  seen: Progress['seen'],
  which: (one: Seen) => boolean,
  state: Seen['state'],
): Progress['seen'] => (seen.some(which) ? seen.map((one) => (which(one) ? { ...one, state } : one)) : seen);

/** Adds something seen at a try-on to a draft. */
export const addSeen = (
  draft: Draft,
  deed: DeedId,
  at: number,
  act: Extract<Act, { kind: 'seen' }>,
): void => {
  const { kind: _seen, ...what } = act;
  const seen = ownList(draft.seen, draft.from.seen);
  seen.push({ ...what, deed, at, state: 'open' });
  draft.seen = seen;
};

/** A step that has to be done again: nothing of it is done, but how long it took is remembered. */
const onceMore = (step: StepProgress): StepDraft => {
  const took = tookMs(step);
  return {
    items: new Set(),
    counts: new Map(),
    closed: new Set(),
    timers: new Map(),
    ...(took === undefined ? {} : { tookMs: took }),
  };
};

/**
 * Adds a cure that was accepted to a draft: the description changes, and what has to be done again is done no more. All
 * of it or nothing. A second rework of the same id, which another device made meanwhile, does not fit either: their
 * cards could not be told apart.
 */
export const addRework = (draft: Draft, deed: DeedId, act: Extract<Act, { kind: 'reworked' }>): void => {
  if (draft.reworks.some(({ id }) => id === act.rework.id)) {
    notFitting(draft, deed, act.say);
    return;
  }
  if (!addChanges(draft, deed, act)) return;
  draft.reworks = [...draft.reworks, act.rework];
  const again = new Set(act.rework.again.map(({ step }) => step));
  draft.done = draft.done.filter((step) => !again.has(step));
  const steps = ownMap(draft.steps, draft.from.steps);
  for (const step of again) {
    const was = steps.get(step);
    if (!was) continue;
    const fresh = onceMore(was);
    steps.set(step, fresh);
    draft.own.set(step, fresh);
  }
  draft.steps = steps;
  const cured = new Set(act.cures);
  draft.seen = nowSeen(draft.seen, (one) => cured.has(one.deed), 'cured');
  // The card in hand may be one of those; what comes first now is to undo.
  draft.open = undefined;
};
