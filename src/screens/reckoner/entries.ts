import { type ReadingUnit, readLength } from '../../length/reading.ts';
import { type Marking, writeLength } from '../../length/writing.ts';
import { type Entries, type Field, type Fields, startOf } from '../../reckon/reckoning.ts';
import { keep, recall } from '../../ui/safe-storage.ts';
import { turnLength, withUnit } from './turn-length.ts';
import { turnLines } from './turn-lines.ts';

/** What the maker has written for one reckoning; a field that was never touched is not in it. */
export interface Written {
  /** The unit that stood beside the fields when it was written. */
  readonly unit: ReadingUnit;
  readonly entries: Entries;
}

/** What is kept of one reckoning: what stands there, and what stood there before it was cleared. */
export interface Kept extends Written {
  readonly before?: Written;
}

/** Nothing written yet. */
export const blank = (unit: ReadingUnit): Kept => ({ unit, entries: {} });

/** One entry as it must stand under another rule to mean the same. */
function turnOne(field: Field, text: string, from: ReadingUnit, to: ReadingUnit): string {
  if (field.kind === 'lines') return turnLines(text, from, to);
  return field.kind === 'length' ? turnLength(text, from, to) : text;
}

/** What was written, under another rule: every length keeps its meaning, fields never touched take the new start. */
export function turned(written: Written, fields: Fields, to: ReadingUnit): Written {
  if (written.unit === to) return written;
  const entries: Record<string, string> = {};
  for (const [name, text] of Object.entries(written.entries)) {
    const field = fields[name];
    if (field) entries[name] = turnOne(field, text, written.unit, to);
  }
  return { unit: to, entries };
}

/** What stands in a field now. */
export const standing = (written: Written, name: string, field: Field): string =>
  written.entries[name] ?? startOf(field, written.unit);

/** The entry of every field as a maker would write it down: lengths with their unit, choices by their label. */
export function entryWords(written: Written, name: string, field: Field): string {
  const text = standing(written, name, field).trim();
  switch (field.kind) {
    case 'choice':
      return field.options.find(({ value }) => value === text)?.label ?? text;
    case 'length':
      return withUnit(text, written.unit);
    case 'number':
      return text === '' || field.unit === undefined ? text : `${text} ${field.unit}`;
    case 'lines':
      return text;
  }
}

const squeezed = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').trim();

/** How a length was understood, where that is not plain from what is written: `= 4 3/8 in` for `4-3/8`. */
export function understood(text: string, marking: Marking): string | undefined {
  const read = readLength(text, marking.unit);
  if (!read.ok) return undefined;
  const plain = squeezed(withUnit(text, marking.unit));
  const { text: written, off } = writeLength(read.value, marking);
  if (plain === written || plain === squeezed(written.replace(' ', ''))) return undefined;
  return `${off === 0 ? '=' : 'about'} ${written}`;
}

const at = (id: string): string => `reckoner.${id}`;

function readWritten(found: unknown): Written | undefined {
  if (typeof found !== 'object' || found === null || !('unit' in found) || !('entries' in found))
    return undefined;
  const { unit, entries } = found;
  if ((unit !== 'in' && unit !== 'mm') || typeof entries !== 'object' || entries === null) return undefined;
  const texts = Object.entries(entries).filter((one): one is [string, string] => typeof one[1] === 'string');
  return { unit, entries: Object.fromEntries(texts) };
}

/** What was kept of a reckoning on this device; nothing written where there is none or it cannot be read. */
export function recallEntries(id: string, unit: ReadingUnit): Kept {
  try {
    const found: unknown = JSON.parse(recall(at(id)) ?? '');
    const written = readWritten(found);
    if (!written) return blank(unit);
    const before = readWritten((found as { before?: unknown }).before);
    return before ? { ...written, before } : written;
  } catch {
    return blank(unit);
  }
}

/** Keeps what is written on this device, right or wrong. */
export const keepEntries = (id: string, kept: Kept): boolean => keep(at(id), JSON.stringify(kept));

/** Clears the entries, and holds what stood there so that it can come back. */
export const cleared = (kept: Kept): Kept => ({
  unit: kept.unit,
  entries: {},
  before: { unit: kept.unit, entries: kept.entries },
});

/** Takes back what stood before the clearing; what stands now can be taken back in turn. */
export function takenBack(kept: Kept): Kept {
  if (!kept.before) return kept;
  const now: Written = { unit: kept.unit, entries: kept.entries };
  return Object.keys(now.entries).length > 0 ? { ...kept.before, before: now } : kept.before;
}

const RECENT = 'reckoner.recent';
const MOST_RECENT = 4;

/** The reckonings used last, the latest first. */
export const recent = (): readonly string[] => (recall(RECENT) ?? '').split(' ').filter(Boolean);

/** Notes that a reckoning was opened. */
export const noteUse = (id: string): void =>
  void keep(RECENT, [id, ...recent().filter((one) => one !== id)].slice(0, MOST_RECENT).join(' '));
