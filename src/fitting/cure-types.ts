import type { Length } from '../length/length.ts';
import type { Undoing } from '../order/undoing/undoing-types.ts';
import type { Outfit, Work } from '../outfit/outfit.ts';
import type { Outline } from '../shape/outline.ts';
import type { Level } from './entry.ts';

/** By how much a piece changes at one height. For a piece cut on the fold it is the change of the half that is drawn. */
export interface Amount {
  readonly kind: 'width' | 'length';
  /** For a length: the upper of the two levels between which it changes. */
  readonly level: Level;
  /** Below zero where it becomes narrower or shorter. */
  readonly by: Length;
}

/** What a cure does to one piece. */
export interface PieceChange {
  readonly garment: string;
  readonly piece: string;
  readonly how: 'anew' | 'edges';
  /** The edges that are moved. */
  readonly edges: readonly string[];
  readonly side: 'both' | 'left' | 'right';
  readonly amounts: readonly Amount[];
  /** In words, for cards: `5/8 in wider at the chest`. */
  readonly say: string;
  readonly before: Outline;
  readonly after: Outline;
}

/** A way to put everything right that was seen. */
export interface Cure {
  readonly changes: readonly PieceChange[];
  /** Works that are sewn in besides. */
  readonly adds: readonly { readonly garment: string; readonly work: Work }[];
  /** Gathers that come out fuller or less full, in words, by the id of their work. */
  readonly gathers?: readonly { readonly work: string; readonly say: string }[];
  /** What each thing seen is taken to come from. */
  readonly taken: readonly { readonly observation: string; readonly cause: string }[];
  readonly undoing: Undoing;
  /** Undoing, doing again, and what is added: work only, however likely its causes are. */
  readonly minutes: number;
  /** The outfit with the changed outlines, gathers as full as these leave them, and what is added. A change to one side of a pair leaves the outline alone. */
  readonly after: Outfit;
}

/** What can be done about all that was seen in one garment. */
export interface Cures {
  readonly best?: Cure;
  /** The cheapest that changes other pieces, or the same ones in another way. */
  readonly other?: Cure;
  /** What cannot be met, and why, in words. */
  readonly unmet: readonly { readonly observation: string; readonly why: string }[];
  /** What was not reckoned with because it asks for no change that can be reckoned, or its amount is not known. */
  readonly left: readonly { readonly observation: string; readonly why: string }[];
}
