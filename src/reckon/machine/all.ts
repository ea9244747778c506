import type { Reckoning } from '../reckoning.ts';

/** The reckonings under Machine and iron, in the order in which they stand. */
export const MACHINE: readonly Reckoning[] = [];
