import type { Source } from '../cloth/source.ts';
import type { Length } from '../length/length.ts';
import type { Marking } from '../length/writing.ts';
import type { Garment, Outfit } from './outfit.ts';

/** How the lengths of two edges that are to be sewn together agree. */
export interface Fit {
  /** Id of the join. */
  readonly join: string;
  readonly kind: 'edges' | 'trim' | 'gather';
  /** Which side is the longer one, as it is sewn; for a trim, `this` is the trim. */
  readonly longer: 'this' | 'to' | 'none';
  /** By how much. */
  readonly by: Length;
  /** True where it goes together as it is, or with the ease that is usual there. */
  readonly within: boolean;
  /** Both lengths and by how much, and what to do. */
  readonly say: string;
  readonly source: Source;
}

/** Whether the edges that are sewn together are as long as each other, join by join. */
export function lengthsFit(_outfit: Outfit, _garment: Garment, _marking: Marking): readonly Fit[] {
  throw new Error('not yet');
}
