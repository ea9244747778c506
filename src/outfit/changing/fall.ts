import type { Garment, Gate, Join, Outfit, UnitUse, Work } from '../outfit.ts';
import { unitCalled } from '../units/all.ts';
import { findPlace } from '../units/place.ts';
import type { Fallen } from './fallen.ts';
import { problemsIn } from './faults-in.ts';
import { fromOn, remake } from './making.ts';
import { LISTS, ownsToo } from './part-lists.ts';

/** What is taken out to begin with: parts by hand, or whole units. */
export interface TakenOut {
  readonly parts?: readonly string[];
  readonly units?: readonly string[];
}

const KINDS = { pieces: 'piece', works: 'work', joins: 'join', gates: 'try-on' } as const;

/**
 * A garment without some of its parts, and without everything that cannot be without them: joins, works and try-ons
 * that name what is gone, and units that were put on it. What a unit brought and is now gone or changed counts as the
 * maker's own doing, so that it stays so when the unit is made anew.
 */
export function fall(
  outfit: Outfit,
  garment: Garment,
  out: TakenOut,
): { readonly garment: Garment; readonly also: readonly Fallen[] } {
  const also: Fallen[] = [];
  let here = garment;
  /** Ids of parts that the maker's doing took out or changed, by unit. */
  const own = new Map<string, string[]>();
  let dropped: string | undefined;
  const ownerOf = (id: string): UnitUse | undefined => here.units.find((use) => use.brought.includes(id));
  const claim = (use: UnitUse | undefined, id: string): void => {
    if (use) own.set(use.id, [...(own.get(use.id) ?? []), id]);
  };
  const without = (ids: ReadonlySet<string>): void => {
    for (const id of ids) claim(ownerOf(id), id);
    const rest = <T extends { readonly id: string }>(list: readonly T[]): readonly T[] =>
      list.filter((part) => !ids.has(part.id));
    here = {
      ...here,
      pieces: rest(here.pieces),
      works: rest(here.works),
      joins: rest(here.joins),
      gates: rest(here.gates),
    };
  };
  const offWith = (ids: readonly string[]): void => {
    const gone = here.units.filter((use) => ids.includes(use.id));
    here = { ...here, units: here.units.filter((use) => !gone.includes(use)) };
    const parts = new Set(gone.flatMap((use) => use.brought));
    without(parts);
    // Their trims leave the seams they were sewn into as those were made.
    here = {
      ...here,
      joins: here.joins.map((join) => {
        const catches = join.catches.filter(({ trim }) => !parts.has(trim.piece));
        return catches.length < join.catches.length ? { ...join, catches } : join;
      }),
    };
  };

  if (out.units) offWith(out.units);
  if (out.parts) without(new Set(out.parts));
  for (;;) {
    const { fallen, thinned } = hangingLoose(outfit, here);
    if (fallen.size > 0 || thinned.length > 0) {
      for (const { part, trim } of thinned) {
        if (trim === undefined) claim(ownerOf(part.id), part.id);
        else claim(ownerOf(trim), part.id);
        here = replaced(here, part);
      }
      for (const list of LISTS) {
        for (const { id, name } of here[list]) {
          if (fallen.has(id)) also.push({ kind: KINDS[list], id, name });
        }
      }
      without(fallen);
      continue;
    }
    const displaced = here.units.filter((use) => lostPlaces(garment, here, use).required.length > 0);
    if (displaced.length > 0) {
      for (const { id, name } of displaced) also.push({ kind: 'unit', id, name });
      offWith(displaced.map(({ id }) => id));
      continue;
    }
    const use = here.units.find((one) => lostPlaces(garment, here, one).optional.length > 0);
    if (!use) break;
    const lost = lostPlaces(garment, here, use).optional;
    const at = Object.fromEntries(Object.entries(use.at).filter(([name]) => !lost.includes(name)));
    here = { ...here, units: here.units.map((one) => (one === use ? { ...use, at } : one)) };
    dropped ??= use.id;
  }
  here = { ...here, units: here.units.map((use) => ownsToo(use, own.get(use.id) ?? [])) };
  // A unit that can do without a place it has lost is made anew without it.
  const again = dropped === undefined ? undefined : remake(outfit, here, fromOn(here, dropped));
  // What falls with a unit is named by the unit alone.
  const gone = new Set(
    garment.units.filter((use) => !here.units.some(({ id }) => id === use.id)).flatMap((use) => use.brought),
  );
  return {
    garment: again?.ok ? again.value.garment : here,
    also: also.filter((one) => one.kind === 'unit' || !gone.has(one.id)),
  };
}

/** Places of a unit that were there before and are not any more. */
function lostPlaces(
  before: Garment,
  now: Garment,
  use: UnitUse,
): { readonly required: readonly string[]; readonly optional: readonly string[] } {
  const places = Object.entries(unitCalled(use.unit)?.places ?? {});
  const lost = places.filter(([name, asked]) => {
    const written = use.at[name] ?? [];
    if (written.length === 0) return false;
    return findPlace(before, asked, written).ok && !findPlace(now, asked, written).ok;
  });
  return {
    required: lost.filter(([, asked]) => !asked.optional).map(([name]) => name),
    optional: lost.filter(([, asked]) => asked.optional).map(([name]) => name),
  };
}

/** Lists of a part that may lose an entry without the part falling. */
const MENTIONED: ReadonlySet<string> = new Set(['catches', 'after', 'tack', 'through', 'with', 'finishes']);

type Thinned = { readonly part: Join | Work | Gate; readonly trim?: string };

/** Parts that name what is not there: those that cannot be without it, and those that merely mention it. */
function hangingLoose(
  outfit: Outfit,
  garment: Garment,
): { readonly fallen: ReadonlySet<string>; readonly thinned: readonly Thinned[] } {
  const fallen = new Set<string>();
  const mentions = new Map<string, { readonly list: string; readonly at: number }[]>();
  for (const { at } of problemsIn(outfit, garment)) {
    const [, , , list = '', place = '', key = '', entry] = at.split('/');
    const part = LISTS.flatMap((one) => (one === list ? garment[one][Number(place)] : undefined)).find(
      Boolean,
    );
    if (!part) continue;
    const mere = MENTIONED.has(key) && entry !== undefined;
    if (mere) mentions.set(part.id, [...(mentions.get(part.id) ?? []), { list: key, at: Number(entry) }]);
    else fallen.add(part.id);
  }
  const thinned: Thinned[] = [];
  for (const [id, gone] of mentions) {
    if (fallen.has(id)) continue;
    const lost = (list: string, i: number): boolean => gone.some((one) => one.list === list && one.at === i);
    const left = <T>(list: readonly T[], name: string): readonly T[] => list.filter((_, i) => !lost(name, i));
    const join = garment.joins.find((one) => one.id === id);
    const gate = garment.gates.find((one) => one.id === id);
    const work = garment.works.find((one) => one.id === id);
    if (join) {
      const trim = join.catches.find((_, i) => lost('catches', i))?.trim.piece;
      thinned.push({
        part: { ...join, catches: left(join.catches, 'catches') },
        ...(trim !== undefined && { trim }),
      });
    } else if (gate) {
      thinned.push({ part: { ...gate, after: left(gate.after, 'after'), tack: left(gate.tack, 'tack') } });
    } else if (work?.kind === 'buttonholes') {
      thinned.push({ part: { ...work, through: left(work.through, 'through') } });
    } else if (work?.kind === 'own') {
      const { finishes } = work;
      const still = { ...work, with: left(work.with, 'with') };
      thinned.push({ part: finishes ? { ...still, finishes: left(finishes, 'finishes') } : still });
    }
  }
  return { fallen, thinned };
}

/** The garment with one of its joins, works or try-ons put in the stead of the old one. */
function replaced(garment: Garment, part: Join | Work | Gate): Garment {
  const swap = <T extends { readonly id: string }>(list: readonly T[]): readonly T[] =>
    // Ids are unique within a garment, so what has the id is of the part's own kind.
    list.map((one) => (one.id === part.id ? (part as unknown as T) : one));
  return { ...garment, works: swap(garment.works), joins: swap(garment.joins), gates: swap(garment.gates) };
}
