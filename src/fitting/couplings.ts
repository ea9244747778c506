import type { Sourced } from '../cloth/advice.ts';
import { practice } from '../cloth/source.ts';
import { type Length, mm, toMm } from '../length/length.ts';
import { edgeName } from '../outfit/chains.ts';
import type { EdgeRef } from '../outfit/outfit.ts';
import type { Demand } from './puzzle.ts';
import type { Alike, Seams } from './seams.ts';
import { upright } from './sides.ts';
import { type Change, changesOf, growth, type Taking } from './taking-part.ts';
import { givesTo, levelOf, type Side, type WayOf } from './ways.ts';

/** Edges that are changed together are drawn alike to this much. */
export const DRAWN_ALIKE: Sourced<Length> = { value: mm(0.5), source: practice };

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
