import type { Source } from '../cloth/source.ts';

/** Stable name of a step: `garment/subject/action`, the same after any edit that leaves the subject alone. */
export type StepId = string;

/** Where the maker sits or stands for a step. */
export type Station = 'cut' | 'mark' | 'pin' | 'machine' | 'overlocker' | 'iron' | 'hand' | 'try-on';

/** What takes a mark out of the cloth. */
export type MarkKiller = 'heat' | 'time' | 'water';

/** What has to be changed between two steps when it differs: sitting down elsewhere, another thread, another needle. */
export interface SetUp {
  readonly station: Station;
  /** Colour of thread in the needle, or empty where none is threaded. */
  readonly thread: string;
  /** Needle or foot, or empty. */
  readonly tool: string;
}

/** One card: one thing done at one station. */
export interface Step {
  readonly id: StepId;
  /** Id of the garment it belongs to. */
  readonly garment: string;
  /** What the step is part of. */
  readonly of: { readonly kind: 'piece' | 'work' | 'join' | 'gate'; readonly id: string };
  /** Which action of that subject: `mark`, `stitch`, `press`, … */
  readonly action: string;
  readonly setUp: SetUp;
  /** One short instruction in the imperative, without a full stop. */
  readonly say: string;
  /** Ids of the pieces under the maker's hands. */
  readonly pieces: readonly string[];
  /** Edges to pick out on the drawing, as `piece.edge`. */
  readonly edges: readonly string[];
  /** 2 where the same thing is done to a left and a right. */
  readonly times: 1 | 2;
  /** Estimate in minutes for all of `times`, until the maker's own pace is known. */
  readonly minutes: number;
  /** Slit, trimmed or otherwise past taking back. */
  readonly final: boolean;
  /** What this step does to marks that are in the cloth. */
  readonly kills: readonly MarkKiller[];
  /** Where it is done again: for which rework, how much of it (empty: all), and its words and minutes as a whole. */
  readonly again?: {
    readonly rework: string;
    readonly only: string;
    /** The one side on which it is done again. */
    readonly side?: 'left' | 'right';
    readonly say: string;
    readonly minutes: number;
  };
}

/** Id of a step that undoes something: two reworks never share one. */
export const undoId = (rework: string, undo: Pick<Step, 'garment' | 'of' | 'action'>): StepId =>
  `${undo.garment}/${undo.of.id}/${undo.action}-${rework}`;

/** Why one step goes before another. */
export interface Constraint {
  readonly before: StepId;
  readonly after: StepId;
  /** Id of the rule that found it. */
  readonly rule: string;
  /** A sentence that names the two things it is about. */
  readonly because: string;
  readonly source: Source;
  /** Seconds that must pass between the two (drying, cooling, hanging). */
  readonly wait?: number;
  /** A preference that gives way where it would close a ring of reasons. */
  readonly gives?: true;
  /** False where the two are parts of one action (a seam is stitched before it is pressed) and cannot be waived. */
  readonly waivable: boolean;
}

/** Name of a constraint, for waiving it. */
export type ConstraintKey = string;

/** The name of a constraint: the same for the same rule about the same two steps. */
export const constraintKey = (c: Pick<Constraint, 'rule' | 'before' | 'after'>): ConstraintKey =>
  `${c.rule}|${c.before}|${c.after}`;
