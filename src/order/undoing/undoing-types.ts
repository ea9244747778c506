import type { Length } from '../../length/length.ts';
import type { EdgeRef } from '../../outfit/outfit.ts';
import type { Rework } from '../running-types.ts';

/** What is to be done to a piece that does not fit. */
export interface Alteration {
  readonly garment: string;
  readonly piece: string;
  /** `anew`: a new piece is cut. `edges`: only the seams at some edges are moved, within their allowance. */
  readonly how: 'anew' | 'edges';
  /** Names of the edges that are moved; not read where the piece is cut anew, which opens all of them. */
  readonly edges: readonly string[];
  /** Of a left and a right: which one. */
  readonly side: 'both' | 'left' | 'right';
  /** What is different, for the card that cuts or sews it: `5/8 in wider at the chest`. Empty where it is not known. */
  readonly say: string;
}

/** How much of a seam (or of a work along a run of edges) is opened. */
export type Extent =
  | { readonly kind: 'whole' }
  /** Only along these edges; the rest stays sewn. */
  | { readonly kind: 'along'; readonly edges: readonly EdgeRef[] }
  /** Only a little, where these joins (ids) end in it. */
  | { readonly kind: 'crossing'; readonly joins: readonly string[] };

/** A seam that is opened, or a work that is taken out. */
export interface Opened {
  readonly kind: 'join' | 'work';
  /** Id of the join or work. */
  readonly id: string;
  readonly name: string;
  readonly extent: Extent;
  /** How long the opened part is, on one side of the body. */
  readonly length: Length;
}

/** A trim caught in an opened seam that keeps its basting, because it is basted to what stays. */
export interface TrimStays {
  readonly join: string;
  /** Id of the trim's piece. */
  readonly trim: string;
  /** Ids of the pieces that it stays basted to. */
  readonly on: readonly string[];
}

/** A piece that has to be cut anew though it was only to be altered, or though another was meant, and why. */
export interface Forced {
  readonly piece: string;
  readonly because: string;
}

/** Everything that follows from altering some pieces: what is opened, cut and done again, in order, and what it costs. */
export interface Undoing {
  /** What was asked for, with what had to be added to it. */
  readonly alterations: readonly Alteration[];
  readonly forced: readonly Forced[];
  /** In the order in which it is unpicked: what was sewn last comes out first. */
  readonly opened: readonly Opened[];
  readonly stays: readonly TrimStays[];
  /** The plain data that the ledger keeps, from which the order of making takes its new cards. */
  readonly rework: Rework;
  /** Minutes of unpicking and cutting, and of doing again what was done. */
  readonly minutes: { readonly undo: number; readonly again: number; readonly total: number };
}
