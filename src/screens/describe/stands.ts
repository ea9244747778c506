import { startOf } from '../../fields/fields.ts';
import type { Length } from '../../length/length.ts';
import { type Marking, writeLength } from '../../length/writing.ts';
import { spell } from '../../outfit/chains.ts';
import type { EdgeRef } from '../../outfit/outfit.ts';
import { type Ask, choicesOf, type Here } from './asks.ts';
import type { Written } from './drafts.ts';

/** Is it a thing with names, or a list? */
export const isThing = (found: unknown): found is Record<string, unknown> =>
  typeof found === 'object' && found !== null;

/** What a part has at a path; undefined where it has nothing. */
export function at(part: unknown, path: string): unknown {
  let here = part;
  if (path === '') return here;
  for (const key of path.split('.')) here = isThing(here) ? here[key] : undefined;
  return here;
}

const OTHERS: readonly Marking[] = [
  { unit: 'mm', step: 0.5 },
  { unit: 'in', per: 32 },
];

/** A length as it would be typed: under the other rule where only that has a mark for it, else at the nearest mark. */
export function lengthWords(length: unknown, marking: Marking): string {
  if (typeof length !== 'number') return '';
  const exact = [marking, ...OTHERS]
    .map((one) => writeLength(length as Length, one))
    .find(({ off }) => off === 0);
  const { text, unit } = exact ?? writeLength(length as Length, marking);
  return unit === marking.unit ? text.slice(0, -unit.length).trim() : text;
}

/** Lengths in a line, alike ones that follow each other counted: `12 × 1/4, 3/8`. */
function lengthsWords(lengths: readonly unknown[], marking: Marking): string {
  const runs: { words: string; count: number }[] = [];
  for (const one of lengths) {
    const words = lengthWords(one, marking);
    const last = runs.at(-1);
    if (last?.words === words) last.count += 1;
    else runs.push({ words, count: 1 });
  }
  return runs.map(({ words, count }) => (count === 1 ? words : `${count} × ${words}`)).join(', ');
}

/** Rows as they are kept in a draft; `#` says which row of the part one was. */
export function readRows(text: string): readonly Written[] {
  try {
    const found: unknown = JSON.parse(text);
    return Array.isArray(found) ? found.filter(isThing).map((row) => row as Written) : [];
  } catch {
    return [];
  }
}

/** What stands in a field: what was written, else what the part has, else what stands there first. */
export function standing(here: Here, name: string, ask: Ask, written: Written, base: unknown): string {
  const typed = written[name];
  if (typed !== undefined) return typed;
  const value = at(base, name);
  const { unit } = here.marking;
  switch (ask.kind) {
    case 'length':
      return value === undefined ? startOf(ask, unit) : lengthWords(value, here.marking);
    case 'number':
      return value === undefined ? ask.start : String(value);
    case 'choice':
      return value === undefined
        ? ask.start
        : ask.as === 'yes' || ask.as === 'only yes'
          ? value === true
            ? 'yes'
            : 'no'
          : String(value);
    case 'kind':
    case 'words':
      return value === undefined
        ? ask.start
        : String(value).replaceAll(ask.kind === 'words' && ask.as === 'id' ? '-' : '\n', ' ');
    case 'which':
      return value === undefined
        ? ask.optional
          ? ''
          : (choicesOf(here, ask.of)[0]?.value ?? '')
        : String(value);
    case 'edge':
      return value === undefined ? '' : `${String(at(base, 'on'))}.${String(value)}`;
    case 'run': {
      const refs = value === undefined ? [] : ask.one ? [value] : (value as readonly unknown[]);
      return refs.map((ref) => spell(ref as EdgeRef)).join(' ');
    }
    case 'some':
      return Array.isArray(value) ? value.join(' ') : '';
    case 'lengths':
      return Array.isArray(value) ? lengthsWords(value, here.marking) : ask.start[unit];
    case 'rows': {
      const rows = Array.isArray(value)
        ? value.map((_, i) => ({ '#': String(i) }))
        : Array.from({ length: ask.first }, () => ({}));
      return JSON.stringify(rows);
    }
  }
}
