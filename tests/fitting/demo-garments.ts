import type { Level, Role } from '../../src/fitting/entry.ts';
import { levelsOf } from '../../src/fitting/levels.ts';
import { rolesOf } from '../../src/fitting/roles.ts';
import type { Length } from '../../src/length/length.ts';
import type { Garment, Outfit, Piece } from '../../src/outfit/outfit.ts';
import { demo, demos } from '../outfit/demo-files.ts';

/** A garment of a demonstration, with its outfit. */
export function demoGarment(name: (typeof demos)[number], id: string): { outfit: Outfit; garment: Garment } {
  const outfit = demo(name);
  const garment = outfit.garments.find((one) => one.id === id);
  if (!garment) throw new Error(`no garment ${id}`);
  return { outfit, garment };
}

/** A piece with what it is for and where its levels are. */
export interface Known {
  readonly piece: Piece;
  readonly role: Role;
  readonly levels: ReadonlyMap<Level, Length>;
}

/** The demonstrations, the one of many kinds of pieces first. */
const ORDER = [...demos].sort(
  (a, b) => Number(b === 'harbour-clockmaker') - Number(a === 'harbour-clockmaker'),
);

/** All pieces of all demonstrations. */
export const allPieces: readonly Known[] = ORDER.flatMap((name) =>
  demo(name).garments.flatMap((garment) => {
    const roles = rolesOf(garment);
    const levels = levelsOf(garment, roles);
    return garment.pieces.map((piece) => ({
      piece,
      role: roles.get(piece.id)!,
      levels: levels.get(piece.id)!,
    }));
  }),
);

/** One piece of them. */
export function pieceOf(role: Role, id: string): Known {
  const found = allPieces.find((one) => one.piece.id === id && one.role === role);
  if (!found) throw new Error(`no ${role} ${id}`);
  return found;
}
