import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync, Visitor } from 'vite';
import { describe, expect, it } from 'vitest';
import { declaredIn, filesRead } from '../../.ci/constants.mjs';
import { CHECKS, ENTRIES } from '../../src/fitting/entries/all.ts';
import { rules } from '../../src/order/rules/all.ts';
import { countKinds } from '../../src/screens/sources/find.ts';
import { type Declared, gather, standsFor } from '../../src/screens/sources/gather.ts';
import shown from '../../src/screens/sources/gather.ts?figures';
import { seenShown } from '../../src/screens/sources/seen.ts';
import { ROOT } from './files.ts';

const declared = filesRead().flatMap((file) => declaredIn(file));
const ids = new Set(shown.figures.map(({ id }) => id));
const idOf = ({ file, name }: Declared): string => `${file.replace(/^src\//, '')} ${name}`;

const isNumeric = (value: unknown): boolean =>
  typeof value === 'number' ||
  (typeof value === 'object' &&
    value !== null &&
    Object.values(value).length > 0 &&
    Object.values(value).every((one) => typeof one === 'number'));

/** What is wrong with a declaration, if anything: a figure that the page could not show truly. */
function fault(one: Declared, value: unknown): string | undefined {
  const at = `${one.file} ${one.name}`;
  if (one.file === 'src/cloth/source.ts') return undefined;
  const sourced = /\bSourced</.test(one.type) || one.type === 'Source';
  if (!one.exported)
    return sourced && /^[A-Z_]+$/.test(one.name) && one.type !== 'Source'
      ? `${at}: has a source but is not exported, so the page cannot show it`
      : undefined;
  if (!one.file.startsWith('src/length/') && isNumeric(value))
    return `${at}: a figure without a source; make it Sourced`;
  const inside = typeof value === 'object' && value !== null && 'source' in value && 'value' in value;
  if (inside && !sourced) return `${at}: write its type, so that lengths are told from numbers`;
  if (!sourced) return undefined;
  if (!ids.has(idOf(one))) return `${at}: is not on the page`;
  if (one.meaning === '') return `${at}: has no words`;
  if (/[{}`@]|\bsee\b/i.test(one.meaning) || !/^[A-Z].*\.$/.test(one.meaning))
    return `${at}: is not said to a maker in a plain sentence: ${one.meaning}`;
  const numbers = shown.figures
    .find(({ id }) => id === idOf(one))
    ?.values.some(({ is }) => typeof is[0] === 'number');
  if (numbers && !/\bLength\b/.test(one.type) && one.unit === undefined) return `${at}: has no @unit`;
  return undefined;
}

describe('every figure of the trade', () => {
  it('has a source, a unit and words, and stands on the page', () => {
    const faults = declared.map((one) => fault(one, standsFor(one)));
    expect(faults.filter(Boolean)).toEqual([]);
  });

  it('would be noticed without them', () => {
    const told = (text: string, value: unknown) => {
      const [one] = declaredIn('src/cloth/made-up.ts', text);
      return fault(one!, value);
    };
    expect(told('/** A tuck. */\nexport const TUCK = 4;', 4)).toContain('without a source');
    expect(told('export const TUCKS = [1, 2];', [1, 2])).toContain('without a source');
    const value = { value: 4, source: { kind: 'memory' } };
    expect(told('export const TUCK = { value: 4, source: memory };', value)).toContain('write its type');
    expect(told('const TUCK: Sourced<number> = x;', undefined)).toContain('not exported');
    expect(told('/** A tuck. */\nexport const TUCK: Sourced<number> = x;', value)).toContain(
      'not on the page',
    );
  });

  it('is the same on the page as in the program', () => {
    expect(gather(declared)).toEqual(shown);
    expect(ids.size).toBe(shown.figures.length);
    expect(shown.figures.length).toBeGreaterThan(60);
  });

  it('has a value that can be read and a source that is whole', () => {
    for (const { id, values } of shown.figures) {
      expect(values.length, id).toBeGreaterThan(0);
      for (const { is, source } of values) {
        for (const one of is) if (typeof one === 'number') expect(Number.isFinite(one), id).toBe(true);
        if (source.kind !== 'published') continue;
        expect(
          [source.title, source.year, source.where].filter((part) => part.trim() === ''),
          id,
        ).toEqual([]);
      }
    }
    const seen = seenShown(ENTRIES, CHECKS);
    const counts = countKinds({ ...shown, seen });
    console.log(
      `Where figures come from: ${shown.figures.length} figures and facts and ${shown.rules.length} rules and ${ENTRIES.length} things seen, with ${counts.all} entries: ${counts.published} published, ${counts.practice} common practice, ${counts.memory} from memory, ${counts.geometry} following from the measures`,
    );
  });
});

describe('every rule of the order', () => {
  it('stands on the page once, with a source, in words', () => {
    const names = shown.rules.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    expect(rules.map(({ id }) => id).filter((id) => !names.includes(id))).toEqual([]);
    for (const { name, meaning, reasons } of shown.rules) {
      expect(reasons.length, name).toBeGreaterThan(0);
      expect(meaning !== '' || reasons.every(({ because }) => because), name).toBe(true);
    }
  });
});

/** Titles of the sources that are written out in a file. */
function titlesIn(file: string): string[] {
  const { program } = parseSync(file, readFileSync(join(ROOT, file), 'utf8'));
  const titles: string[] = [];
  new Visitor({
    CallExpression: ({ callee, arguments: [title] }) => {
      if (callee.type !== 'Identifier' || callee.name !== 'published') return;
      if (title?.type === 'Literal' && typeof title.value === 'string') titles.push(title.value);
    },
  }).visit(program);
  return titles;
}

it('no published source is named in the arithmetic or the rules that the page leaves out', () => {
  const named = filesRead().flatMap(titlesIn);
  const onPage = new Set(
    [...shown.figures.flatMap(({ values }) => values), ...shown.rules.flatMap(({ reasons }) => reasons)].map(
      ({ source }) => (source.kind === 'published' ? source.title : ''),
    ),
  );
  expect(named.length).toBeGreaterThan(20);
  expect([...new Set(named)].filter((title) => !onPage.has(title))).toEqual([]);
});
