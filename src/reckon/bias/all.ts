import type { Reckoning } from '../reckoning.ts';
import { clothForStrips } from './bias-cloth.ts';
import { stripsFromCloth } from './bias-strips.ts';
import { bindingStrip } from './binding-width.ts';
import { squareForStrip } from './continuous-square.ts';
import { continuousStrip } from './continuous-strip.ts';

/** The reckonings under Bias, in the order in which they stand. */
export const BIAS: readonly Reckoning[] = [
  bindingStrip,
  stripsFromCloth,
  clothForStrips,
  continuousStrip,
  squareForStrip,
];
