import type { Source } from '../cloth/source.ts';
import type { OwnStep } from '../outfit/outfit.ts';

/** From which side the body is drawn. */
export type View = 'front' | 'back' | 'side';

/** A place on the drawing of the body that can be touched. */
export type Place =
  | 'neck'
  | 'shoulder'
  | 'upper side'
  | 'chest'
  | 'front opening'
  | 'upper back'
  | 'waist'
  | 'hips'
  | 'hem'
  | 'upper arm'
  | 'elbow'
  | 'wrist'
  | 'seat'
  | 'crotch'
  | 'thigh'
  | 'knee'
  | 'calf'
  | 'ankle';

/**
 * What a piece is for, however it is called. Panels of a body are counted from the centre: a front in one panel is
 * `centre-front`.
 */
export type Role =
  | 'centre-front'
  | 'side-front'
  | 'side-back'
  | 'centre-back'
  | 'sleeve'
  | 'sleeve-head'
  | 'arm-band'
  | 'cuff'
  | 'collar'
  | 'frill'
  | 'leg'
  | 'lower-leg'
  | 'waistband'
  | 'skirt'
  | 'other';

/** A height at which a piece has a width, from the top down; which ones a piece has depends on its role. */
export type Level =
  | 'neck'
  | 'shoulder'
  | 'chest'
  | 'waist'
  | 'hip'
  | 'hem'
  | 'top'
  | 'upper-arm'
  | 'elbow'
  | 'wrist'
  | 'crotch'
  | 'thigh'
  | 'knee'
  | 'calf'
  | 'ankle';

/** What a cause asks of the pieces, in a form that can be reckoned with. Amounts are for one side of the body. */
export type Want =
  /**
   * The pieces of these roles that the garment has are together wider (or narrower) at a level, by `by` times the amount
   * that was measured. `some`: by any amount that can be marked, in the direction of `by`; the amount itself is decided by
   * what else is seen.
   */
  | {
      readonly kind: 'width';
      readonly of: readonly Role[];
      readonly level: Level;
      readonly by: number;
      readonly bound: 'exact' | 'at least' | 'some';
    }
  /** The pieces of these roles are longer (or shorter) somewhere between two levels, by `by` times the amount. */
  | {
      readonly kind: 'length';
      readonly of: readonly Role[];
      readonly from: Level;
      readonly to: Level;
      readonly by: number;
      readonly bound: 'exact' | 'at least' | 'some';
    }
  /** Something is sewn in besides; no piece changes. */
  | {
      readonly kind: 'add';
      readonly name: string;
      readonly on: readonly Role[];
      readonly steps: readonly OwnStep[];
    };

/** One thing that may be behind what is seen. */
export interface Cause {
  /** Unique within its entry. */
  readonly id: string;
  /** A clause that can follow “because”: `the front is too narrow across the chest`. */
  readonly is: string;
  /** The quick test that tells it from the others: what to do, and what happens if it is this. */
  readonly test: string;
  /** What to change on which piece. */
  readonly change: string;
  /** How the amount is measured. */
  readonly measured: string;
  /** Where this cure ends and a new piece or another cure begins. */
  readonly limits?: string;
  /** What it asks of the pieces; empty where no pattern change follows (press it, wear other underclothes). */
  readonly wants: readonly Want[];
  readonly source: Source;
}

/** Something that can be seen at a try-on. */
export interface Entry {
  /** Unique, lower case with hyphens; kept in the ledger, so it never changes. */
  readonly id: string;
  readonly place: Place;
  readonly views: readonly View[];
  /** What is seen, short, as a maker would say it. */
  readonly seen: string;
  /** It can only be seen where the garment has a piece of one of these roles. */
  readonly roles: readonly Role[];
  /** It can only be seen where a piece of such a role has a work of this kind, or a join catches a trim. */
  readonly needs?: 'tucks' | 'trim' | 'buttons' | 'gathers' | 'beads' | 'stretch';
  /** What is measured when it is seen, as a label: `Pinch the surplus: how much?` None where there is nothing to measure. */
  readonly asks?: string;
  /** Likeliest first; at least one. */
  readonly causes: readonly [Cause, ...Cause[]];
  /** How often it turns up: a stated guess until the ledger knows better. */
  readonly often: 'often' | 'now and then' | 'seldom';
  readonly source: Source;
}

/** A check that comes before all others: what a garment that hangs well shows. */
export interface ReferenceCheck {
  readonly id: string;
  /** `The crosswise grain lies level at chest and hips`. */
  readonly say: string;
  /** Only for garments with a piece of one of these roles; for all where there are none. */
  readonly roles: readonly Role[];
  readonly source: Source;
}
