import type { Reckoning } from '../reckoning.ts';

/** The reckonings under Lattice and beads, in the order in which they stand. */
export const LATTICE: readonly Reckoning[] = [];
