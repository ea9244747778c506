import type { Reckoning } from '../reckoning.ts';

/** The reckonings under Buttons and holes, in the order in which they stand. */
export const BUTTONS: readonly Reckoning[] = [];
