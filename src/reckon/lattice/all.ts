import type { Reckoning } from '../reckoning.ts';
import { beadedLattice } from './beaded-lattice.ts';
import { beadsOnALine } from './beads-on-a-line.ts';

/** The reckonings under Lattice and beads, in the order in which they stand. */
export const LATTICE: readonly Reckoning[] = [beadedLattice, beadsOnALine];
