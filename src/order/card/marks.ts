import type { Advice } from '../../cloth/advice.ts';
import type { Work } from '../../outfit/outfit.ts';
import type { MarkSet } from '../card-types.ts';

/** Marks with what a maker had better know of them. */
export interface MarksFound {
  readonly sets: readonly MarkSet[];
  readonly advice: readonly Advice[];
}

/** A work of one kind. */
export type WorkOf<K extends Work['kind']> = Extract<Work, { kind: K }>;
