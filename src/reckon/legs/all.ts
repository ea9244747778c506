import type { Reckoning } from '../reckoning.ts';

/** The reckonings under Stretch legs, in the order in which they stand. */
export const LEGS: readonly Reckoning[] = [];
