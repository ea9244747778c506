import type { Reckoning, ReckoningGroup } from '../../reckon/reckoning.ts';

const folded = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

/**
 * The reckonings in which every word of `query` is found: in the name, in what it tells, in its group, its fields or
 * the names of its figures. Those with all words in the name stand first; otherwise the order stays.
 */
export function search(
  all: readonly Reckoning[],
  query: string,
  figureNames: (id: string) => string,
): readonly Reckoning[] {
  const wanted = folded(query)
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);
  if (wanted.length === 0) return all;
  const within = (text: string): boolean => wanted.every((word) => text.includes(word));
  const first: Reckoning[] = [];
  const rest: Reckoning[] = [];
  for (const one of all) {
    if (within(folded(one.name))) first.push(one);
    else {
      const labels = Object.values(one.fields).map(({ label }) => label);
      const everything = [one.name, one.tells, one.group, ...labels, figureNames(one.id)].join(' ');
      if (within(folded(everything))) rest.push(one);
    }
  }
  return [...first, ...rest];
}

/** In groups, in the order in which the groups come up. */
export function grouped(all: readonly Reckoning[]): ReadonlyMap<ReckoningGroup, readonly Reckoning[]> {
  const groups = new Map<ReckoningGroup, Reckoning[]>();
  for (const one of all) {
    const group = groups.get(one.group);
    if (group) group.push(one);
    else groups.set(one.group, [one]);
  }
  return groups;
}
