import type { Outfit } from '../outfit/outfit.ts';
import type { Running } from './running-types.ts';
import type { Step, StepId } from './step.ts';

/** A description and the order of making that follows from it. */
export interface Ordered {
  readonly outfit: Outfit;
  readonly running: Running;
}

/** A step that is still there but no longer the same. */
export interface StepChanged {
  readonly step: Step;
  readonly was: Step;
  /** What is different, one line: `Stitch length: 2 mm → 2.5 mm`. */
  readonly how: string;
}

/** What a change of the description does to the order of making. */
export interface Effect {
  readonly added: readonly Step[];
  readonly gone: readonly Step[];
  readonly changed: readonly StepChanged[];
  /** Steps that are done and would no longer exist. */
  readonly doneGone: readonly Step[];
  /** Steps that are done and would now be something else. */
  readonly doneChanged: readonly StepChanged[];
  /** Minutes still to do. */
  readonly minutes: { readonly before: number; readonly after: number };
  readonly touchesDone: boolean;
}

/** Compares the order before and after a change; `before` is undefined where there was none yet. */
export function effectOf(_before: Ordered | undefined, _after: Ordered, _done: readonly StepId[]): Effect {
  throw new Error('not yet');
}
