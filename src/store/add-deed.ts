import { addRework, addSeen, nowSeen } from './add-fitting.ts';
import type { Deed } from './deed.ts';
import { describeChange } from './describe-change.ts';
import { addChanges, type Draft, ownList, type StepDraft, stepOf } from './draft.ts';
import type { TapRun } from './pack.ts';
import type { Progress } from './progress-types.ts';

/** Kinds that one touch of undo can take back. */
const UNDOABLE: ReadonlySet<string> = new Set<Deed['act']['kind']>([
  'described',
  'redescribed',
  'step-done',
  'item-done',
  'tap',
  'line-closed',
  'timer-started',
  'timer-stopped',
  'reason-added',
  'reason-waived',
  'note',
  'reckoned',
  'seen',
  'let-be',
  'reworked',
]);

/** Whether a deed can be taken back. Opening a card, beginning an outfit and taking back are not. */
export const canUndo = (deed: Deed): boolean => UNDOABLE.has(deed.act.kind);

/**
 * Adds one deed to a draft. `takenBack` is the deed that an `undone` names, where it is known. An act of a kind that
 * this version does not know changes nothing.
 */
export const addDeed = (draft: Draft, deed: Deed, takenBack: Deed | undefined): void => {
  const { act, at } = deed;
  switch (act.kind) {
    case 'outfit-begun':
      draft.description = act.description;
      break;
    case 'described': {
      const changed = describeChange(draft.description, act);
      if (changed.ok) draft.description = changed.value;
      break;
    }
    case 'redescribed':
      addChanges(draft, deed.id, act);
      break;
    case 'step-opened': {
      stepOf(draft, act.step).openedAt ??= at;
      draft.open = act.step;
      break;
    }
    case 'step-done': {
      const step = stepOf(draft, act.step);
      if (step.doneAt !== undefined) break;
      step.doneAt = at;
      const done = ownList(draft.done, draft.from.done);
      done.push(act.step);
      draft.done = done;
      break;
    }
    case 'item-done':
      stepOf(draft, act.step).items.add(act.item);
      break;
    case 'tap': {
      if (!Number.isFinite(act.add)) break;
      const step = stepOf(draft, act.step);
      step.counts.set(act.item, (step.counts.get(act.item) ?? 0) + act.add);
      touched(step, at, act.add);
      break;
    }
    case 'line-closed': {
      const step = stepOf(draft, act.step);
      step.counts.set(act.item, act.count);
      step.closed.add(act.item);
      break;
    }
    case 'timer-started':
      stepOf(draft, act.step).timers.set(act.item, { startedAt: at, seconds: act.seconds });
      break;
    case 'timer-stopped':
      stepOf(draft, act.step).timers.delete(act.item);
      break;
    case 'reason-added': {
      const added = ownList(draft.added, draft.from.added);
      added.push({ before: act.before, after: act.after, because: act.because });
      draft.added = added;
      break;
    }
    case 'reason-waived': {
      const waived =
        draft.waived === draft.from.waived ? new Set(draft.waived) : (draft.waived as Set<string>);
      draft.waived = waived.add(act.key);
      break;
    }
    case 'note': {
      const notes = ownList(draft.notes, draft.from.notes);
      notes.push({ step: act.step, text: act.text, at });
      draft.notes = notes;
      break;
    }
    case 'reckoned': {
      const { kind: _put, ...put } = act;
      const reckoned = ownList(draft.reckoned, draft.from.reckoned);
      reckoned.push({ ...put, deed: deed.id });
      draft.reckoned = reckoned;
      break;
    }
    case 'seen':
      addSeen(draft, deed.id, at, act);
      break;
    case 'let-be':
      draft.seen = nowSeen(draft.seen, (one) => one.deed === act.seen && one.state === 'open', 'let be');
      break;
    case 'reworked':
      addRework(draft, deed.id, act);
      break;
    case 'undone':
      // The step comes back to the bench: its card is the one to go on with.
      if (takenBack?.act.kind === 'step-done') draft.open = takenBack.act.step;
      break;
  }
  if (canUndo(deed)) draft.undo = undoOf(deed);
};

/** Between touches further apart than this the maker was doing something else, ms. */
const PAUSE_MS = 60_000;

/** Notes when a touch counted, for the pace: pauses and nights are left out of it. */
const touched = (step: StepDraft, at: number, add: number): void => {
  const passed = at - (step.countedTo ?? Number.NEGATIVE_INFINITY);
  if (passed >= 0 && passed <= PAUSE_MS) {
    step.countedMs = (step.countedMs ?? 0) + passed;
    step.countedThen = (step.countedThen ?? 0) + add;
  }
  step.countedFrom ??= at;
  step.countedTo = at;
};

/** Adds a whole run of taps to a draft, none of them taken back; the same as adding one after the other. */
export const addRun = (draft: Draft, run: TapRun): void => {
  const { step: name, item, add, clock } = run;
  const [first] = clock;
  if (first === undefined) return;
  if (Number.isFinite(add)) {
    const step = stepOf(draft, name);
    let count = step.counts.get(item) ?? 0;
    // One by one, for a sum of fractions depends on how it is made.
    let at = 0;
    for (const passed of clock) {
      at += passed;
      count += add;
      touched(step, at, add);
    }
    step.counts.set(item, count);
  }
  draft.undo = { deed: `${run.device}-${run.seq + clock.length - 1}`, kind: 'tap', step: name, item };
};

/** What one touch of undo takes back, told for the screen; empty where the act has no step or item. */
const undoOf = (deed: Deed): Progress['undo'] => {
  const { act } = deed;
  return {
    deed: deed.id,
    kind: act.kind,
    step: 'step' in act ? act.step : '',
    item: 'item' in act ? act.item : '',
    ...('say' in act ? { say: act.say } : {}),
  };
};
