import type { Reckoning } from '../reckoning.ts';

/** The reckonings under Sleeves, bows and cuffs, in the order in which they stand. */
export const SLEEVES: readonly Reckoning[] = [];
