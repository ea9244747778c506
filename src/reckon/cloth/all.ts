import type { Reckoning } from '../reckoning.ts';
import { clothShrinkage } from './cloth-shrinkage.ts';
import { clothToBuy } from './cloth-to-buy.ts';
import { inchesAndMillimetres } from './inches-and-millimetres.ts';

/** The reckonings under Cloth and measures, in the order in which they stand. */
export const CLOTH: readonly Reckoning[] = [clothToBuy, clothShrinkage, inchesAndMillimetres];
