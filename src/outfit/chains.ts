import type { Chain, EdgeRef, Garment, Join, Piece } from './outfit.ts';

/** Name of the edge on which a folded piece is mirrored. */
export const FOLD = 'fold';

/** A garment with its pieces, edges and joins looked up by name. */
export interface Looked {
  readonly garment: Garment;
  readonly pieces: ReadonlyMap<string, Piece>;
  /** Edges before and after an edge, going round the piece, by `piece.edge`. */
  readonly beside: ReadonlyMap<string, readonly [string, string]>;
  readonly joins: ReadonlyMap<string, Join>;
}

/** `piece.edge`. */
export const edgeName = (ref: Pick<EdgeRef, 'piece' | 'edge'>): string => `${ref.piece}.${ref.edge}`;

/** `piece.edge`, with `other:` before it where the mirrored mate is meant: as a file spells it. */
export const spell = (ref: EdgeRef): string => (ref.other ? `other:${edgeName(ref)}` : edgeName(ref));

/** An edge as a file spells it, read: `other:front.neck`. */
export function readEdge(written: string): EdgeRef {
  const other = written.startsWith('other:');
  const [piece = '', edge = ''] = written.slice(other ? 6 : 0).split('.');
  return { piece, edge, other };
}

/** Looks up everything by name once, so that what follows is quick. */
export function lookUp(garment: Garment): Looked {
  const pieces = new Map<string, Piece>();
  const beside = new Map<string, readonly [string, string]>();
  for (const piece of garment.pieces) {
    pieces.set(piece.id, piece);
    const edges = piece.outline.edges;
    edges.forEach((edge, i) => {
      const previous = edges[(i + edges.length - 1) % edges.length];
      const next = edges[(i + 1) % edges.length];
      if (previous && next) beside.set(`${piece.id}.${edge.name}`, [previous.name, next.name]);
    });
  }
  return { garment, pieces, beside, joins: new Map(garment.joins.map((join) => [join.id, join])) };
}

/** True where one edge follows the other round the same piece; over the fold, an edge follows its own mirror image. */
function adjoin(looked: Looked, a: EdgeRef, b: EdgeRef): boolean {
  if (a.piece !== b.piece) return false;
  const beside = looked.beside.get(edgeName(a));
  if (!beside) return false;
  if (a.edge === b.edge) return a.other !== b.other && beside.includes(FOLD);
  return a.other === b.other && beside.includes(b.edge);
}

/** Which edges are meant: `loose` counts one that does not exist as any edge. */
type Held = 'loose' | 'strict';

const isAny = (looked: Looked, ref: EdgeRef, held: Held): boolean =>
  held === 'loose' && !looked.beside.has(edgeName(ref));

/** Where along a chain an edge of it meets `ref` at a corner. */
function meetings(
  looked: Looked,
  chain: Chain,
  ref: EdgeRef,
  held: Held,
): ReadonlySet<'first' | 'last' | 'between'> {
  const found = new Set<'first' | 'last' | 'between'>();
  const beside = looked.beside.get(edgeName(ref));
  chain.forEach((c, i) => {
    if (!(c.piece === ref.piece && beside?.includes(c.edge)) && !isAny(looked, c, held)) return;
    if (i === 0) found.add('first');
    if (i === chain.length - 1) found.add('last');
    if (i > 0 && i < chain.length - 1) found.add('between');
  });
  return found;
}

/**
 * True where a join sews two edges' pieces together at a corner of both: the edges meet its two chains at the same
 * place along them, since both chains of a join run the same way.
 */
const ties = (looked: Looked, join: Join, a: EdgeRef, b: EdgeRef, held: Held = 'strict'): boolean =>
  overlap(meetings(looked, join.this, a, held), meetings(looked, join.to, b, held)) ||
  overlap(meetings(looked, join.this, b, held), meetings(looked, join.to, a, held));

const overlap = (a: ReadonlySet<unknown>, b: ReadonlySet<unknown>): boolean =>
  [...a].some((place) => b.has(place));

/** True where a join's own chains pass over another join. */
const runsOver = (looked: Looked, join: Join, under: Join): boolean =>
  [join.this, join.to].some((chain) =>
    chain.some((a, i) => {
      const b = chain[i + 1];
      return b !== undefined && a.piece !== b.piece && ties(looked, under, a, b);
    }),
  );

/**
 * How two neighbours in a chain come to lie end to end: `one` on the same piece (or sewn in turn, where edges of one
 * piece stand apart), by the joins that sew the pieces together at that corner, or not at all (an empty list). Two
 * edges may meet at both their ends (an armhole at shoulder and side). A ring needs both; an open run needs one: not
 * a join that itself runs over what is `carrying` the chain, and else the one described first.
 */
export function link(
  looked: Looked,
  a: EdgeRef,
  b: EdgeRef,
  ring: boolean,
  carrying?: string,
): 'one' | readonly Join[] {
  const samePiece = a.piece === b.piece && a.other === b.other;
  if (samePiece || adjoin(looked, a, b)) return 'one';
  const at = looked.garment.joins.filter((join) => join.id !== carrying && ties(looked, join, a, b));
  if (ring || at.length < 2) return at;
  const carrier = looked.joins.get(carrying ?? '');
  const free = carrier ? at.filter((join) => !runsOver(looked, join, carrier)) : at;
  return (free.length > 0 ? free : at).slice(0, 1);
}

/** A place where one chain passes over a join. */
export interface Crossing {
  readonly from: EdgeRef;
  readonly to: EdgeRef;
  /** The joins that make the two edges one run; empty where nothing does, and the chain is broken there. */
  readonly over: readonly Join[];
}

/** Every place where a chain passes from one piece to another, in order along it; a ring also passes from end to start. */
export function crossings(
  looked: Looked,
  chain: Chain,
  ring: boolean,
  carrying?: string,
): readonly Crossing[] {
  const found: Crossing[] = [];
  const last = ring ? chain.length : chain.length - 1;
  for (let i = 0; i < last; i += 1) {
    const a = chain[i];
    const b = chain[(i + 1) % chain.length];
    if (!a || !b) continue;
    // A ring of one edge closes on itself: the two ends of a sleeve cap meet at the sleeve's own long seam.
    const over =
      ring && chain.length === 1 ? closers(looked, a, carrying) : link(looked, a, b, ring, carrying);
    if (over !== 'one') found.push({ from: a, to: b, over });
  }
  return found;
}

/** Joins between the two edges that flank `ref` on one piece: they close it into a ring. */
const closers = (looked: Looked, ref: EdgeRef, carrying?: string, held: Held = 'strict'): readonly Join[] => {
  const [before, after] = looked.beside.get(edgeName(ref)) ?? [];
  const isOn = (chain: Chain, edge: string | undefined) =>
    chain.some((c) => (c.piece === ref.piece && c.edge === edge) || isAny(looked, c, held));
  return looked.garment.joins.filter(
    (join) =>
      join.id !== carrying &&
      ((isOn(join.this, before) && isOn(join.to, after)) ||
        (isOn(join.this, after) && isOn(join.to, before))),
  );
};

/**
 * True where two neighbours of a chain that nothing makes one run might be one, were the edges right that joins name and
 * that do not exist, or were two joins of one id told apart.
 */
export function mightLink(looked: Looked, { from, to }: Crossing, ring: boolean, carrying?: string): boolean {
  const same = looked.garment.joins.filter(({ id }) => id === carrying).length > 1;
  if (same) return true;
  if (ring && from === to && closers(looked, from, carrying, 'loose').length > 0) return true;
  return looked.garment.joins.some((join) => join.id !== carrying && ties(looked, join, from, to, 'loose'));
}

/** Pieces that a join holds: both chains, the trims caught and the cover. */
export function piecesOf(join: Join): readonly string[] {
  const all = [
    ...join.this,
    ...join.to,
    ...join.catches.map((c) => c.trim),
    ...(join.cover ? [join.cover] : []),
  ];
  return [...new Set(all.map((ref) => ref.piece))];
}

/**
 * 1 where a join (or a work along a chain) is done once: it runs over both sides, or no piece in it has a left and a
 * right; 2 where the same is done left and right.
 */
export function timesOf(looked: Looked, ...chains: readonly Chain[]): 1 | 2 {
  const refs = chains.flat();
  if (refs.some((ref) => ref.other)) return 1;
  const twice = refs.some((ref) => {
    const piece = looked.pieces.get(ref.piece);
    if (!piece || piece.cut === 'one') return false;
    if (piece.cut === 'pair') return true;
    return !looked.beside.get(edgeName(ref))?.includes(FOLD);
  });
  return twice ? 2 : 1;
}

/** True for an edge at a fold that is named by itself, in what is done once: it stands for its mirror image too. */
export function standsForBoth(looked: Looked, chain: Chain, ref: EdgeRef): boolean {
  const atFold =
    looked.pieces.get(ref.piece)?.cut === 'fold' && looked.beside.get(edgeName(ref))?.includes(FOLD) === true;
  return (
    atFold &&
    timesOf(looked, chain) === 1 &&
    !chain.some((one) => one.other !== ref.other && edgeName(one) === edgeName(ref))
  );
}
