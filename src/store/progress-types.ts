import type { Act, DeedId, ReworkWritten } from './deed.ts';
import type { ReckonedAct } from './reckoned.ts';
import type { Trail } from './trail.ts';

/** Something seen at a try-on, and what became of it. */
export interface Seen extends Omit<Extract<Act, { kind: 'seen' }>, 'kind'> {
  readonly deed: DeedId;
  readonly at: number;
  /** `open` until a cure is accepted or it is let be. */
  readonly state: 'open' | 'cured' | 'let be';
}

/** How far one step has got. */
export interface StepProgress {
  /** Items done: ticks, marks, checks. */
  readonly items: ReadonlySet<string>;
  /** Beads counted, by line. */
  readonly counts: ReadonlyMap<string, number>;
  /** Lines that are closed. */
  readonly closed: ReadonlySet<string>;
  /** Running or finished timers by item; `startedAt` in ms since 1970. Computed from these, never ticked. */
  readonly timers: ReadonlyMap<string, { readonly startedAt: number; readonly seconds: number }>;
  /** When the card was first opened, and when it was done, ms since 1970. */
  readonly openedAt?: number;
  readonly doneAt?: number;
  /** Times of the first and last touch of a count and the number counted between them, for the pace. */
  readonly countedFrom?: number;
  readonly countedTo?: number;
  /** How long it took the last time, ms, where it was done before, has to be done again, and that can be believed. */
  readonly tookMs?: number;
  /** Time spent counting, ms, without pauses of more than a minute, and what was counted in it. */
  readonly countedMs?: number;
  readonly countedThen?: number;
}

/** What the ledger of one outfit adds up to. */
export interface Progress {
  readonly outfit: string;
  /** The description as it stands after all changes, as its file spells it. */
  readonly description: unknown;
  /** Steps done, in the order in which they were done. */
  readonly done: readonly string[];
  /** The card last opened. */
  readonly open: string | undefined;
  readonly steps: ReadonlyMap<string, StepProgress>;
  readonly added: readonly { readonly before: string; readonly after: string; readonly because: string }[];
  readonly waived: ReadonlySet<string>;
  readonly notes: readonly { readonly step: string; readonly text: string; readonly at: number }[];
  /** Figures put on cards, in the order in which they were put; `deed` is the one to take back to take them off. */
  readonly reckoned: readonly (Omit<ReckonedAct, 'kind'> & { readonly deed: DeedId })[];
  /**
   * Changes of the description that could not be made, because another device had changed the same place before: what
   * the maker did, in her words. They stay in the ledger and count again once what is in their way is taken back.
   */
  readonly unfit: readonly { readonly deed: DeedId; readonly say: string }[];
  /** What was seen at try-ons, in the order in which it was seen. */
  readonly seen: readonly Seen[];
  /** Work taken back and to be done again, the earliest first. */
  readonly reworks: readonly ReworkWritten[];
  /** The deed that one touch of undo takes back, and its act; none where there is nothing to take back. */
  readonly undo:
    | {
        readonly deed: DeedId;
        readonly kind: string;
        readonly step: string;
        readonly item: string;
        /** What the maker did to the description, in words: `put on the collar`. */
        readonly say?: string;
      }
    | undefined;
  /**
   * The deeds behind all this, for taking one back and for one that comes late. Nothing for a screen to read. A progress
   * without it is taken to come from no deeds at all.
   */
  readonly trail?: Trail;
}
