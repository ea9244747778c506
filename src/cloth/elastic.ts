import { add, inches, type Length, times } from '../length/length.ts';
import type { Sourced } from './advice.ts';
import { practice } from './source.ts';

/**
 * Elastic in a casing is cut to this part of the body that it goes round; a soft one to less.
 * @unit part
 */
export const ELASTIC_OF_BODY: Sourced<number> = { value: 0.9, source: practice };
/** The ends of an elastic lie over each other this far. */
export const ELASTIC_LAP: Sourced<Length> = { value: inches(1, 2), source: practice };

/** How long an elastic is cut that holds in a casing round the body, the lap of its ends with it. */
export const elasticCut = (round: Length): Length =>
  add(times(round, ELASTIC_OF_BODY.value), ELASTIC_LAP.value);
