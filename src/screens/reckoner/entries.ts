import { type Entries, type Field, type Fields, startOf } from '../../fields/fields.ts';
import { type ReadingUnit, readLength } from '../../length/reading.ts';
import { type Marking, writeLength } from '../../length/writing.ts';
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

/** Where what stands in fields of several reckonings is kept. */
const SHARED = 'reckoner.shared';

/** What was typed in the fields that share it, by the name they share, each with the unit it was typed under. */
type Shared = Readonly<Record<string, { readonly unit: ReadingUnit; readonly text: string }>>;

const isRecord = (found: unknown): found is Readonly<Record<string, unknown>> =>
  typeof found === 'object' && found !== null;
const isUnit = (unit: unknown): unit is ReadingUnit => unit === 'in' || unit === 'mm';

function readWritten(found: unknown): Written | undefined {
  if (!isRecord(found)) return undefined;
  const { unit, entries } = found;
  if (!isUnit(unit) || !isRecord(entries)) return undefined;
  const texts = Object.entries(entries).filter((one): one is [string, string] => typeof one[1] === 'string');
  return { unit, entries: Object.fromEntries(texts) };
}

/** What is kept under a name, as far as it can be read. */
function recalled(name: string): Readonly<Record<string, unknown>> {
  try {
    const found: unknown = JSON.parse(recall(name) ?? '');
    return isRecord(found) ? found : {};
  } catch {
    return {};
  }
}

/** What was typed in the fields that share it, as far as it can be read. */
export const recallShared = (): Shared =>
  Object.fromEntries(
    Object.entries(recalled(SHARED)).flatMap(([name, found]) => {
      if (!isRecord(found) || !isUnit(found.unit) || typeof found.text !== 'string') return [];
      return [[name, { unit: found.unit, text: found.text }]];
    }),
  );

/** The fields that share what is typed, each with the name it shares. */
const sharing = (fields: Fields): (readonly [name: string, field: Field, shared: string])[] =>
  Object.entries(fields).flatMap(([name, field]) =>
    field.shared === undefined ? [] : [[name, field, field.shared] as const],
  );

/** What was written, with what stands in the fields that share it. */
function withShared(written: Written, fields: Fields): Written {
  const shared = recallShared();
  const entries: Record<string, string> = { ...written.entries };
  for (const [name, field, by] of sharing(fields)) {
    const found = shared[by];
    if (found) entries[name] = turnOne(field, found.text, found.unit, written.unit);
    else delete entries[name];
  }
  return { unit: written.unit, entries };
}

/**
 * What was kept of a reckoning on this device; nothing written where there is none or it cannot be read. Fields that
 * share what is typed have what was typed last in any of them, unless the entries were laid out whole, as a card of the
 * bench does: then those stand, and what stood before can be taken back.
 */
export function recallEntries(id: string, unit: ReadingUnit, fields: Fields = {}): Kept {
  const found = recalled(at(id));
  const written = readWritten(found);
  if (!written) return withShared(blank(unit), fields);
  const before = readWritten(found.before);
  if (sharing(fields).length === 0) return before ? { ...written, before } : written;
  if (found.parted === true) return { ...withShared(written, fields), ...(before && { before }) };
  const stood = withShared(before ?? blank(written.unit), fields);
  return Object.keys(stood.entries).length > 0 ? { ...written, before: stood } : written;
}

/** Keeps what is written on this device, right or wrong; what fields share goes where all of them find it. */
export function keepEntries(id: string, kept: Kept, fields: Fields = {}): boolean {
  const shares = sharing(fields);
  if (shares.length === 0) return keep(at(id), JSON.stringify(kept));
  const own: Record<string, string> = { ...kept.entries };
  const shared: Record<string, Shared[string]> = { ...recallShared() };
  for (const [name, , by] of shares) {
    const text = own[name];
    delete own[name];
    delete shared[by];
    if (text !== undefined) shared[by] = { unit: kept.unit, text };
  }
  return (
    keep(SHARED, JSON.stringify(shared)) &&
    keep(at(id), JSON.stringify({ ...kept, entries: own, parted: true }))
  );
}

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
