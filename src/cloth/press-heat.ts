import { bad, good, type Result } from '../length/result.ts';
import { type Advice, advise, type Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { published } from './source.ts';

/** Dots in the iron of a care label; 0 is an iron crossed out. */
export type Dots = 0 | 1 | 2 | 3;

/**
 * Hottest sole plate for the dots in the iron of a care label.
 * @unit °C
 * @each dots in the iron: {}
 */
export const DOT_LIMIT: Sourced<Readonly<Record<1 | 2 | 3, number>>> = {
  value: { 1: 110, 2: 150, 3: 200 },
  source: published('ISO 3758, Textiles: care labelling code', '2012', 'iron symbols; figures from memory'),
};

/**
 * The hottest that all cloths bear together, in degrees Celsius: the one that bears least decides.
 * Refused: no cloth; a cloth that must not be ironed.
 */
export function pressLimit(labels: readonly Dots[]): Result<number, Refusal> {
  let limit = Number.POSITIVE_INFINITY;
  for (const dots of labels) {
    if (dots === 0) {
      const cure = 'Finger-press it, or sew without heat.';
      return bad(refusal('care', 'A cloth here must not be ironed.', cure));
    }
    limit = Math.min(limit, DOT_LIMIT.value[dots]);
  }
  if (labels.length === 0)
    return bad(refusal('care', 'No care label is given.', 'Give the dots of each cloth.'));
  return good(limit);
}

/** What to mind besides the heat: a cloth with one dot is ironed without steam (ISO 3758, from memory). */
export const pressAdvice = (labels: readonly Dots[]): Advice[] =>
  labels.includes(1)
    ? [advise('A cloth with one dot is ironed without steam, which may spoil it.', DOT_LIMIT.source)]
    : [];
