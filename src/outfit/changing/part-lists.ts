import type { Garment, Outfit, UnitUse } from '../outfit.ts';

/** The lists of a garment in which its parts stand. */
export const LISTS = ['pieces', 'works', 'joins', 'gates'] as const;

/** The garment of that id. */
export const garmentIn = (outfit: Outfit, id: string): Garment | undefined =>
  outfit.garments.find((garment) => garment.id === id);

/** The outfit with one garment put in the stead of the one of the same id. */
export const withGarment = (outfit: Outfit, garment: Garment): Outfit => ({
  ...outfit,
  garments: outfit.garments.map((one) => (one.id === garment.id ? garment : one)),
});

/** A list with one entry put in the stead of the one of the same id, or added at its end. */
export const put = <T extends { readonly id: string }>(list: readonly T[], one: T): readonly T[] =>
  list.some(({ id }) => id === one.id) ? list.map((old) => (old.id === one.id ? one : old)) : [...list, one];

/** The unit with some more parts that are the maker's own now. */
export const ownsToo = (use: UnitUse, ids: Iterable<string>): UnitUse => {
  const own = [...new Set([...use.own, ...ids])];
  return own.length === use.own.length ? use : { ...use, own };
};
