/**
 * Runs when the app is built or tested, never in it: gives the words that were read from the source files their values,
 * by running those files, and asks the demonstration outfits what each rule of the order says.
 */
import type { Source } from '../../cloth/source.ts';
import type { Rule } from '../../order/rules/rule.ts';
import { runningOrder } from '../../order/running.ts';
import type { Constraint } from '../../order/step.ts';
import { readOutfit } from '../../outfit/reading.ts';
import type { Figure, Figures, RuleShown, Value } from './figures.ts';

/** What is declared at the top of a file; see .ci/constants.mjs. */
export interface Declared {
  readonly file: string;
  readonly name: string;
  readonly exported: boolean;
  readonly type: string;
  readonly meaning: string;
  readonly unit: string | undefined;
  readonly each: string | undefined;
  readonly rule: string | undefined;
  readonly ruleFrom: string | undefined;
}

const modules = import.meta.glob<Readonly<Record<string, unknown>>>(
  [
    '../../length/*.ts',
    '../../cloth/*.ts',
    '../../order/*.ts',
    '../../order/card/*.ts',
    '../../order/rules/*.ts',
    '../../order/undoing/*.ts',
    '../../fitting/*.ts',
  ],
  { eager: true },
);
const demos = import.meta.glob<unknown>('../../../demo-data/*.json', { eager: true, import: 'default' });

/** What a name stands for in its file. */
export const standsFor = ({ file, name }: Pick<Declared, 'file' | 'name'>): unknown =>
  modules[file.replace(/^src/, '../..')]?.[name];

const isObject = (thing: unknown): thing is Readonly<Record<string, unknown>> =>
  typeof thing === 'object' && thing !== null;
const isSource = (thing: unknown): thing is Source =>
  isObject(thing) && ['published', 'practice', 'memory', 'geometry'].includes(String(thing.kind));
const isSourced = (thing: unknown): thing is { readonly value: unknown; readonly source: Source } =>
  isObject(thing) && 'value' in thing && isSource(thing.source);

/** `stretch-leg-foot` is about `stretch leg`; all files of one technique begin alike. */
function techniqueOf(file: string): string {
  if (file.includes('/fitting/')) return 'Fitting';
  if (file.includes('/order/undoing/')) return 'Undoing';
  const name = file.replace(/^.*\//, '').replace(/\.ts$/, '');
  const words = name.startsWith('stretch-leg') ? 'stretch leg' : name.replaceAll('-', ' ');
  const where = file.includes('/order/card/') ? ' on the cards' : '';
  return words.charAt(0).toUpperCase() + words.slice(1) + where;
}

function plain(value: unknown): readonly number[] | readonly string[] | undefined {
  if (typeof value === 'number') return [value];
  if (typeof value === 'string') return [value];
  const list = value instanceof Set ? [...value] : value;
  if (!Array.isArray(list)) return undefined;
  if (list.every((one) => typeof one === 'number')) return list;
  return list.every((one) => typeof one === 'string') ? list : undefined;
}

/** What an entry of a table says of itself, each in words: `needle share 0.5`. */
const facts = (entry: unknown): readonly string[] =>
  isObject(entry)
    ? Object.entries(entry).map(
        ([name, one]) => `${name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)} ${one}`,
      )
    : [];

/** The values of a constant: one, or one for each entry of a table. */
function valuesOf(value: unknown, each: string | undefined): readonly Value[] {
  if (isSource(value)) return [{ is: [], source: value }];
  const named = (key: string): string => (each ?? '{}').replace('{}', key);
  if (isSourced(value)) {
    const is = plain(value.value);
    if (is) return [{ is, source: value.source }];
    if (!isObject(value.value)) return [];
    return Object.entries(value.value).map(([key, one]) => ({
      of: named(key),
      is: plain(one) ?? facts(one),
      source: value.source,
    }));
  }
  if (!isObject(value)) return [];
  const entries = Object.entries(value);
  if (entries.length === 0 || !entries.every(([, one]) => isSourced(one))) return [];
  return entries.flatMap(([key, one]) =>
    valuesOf(one, undefined).map((found) => ({ of: named(key), ...found })),
  );
}

/** The source in the words `Source: title (year), where.` at the end of a doc comment, where a room may not import one. */
function writtenSource(meaning: string): { readonly meaning: string; readonly source: Source } | undefined {
  const [, words, title, year, where] = /^(.*?) Source: (.+?) \((\d{4})\), (.+?)\.?$/.exec(meaning) ?? [];
  if (words === undefined || title === undefined || year === undefined || where === undefined)
    return undefined;
  return { meaning: words, source: { kind: 'published', title, year, where } };
}

function figureOf(declared: Declared): Figure | undefined {
  const { file, name, type, meaning, unit } = declared;
  if (file === 'src/cloth/source.ts') return undefined; // kinds of source, not figures
  const value = standsFor(declared);
  const about = { id: `${file.replace(/^src\//, '')} ${name}`, technique: techniqueOf(file) };
  if (typeof value === 'number') {
    const written = writtenSource(meaning);
    if (!written) return undefined;
    return {
      ...about,
      meaning: written.meaning,
      unit: unit ?? '',
      values: [{ is: [value], source: written.source }],
    };
  }
  const values = valuesOf(value, declared.each);
  if (values.length === 0) return undefined;
  return { ...about, meaning, unit: /\bLength\b/.test(type) ? 'length' : (unit ?? ''), values };
}

/** Every constraint that the demonstration outfits give. */
function constraints(): readonly Constraint[] {
  return Object.entries(demos).flatMap(([file, data]) => {
    const outfit = readOutfit(data);
    if (!outfit.ok) throw new Error(`${file} cannot be read.`);
    const running = runningOrder(outfit.value);
    if (!running.ok) throw new Error(`The order of ${file} runs in a ring.`);
    return running.value.constraints;
  });
}

const isRule = (value: unknown): value is Rule =>
  isObject(value) && typeof value.id === 'string' && isSource(value.source);

function rulesOf(declared: readonly Declared[]): readonly RuleShown[] {
  const found = new Map<string, { meaning: string; reasons: Map<string, RuleShown['reasons'][number]> }>();
  const at = (name: string) => {
    const rule = found.get(name) ?? { meaning: '', reasons: new Map() };
    found.set(name, rule);
    return rule;
  };
  for (const one of declared) {
    if (one.rule === undefined) continue;
    const rule = at(one.rule);
    rule.meaning ||= one.meaning;
    const value = standsFor(one);
    if (isRule(value)) rule.reasons.set(JSON.stringify(value.source), { source: value.source });
  }
  for (const { rule, because, source } of constraints()) {
    const { reasons } = at(rule);
    const key = JSON.stringify(source);
    if (reasons.get(key)?.because === undefined) reasons.set(key, { because, source });
  }
  // No demonstration has had anything taken back yet: such a rule shows its source alone.
  for (const { rule, ruleFrom: kind } of declared) {
    const own = { kind };
    if (rule !== undefined && isSource(own) && at(rule).reasons.size === 0)
      at(rule).reasons.set(kind ?? '', { source: own });
  }
  return [...found].map(([name, { meaning, reasons }]) => ({
    name,
    meaning,
    reasons: [...reasons.values()],
  }));
}

/** The whole list, from what is declared. */
export function gather(declared: readonly Declared[]): Figures {
  return {
    figures: declared.filter(({ exported }) => exported).flatMap((one) => figureOf(one) ?? []),
    rules: rulesOf(declared),
  };
}
