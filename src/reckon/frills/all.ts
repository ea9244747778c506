import type { Reckoning } from '../reckoning.ts';
import { circularFrill } from './circular-frill.ts';
import { gatheredFrill } from './gathered-frill.ts';
import { notchesOnACurve } from './notches-on-a-curve.ts';
import { shapedFlounce } from './shaped-flounce.ts';

/** The reckonings under Frills, in the order in which they stand. */
export const FRILLS: readonly Reckoning[] = [gatheredFrill, circularFrill, shapedFlounce, notchesOnACurve];
