import type { Act, DeedId } from './deed.ts';
import type { Progress, StepProgress } from './progress-types.ts';
import { redescribe } from './redescribe.ts';

/** A step's progress while deeds are being added up. */
export interface StepDraft {
  items: Set<string>;
  counts: Map<string, number>;
  closed: Set<string>;
  timers: Map<string, { readonly startedAt: number; readonly seconds: number }>;
  openedAt?: number;
  doneAt?: number;
  countedFrom?: number;
  countedTo?: number;
  tookMs?: number;
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
  seen: Progress['seen'];
  reworks: Progress['reworks'];
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
  seen: from.seen,
  reworks: from.reworks,
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
  seen: draft.seen,
  reworks: draft.reworks,
  undo: draft.undo,
});

/** A map to write to: a copy, unless the draft has one already. */
export const ownMap = <K, V>(now: ReadonlyMap<K, V>, before: ReadonlyMap<K, V>): Map<K, V> =>
  now === before ? new Map(now) : (now as Map<K, V>);

/** A list to write to: a copy, unless the draft has one already. */
export const ownList = <T>(now: readonly T[], before: readonly T[]): T[] =>
  now === before ? [...now] : (now as T[]);

/** A step's progress to write to. */
export const stepOf = (draft: Draft, step: string): StepDraft => {
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

/**
 * Makes the changes of one deed to the description, all or none; where they do not fit, the deed is put with those that
 * do not. Whether they were made.
 */
export const addChanges = (
  draft: Draft,
  deed: DeedId,
  { say, changes }: Pick<Extract<Act, { kind: 'redescribed' }>, 'say' | 'changes'>,
): boolean => {
  const changed = redescribe(draft.description, changes);
  if (changed.ok) draft.description = changed.value;
  else notFitting(draft, deed, say);
  return changed.ok;
};

/** Puts a deed with those that do not fit what another device did. */
export const notFitting = (draft: Draft, deed: DeedId, say: string): void => {
  const unfit = ownList(draft.unfit, draft.from.unfit);
  unfit.push({ deed, say });
  draft.unfit = unfit;
};
