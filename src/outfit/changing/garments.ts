import type { Result } from '../../length/result.ts';
import type { Outfit } from '../outfit.ts';
import type { UnitFault } from './units.ts';

/** An outfit with a garment more, and that garment's id. */
export interface WithGarment {
  readonly outfit: Outfit;
  readonly garment: string;
}

/** Adds a garment with nothing in it. */
export function addGarment(
  _outfit: Outfit,
  _told: { readonly name: string; readonly wearer?: string },
): WithGarment {
  throw new Error('not yet');
}

/** Gives a garment another name. */
export function renameGarment(_outfit: Outfit, _garment: string, _name: string): Outfit {
  throw new Error('not yet');
}

/** Says whom a garment is for; its units are made anew with their measures. */
export function setGarmentWearer(
  _outfit: Outfit,
  _garment: string,
  _wearer: string | undefined,
): Result<Outfit, readonly UnitFault[]> {
  throw new Error('not yet');
}

/** The outfit without a garment. */
export function removeGarment(_outfit: Outfit, _garment: string): Outfit {
  throw new Error('not yet');
}

/** The same garment once more, for the same wearer or another: same units, made anew with the other measures. */
export function duplicateGarment(
  _outfit: Outfit,
  _garment: string,
  _told: { readonly name: string; readonly wearer?: string },
): Result<WithGarment, readonly UnitFault[]> {
  throw new Error('not yet');
}
