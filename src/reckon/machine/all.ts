import type { Reckoning } from '../reckoning.ts';
import { hottestIron } from './hottest-iron.ts';
import { interfacingChoice } from './interfacing-choice.ts';
import { needle } from './needle.ts';
import { needleNumbers } from './needle-numbers.ts';
import { stitchForACloth } from './stitch-for-a-cloth.ts';
import { threadForASeam } from './thread-for-a-seam.ts';

/** The reckonings under Machine and iron, in the order in which they stand. */
export const MACHINE: readonly Reckoning[] = [
  stitchForACloth,
  needle,
  needleNumbers,
  threadForASeam,
  interfacingChoice,
  hottestIron,
];
