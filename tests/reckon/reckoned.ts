import type { Entries } from '../../src/fields/fields.ts';
import type { Length } from '../../src/length/length.ts';
import type { ReadingUnit } from '../../src/length/reading.ts';
import type { Reckoned, Reckoning } from '../../src/reckon/reckoning.ts';

/** What a reckoning gives for entries that must be good. */
export function reckoned(one: Reckoning, entries: Entries = {}, unit: ReadingUnit = 'in'): Reckoned {
  const result = one.reckon(entries, unit);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

/** The figures by name: lengths in nanometres, numbers and words as they are. */
export const figures = (given: Reckoned): Readonly<Record<string, Length | number | string>> =>
  Object.fromEntries(
    given.figures.map((f) => [
      f.name,
      f.kind === 'length' ? f.length : f.kind === 'number' ? f.number : f.words,
    ]),
  );

/** Places of the marks of one strip. */
export const places = (given: Reckoned, strip = 0): readonly Length[] =>
  given.strips[strip]?.marks.map(({ at }) => at) ?? [];

/** The fields at which entries are refused. */
export function refusedAt(one: Reckoning, entries: Entries, unit: ReadingUnit = 'in'): readonly string[] {
  const result = one.reckon(entries, unit);
  return result.ok ? [] : result.error.map(({ field }) => field);
}
