import type { Garment, Join } from '../outfit/outfit.ts';
import { CHECKS, ENTRIES } from './entries/all.ts';
import type { Entry, Place, ReferenceCheck, Role, View, Want } from './entry.ts';
import { fitted } from './fitted.ts';
import { LIES_OVER } from './places.ts';

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

/** Everything that can be seen on a garment, what turns up often first. */
function fitting(garment: Garment): readonly Entry[] {
  const { roles, levels } = fitted(garment);
  const of = (wanted: readonly Role[]): readonly string[] =>
    [...roles].flatMap(([piece, role]) => (wanted.includes(role) ? [piece] : []));
  /** Does the garment reach where this asks for a change? */
  const reaches = (want: Want): boolean => {
    if (want.kind === 'add') return true;
    const has = new Set(of(want.of).flatMap((piece) => [...(levels.get(piece)?.keys() ?? [])]));
    return (want.kind === 'width' ? [want.level] : [want.from, want.to]).every((level) => has.has(level));
  };
  const fits = (entry: Entry): boolean => {
    const has = having(garment, entry.needs);
    const pieces = of(entry.roles).filter((piece) => has?.has(piece) ?? true);
    const there = new Set(of(LIES_OVER[entry.place]));
    if (pieces.length === 0 || there.size === 0) return false;
    if (!entry.causes.some(({ wants }) => wants.every(reaches))) return false;
    if (!entry.roles.every((role) => role === 'frill')) return true;
    const seams = garment.joins.map(inHand).filter((hands) => hands.some((piece) => there.has(piece)));
    return seams.some((hands) => hands.some((piece) => pieces.includes(piece)));
  };
  return ENTRIES.filter(fits).sort((a, b) => TURN[a.often] - TURN[b.often]);
}

const found = new WeakMap<Garment, readonly Entry[]>();

/**
 * What can be seen on a garment: entries whose pieces it has and reaches far enough with, and which have what the entry
 * needs; what turns up often comes first.
 * @param place only there
 * @param view only from that side
 */
export function entriesFor(garment: Garment, place?: Place, view?: View): readonly Entry[] {
  // A drawing of the body asks for every place from every side.
  const all = found.get(garment) ?? fitting(garment);
  found.set(garment, all);
  return all.filter(
    (entry) =>
      (place === undefined || entry.place === place) && (view === undefined || entry.views.includes(view)),
  );
}

/** The checks that come before all else for this garment, most basic first. */
export function checksFor(garment: Garment): readonly ReferenceCheck[] {
  const here = new Set(fitted(garment).roles.values());
  return CHECKS.filter(({ roles }) => roles.length === 0 || roles.some((role) => here.has(role)));
}
