import type { Constraint, ConstraintKey, MarkKiller, Step, StepId } from './step.ts';

/** A step that undoes something: a seam unpicked, a piece cut again. */
export interface UndoStep {
  readonly garment: string;
  /** What it takes back: its id goes into the step's own. */
  readonly of: Step['of'];
  /**
   * `unpick`: a whole seam or work comes out; `open`: only a part of it; `cut-anew`: a new piece is cut; `lines-anew`: its
   * seam lines and notches are marked.
   */
  readonly action: 'unpick' | 'open' | 'cut-anew' | 'lines-anew';
  readonly say: string;
  readonly pieces: readonly string[];
  readonly edges: readonly string[];
  readonly times: 1 | 2;
  readonly minutes: number;
}

/** A step that was done and has to be done again. */
export interface AgainStep {
  readonly step: StepId;
  /** How much of it, after the step's own words: `only along the centre front`. Not there where all of it is done again. */
  readonly only?: string;
  /** The one side on which it is done again, of a step that is done on two. */
  readonly side?: 'left' | 'right';
  readonly minutes: number;
}

/**
 * Work taken back because something did not fit: what is undone, and what is done again. Plain data, as the ledger keeps
 * it. The id of an undoing step is `garment/of.id/action-rework`, so two reworks never share one.
 */
export interface Rework {
  /** Letters, digits and hyphens; unique within the outfit. */
  readonly id: string;
  /** What is put right: `Centre front 5/8 in wider`. */
  readonly say: string;
  /** In the order in which they are done. */
  readonly undo: readonly UndoStep[];
  readonly again: readonly AgainStep[];
}

/** What the ledger says that bears on the order. */
export interface Standing {
  /** Steps done, in the order in which they were done. */
  readonly done: readonly StepId[];
  /** The maker's own constraints. */
  readonly added: readonly { readonly before: StepId; readonly after: StepId; readonly because: string }[];
  /** Constraints that the maker has set aside. */
  readonly waived: ReadonlySet<ConstraintKey>;
  /** Work taken back, the earliest first; what they ask to be done again is not among the steps done until it is. */
  readonly reworks?: readonly Rework[];
}

/** A mark that would be gone before it is needed, and what can be done about it. */
export interface MarkConcern {
  /** The step that makes the mark. */
  readonly mark: StepId;
  /** The step that takes it out. */
  readonly killer: StepId;
  readonly by: MarkKiller;
  /** The step that still needs it. */
  readonly needed: StepId;
  /** One sentence: what would happen. */
  readonly say: string;
  /** What was put into the order by itself: the step that marks again after the killer. */
  readonly again: StepId;
  /** Other markers of the outfit that would live through it, as ids and names. */
  readonly otherMarkers: readonly { readonly id: string; readonly name: string }[];
  /** Where in the description the marker is named (JSON Pointer), to change it. */
  readonly at: string;
}

/** The whole order of making, derived. Everything the screens show of the order comes from here. */
export interface Running {
  readonly steps: ReadonlyMap<StepId, Step>;
  /** Every step once: those done in the order in which they were done, then the rest as arranged. */
  readonly sequence: readonly StepId[];
  /** How many at the head of `sequence` are done. */
  readonly doneCount: number;
  /** Steps not done whose every earlier step is done, waits apart. */
  readonly ready: ReadonlySet<StepId>;
  /** Constraints in force. */
  readonly constraints: readonly Constraint[];
  /** Constraints found but waived by the maker. */
  readonly waived: readonly Constraint[];
  readonly concerns: readonly MarkConcern[];
  /** How often the set-up changes along `sequence`. */
  readonly changeovers: number;
}

/** A ring of constraints: nothing in it can come first. */
export interface Loop {
  /** The constraints of the ring in order; each one's `after` is the next one's `before`. */
  readonly ring: readonly Constraint[];
  /** The whole ring in words, one line a link, and what would open it. */
  readonly say: string;
}
