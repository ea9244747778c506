import type { Reckoning } from '../reckoning.ts';

/** The reckonings under Frills, in the order in which they stand. */
export const FRILLS: readonly Reckoning[] = [];
