import { bad, good, type Result } from '../length/result.ts';
import type { Act } from './deed.ts';

/** Figures that were reckoned and put on the card of a step. */
export type ReckonedAct = Extract<Act, { kind: 'reckoned' }>;

/** How many figures one deed holds. A card is read in a second; all the rest is in the reckoning itself. */
export const MOST_FIGURES = 60;

/** Longest texts, in UTF-16 code units, and most entries. Larger is no figure, and would make every copy heavy. */
const MOST = {
  step: 400,
  reckoning: 80,
  title: 160,
  name: 160,
  figure: 400,
  entries: 60,
  field: 80,
  entry: 8_000,
};

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isText = (value: unknown, least: number, most: number): value is string =>
  typeof value === 'string' && value.length >= least && value.length <= most;

const isFigure = (one: unknown): boolean =>
  isObject(one) &&
  isText(one.name, 0, MOST.name) &&
  isText(one.figure, 1, MOST.figure) &&
  Object.keys(one).length === 2;

const wrong = (field: string, expected: string): Result<never, { field: string; expected: string }> =>
  bad({ field, expected });

/**
 * Reads an act that puts figures on a card, whoever made it. Refused: a text that is missing or too long, no figure or
 * more than {@link MOST_FIGURES}, entries that are no texts, a
 * unit that is none. Gives which field it is and what was expected.
 */
export const readReckoned = (
  act: Readonly<Record<string, unknown>>,
): Result<ReckonedAct, { readonly field: string; readonly expected: string }> => {
  for (const field of ['step', 'reckoning', 'title'] as const) {
    if (!isText(act[field], 1, MOST[field])) return wrong(field, `1 to ${MOST[field]} letters`);
  }
  if (act.unit !== 'in' && act.unit !== 'mm') return wrong('unit', '"in" or "mm"');
  const { entries, figures } = act;
  if (!isObject(entries)) return wrong('entries', 'an object of texts');
  const written = Object.entries(entries);
  if (
    written.length > MOST.entries ||
    !written.every(([name, text]) => isText(name, 1, MOST.field) && isText(text, 0, MOST.entry))
  ) {
    return wrong('entries', `${MOST.entries} short texts at most`);
  }
  if (!Array.isArray(figures) || figures.length === 0 || figures.length > MOST_FIGURES) {
    return wrong('figures', `a list of 1 to ${MOST_FIGURES}`);
  }
  if (!figures.every(isFigure)) return wrong('figures', 'a short name and a short figure each');
  return good(act as unknown as ReckonedAct);
};
