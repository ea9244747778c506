import { effect, signal } from '@preact/signals';
import { A4, LETTER, PAPERS, type Paper } from '../../paper/papers.ts';
import { keep, recall } from '../../ui/safe-storage.ts';

/**
 * Where Letter is what shops sell; elsewhere A4. Source: the paper size that goes with each territory in Unicode CLDR,
 * supplemental measurement data (from memory).
 */
const LETTER_PLACES = new Set([
  'US',
  'CA',
  'MX',
  'PH',
  'CL',
  'CO',
  'CR',
  'GT',
  'NI',
  'PA',
  'SV',
  'VE',
  'PR',
  'DO',
  'BZ',
]);

function usualPaper(language: string): Paper {
  const place = /-([A-Z]{2})\b/.exec(language)?.[1];
  return place !== undefined && LETTER_PLACES.has(place) ? LETTER : A4;
}

/** The paper to print on, kept on the device; until it is chosen, what is usual where the maker is. */
export const paper = signal<Paper>(
  PAPERS.find(({ name }) => name === recall('paper')) ?? usualPaper(navigator.language),
);

let first = true;
effect(() => {
  const { name } = paper.value;
  // What was only guessed is not kept.
  if (!first) keep('paper', name);
  first = false;
});
