import type { Deed } from './deed.ts';
import { describeChange } from './describe-change.ts';
import type { TapRun } from './pack.ts';
import type { Progress, StepProgress } from './progress-types.ts';
import { redescribe } from './redescribe.ts';

/** A step's progress while deeds are being added up. */
interface StepDraft {
  items: Set<string>;
  counts: Map<string, number>;
  closed: Set<string>;
  timers: Map<string, { readonly startedAt: number; readonly seconds: number }>;
  openedAt?: number;
  doneAt?: number;
  countedFrom?: number;
  countedTo?: number;
  countedMs?: number;
  countedThen?: number;
}

/**
 * A progress while deeds are being added up: it may be written to, and copies a part of the progress it was begun from
 * only when that part is touched.
 */
export interface Draft {
  readonly from: Progress;
  description: unknown;
  done: readonly string[];
  open: string | undefined;
  steps: ReadonlyMap<string, StepProgress>;
  added: Progress['added'];
  waived: ReadonlySet<string>;
  notes: Progress['notes'];
  reckoned: Progress['reckoned'];
  unfit: Progress['unfit'];
  undo: Progress['undo'];
  /** Steps copied already, so that they may be written to. */
  readonly own: Map<string, StepDraft>;
}

/** Begins a draft on a progress, which itself is never written to. */
export const draftOf = (from: Progress): Draft => ({
  from,
  description: from.description,
  done: from.done,
  open: from.open,
  steps: from.steps,
  added: from.added,
  waived: from.waived,
  notes: from.notes,
  reckoned: from.reckoned,
  unfit: from.unfit,
  undo: from.undo,
  own: new Map(),
});

/** The progress that a draft has come to. The draft must not be used after this. */
export const closeDraft = (draft: Draft): Progress => ({
  outfit: draft.from.outfit,
  description: draft.description,
  done: draft.done,
  open: draft.open,
  steps: draft.steps,
  added: draft.added,
  waived: draft.waived,
  notes: draft.notes,
  reckoned: draft.reckoned,
  unfit: draft.unfit,
  undo: draft.undo,
});

const ownMap = <K, V>(now: ReadonlyMap<K, V>, before: ReadonlyMap<K, V>): Map<K, V> =>
  now === before ? new Map(now) : (now as Map<K, V>);

const ownList = <T>(now: readonly T[], before: readonly T[]): T[] =>
  now === before ? [...now] : (now as T[]);

const stepOf = (draft: Draft, step: string): StepDraft => {
  const own = draft.own.get(step);
  if (own !== undefined) return own;
  const was = draft.from.steps.get(step);
  const made: StepDraft = {
    ...was,
    items: new Set(was?.items),
    counts: new Map(was?.counts),
    closed: new Set(was?.closed),
    timers: new Map(was?.timers),
  };
  const steps = ownMap(draft.steps, draft.from.steps);
  steps.set(step, made);
  draft.steps = steps;
  draft.own.set(step, made);
  return made;
};

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
    case 'redescribed': {
      const changed = redescribe(draft.description, act.changes);
      if (changed.ok) draft.description = changed.value;
      else {
        const unfit = ownList(draft.unfit, draft.from.unfit);
        unfit.push({ deed: deed.id, say: act.say });
        draft.unfit = unfit;
      }
      break;
    }
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
    ...(act.kind === 'redescribed' ? { say: act.say } : {}),
  };
};
