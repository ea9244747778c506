import type { Source } from '../cloth/source.ts';
import type { Length } from '../length/length.ts';
import type { Outline, Point } from '../shape/outline.ts';
import type { Station, StepId } from './step.ts';

/** One figure to set on the machine or the iron, read from arm's length: `length` `2.5 mm`. */
export interface Setting {
  readonly name: string;
  readonly figure: string;
}

/** One place to mark, measured from the datum of its set and never from its neighbour. */
export interface Mark {
  /** Stable within the step, for the ledger. */
  readonly item: string;
  readonly at: Length;
  /** What lies here: `fold 3`, `buttonhole 2, top end`. */
  readonly name: string;
}

/** Marks that are measured from one datum along one line. */
export interface MarkSet {
  /** `left front, tuck folds`. */
  readonly name: string;
  /** What is measured from: `the neck seam`. */
  readonly from: string;
  /** How long the whole tape is. */
  readonly span: Length;
  readonly marks: readonly Mark[];
}

/** One run of beads (or of anything counted) before the next begins. */
export interface CountLine {
  readonly item: string;
  readonly name: string;
  readonly target: number;
}

/** What the step needs in the middle of the card. */
export type Readout =
  | { readonly kind: 'none' }
  | { readonly kind: 'ticks'; readonly items: readonly { readonly item: string; readonly name: string }[] }
  | { readonly kind: 'marks'; readonly sets: readonly MarkSet[] }
  | {
      readonly kind: 'count';
      /** What is counted, in the plural: `beads`. */
      readonly of: string;
      /** How many one touch counts: 2 where beads are sewn two at a time. */
      readonly perTouch: 1 | 2;
      readonly lines: readonly CountLine[];
    }
  | {
      readonly kind: 'timers';
      readonly timers: readonly { readonly item: string; readonly name: string; readonly seconds: number }[];
    };

/** A piece on the drawing of a card. */
export interface DrawnPiece {
  readonly name: string;
  readonly outline: Outline;
  /** True where the outline is half and is mirrored about x = 0. */
  readonly mirrored: boolean;
  /** Names of the edges that the step is about. */
  readonly picked: readonly string[];
  /** Tucks, lattice, buttonholes: lines inside the piece, each between two points. */
  readonly lines: readonly {
    readonly from: Point;
    readonly to: Point;
    readonly kind: 'fold' | 'stitch' | 'bead' | 'hole';
  }[];
}

/** Why a step stands where it does, in sentences. */
export interface Reason {
  /** The other step. */
  readonly step: StepId;
  /** What that step says. */
  readonly say: string;
  readonly because: string;
  readonly source: Source;
  /** Name of the constraint, to waive it; empty where it cannot be waived. */
  readonly waive: string;
}

/** Everything that one screen at the bench shows of a step. */
export interface Card {
  readonly step: StepId;
  /** Name of the garment. */
  readonly garment: string;
  /** Card k of n within the garment, in the running order. */
  readonly k: number;
  readonly n: number;
  readonly station: Station;
  readonly say: string;
  readonly settings: readonly Setting[];
  readonly drawing: readonly DrawnPiece[];
  readonly readout: Readout;
  /** What can hurt here, the usual care, and whom to believe above us. */
  readonly cautions: readonly string[];
  /** Advice with its source. */
  readonly advice: readonly { readonly say: string; readonly source: Source }[];
  /** Constraints about this step that the maker has waived. */
  readonly waived: readonly string[];
}
