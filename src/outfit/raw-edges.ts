import { longer, nm } from '../length/length.ts';
import { edgeLengths } from '../shape/measure.ts';
import { edgeName, FOLD } from './chains.ts';
import type { EdgeRef, Garment, Piece, Work } from './outfit.ts';

/** Edges that a work takes or finishes, as `piece.edge`. */
const takenBy = (work: Work): readonly string[] => {
  switch (work.kind) {
    case 'folded-band':
    case 'bind-edge':
    case 'press-edge':
      return [`${work.on}.${work.edge}`];
    case 'hem':
    case 'casing':
      return work.along.map(edgeName);
    case 'own':
      return (work.finishes ?? []).map(edgeName);
    default:
      return [];
  }
};

/** Short edges beside a folded band: they are folded in with it. */
function* foldedIn(garment: Garment): Iterable<string> {
  for (const work of garment.works) {
    const piece = garment.pieces.find(({ id }) => id === work.on);
    if (work.kind !== 'folded-band' || !piece) continue;
    const { edges } = piece.outline;
    const at = edges.findIndex(({ name }) => name === work.edge);
    const lengths = edgeLengths(piece.outline);
    for (const next of [edges.at(at - 1), edges[(at + 1) % edges.length]]) {
      const long = lengths.get(next?.name ?? '');
      if (long !== undefined && !longer(long, nm(work.firstTurn + work.secondTurn)))
        yield `${piece.id}.${next?.name}`;
    }
  }
}

/** Edges that lie inside, because they go into a seam with the same edge of another layer of their unit. */
function* layeredWith(garment: Garment, taken: ReadonlySet<string>): Iterable<string> {
  const layers = (piece: Piece): readonly Piece[] =>
    piece.unit === undefined
      ? []
      : garment.pieces.filter((other) => other !== piece && other.unit === piece.unit);
  for (const piece of garment.pieces) {
    const others = layers(piece);
    for (const { name } of piece.outline.edges)
      if (others.some((other) => taken.has(`${other.id}.${name}`))) yield `${piece.id}.${name}`;
  }
}

/** Edges that a seam, a turning, a binding or a step of the maker's own takes, as `piece.edge`. */
export function takenEdges(garment: Garment): ReadonlySet<string> {
  const taken = new Set(garment.works.flatMap(takenBy));
  for (const { this: one, to, catches, cover } of garment.joins) {
    for (const ref of [...one, ...to, ...catches.map(({ trim }) => trim), ...(cover ? [cover] : [])])
      taken.add(edgeName(ref));
  }
  return taken;
}

/** Edges of pieces that are not among those taken (as `piece.edge`), and no fold. */
export const looseEdges = (
  pieces: readonly Pick<Piece, 'id' | 'outline'>[],
  taken: ReadonlySet<string>,
): readonly EdgeRef[] =>
  pieces.flatMap(({ id, outline }) =>
    outline.edges
      .filter(({ name }) => name !== FOLD && !taken.has(`${id}.${name}`))
      .map(({ name }) => ({ piece: id, edge: name, other: false })),
  );

/**
 * Edges of a garment that are still raw when all that is described is done: in no seam, not turned, bound, covered or
 * finished by a work of the maker's own, and no fold.
 */
export function rawEdges(garment: Garment): readonly EdgeRef[] {
  const taken = takenEdges(garment);
  return looseEdges(
    garment.pieces,
    new Set([...taken, ...layeredWith(garment, taken), ...foldedIn(garment)]),
  );
}
