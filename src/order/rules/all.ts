import {
  cutFirst,
  lateLast,
  letItRest,
  lowestLayerFirst,
  prepareFlat,
  tryCheapFirst,
  tuckThenCut,
} from './pieces.ts';
import type { Rule } from './rule.ts';
import { chainIsWhole, flatBeforeTube, pressBeforeCrossing, seamThenOver, trimOnOneSide } from './seams.ts';
import { coverHangsFirst, endsBeforeHoles, layersBeforeHoles, puttingTogether, unitFirst } from './units.ts';

/** Every rule that always holds. What holds only where it can (try-ons first, marks that must live) is found after. */
export const rules: readonly Rule[] = [
  cutFirst,
  tryCheapFirst,
  prepareFlat,
  lowestLayerFirst,
  tuckThenCut,
  letItRest,
  chainIsWhole,
  pressBeforeCrossing,
  trimOnOneSide,
  seamThenOver,
  flatBeforeTube,
  unitFirst,
  coverHangsFirst,
  layersBeforeHoles,
  endsBeforeHoles,
  puttingTogether,
  lateLast,
];
