import type { Entries } from '../../../src/fields/fields.ts';
import { toInches, toMm } from '../../../src/length/index.ts';
import type { ReadingUnit } from '../../../src/length/reading.ts';
import type { Reckoned, Reckoning } from '../../../src/reckon/reckoning.ts';

/** What a reckoning gives for these entries, which must be possible. */
export function worked(one: Reckoning, entries: Entries = {}, unit: ReadingUnit = 'mm'): Reckoned {
  const result = one.reckon(entries, unit);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

/** The figure whose name begins so: millimetres or inches to three places, a number, or words. */
export function figure(of: Reckoned, name: string, unit: ReadingUnit = 'mm'): number | string {
  const found = of.figures.find((one) => one.name.startsWith(name));
  if (!found) throw new Error(`no figure “${name}” among ${of.figures.map((one) => one.name).join('; ')}`);
  if (found.kind === 'words') return found.words;
  if (found.kind === 'number') return found.number;
  const size = unit === 'mm' ? toMm(found.length) : toInches(found.length);
  return Math.round(size * 1000) / 1000;
}

/** The fields at which these entries are refused; none where they are not. */
export function refusedAt(one: Reckoning, entries: Entries, unit: ReadingUnit = 'mm'): readonly string[] {
  const result = one.reckon(entries, unit);
  return result.ok ? [] : result.error.map(({ field }) => field);
}

/** Places of a strip's marks in millimetres, to three places. */
export const marksOf = (of: Reckoned, strip: number): readonly number[] =>
  (of.strips[strip]?.marks ?? []).map(({ at }) => Math.round(toMm(at) * 1000) / 1000);

/** Widest and highest of what is drawn, in millimetres. */
export function extent(drawing: Reckoned['drawing']): { readonly wide: number; readonly high: number } {
  const points = drawing.drawn.flatMap((one) => (one.kind === 'path' ? one.points : [one.at]));
  const span = (all: readonly number[]) =>
    (all.reduce((a, b) => Math.max(a, b)) - all.reduce((a, b) => Math.min(a, b))) / 1e6;
  return { wide: span(points.map(({ x }) => x)), high: span(points.map(({ y }) => y)) };
}
