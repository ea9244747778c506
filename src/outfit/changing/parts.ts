import { bad, good, type Result } from '../../length/result.ts';
import { readEdge, spell } from '../chains.ts';
import type { EdgeRef, Garment, Gate, Join, Outfit, Piece, UnitUse, Work } from '../outfit.ts';
import type { Problem } from '../problem.ts';
import { fall } from './fall.ts';
import type { Fallen } from './fallen.ts';
import { problemsIn } from './faults-in.ts';
import { fromOn, inBuildingOrder, remake } from './making.ts';
import { garmentIn, ownsToo, put, withGarment } from './part-lists.ts';
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

const gone = (garment: string): Problem => ({
  at: '/garments',
  wrong: `the garment \`${garment}\` is not in the outfit any more`,
  cure: 'go back to the outfit and choose another',
});

const checked = (outfit: Outfit, garment: Garment): Result<Outfit, readonly Problem[]> => {
  const problems = problemsIn(outfit, garment);
  return problems.length > 0 ? bad(problems) : good(withGarment(outfit, garment));
};

/** Adds a part, or puts it in the stead of the one of the same id; refused with everything that would then not agree. */
export function putPart<L extends PartList>(
  outfit: Outfit,
  garment: string,
  list: L,
  part: PartOf[L],
): Result<Outfit, readonly Problem[]> {
  const here = garmentIn(outfit, garment);
  if (!here) return bad([gone(garment)]);
  const changedCatches = list === 'joins' ? trimsChanged(here, part as Join) : new Set<string>();
  const units = here.units.map((use) =>
    use.brought.includes(part.id) || use.brought.some((id) => changedCatches.has(id))
      ? ownsToo(use, [part.id])
      : use,
  );
  // The list holds parts of the kind that it is named for.
  const parts = put<{ readonly id: string }>(here[list], part);
  return checked(outfit, { ...here, units, [list]: parts });
}

/** Pieces whose edges are caught in a join otherwise than they were. */
function trimsChanged(garment: Garment, join: Join): ReadonlySet<string> {
  const old = garment.joins.find(({ id }) => id === join.id)?.catches ?? [];
  const said = (catches: Join['catches']) =>
    new Map(
      catches.map((one) => [JSON.stringify([spell(one.trim), one.basteTo, one.depth]), one.trim.piece]),
    );
  const [before, after] = [said(old), said(join.catches)];
  return new Set([
    ...[...before].filter(([key]) => !after.has(key)).map(([, piece]) => piece),
    ...[...after].filter(([key]) => !before.has(key)).map(([, piece]) => piece),
  ]);
}

/** Takes a part out, and everything that cannot be without it. */
export function removePart(
  outfit: Outfit,
  garment: string,
  id: string,
): { readonly outfit: Outfit; readonly also: readonly Fallen[] } {
  const here = garmentIn(outfit, garment);
  if (!here) return { outfit, also: [] };
  const fallen = fall(outfit, here, { parts: [id] });
  return { outfit: withGarment(outfit, fallen.garment), also: fallen.also };
}

const ID = /^[a-z0-9][a-z0-9-]{0,63}$/;

/** Gives an edge of a piece another name, everywhere it is named. */
export function renameEdge(
  outfit: Outfit,
  garment: string,
  piece: string,
  was: string,
  now: string,
): Result<Outfit, readonly Problem[]> {
  const here = garmentIn(outfit, garment);
  if (!here) return bad([gone(garment)]);
  const at = `/garments/${outfit.garments.indexOf(here)}/pieces/${here.pieces.findIndex(({ id }) => id === piece)}/outline/edges`;
  const old = here.pieces.find(({ id }) => id === piece);
  if (!old?.outline.edges.some(({ name }) => name === was)) {
    return bad([
      { at, wrong: `there is no edge \`${was}\` to rename`, cure: 'choose one of the piece’s edges' },
    ]);
  }
  if (!ID.test(now)) {
    return bad([
      {
        at,
        wrong: `\`${now}\` cannot be the name of an edge`,
        cure: 'use small letters, digits and hyphens, such as `front-end`',
      },
    ]);
  }
  const ref = <R extends EdgeRef>(one: R): R =>
    one.piece === piece && one.edge === was ? { ...one, edge: now } : one;
  const written = (one: string): string => {
    const edge = readEdge(one);
    return one.includes('.') && edge.piece === piece && edge.edge === was
      ? spell({ ...edge, edge: now })
      : one;
  };
  const pieces = here.pieces.map((one) => (one === old ? withEdge(old, was, now) : one));
  const works = here.works.map((work) => ofWork(work, piece, was, now, ref));
  const joins = here.joins.map((join) => ({
    ...join,
    this: join.this.map(ref),
    to: join.to.map(ref),
    catches: join.catches.map((caught) => ({ ...caught, trim: ref(caught.trim) })),
    ...(join.cover && { cover: ref(join.cover) }),
  }));
  const changed = new Set(
    [[here.pieces, pieces] as const, [here.works, works] as const, [here.joins, joins] as const].flatMap(
      ([before, after]) =>
        after.filter((one, i) => JSON.stringify(one) !== JSON.stringify(before[i])).map(({ id }) => id),
    ),
  );
  // A unit that was put on this edge makes its parts from the new name by itself; the others' are the maker's own now.
  const units = here.units.map((use) => {
    const at = Object.fromEntries(Object.entries(use.at).map(([name, edges]) => [name, edges.map(written)]));
    const placed = JSON.stringify(at) !== JSON.stringify(use.at);
    return placed
      ? { ...use, at }
      : ownsToo(
          use,
          use.brought.filter((id) => changed.has(id)),
        );
  });
  return checked(outfit, { ...here, units, pieces, works, joins });
}

const withEdge = (piece: Piece, was: string, now: string): Piece => ({
  ...piece,
  outline: {
    ...piece.outline,
    edges: piece.outline.edges.map((edge) => (edge.name === was ? { ...edge, name: now } : edge)),
  },
});

function ofWork(work: Work, piece: string, was: string, now: string, ref: (one: EdgeRef) => EdgeRef): Work {
  switch (work.kind) {
    case 'hem':
    case 'casing':
      return { ...work, along: work.along.map(ref) };
    case 'own':
      return work.finishes ? { ...work, finishes: work.finishes.map(ref) } : work;
    case 'tucks':
    case 'crossed-tucks':
      return work.on === piece && work.from === was ? { ...work, from: now } : work;
    case 'buttonholes':
      return work.on === piece && work.along === was ? { ...work, along: now } : work;
    default:
      return 'edge' in work && work.on === piece && work.edge === was ? { ...work, edge: now } : work;
  }
}

/** Which unit brought a part, if any. */
export const partOf = (garment: Garment, id: string): { readonly unit?: UnitUse } => {
  const unit = garment.units.find((use) => use.brought.includes(id));
  return unit ? { unit } : {};
};

/**
 * Goes back to the ready-made part where the maker had changed or taken out one that a unit brought; of a unit's own
 * id, to all of its parts.
 */
export function takeReady(outfit: Outfit, garment: string, id: string): Result<Outfit, readonly UnitFault[]> {
  const here = garmentIn(outfit, garment);
  if (!here) return good(outfit);
  const ready = here.units.map((use) =>
    use.id === id ? { ...use, own: [] } : { ...use, own: use.own.filter((one) => one !== id) },
  );
  const changed = { ...here, units: ready };
  const first = inBuildingOrder(changed.units).find((use) => {
    const old = here.units.find((one) => one.id === use.id);
    return old !== undefined && old.own.length !== use.own.length;
  });
  if (!first) return good(outfit);
  const remade = remake(outfit, changed, fromOn(changed, first.id));
  return remade.ok ? good(withGarment(outfit, remade.value.garment)) : remade;
}
