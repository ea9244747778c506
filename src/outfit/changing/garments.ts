import { bad, good, type Result } from '../../length/result.ts';
import type { Garment, Outfit } from '../outfit.ts';
import { keepFigures } from './keep-figures.ts';
import { fromOn, remake } from './making.ts';
import { freshId } from './new-outfit.ts';
import { garmentIn, withGarment } from './part-lists.ts';
import { makeAnew, type UnitFault } from './units.ts';

/** An outfit with a garment more, and that garment's id. */
export interface WithGarment {
  readonly outfit: Outfit;
  readonly garment: string;
}

/** Adds a garment with nothing in it. */
export function addGarment(
  outfit: Outfit,
  told: { readonly name: string; readonly wearer?: string },
): WithGarment {
  const id = freshId(
    outfit.garments.map((garment) => garment.id),
    told.name,
  );
  const { name, wearer } = told;
  const garment: Garment = {
    id,
    name,
    ...(wearer !== undefined && { wearer }),
    units: [],
    pieces: [],
    works: [],
    joins: [],
    gates: [],
  };
  return { outfit: { ...outfit, garments: [...outfit.garments, garment] }, garment: id };
}

/** Gives a garment another name. */
export function renameGarment(outfit: Outfit, garment: string, name: string): Outfit {
  const here = garmentIn(outfit, garment);
  return here ? withGarment(outfit, { ...here, name }) : outfit;
}

const forWearer = ({ wearer: _, ...garment }: Garment, wearer: string | undefined): Garment => ({
  ...garment,
  ...(wearer !== undefined && { wearer }),
});

/** Says whom a garment is for; its units are made anew with their measures. For nobody, they keep the figures they have. */
export function setGarmentWearer(
  outfit: Outfit,
  garment: string,
  wearer: string | undefined,
): Result<Outfit, readonly UnitFault[]> {
  const here = garmentIn(outfit, garment);
  if (!here || here.wearer === wearer) return good(outfit);
  const now = withGarment(outfit, forWearer(here, wearer));
  return wearer === undefined ? good(keepFigures(outfit, now, garment)) : makeAnew(now, garment);
}

/** The outfit without a garment. */
export const removeGarment = (outfit: Outfit, garment: string): Outfit => ({
  ...outfit,
  garments: outfit.garments.filter(({ id }) => id !== garment),
});

/**
 * The same garment once more, for the same wearer or another: same units, made anew where the measures are others.
 * Steps that are done count for the first one alone.
 */
export function duplicateGarment(
  outfit: Outfit,
  garment: string,
  told: { readonly name: string; readonly wearer?: string },
): Result<WithGarment, readonly UnitFault[]> {
  const here = garmentIn(outfit, garment);
  if (!here) return bad([]);
  const id = freshId(
    outfit.garments.map((one) => one.id),
    told.name,
  );
  const wearer = told.wearer ?? here.wearer;
  const copy: Garment = { ...forWearer(here, wearer), id, name: told.name };
  const place = outfit.garments.indexOf(here) + 1;
  const now: Outfit = { ...outfit, garments: outfit.garments.toSpliced(place, 0, copy) };
  if (wearer === here.wearer) return good({ outfit: now, garment: id });
  const remade = remake(now, copy, fromOn(copy));
  return remade.ok
    ? good({ outfit: withGarment(now, remade.value.garment), garment: id })
    : bad(remade.error);
}
