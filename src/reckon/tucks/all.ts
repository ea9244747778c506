import type { Reckoning } from '../reckoning.ts';
import { crossedTucks } from './crossed-tucks.ts';
import { foldedBand } from './folded-band.ts';
import { growingTucks } from './growing-tucks.ts';
import { parallelTucks } from './parallel-tucks.ts';
import { tuckedPanel } from './tucked-panel.ts';
import { tucksInWidth } from './tucks-in-width.ts';

/** The reckonings under Tucks and bands, in the order in which they stand. */
export const TUCKS: readonly Reckoning[] = [
  parallelTucks,
  tucksInWidth,
  growingTucks,
  crossedTucks,
  tuckedPanel,
  foldedBand,
];
