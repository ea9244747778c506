import { type Source, writeSource } from '../../cloth/source.ts';
import type { Figure, Listing, RuleShown, SeenShown } from './figures.ts';

/** Kinds of source, the surest first. */
export const kinds = [
  'published',
  'practice',
  'memory',
  'geometry',
] as const satisfies readonly Source['kind'][];

/** What a kind of source is called on the page. */
export const kindName: Readonly<Record<Source['kind'], string>> = {
  published: 'Published',
  practice: 'Common practice',
  memory: 'From memory',
  geometry: 'Follows from the measures',
};

/** What is asked of the list. */
export interface Wanted {
  /** Words that must all stand in an entry, its technique or its source. */
  readonly words: string;
  readonly kind: Source['kind'] | 'all';
}

/** Every source in the list, once for each value, fact or reason that has it. */
const sourcesIn = ({ figures, rules, seen }: Listing): readonly Source[] => [
  ...figures.flatMap(({ values }) => values.map(({ source }) => source)),
  ...rules.flatMap(({ reasons }) => reasons.map(({ source }) => source)),
  ...seen.flatMap(({ lines }) => lines.map(({ source }) => source)),
];

/** How many entries have each kind of source, and all together. */
export function countKinds(list: Listing): Readonly<Record<Source['kind'] | 'all', number>> {
  const counts = { all: 0, published: 0, practice: 0, memory: 0, geometry: 0 };
  for (const { kind } of sourcesIn(list)) {
    counts.all += 1;
    counts[kind] += 1;
  }
  return counts;
}

/** What of the list is wanted: tables keep only the entries that are, and what has none left is gone. */
export function find(list: Listing, { words, kind }: Wanted): Listing {
  const asked = words.toLowerCase().split(/\s+/).filter(Boolean);
  const has = (text: string, source: Source): boolean => {
    if (kind !== 'all' && source.kind !== kind) return false;
    const all = `${text} ${writeSource(source)}`.toLowerCase();
    return asked.every((word) => all.includes(word));
  };
  const figures = list.figures.flatMap((figure): readonly Figure[] => {
    const { technique, meaning, values } = figure;
    const left = values.filter(({ of = '', is, source }) =>
      has(`${technique} ${meaning} ${of} ${typeof is[0] === 'string' ? is.join(' ') : ''}`, source),
    );
    return left.length === 0 ? [] : [{ ...figure, values: left }];
  });
  const rules = list.rules.flatMap((rule): readonly RuleShown[] => {
    const left = rule.reasons.filter(({ because = '', source }) =>
      has(`${rule.name} ${rule.meaning} ${because} rule order`, source),
    );
    return left.length === 0 ? [] : [{ ...rule, reasons: left }];
  });
  const seen = list.seen.flatMap((one): readonly SeenShown[] => {
    const left = one.lines.filter(({ words: said = '', cure = '', source }) =>
      has(`${one.name} ${one.place} ${said} ${cure} try-on`, source),
    );
    return left.length === 0 ? [] : [{ ...one, lines: left }];
  });
  return { figures, rules, seen };
}

/** Figures by technique, in the order of the list; files of one technique together. */
export function byTechnique(figures: readonly Figure[]): ReadonlyMap<string, readonly Figure[]> {
  const groups = new Map<string, Figure[]>();
  for (const figure of figures) {
    const group = groups.get(figure.technique) ?? [];
    group.push(figure);
    groups.set(figure.technique, group);
  }
  return new Map([...groups].sort(([a], [b]) => a.localeCompare(b, 'en')));
}
