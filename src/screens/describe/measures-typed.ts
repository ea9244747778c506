import { type Fault, type LengthField, readFields } from '../../fields/fields.ts';
import { inches, type Length } from '../../length/length.ts';
import { type ReadingUnit, readLength } from '../../length/reading.ts';
import { MEASURES, type MeasureId } from '../../outfit/measures.ts';
import type { Measures } from '../../outfit/plausible.ts';
import { recallShared } from '../reckoner/entries.ts';
import { turnLength } from '../reckoner/turn-length.ts';
import type { Written } from './drafts.ts';
import { fieldLength } from './filled.ts';

/** No body measures more than this; it is a slip of the finger. */
const MOST_BODY = inches(120);

/** The fields of the measures, by their ids. Each may stay empty. */
export const MEASURE_FIELDS: Readonly<Record<string, LengthField>> = Object.fromEntries(
  MEASURES.map(({ id, name, how }) => [
    id,
    { kind: 'length', label: name, means: how, start: { in: '', mm: '' }, optional: true } as const,
  ]),
);

/** The measures of a wearer as their fields show them. */
export const measureTexts = (measures: Measures, unit: ReadingUnit): Written =>
  Object.fromEntries(
    MEASURES.flatMap(({ id }) => {
      const length = measures[id];
      return length === undefined ? [] : [[id, fieldLength(length, unit)]];
    }),
  );

/** What was read of the fields: the measures that can be read, and what is wrong with the others. */
export function readMeasures(
  text: (name: string) => string,
  unit: ReadingUnit,
): { readonly measures: Measures; readonly faults: readonly Fault[] } {
  const measures: Partial<Record<MeasureId, Length>> = {};
  const faults: Fault[] = [];
  for (const { id } of MEASURES) {
    const field = MEASURE_FIELDS[id];
    const written = text(id);
    if (field === undefined || written.trim() === '') continue;
    const read = readFields({ [id]: field }, { [id]: written }, unit);
    if (!read.ok) {
      faults.push(...read.error);
      continue;
    }
    const length = read.value[id] as Length;
    if (length > 0 && length <= MOST_BODY) measures[id] = length;
    else {
      const say =
        length > 0
          ? 'No body measures so much; write less than 120 in, which is 3048 mm.'
          : 'A measure is more than nothing; leave it empty where it was not taken.';
      faults.push({ field: id, say });
    }
  }
  return { measures, faults };
}

const kebab = (name: string): string => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** Measures that were typed for a leg in the reckoner, as far as they can be read and differ from what stands here. */
export function fromReckoner(here: Measures, unit: ReadingUnit): Written {
  const found: Record<string, string> = {};
  for (const [by, typed] of Object.entries(recallShared())) {
    const id = kebab(by.replace(/^leg\./, ''));
    const measure = MEASURES.find((one) => one.id === id);
    if (measure === undefined || !by.startsWith('leg.')) continue;
    const read = readLength(typed.text, typed.unit);
    if (read.ok && read.value > 0 && read.value <= MOST_BODY && read.value !== here[measure.id])
      found[id] = turnLength(typed.text, typed.unit, unit);
  }
  return found;
}
