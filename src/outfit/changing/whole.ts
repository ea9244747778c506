import type { Result } from '../../length/result.ts';
import type { Cloth, Marker, Outfit, Wearer } from '../outfit.ts';
import type { Problem } from '../problem.ts';
import type { UnitFault } from './units.ts';

/** Changes what is said of the outfit as a whole. */
export function setAbout(
  _outfit: Outfit,
  _now: Partial<Pick<Outfit, 'name' | 'about' | 'event' | 'units'>>,
): Outfit {
  throw new Error('not yet');
}

/** Adds a cloth, or puts it in the stead of the one of the same id; units are made anew where it changes what will do. */
export function putCloth(_outfit: Outfit, _cloth: Cloth): Result<Outfit, readonly UnitFault[]> {
  throw new Error('not yet');
}

/** Takes a cloth out; refused, naming what is cut from it, while it is used, and where it is the only one. */
export function removeCloth(_outfit: Outfit, _id: string): Result<Outfit, readonly Problem[]> {
  throw new Error('not yet');
}

/** Adds a marker, or puts it in the stead of the one of the same id. */
export function putMarker(_outfit: Outfit, _marker: Marker): Outfit {
  throw new Error('not yet');
}

/** Takes a marker out; refused, naming what it marks, while it is used, and where it is the only one. */
export function removeMarker(_outfit: Outfit, _id: string): Result<Outfit, readonly Problem[]> {
  throw new Error('not yet');
}

/** Adds a wearer, or puts them in the stead of the one of the same id; the garments of that wearer are made anew. */
export function putWearer(_outfit: Outfit, _wearer: Wearer): Result<Outfit, readonly UnitFault[]> {
  throw new Error('not yet');
}

/** The same without making anything anew: for measures that are right though a unit cannot be made with them yet. */
export function keepWearer(_outfit: Outfit, _wearer: Wearer): Outfit {
  throw new Error('not yet');
}

/** Takes a wearer out; their garments are then for nobody in particular, and keep the figures they have. */
export function removeWearer(_outfit: Outfit, _id: string): Outfit {
  throw new Error('not yet');
}
