import type { Reckoning } from '../reckoning.ts';
import { frillsOnALeg } from './frills-on-a-leg.ts';
import { legInTwoCloths } from './leg-in-two-cloths.ts';
import { stretchLeg } from './stretch-leg.ts';
import { stretchOfACloth } from './stretch-of-a-cloth.ts';

/** The reckonings under Stretch legs, in the order in which they stand. */
export const LEGS: readonly Reckoning[] = [stretchOfACloth, stretchLeg, legInTwoCloths, frillsOnALeg];
