import { FOLD } from '../chains.ts';
import type { EdgeRef, Piece } from '../outfit.ts';
import { edgeOf } from './sleeve-made.ts';

/** Edges of pieces that are not among those that seams take (as `piece.edge`), and no fold. */
export const looseEdges = (
  pieces: readonly Pick<Piece, 'id' | 'outline'>[],
  taken: ReadonlySet<string>,
): readonly EdgeRef[] =>
  pieces.flatMap(({ id, outline }) =>
    outline.edges
      .filter(({ name }) => name !== FOLD && !taken.has(`${id}.${name}`))
      .map(({ name }) => edgeOf(id, name)),
  );
