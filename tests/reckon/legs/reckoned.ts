import type { Entries } from '../../../src/fields/fields.ts';
import type { ReadingUnit } from '../../../src/length/index.ts';
import { toMm } from '../../../src/length/index.ts';
import type { Reckoned, Reckoning } from '../../../src/reckon/reckoning.ts';

/** What a reckoning gives back where it must. */
export function worked(one: Reckoning, entries: Entries = {}, unit: ReadingUnit = 'mm'): Reckoned {
  const made = one.reckon(entries, unit);
  if (!made.ok) throw new Error(made.error.map(({ field, say }) => `${field}: ${say}`).join('\n'));
  return made.value;
}

/** The fields at which a reckoning finds faults. */
export function faultsAt(one: Reckoning, entries: Entries, unit: ReadingUnit = 'mm'): string[] {
  const made = one.reckon(entries, unit);
  return made.ok ? [] : made.error.map(({ field }) => field);
}

/** A figure as a number of millimetres, a number, or words. */
export function figure(made: Reckoned, name: string): number | string {
  const found = made.figures.find((one) => one.name === name);
  if (!found) throw new Error(`no figure ${name} among ${made.figures.map((f) => f.name).join(', ')}`);
  if (found.kind === 'length') return toMm(found.length);
  return found.kind === 'number' ? found.number : found.words;
}
