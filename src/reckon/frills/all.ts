import type { Reckoning } from '../reckoning.ts';
import { gatheredFrill } from './gathered-frill.ts';

/** The reckonings under Frills, in the order in which they stand. */
export const FRILLS: readonly Reckoning[] = [gatheredFrill];
