import { toMm } from '../length/length.ts';
import { edgeName, type Looked, lookUp, standsForBoth, timesOf } from '../outfit/chains.ts';
import { LENGTHS_ALIKE, LONG_SEAMS_ALIKE, MOST_CAP_EASE } from '../outfit/lengths-fit.ts';
import type { Chain, EdgeRef, Garment, Piece } from '../outfit/outfit.ts';
import { edgeLengths } from '../shape/measure.ts';
import { facing, isCalled } from './panels.ts';
import { type Placed, placed, upright } from './sides.ts';
import type { Side } from './ways.ts';

/** Two runs of edges that stay as long as each other. */
export interface Alike {
  readonly one: Chain;
  readonly to: Chain;
  /** How many mm the one may become longer against the other, and shorter. */
  readonly longer: number;
  readonly shorter: number;
  /** True where one of them may be eased in. */
  readonly eased: boolean;
  /** Is it sewn on the left and again on the right? */
  readonly twice: boolean;
  /** The edges of each piece in it, with what each mm of them gives to the one side against the other. */
  readonly edges: ReadonlyMap<
    string,
    readonly { readonly edge: string; readonly side: Side; readonly by: number }[]
  >;
}

/** A garment looked up for its seams. */
export interface Seams {
  readonly looked: Looked;
  readonly alike: readonly Alike[];
  /** The same by piece. */
  readonly of: ReadonlyMap<string, readonly Alike[]>;
  readonly edges: ReadonlyMap<string, Placed>;
}

const edgesOf = (pieces: readonly Piece[]): ReadonlyMap<string, Placed> =>
  new Map<string, Placed>(
    pieces.flatMap((piece) =>
      placed(piece.outline).map((one) => [`${piece.id}.${one.edge.name}`, one] as const),
    ),
  );

/** Which edges of a garment have to stay alike: both sides of every seam, unless one is gathered to the other. */
export function seamsOf(garment: Garment): Seams {
  const looked = lookUp(garment);
  const edges = edgesOf(garment.pieces);
  const lengths = new Map<string, number>(
    garment.pieces.flatMap((piece) =>
      [...edgeLengths(piece.outline)].map(([edge, long]) => [`${piece.id}.${edge}`, toMm(long)] as const),
    ),
  );
  const gathered = new Set<string>(
    garment.works.flatMap((work) => (work.kind === 'gather' ? [`${work.on}.${work.edge}`] : [])),
  );
  const isGathered = (chain: Chain): boolean => chain.some((ref) => gathered.has(edgeName(ref)));
  const longOf = (chain: Chain): number =>
    chain.reduce(
      (sum, ref) => sum + (lengths.get(edgeName(ref)) ?? 0) * (standsForBoth(looked, chain, ref) ? 2 : 1),
      0,
    );
  const pair = (one: Chain, to: Chain): Alike => {
    const [first, second] = [longOf(one), longOf(to)];
    const usual = Math.max(
      toMm(LENGTHS_ALIKE.value),
      (Math.min(first, second) * LONG_SEAMS_ALIKE.value) / 1000,
    );
    const cap = (chain: Chain): boolean => chain.every(({ edge }) => isCalled(edge, 'cap'));
    const ease = toMm(MOST_CAP_EASE.value);
    const [longer, shorter] = [cap(one) ? ease : usual, cap(to) ? ease : usual];
    // A seam that does not fit by now may stay as it is, and may become better.
    return {
      one,
      to,
      longer: Math.max(0, longer - (first - second)),
      shorter: Math.max(0, shorter - (second - first)),
      eased: cap(one) || cap(to),
      twice: timesOf(looked, one, to) === 2,
      edges: edgesIn(looked, one, to),
    };
  };
  const stands = (ref: EdgeRef): boolean => {
    const edge = edges.get(edgeName(ref));
    return edge !== undefined && upright(edge);
  };
  const alike = garment.joins.flatMap((join): readonly Alike[] => {
    const found: Alike[] = [];
    if (!isGathered(join.this) && !isGathered(join.to)) {
      const each = join.this.length === join.to.length && [...join.this, ...join.to].every(stands);
      if (each) found.push(...facing(join).map(([a, b]) => pair([a], [b])));
      else found.push(pair(join.this, join.to));
    }
    if (join.cover) found.push(pair([join.cover], isGathered(join.to) ? join.this : join.to));
    return found;
  });
  const of = new Map<string, Alike[]>();
  for (const seam of alike)
    for (const piece of seam.edges.keys()) of.set(piece, [...(of.get(piece) ?? []), seam]);
  return { looked, alike, of, edges };
}

function edgesIn(looked: Looked, one: Chain, to: Chain): Alike['edges'] {
  const found = new Map<string, { edge: string; side: Side; by: number }[]>();
  for (const [chain, sign] of [
    [one, 1],
    [to, -1],
  ] as const)
    for (const ref of chain) {
      const by = sign * (standsForBoth(looked, chain, ref) ? 2 : 1);
      const its = { edge: ref.edge, side: ref.other ? ('right' as const) : ('left' as const), by };
      found.set(ref.piece, [...(found.get(ref.piece) ?? []), its]);
    }
  return found;
}
