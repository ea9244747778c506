import type { Garment, Join } from '../outfit/outfit.ts';
import { CHECKS, ENTRIES } from './entries/all.ts';
import type { Entry, Place, ReferenceCheck, Role, View } from './entry.ts';
import { LIES_OVER } from './places.ts';
import { rolesOf } from './roles.ts';

const TURN: Readonly<Record<Entry['often'], number>> = { often: 0, 'now and then': 1, seldom: 2 };

/** Ids of all pieces that a seam has in hand. */
const inHand = ({ this: one, to, catches }: Join): readonly string[] =>
  [...one, ...to, ...catches.map(({ trim }) => trim)].map(({ piece }) => piece);

/** Pieces that have what an entry needs before it can be seen at all. */
function having(garment: Garment, needs: Entry['needs']): ReadonlySet<string> | undefined {
  const worked = (...kinds: readonly string[]): ReadonlySet<string> =>
    new Set(
      garment.works.flatMap((work) =>
        kinds.includes(work.kind) ? [work.on, ...('through' in work ? work.through : [])] : [],
      ),
    );
  const sewn = (fits: (join: Join) => boolean): ReadonlySet<string> =>
    new Set(garment.joins.filter(fits).flatMap(inHand));
  switch (needs) {
    case undefined:
      return undefined;
    case 'tucks':
      return worked('tucks', 'crossed-tucks');
    case 'gathers':
      return worked('gather');
    case 'beads':
      return worked('lattice-beads');
    case 'buttons':
      return worked('buttonholes');
    case 'trim':
      return sewn(({ catches }) => catches.length > 0);
    case 'stretch':
      return sewn(({ seam }) => seam === 'stretch');
  }
}

/**
 * What can be seen on a garment: entries whose pieces it has, with what they need; what turns up often comes first.
 * @param place only there
 * @param view only from that side
 */
export function entriesFor(garment: Garment, place?: Place, view?: View): readonly Entry[] {
  const roles = rolesOf(garment);
  const of = (wanted: readonly Role[]): readonly string[] =>
    [...roles].flatMap(([piece, role]) => (wanted.includes(role) ? [piece] : []));
  const fits = (entry: Entry): boolean => {
    if (place !== undefined && entry.place !== place) return false;
    if (view !== undefined && !entry.views.includes(view)) return false;
    const has = having(garment, entry.needs);
    const pieces = of(entry.roles).filter((piece) => has?.has(piece) ?? true);
    const there = new Set(of(LIES_OVER[entry.place]));
    if (pieces.length === 0 || there.size === 0) return false;
    if (!entry.roles.every((role) => role === 'frill')) return true;
    const seams = garment.joins.map(inHand).filter((hands) => hands.some((piece) => there.has(piece)));
    return seams.some((hands) => hands.some((piece) => pieces.includes(piece)));
  };
  return ENTRIES.filter(fits).sort((a, b) => TURN[a.often] - TURN[b.often]);
}

/** The checks that come before all else for this garment, most basic first. */
export function checksFor(garment: Garment): readonly ReferenceCheck[] {
  const here = new Set(rolesOf(garment).values());
  return CHECKS.filter(({ roles }) => roles.length === 0 || roles.some((role) => here.has(role)));
}
