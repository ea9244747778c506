import { edgeName, lookUp } from '../chains.ts';
import { lower } from '../lower.ts';
import type { Chain, EdgeRef, Garment } from '../outfit.ts';
import { findPlace, freeEdges } from '../units/place.ts';
import type { PlaceAsked, Unit } from '../units/unit.ts';
import { edgeRuns, isClosed, spellRun } from './edge-runs.ts';

/** Somewhere a unit could be put: as a description spells it, and as the maker reads it. */
export interface PlaceChoice {
  readonly at: readonly string[];
  readonly say: string;
}

/** Is a name, or does it end in, one of those by which a place is usually known? `bodice-front` is a `front`. */
const isLike = (name: string, like: string): boolean => name === like || name.endsWith(`-${like}`);

/** The same of an edge, by its own name (`neck`) or by its piece's and its own (`front.neck`). */
function edgeLike(ref: EdgeRef, like: string): boolean {
  const [piece = '', edge] = like.split('.');
  return edge === undefined ? isLike(ref.edge, like) : isLike(ref.piece, piece) && isLike(ref.edge, edge);
}

/** What is like a name itself comes before what only ends in it. */
const exactFirst = <T>(list: readonly T[], exact: (one: T) => boolean): readonly T[] => [
  ...list.filter(exact),
  ...list.filter((one) => !exact(one)),
];

const inWords = (names: readonly string[]): string => {
  const distinct = [...new Set(names)];
  const last = distinct.pop() ?? '';
  return distinct.length > 0 ? `${distinct.join(', ')} and ${last}` : last;
};

/** `Front and back, neck, both sides`. */
function sayRun(garment: Garment, run: Chain): string {
  const pieces = run.map((ref) => garment.pieces.find(({ id }) => id === ref.piece)?.name ?? ref.piece);
  const [first = '', ...rest] = new Set(pieces);
  const edges = run.map((ref) => ref.edge.replaceAll('-', ' '));
  const both = run.some((ref) => ref.other) ? ', both sides' : '';
  return `${inWords([first, ...rest.map(lower)])}, ${inWords(edges)}${both}`;
}

/** A name that has it somewhere in it: `princess-front-centre` is a `front` where nothing else is. */
const isLoosely = (name: string, like: string): boolean => `-${name}-`.includes(`-${like}-`);

/** Edges that nothing has taken, nor the other layer of the same collar or cuff, which is sewn to them. */
function openEdges(garment: Garment): readonly EdgeRef[] {
  const free = freeEdges(garment);
  const names = new Set(free.map(edgeName));
  const layers = (a: string, b: string): boolean =>
    garment.joins.some((join) => {
      const [one, other] = [join.this, join.to].map((chain) => new Set(chain.map(({ piece }) => piece)));
      return (one?.has(a) && other?.has(b)) || (one?.has(b) && other?.has(a));
    });
  return free.filter((ref) => {
    const unit = garment.pieces.find(({ id }) => id === ref.piece)?.unit;
    return !garment.pieces.some(
      (piece) =>
        unit !== undefined &&
        piece.unit === unit &&
        piece.id !== ref.piece &&
        piece.outline.edges.some(({ name }) => name === ref.edge) &&
        !names.has(`${piece.id}.${ref.edge}`) &&
        layers(piece.id, ref.piece),
    );
  });
}

const joinsUp = (asked: PlaceAsked): boolean => asked.round === true || asked.ring === true;

function edgeChoices(
  garment: Garment,
  asked: PlaceAsked,
  taken: ReadonlySet<string>,
): readonly PlaceChoice[] {
  const looked = lookUp(garment);
  const free = openEdges(garment).filter((ref) => !taken.has(edgeName(ref)));
  const likely = asked.like.flatMap((like) =>
    exactFirst(
      edgeRuns(
        looked,
        free.filter((ref) => edgeLike(ref, like)),
        joinsUp(asked),
      ),
      (run) => run.every((ref) => ref.edge === like || edgeName(ref) === like),
    ),
  );
  if (asked.one) {
    const each = [...likely.flat(), ...free].filter((ref) => !ref.other);
    return each.map((ref) => ({ at: spellRun([ref]), say: sayRun(garment, [ref]) }));
  }
  const names = [...new Set(free.map((ref) => ref.edge))];
  const others = names.flatMap((name) =>
    edgeRuns(
      looked,
      free.filter((ref) => ref.edge === name),
      joinsUp(asked),
    ),
  );
  const also = asked.ring ? others.filter((run) => isClosed(looked, run)) : others;
  const singly = [...likely, ...others].flat().map((ref): Chain => [ref]);
  return [...likely, ...also, ...singly.filter(([ref]) => ref?.other === false)]
    .map((run) => ({ at: spellRun(run), say: sayRun(garment, run) }))
    .filter((choice) => findPlace(garment, asked, choice.at).ok);
}

function thingChoices(
  things: readonly { readonly id: string; readonly name: string }[],
  asked: PlaceAsked,
  together: boolean,
): readonly PlaceChoice[] {
  const likely = asked.like.map((like) =>
    exactFirst(
      things.filter(({ id }) => isLike(id, like)),
      ({ id }) => id === like,
    ),
  );
  const loosely = asked.like.flatMap((like) => things.filter(({ id }) => isLoosely(id, like)));
  const sets = together ? likely.filter((list) => list.length > 1) : [];
  return [...sets, ...[...likely.flat(), ...loosely, ...things].map((one) => [one])].map((list) => ({
    at: list.map(({ id }) => id),
    say: inWords(list.map(({ name }, i) => (i === 0 ? name : lower(name)))),
  }));
}

function choices(garment: Garment, asked: PlaceAsked, taken: ReadonlySet<string>): readonly PlaceChoice[] {
  const all =
    asked.kind === 'edges'
      ? edgeChoices(garment, asked, taken)
      : asked.kind === 'seam'
        ? thingChoices(garment.joins, asked, false)
        : thingChoices(garment.pieces, asked, asked.kind === 'pieces');
  const seen = new Set<string>();
  return all.filter(({ at }) => {
    const key = at.join(' ');
    return seen.has(key) ? false : seen.add(key);
  });
}

/** Where one place could be, the likeliest first. */
export const placeChoices = (garment: Garment, asked: PlaceAsked): readonly PlaceChoice[] =>
  choices(garment, asked, new Set());

/** Does a choice bear one of the names by which the place is usually known? */
const fits = (asked: PlaceAsked, { at: [first = ''] }: PlaceChoice): boolean => {
  const [piece = '', edge] = first.replace(/^other:/, '').split('.');
  return asked.like.some((like) =>
    edge === undefined ? isLoosely(piece, like) : edgeLike({ piece, edge, other: false }, like),
  );
};

/**
 * Where a unit would most likely be put, by the names of its places; a place that nothing fits is left out, and so is
 * one that the unit can do without beside a piece it is worked on. No edge is proposed twice. `meant` is an edge that it
 * should be put on, as `piece.edge`: a place that can take it does.
 */
export function suggestPlaces(
  garment: Garment,
  unit: Unit,
  meant?: string,
): Readonly<Record<string, readonly string[]>> {
  const found: Record<string, readonly string[]> = {};
  const taken = new Set<string>();
  const onPiece = Object.values(unit.places).some(({ kind }) => kind === 'piece');
  for (const [name, asked] of Object.entries(unit.places)) {
    if (asked.optional && onPiece) continue;
    const likely = choices(garment, asked, taken).filter((one) => fits(asked, one));
    const choice =
      (asked.kind === 'edges' && likely.find(({ at }) => meant !== undefined && at.includes(meant))) ||
      likely[0];
    if (!choice) continue;
    found[name] = choice.at;
    if (asked.kind === 'edges') for (const edge of choice.at) taken.add(edge.replace(/^other:/, ''));
  }
  return found;
}
