import type { Garment, UnitUse } from '../../outfit/outfit.ts';

/** Any part of a garment, as its page is addressed. */
export interface PartLine {
  readonly kind: 'piece' | 'work' | 'join' | 'try-on';
  readonly id: string;
  readonly name: string;
}

/** The parts that one unit brought, or the maker's own. */
export interface PartGroup {
  /** Undefined for the maker's own parts. */
  readonly use: UnitUse | undefined;
  readonly parts: readonly PartLine[];
}

/** Every part of a garment, pieces first. */
export const partsOf = (garment: Garment): readonly PartLine[] =>
  (
    [
      ['piece', garment.pieces],
      ['work', garment.works],
      ['join', garment.joins],
      ['try-on', garment.gates],
    ] as const
  ).flatMap(([kind, list]) => list.map(({ id, name }) => ({ kind, id, name })));

/** The parts of a garment by the unit that brought them, and last the maker's own. */
export function partGroups(garment: Garment): readonly PartGroup[] {
  const parts = partsOf(garment);
  const brought = new Set(garment.units.flatMap((use) => use.brought));
  return [
    ...garment.units.map((use) => ({
      use,
      parts: parts.filter(({ id }) => use.brought.includes(id)),
    })),
    { use: undefined, parts: parts.filter(({ id }) => !brought.has(id)) },
  ];
}

const WORDS: Readonly<Record<PartLine['kind'], readonly [string, string]>> = {
  piece: ['piece', 'pieces'],
  work: ['work', 'works'],
  join: ['join', 'joins'],
  'try-on': ['try-on', 'try-ons'],
};

/** How many of each kind: `2 pieces, 1 work, 3 joins`. */
export function countWords(parts: readonly PartLine[]): string {
  const said = Object.entries(WORDS).flatMap(([kind, [one, many]]) => {
    const count = parts.filter((part) => part.kind === kind).length;
    return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  });
  return said.join(', ');
}
