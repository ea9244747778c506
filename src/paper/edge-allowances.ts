import { type Length, longest, nm, zero } from '../length/length.ts';
import { FOLD } from '../outfit/chains.ts';
import type { Chain, Garment, Piece } from '../outfit/outfit.ts';

/** What becomes of an edge, as far as its cutting goes. */
export interface EdgeUse {
  readonly edge: string;
  /** Cloth to leave beyond the finished edge. */
  readonly allowance: Length;
  /** `sewn` to something, `turned` under along the edge, `bound` raw, the `fold` of a half piece, or `free`. */
  readonly how: 'sewn' | 'turned' | 'bound' | 'fold' | 'free';
  /** Where a fold is made before the one on the edge: how far beyond the edge. */
  readonly firstFold?: Length;
}

const within = (chain: Chain, piece: string, edge: string): boolean =>
  chain.some((ref) => ref.piece === piece && ref.edge === edge);

/** Depths of all seams that an edge is sewn in. */
function depthsAt(garment: Garment, piece: string, edge: string): readonly Length[] {
  return garment.joins.flatMap((join) => {
    const sewn = within(join.this, piece, edge) || within(join.to, piece, edge);
    const caught = join.catches.some(({ trim }) => trim.piece === piece && trim.edge === edge);
    return sewn || caught ? [join.depth] : [];
  });
}

/**
 * How much cloth to leave beyond each edge of a piece: the depth of its seam, measured as it is sewn, from the cut
 * edge; the turnings of a hem, a casing or a band; nothing on a fold or where a raw edge is bound; else the allowance
 * of the piece. Where an edge is in several of these, the most.
 */
export function edgeUses(garment: Garment, piece: Piece): readonly EdgeUse[] {
  return piece.outline.edges.map(({ name: edge }): EdgeUse => {
    if (piece.cut === 'fold' && edge === FOLD) return { edge, allowance: zero, how: 'fold' };
    const turns: Length[] = [];
    let firstFold: Length | undefined;
    let bound = false;
    for (const work of garment.works) {
      if (work.kind === 'folded-band' && work.on === piece.id && work.edge === edge) {
        turns.push(nm(work.firstTurn + work.secondTurn));
        firstFold = work.secondTurn;
      }
      if (work.kind === 'press-edge' && work.on === piece.id && work.edge === edge) turns.push(work.turn);
      if ((work.kind === 'hem' || work.kind === 'casing') && within(work.along, piece.id, edge))
        turns.push(work.turn);
      if (work.kind === 'bind-edge' && work.on === piece.id && work.edge === edge) bound = true;
    }
    const depths = depthsAt(garment, piece.id, edge);
    const [one, ...more] = [...turns, ...depths];
    if (one !== undefined) {
      const how = turns.length > 0 ? 'turned' : 'sewn';
      const allowance = longest(one, ...more);
      return { edge, allowance, how, ...(firstFold === undefined ? {} : { firstFold }) };
    }
    return bound
      ? { edge, allowance: zero, how: 'bound' }
      : { edge, allowance: piece.allowance, how: 'free' };
  });
}
