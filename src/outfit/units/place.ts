import { add, type Length } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { edgeLengths } from '../../shape/measure.ts';
import { crossings, edgeName, lookUp, readEdge, spell } from '../chains.ts';
import type { Chain, EdgeRef, Garment, Piece } from '../outfit.ts';
import { looseEdges, takenEdges } from '../raw-edges.ts';
import { nearest } from '../suggest.ts';
import type { PlaceAsked, Placed } from './unit.ts';

/** Along the finished seam line, all edges of a chain together; an edge that is not there counts nothing. */
export function chainLength(garment: Garment, chain: Chain): Length {
  const pieces = new Map(garment.pieces.map((piece) => [piece.id, piece]));
  const lengths = new Map<string, ReadonlyMap<string, Length>>();
  return add(
    ...chain.flatMap((ref) => {
      const piece = pieces.get(ref.piece);
      if (!piece) return [];
      const known = lengths.get(ref.piece) ?? edgeLengths(piece.outline);
      lengths.set(ref.piece, known);
      const long = known.get(ref.edge);
      return long === undefined ? [] : [long];
    }),
  );
}

/** Finds what a place names in a garment; refused, in words, where it is not there or does not lie end to end. */
export function findPlace(
  garment: Garment,
  asked: PlaceAsked,
  written: readonly string[],
): Result<Placed, string> {
  const looked = lookUp(garment);
  const missing = (what: string, known: Iterable<string>): Result<Placed, string> => {
    const near = nearest(what, known);
    return bad(
      `“${what}” is not in ${garment.name}${near === undefined ? '.' : `; did you mean “${near}”?`} Choose ${asked.label} again.`,
    );
  };
  const pieces: Piece[] = [];
  switch (asked.kind) {
    case 'piece':
    case 'pieces': {
      for (const id of written) {
        const piece = looked.pieces.get(id);
        if (!piece) return missing(id, looked.pieces.keys());
        pieces.push(piece);
      }
      const [piece] = pieces;
      if (!piece) return bad(`Choose ${asked.label}.`);
      return good(asked.kind === 'piece' ? { kind: 'piece', piece } : { kind: 'pieces', pieces });
    }
    case 'seam': {
      const [id = ''] = written;
      const join = looked.joins.get(id);
      return join
        ? good({ kind: 'seam', join, length: chainLength(garment, join.this) })
        : missing(id, looked.joins.keys());
    }
    case 'edges': {
      const chain = written.map(readEdge);
      for (const ref of chain) {
        const piece = looked.pieces.get(ref.piece);
        if (!piece || !looked.beside.has(edgeName(ref))) return missing(spell(ref), looked.beside.keys());
        if (!pieces.includes(piece)) pieces.push(piece);
      }
      for (const { from, to, over } of crossings(looked, chain, asked.ring === true)) {
        if (over.length === 0) {
          return bad(
            `${saidEdge(garment, from)} and ${saidEdge(garment, to)} do not lie end to end: no seam joins them there. Sew their pieces together first, or leave one out.`,
          );
        }
      }
      return good({ kind: 'edges', chain, length: chainLength(garment, chain), pieces });
    }
  }
}

/** An edge as the maker reads it: `Front, neck`. */
export function saidEdge(garment: Garment, ref: EdgeRef): string {
  const piece = garment.pieces.find((one) => one.id === ref.piece);
  return `${piece?.name ?? ref.piece}, ${ref.edge.replaceAll('-', ' ')}${ref.other ? ' (the other side)' : ''}`;
}

/** Edges of a garment that no seam, no hem and no step of the maker’s own has taken yet, and no fold: where something can still be put on. */
export const freeEdges = (garment: Garment): readonly EdgeRef[] =>
  looseEdges(garment.pieces, takenEdges(garment));
