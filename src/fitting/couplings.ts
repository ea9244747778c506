import type { Sourced } from '../cloth/advice.ts';
import { practice } from '../cloth/source.ts';
import { type Length, mm, toMm } from '../length/length.ts';
import { edgeName, type Looked, lookUp, standsForBoth, timesOf } from '../outfit/chains.ts';
import { LENGTHS_ALIKE, LONG_SEAMS_ALIKE, MOST_CAP_EASE } from '../outfit/lengths-fit.ts';
import type { Chain, EdgeRef, Garment, Piece } from '../outfit/outfit.ts';
import { edgeLengths } from '../shape/measure.ts';
import { facing, isCalled } from './panels.ts';
import type { Demand } from './puzzle.ts';
import { type Placed, placed, upright } from './sides.ts';
import { type Change, changesOf, growth, type Taking } from './taking-part.ts';
import { givesTo, levelOf, type Side, type WayOf } from './ways.ts';

/** Edges that are changed together are drawn alike to this much. */
export const DRAWN_ALIKE: Sourced<Length> = { value: mm(0.5), source: practice };

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

/** By how much the one side of a seam outgrows the other, for a change of a piece that it has in hand. */
function outgrows(
  alike: Alike,
  part: Taking,
  edges: ReadonlyMap<string, number>,
  way: Side = 'both',
  side: Side = 'both',
): number {
  let sum = 0;
  for (const one of alike.edges.get(part.piece.id) ?? [])
    if (givesTo(way, side === 'both' ? one.side : side)) sum += (edges.get(one.edge) ?? 0) * one.by;
  return sum;
}

/** Remembers how edges grow, for it is read off many times. */
export function remembered(): typeof growth {
  const known = new Map<string, ReadonlyMap<string, number>>();
  return (part, change, edges) => {
    const all = changesOf(part).map(({ kind, level }) => `${kind}:${level}`);
    const key = [part.piece.id, change.kind, change.level, ...edges, ...all].join(' ');
    const found = known.get(key) ?? growth(part, change, edges);
    known.set(key, found);
    return found;
  };
}

/** A change that draws along what it is sewn to grows the seam by at least this part of itself. */
const DRAWS = 0.3;

/** What must hold whatever is changed: that seams go together as before. */
export function couplings(
  seams: Seams,
  parts: ReadonlyMap<string, Taking>,
  ways: ReadonlyMap<string, readonly WayOf[]>,
  sided: boolean,
  grown: typeof growth,
): readonly Demand[] {
  return seams.alike.flatMap((alike): readonly Demand[] => {
    const twice = sided && alike.twice;
    const here = [...alike.edges.keys()].flatMap((piece) => parts.get(piece) ?? []);
    return (twice ? (['left', 'right'] as const) : (['both'] as const)).flatMap((side) => {
      const terms = here.flatMap((part) =>
        (ways.get(part.piece.id) ?? []).flatMap((way) =>
          [...way.unknowns]
            .flatMap(([unknown, change]) => {
              const { side: its, edges } = way.alteration;
              const factor = outgrows(alike, part, grown(part, change, edges), its, side);
              return Math.abs(factor) > 1e-3 ? [{ unknown, factor }] : [];
            })
            .map(({ unknown, factor }) => ({
              unknown,
              factor,
              piece: part.piece.id,
              most: Math.max(
                ...[way.way.bounds.get(unknown)].flatMap((its) =>
                  its ? [Math.abs(its.least), its.most] : [0],
                ),
              ),
            })),
        ),
      );
      // Where all changes together cannot break it, it need not be asked for.
      const most = terms.reduce((sum, term) => sum + Math.abs(term.factor) * term.most, 0);
      if (terms.length === 0 || most <= Math.min(alike.longer, alike.shorter)) return [];
      const drawn = new Set(
        terms.filter(({ factor }) => Math.abs(factor) >= DRAWS).map(({ piece }) => piece),
      );
      const near = drawn.size > 1 && !alike.eased ? toMm(DRAWN_ALIKE.value) : Number.POSITIVE_INFINITY;
      return [
        {
          terms: terms.map(({ unknown, factor }) => ({ unknown, factor })),
          least: -Math.min(alike.shorter, near),
          most: Math.min(alike.longer, near),
        },
      ];
    });
  });
}

/** The change by which a piece can follow at an edge. */
function answer(seams: Seams, part: Taking, ref: EdgeRef, asked: Change): Change | undefined {
  const edge = seams.edges.get(edgeName(ref));
  if (!edge) return undefined;
  if (!upright(edge)) {
    const level = levelOf(part, edge);
    return level && { kind: 'width', level };
  }
  const order = [...part.levels];
  const between = order.slice(0, -1).map(([level]) => level);
  if (asked.kind === 'length' && between.includes(asked.level)) return asked;
  const reach = (i: number): number => {
    const [from, to] = [order[i]?.[1] ?? 0, order[i + 1]?.[1] ?? 0];
    const [top, bottom] = [Math.min(edge.from.y, edge.to.y), Math.max(edge.from.y, edge.to.y)];
    return Math.min(to, bottom) - Math.max(from, top);
  };
  const best = between.map((level, i) => ({ level, long: reach(i) })).sort((a, b) => b.long - a.long)[0];
  return best && best.long > 0 ? { kind: 'length', level: best.level } : undefined;
}

/** The changes that pieces sewn to a changed piece must be able to follow with; none where nothing is drawn along. */
export function drawnAlong(
  seams: Seams,
  part: Taking,
  known: (piece: string) => Taking | undefined,
  grown: typeof growth,
): readonly { readonly piece: string; readonly change: Change }[] {
  const found: { piece: string; change: Change }[] = [];
  for (const change of changesOf(part)) {
    const edges = grown(part, change, []);
    for (const alike of seams.of.get(part.piece.id) ?? []) {
      if (Math.abs(outgrows(alike, part, edges)) < DRAWS) continue;
      const own = alike.edges.get(part.piece.id) ?? [];
      if (!own.some(({ edge }) => Math.abs(edges.get(edge) ?? 0) >= DRAWS)) continue;
      for (const ref of [...alike.one, ...alike.to]) {
        const other = known(ref.piece);
        const its = other && answer(seams, other, ref, change);
        if (its) found.push({ piece: ref.piece, change: its });
      }
    }
  }
  return found;
}
