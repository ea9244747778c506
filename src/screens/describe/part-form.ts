import { type Fault, readFields } from '../../fields/fields.ts';
import type { Length } from '../../length/length.ts';
import { type ReadingUnit, readLength } from '../../length/reading.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { readEdge } from '../../outfit/chains.ts';
import { edgeSpelled } from '../../outfit/changing/own-corners.ts';
import { type Ask, type Asks, choicesOf, type Here, type RowsAsk } from './asks.ts';
import type { Written } from './drafts.ts';
import { at, isThing, readRows, standing } from './stands.ts';

/** A part as its form builds it, before it is read back as one. */
export type Built = Record<string, unknown>;

function put(part: Built, path: string, value: unknown): void {
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let here: Record<string, unknown> = part;
  for (const [i, key] of keys.entries()) {
    const next = here[key];
    const made = isThing(next) ? next : /^\d+$/.test(keys[i + 1] ?? last) ? [] : {};
    here[key] = made;
    here = made as Record<string, unknown>;
  }
  if (value === undefined) delete here[last];
  else here[last] = value;
}

/** More than this many lengths in a row are a slip of the finger. */
const MOST_LENGTHS = 500;

function readLengths(text: string, unit: ReadingUnit): Result<readonly Length[], string> {
  const found: Length[] = [];
  for (const entry of text.split(/[,;\n]/).map((one) => one.trim())) {
    if (entry === '') continue;
    const [, count = '1', words = entry] = /^(\d{1,4})\s*[×x*]\s*(.+)$/i.exec(entry) ?? [];
    const read = readLength(words, unit);
    if (!read.ok) return read;
    if (found.length + Number(count) > MOST_LENGTHS) return bad(`These are more than ${MOST_LENGTHS}.`);
    for (let i = 0; i < Number(count); i += 1) found.push(read.value);
  }
  return found.length > 0 ? good(found) : bad('Write at least one, such as 1/4, or several: 12 × 1/4, 3/8.');
}

const fault = (field: string, say: string): Result<never, readonly Fault[]> => bad([{ field, say }]);

/** Longest words that a name may have. */
const MOST_LETTERS = 400;

function readOne(
  here: Here,
  name: string,
  ask: Ask,
  text: string,
  base: unknown,
): Result<unknown, readonly Fault[]> {
  const { unit } = here.marking;
  const plain = text.trim();
  switch (ask.kind) {
    case 'length':
    case 'number':
    case 'choice': {
      const read = readFields({ [name]: ask }, { [name]: text }, unit);
      if (!read.ok) return read;
      const value = read.value[name];
      const as = 'as' in ask ? ask.as : undefined;
      if (as === 'only yes') return good(value === 'yes' ? true : undefined);
      return good(as === 'yes' ? value === 'yes' : as === 'number' ? Number(value) : value);
    }
    case 'kind':
      return good(plain);
    case 'words': {
      if (plain === '')
        return ask.optional ? good(undefined) : fault(name, 'Nothing is written; a few words will do.');
      if (plain.length > MOST_LETTERS) return fault(name, `Keep this under ${MOST_LETTERS} letters.`);
      const spelled = edgeSpelled(plain);
      if (ask.as === 'id' && spelled === '') return fault(name, 'Write it with letters, such as “collar”.');
      return good(ask.as === 'id' ? spelled : plain);
    }
    case 'which':
      if (plain === '') return ask.optional ? good(undefined) : fault(name, 'Choose one of these.');
      return choicesOf(here, ask.of).some(({ value }) => value === plain)
        ? good(plain)
        : fault(name, 'What was chosen is no longer there; choose another.');
    case 'edge':
    case 'run': {
      const refs = plain.split(' ').filter(Boolean).map(readEdge);
      const [first] = refs;
      if (!first) {
        return ask.optional
          ? good(undefined)
          : fault(name, 'No edge is chosen; touch one on the drawing or in the list.');
      }
      return good(ask.kind === 'edge' ? first.edge : ask.one ? first : refs);
    }
    case 'some':
      return good(plain.split(' ').filter(Boolean));
    case 'lengths': {
      const read = readLengths(text, unit);
      return read.ok ? read : fault(name, read.error);
    }
    case 'rows':
      return readAllRows(here, name, ask, text, base);
  }
}

function readAllRows(
  here: Here,
  name: string,
  ask: RowsAsk,
  text: string,
  base: unknown,
): Result<unknown, readonly Fault[]> {
  const rows = readRows(text);
  const was = at(base, name);
  const faults: Fault[] = [];
  const values = rows.map((row, i) => {
    const old = Array.isArray(was) && row['#'] !== undefined ? (was[Number(row['#'])] as unknown) : undefined;
    const [from, asked] = ask.plain
      ? [old === undefined ? undefined : { words: old }, ask.row]
      : [old, ask.row];
    const built = build(here, asked, row, from, {});
    if (built.ok) return ask.plain ? built.value.words : built.value;
    for (const one of built.error) faults.push({ field: `${name}.${i}.${one.field}`, say: one.say });
    return undefined;
  });
  if (faults.length > 0) return bad(faults);
  if (values.length === 0 && !ask.optional) return fault(name, `Add at least one ${ask.each}.`);
  return good(values);
}

/** Things within a part that may be left out altogether: `fuse` of `fuse.degrees`. */
const groupOf = (name: string, ask: Ask): string | undefined =>
  'optional' in ask && ask.optional && name.includes('.') ? name.split('.')[0] : undefined;

/**
 * Builds a part from its form. What the maker did not touch stays exactly as the part had it; a new part takes what
 * stands there first. Every fault that can be found is given, at its field.
 * @param usual what a new part has besides what is asked
 */
export function build(
  here: Here,
  asks: Asks,
  written: Written,
  base: unknown,
  usual: Readonly<Record<string, unknown>>,
): Result<Built, readonly Fault[]> {
  const part: Built = structuredClone(isThing(base) ? { ...base } : { ...usual });
  const faults: Fault[] = [];
  const groups = new Map<string, { given: string[]; missing: string[] }>();
  for (const [name, ask] of Object.entries(asks)) {
    const kept = base !== undefined && written[name] === undefined;
    const text = standing(here, name, ask, written, base);
    if (!kept || (at(base, name) === undefined && !('optional' in ask && ask.optional))) {
      const read = readOne(here, name, ask, text, base);
      if (!read.ok) faults.push(...read.error);
      else {
        put(part, name, read.value);
        // The piece goes with its edge; of a run, the piece that it was on already stays.
        const pieces = text
          .split(' ')
          .filter(Boolean)
          .map((ref) => readEdge(ref).piece);
        const stays = ask.kind === 'run' && pieces.includes(String(part.on));
        if (pieces[0] !== undefined && !stays && (ask.kind === 'edge' || (ask.kind === 'run' && ask.on)))
          put(part, 'on', pieces[0]);
      }
    }
    const group = groupOf(name, ask);
    if (group === undefined) continue;
    const found = groups.get(group) ?? { given: [], missing: [] };
    groups.set(group, found);
    found[at(part, name) === undefined ? 'missing' : 'given'].push(name);
  }
  for (const [group, { given, missing }] of groups) {
    if (given.length === 0) delete part[group];
    else
      for (const field of missing)
        faults.push({ field, say: 'Write this too, or leave all that belong to it empty.' });
  }
  return faults.length > 0 ? bad(faults) : good(part);
}
