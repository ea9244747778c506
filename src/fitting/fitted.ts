import type { Length } from '../length/length.ts';
import type { Garment } from '../outfit/outfit.ts';
import { remembered } from './couplings.ts';
import type { Level, Role } from './entry.ts';
import { levelsOf } from './levels.ts';
import { rolesOf } from './roles.ts';
import { type Seams, seamsOf } from './seams.ts';
import type { growth } from './taking-part.ts';

/** A garment looked up for fitting: what its pieces are for, where their levels lie, which seams must stay alike. */
export interface Fitted {
  readonly roles: ReadonlyMap<string, Role>;
  readonly levels: ReadonlyMap<string, ReadonlyMap<Level, Length>>;
  readonly seams: Seams;
  /** How edges grow, read off once for each change. */
  readonly grown: typeof growth;
}

const known = new WeakMap<Garment, Fitted>();

/** Looks a garment up for fitting; a garment never changes, so it is done once. */
export function fitted(garment: Garment): Fitted {
  const found = known.get(garment);
  if (found) return found;
  const roles = rolesOf(garment);
  const made = { roles, levels: levelsOf(garment, roles), seams: seamsOf(garment), grown: remembered() };
  known.set(garment, made);
  return made;
}
