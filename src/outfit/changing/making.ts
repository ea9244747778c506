import { bad, good, type Result } from '../../length/result.ts';
import { readEdge, spell } from '../chains.ts';
import type { Garment, Join, Outfit, UnitUse } from '../outfit.ts';
import { unitCalled } from '../units/all.ts';
import type { Built } from '../units/unit.ts';
import { faultsIn } from './faults-in.ts';
import type { UnitFault } from './units.ts';

/** A garment whose units were made anew, and what each of them said. */
export interface Remade {
  readonly garment: Garment;
  readonly built: ReadonlyMap<string, Built>;
}

/** Ids of pieces and joins that a unit's places name. */
const namedBy = (use: UnitUse): readonly string[] =>
  Object.values(use.at)
    .flat()
    .map((written) => (written.includes('.') ? readEdge(written).piece : written));

/** The units in the order in which they can be made: as they were put on, but none before one that it is put on. */
export function inBuildingOrder(units: readonly UnitUse[]): readonly UnitUse[] {
  const owner = new Map(units.flatMap((use) => use.brought.map((id) => [id, use.id] as const)));
  const left = [...units];
  const order: UnitUse[] = [];
  while (left.length > 0) {
    const waiting = new Set(left.map((use) => use.id));
    const next = left.findIndex((use) =>
      namedBy(use).every((id) => {
        const needs = owner.get(id);
        return needs === undefined || needs === use.id || !waiting.has(needs);
      }),
    );
    order.push(...left.splice(Math.max(0, next), 1));
  }
  return order;
}

/** The units from one of them on, in building order; all where none is named. */
export function fromOn(garment: Garment, use?: string): ReadonlySet<string> {
  const order = inBuildingOrder(garment.units).map(({ id }) => id);
  return new Set(order.slice(use === undefined ? 0 : Math.max(0, order.indexOf(use))));
}

/** A list in the order in which its entries stood before; what is new comes after what it was made after. */
function inPlace<T extends { readonly id: string }>(
  was: readonly T[],
  now: readonly T[],
  runs: readonly (readonly T[])[],
): readonly T[] {
  const place = new Map(was.map(({ id }, i) => [id, i]));
  const known = now.filter(({ id }) => place.has(id));
  const list = known.toSorted((a, b) => (place.get(a.id) ?? 0) - (place.get(b.id) ?? 0));
  const after = (ids: readonly T[]): number =>
    list.findIndex(({ id }) => id === ids.findLast((one) => list.some((has) => has.id === one.id))?.id) + 1;
  const before = (ids: readonly T[]): number =>
    list.findIndex(({ id }) => id === ids.find((one) => place.has(one.id))?.id);
  runs.forEach((run, r) => {
    run.forEach((one, i) => {
      if (list.some(({ id }) => id === one.id)) return;
      // Beside its neighbours of the same unit; else between what was made before it and what was made after it.
      const at = [
        after(run.slice(0, i)),
        before(run.slice(i + 1)),
        after(runs.slice(0, r).flat()),
        before(runs.slice(r + 1).flat()),
      ];
      const found = at.find((where, way) => (way % 2 === 0 ? where > 0 : where >= 0));
      list.splice(found ?? list.length, 0, one);
    });
  });
  return list;
}

/** Catches of a join in the order in which they stood in it before. */
function catchesInPlace(join: Join, was: Join | undefined): Join {
  const place = new Map((was?.catches ?? []).map(({ trim }, i) => [spell(trim), i]));
  const at = (trim: string): number => place.get(trim) ?? Number.POSITIVE_INFINITY;
  const catches = join.catches.toSorted((a, b) => {
    const [x, y] = [at(spell(a.trim)), at(spell(b.trim))];
    return x === y ? 0 : x - y;
  });
  return { ...join, catches };
}

/**
 * Makes some units of a garment anew, one after the other, each against the garment as it stands then. What the maker
 * has changed or taken out by hand stays so. Everything keeps its place in the lists, so that little differs.
 */
export function remake(
  outfit: Outfit,
  garment: Garment,
  anew: ReadonlySet<string>,
): Result<Remade, readonly UnitFault[]> {
  const uses = inBuildingOrder(garment.units).filter((use) => anew.has(use.id) && unitCalled(use.unit));
  const remade = new Set(uses.flatMap((use) => use.brought));
  const trims = new Map(uses.flatMap((use) => use.brought.map((id) => [id, use] as const)));
  const others = <T extends { readonly id: string }>(list: readonly T[]): T[] =>
    list.filter(({ id }) => !remade.has(id));

  let standing: Garment = {
    ...garment,
    units: garment.units.filter((use) => !uses.includes(use)),
    pieces: others(garment.pieces),
    works: others(garment.works),
    joins: others(garment.joins).map((join) => ({
      ...join,
      catches: join.catches.filter(({ trim }) => !trims.has(trim.piece)),
    })),
    gates: others(garment.gates),
  };
  const built = new Map<string, Built>();
  const runs: Built[] = [];
  for (const use of uses) {
    const refuse = (say: string) =>
      bad([{ garment: garment.id, unit: use.id, name: use.name, faults: [{ field: '', say }] }]);
    const made = unitCalled(use.unit)?.build({ outfit, garment: standing }, use);
    if (!made) return refuse('This version does not know this part.');
    if (!made.ok) return bad([{ garment: garment.id, unit: use.id, name: use.name, faults: made.error }]);
    built.set(use.id, made.value);
    runs.push(made.value);
    const byHand = new Set(use.own);
    const merged = <T extends { readonly id: string }>(
      has: readonly T[],
      made: readonly T[],
      was: readonly T[],
    ) => [
      ...has,
      ...made.filter(({ id }) => !byHand.has(id)),
      ...was.filter(({ id }) => byHand.has(id) && use.brought.includes(id)),
    ];
    const { pieces, works, joins, gates, catches } = made.value;
    const ids = [...pieces, ...works, ...joins, ...gates].map(({ id }) => id);
    const lost = catches.find(
      ({ join }) => !byHand.has(join) && !standing.joins.some(({ id }) => id === join),
    );
    if (lost) return refuse('The seam that it is sewn into is not there.');
    const caughtIn = (join: Join): Join => {
      const caught = byHand.has(join.id)
        ? (garment.joins.find(({ id }) => id === join.id)?.catches ?? []).filter(
            ({ trim }) => trims.get(trim.piece) === use,
          )
        : catches.filter((one) => one.join === join.id).map((one) => one.caught);
      return caught.length > 0 ? { ...join, catches: [...join.catches, ...caught] } : join;
    };
    standing = {
      ...standing,
      units: [
        ...standing.units,
        { ...use, brought: [...ids, ...use.brought.filter((id) => byHand.has(id) && !ids.includes(id))] },
      ],
      pieces: merged(standing.pieces, pieces, garment.pieces),
      works: merged(standing.works, works, garment.works),
      joins: merged(standing.joins.map(caughtIn), joins, garment.joins.map(withoutLaterTrims(use, trims))),
      gates: merged(standing.gates, gates, garment.gates),
    };
  }
  const now: Garment = {
    ...standing,
    units: inPlace(garment.units, standing.units, []),
    pieces: inPlace(
      garment.pieces,
      standing.pieces,
      runs.map((run) => run.pieces.filter(isIn(standing.pieces))),
    ),
    works: inPlace(
      garment.works,
      standing.works,
      runs.map((run) => run.works.filter(isIn(standing.works))),
    ),
    joins: inPlace(
      garment.joins,
      standing.joins,
      runs.map((run) => standing.joins.filter(isIn(run.joins))),
    ).map((join) =>
      catchesInPlace(
        join,
        garment.joins.find(({ id }) => id === join.id),
      ),
    ),
    gates: inPlace(
      garment.gates,
      standing.gates,
      runs.map((run) => run.gates.filter(isIn(standing.gates))),
    ),
  };
  const faults = faultsIn(outfit, now);
  return faults.length > 0 ? bad(faults) : good({ garment: now, built });
}

/** A join that the maker has changed, with the trims of its own unit only: others are sewn in again when they are made. */
const withoutLaterTrims =
  (use: UnitUse, trims: ReadonlyMap<string, UnitUse>) =>
  (join: Join): Join => ({
    ...join,
    catches: join.catches.filter(({ trim }) => (trims.get(trim.piece) ?? use) === use),
  });

const isIn =
  (list: readonly { readonly id: string }[]) =>
  (one: { readonly id: string }): boolean =>
    list.some(({ id }) => id === one.id);
