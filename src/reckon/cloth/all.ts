import type { Reckoning } from '../reckoning.ts';

/** The reckonings under Cloth and measures, in the order in which they stand. */
export const CLOTH: readonly Reckoning[] = [];
