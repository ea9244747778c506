import type { Reckoning } from '../reckoning.ts';
import { parallelTucks } from './parallel-tucks.ts';

/** The reckonings under Tucks and bands, in the order in which they stand. */
export const TUCKS: readonly Reckoning[] = [parallelTucks];
