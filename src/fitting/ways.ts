import type { Sourced } from '../cloth/advice.ts';
import { practice } from '../cloth/source.ts';
import { inches, type Length, nm, toMm } from '../length/length.ts';
import type { Alteration } from '../order/undoing/undoing-types.ts';
import type { Garment } from '../outfit/outfit.ts';
import type { Level } from './entry.ts';
import { widthAt } from './levels.ts';
import { isCalled } from './panels.ts';
import type { Way } from './puzzle.ts';
import { bottomOf, type Placed, placed, sidesOf, topOf, upright } from './sides.ts';
import { type Change, changesOf, type Taking } from './taking-part.ts';

/** This much of a seam allowance must remain when a seam is let out. */
export const MUST_REMAIN: Sourced<Length> = { value: inches(1, 4), source: practice };
/** A seam is taken in by at most this much at one edge; for more, the piece is cut anew. */
export const MOST_TAKEN_IN: Sourced<Length> = { value: inches(1), source: practice };
/** A piece that is cut anew is made wider, narrower, longer or shorter by at most this much; beyond it the pattern is another. */
export const MOST_RECUT: Sourced<Length> = { value: inches(4), source: practice };

/** Whose side a way changes. */
export type Side = Alteration['side'];

/** A way with what it does to its piece. */
export interface WayOf {
  readonly way: Way;
  readonly alteration: Alteration;
  readonly unknowns: ReadonlyMap<string, Change & { readonly piece: string; readonly side: Side }>;
}

/** Edges that are moved when a piece is let out or taken in at one of its sides: joined ones beside a level that changes. */
function sideEdges(garment: Garment, one: Taking): readonly (readonly string[])[] {
  const joined = new Set(
    garment.joins.flatMap((join) =>
      [...join.this, ...join.to].flatMap(({ piece, edge }) => (piece === one.piece.id ? [edge] : [])),
    ),
  );
  const ys = [...one.widths].flatMap((level) => one.levels.get(level) ?? []);
  const may = (edge: Placed): boolean =>
    joined.has(edge.edge.name) &&
    !isCalled(edge.edge.name, 'fold', 'opening', 'lap', 'armhole', 'neck', 'cap');
  const sides = one.levels.size > 1 ? sidesOf(one.piece.outline) : undefined;
  if (!sides)
    return placed(one.piece.outline).flatMap((edge) =>
      may(edge) && upright(edge) ? [[edge.edge.name]] : [],
    );
  const beside = (edge: Placed): boolean =>
    ys.some((y) => y >= topOf([edge]) - 1000 && y <= bottomOf([edge]) + 1000);
  return [sides.left, sides.right].flatMap((path) => {
    const named = path.filter((edge) => may(edge) && beside(edge)).map(({ edge }) => edge.name);
    return named.length > 0 ? [named] : [];
  });
}

/** How far a change may go when the piece is cut anew: never to less than half of what it is. */
function recut(one: Taking, { kind, level }: Change): { readonly least: number; readonly most: number } {
  const most = toMm(MOST_RECUT.value);
  const order = [...one.levels];
  const i = order.findIndex(([each]) => each === level);
  const [y, below] = [order[i]?.[1] ?? nm(0), order[i + 1]?.[1]];
  const now = kind === 'width' ? widthAt(one.piece.outline, y) : nm((below ?? y) - y);
  const least = now > 0 ? Math.min(most, toMm(now) / 2) : most;
  return { least: -least, most };
}

/** All ways in which a piece may change: cut anew, or let out or taken in at a side; of a pair also the one or the other alone. */
export function waysOf(garment: Garment, one: Taking, sided: boolean): readonly WayOf[] {
  const { piece } = one;
  const changes = changesOf(one);
  const sides: readonly Side[] = sided && piece.cut === 'pair' ? ['both', 'left', 'right'] : ['both'];
  const recuts = new Map(changes.map((change) => [change, recut(one, change)]));
  const remain = Math.max(0, toMm(nm(piece.allowance - MUST_REMAIN.value)));
  const make = (
    how: Alteration['how'],
    edges: readonly string[],
    side: Side,
    bounds: (change: Change) => { readonly least: number; readonly most: number } | undefined,
  ): WayOf => {
    const id = [piece.id, ...(how === 'anew' ? [] : edges)].join('/') + (side === 'both' ? '' : `@${side}`);
    const known = changes.flatMap((change) => {
      const its = bounds(change);
      return its ? [{ name: `${id}:${change.kind}:${change.level}`, change, its }] : [];
    });
    return {
      way: { id, bounds: new Map(known.map(({ name, its }) => [name, its])) },
      alteration: { garment: garment.id, piece: piece.id, how, edges, side, say: '' },
      unknowns: new Map(known.map(({ name, change }) => [name, { ...change, piece: piece.id, side }])),
    };
  };
  return sides.flatMap((side) => [
    make('anew', [], side, (change) => recuts.get(change)),
    ...(one.widths.size > 0 ? sideEdges(garment, one) : []).map((edges) =>
      make('edges', edges, side, (change) => {
        if (change.kind === 'length') return undefined;
        const { least = 0 } = recuts.get(change) ?? {};
        return { least: Math.max(least, -toMm(MOST_TAKEN_IN.value)), most: remain };
      }),
    ),
  ]);
}

/** What a way gives to a side of the body. */
export const givesTo = (way: Side, side: Side): boolean => way === 'both' || side === 'both' || way === side;

/** A level at which a piece has an edge that lies across. */
export function levelOf(one: Taking, edge: Placed): Level | undefined {
  const name = edge.edge.name;
  for (const level of ['neck', 'shoulder'] as const)
    if (isCalled(name, level) && one.levels.has(level)) return level;
  const y = (edge.from.y + edge.to.y) / 2;
  const sorted = [...one.levels].sort((a, b) => Math.abs(a[1] - y) - Math.abs(b[1] - y));
  // The cap and the upper edge of a sleeve belong to the arm below them.
  if (isCalled(name, 'cap') && one.levels.has('upper-arm')) return 'upper-arm';
  return sorted[0]?.[0];
}
