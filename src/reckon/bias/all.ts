import type { Reckoning } from '../reckoning.ts';

/** The reckonings under Bias, in the order in which they stand. */
export const BIAS: readonly Reckoning[] = [];
