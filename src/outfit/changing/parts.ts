import type { Result } from '../../length/result.ts';
import type { Garment, Gate, Join, Outfit, Piece, UnitUse, Work } from '../outfit.ts';
import type { Problem } from '../problem.ts';
import type { Fallen } from './fallen.ts';
import type { UnitFault } from './units.ts';

/** The lists of a garment that a part can stand in. */
export interface PartOf {
  readonly pieces: Piece;
  readonly works: Work;
  readonly joins: Join;
  readonly gates: Gate;
}
/** Name of one of these lists. */
export type PartList = keyof PartOf;

/** Adds a part, or puts it in the stead of the one of the same id; refused with everything that would then not agree. */
export function putPart<L extends PartList>(
  _outfit: Outfit,
  _garment: string,
  _list: L,
  _part: PartOf[L],
): Result<Outfit, readonly Problem[]> {
  throw new Error('not yet');
}

/** Takes a part out, and everything that cannot be without it. */
export function removePart(
  _outfit: Outfit,
  _garment: string,
  _id: string,
): { readonly outfit: Outfit; readonly also: readonly Fallen[] } {
  throw new Error('not yet');
}

/** Gives an edge of a piece another name, everywhere it is named. */
export function renameEdge(
  _outfit: Outfit,
  _garment: string,
  _piece: string,
  _was: string,
  _now: string,
): Result<Outfit, readonly Problem[]> {
  throw new Error('not yet');
}

/** Which unit brought a part, if any. */
export const partOf = (_garment: Garment, _id: string): { readonly unit?: UnitUse } => {
  throw new Error('not yet');
};

/** Goes back to the ready-made part where the maker had changed or taken out one that a unit brought. */
export function takeReady(
  _outfit: Outfit,
  _garment: string,
  _id: string,
): Result<Outfit, readonly UnitFault[]> {
  throw new Error('not yet');
}
