import { type Length, nm } from '../length/length.ts';
import type { Piece } from '../outfit/outfit.ts';
import { pointOf } from '../shape/flatten.ts';
import type { Outline, OutlineEdge, Point } from '../shape/outline.ts';
import type { Amount } from './cure-types.ts';
import type { Level, Role } from './entry.ts';
import { at, downBy, lengthKnots, outBy } from './moving.ts';
import { isCalled } from './panels.ts';
import { type Placed, type Sides, sidesOf } from './sides.ts';
import { cutAt } from './split.ts';
import { spread } from './spread.ts';

/** Roles of pieces that hang from the body's middle, and so are changed at the edge further from it. */
const PANELS: readonly Role[] = ['centre-front', 'side-front', 'side-back', 'centre-back'];
/** Roles of pieces that have several levels. */
const TALL: readonly Role[] = [...PANELS, 'sleeve', 'leg', 'lower-leg', 'skirt'];

const MIDDLE = ['fold', 'opening', 'lap', 'centre', 'center'];
const holds = (path: readonly Placed[], ...names: readonly string[]): boolean =>
  path.some(({ edge }) => isCalled(edge.name, ...names));

/** Which parts of a change in width go to the left and to the right side of a piece; together they are all of it. */
function shares(piece: Piece, role: Role, sides: Sides, edges: readonly string[]): readonly [number, number] {
  const named = (path: readonly Placed[]): boolean => path.some(({ edge }) => edges.includes(edge.name));
  const [left, right] = [named(sides.left), named(sides.right)];
  if (left !== right) return left ? [1, 0] : [0, 1];
  const inner = (path: readonly Placed[]): boolean => holds(path, ...MIDDLE);
  if (inner(sides.left) !== inner(sides.right)) return inner(sides.left) ? [0, 1] : [1, 0];
  if (left && right) return [0.5, 0.5];
  if (!PANELS.includes(role)) return piece.cut === 'fold' ? [0, 1] : [0.5, 0.5];
  const outer = (path: readonly Placed[]): boolean => holds(path, 'side', 'armhole');
  return outer(sides.left) && !outer(sides.right) ? [1, 0] : [0, 1];
}

/** Moves the control points of an edge, each by the rule; `near` is a height in the middle of its segment. */
function moved(
  { edge, from }: Placed,
  cuts: readonly number[],
  rule: (point: Point, near: number) => Point,
): OutlineEdge {
  let start = from;
  const segments = edge.segments.flatMap((segment) => {
    const parts = cutAt(start, segment, cuts);
    start = segment.to;
    return parts;
  });
  start = from;
  return {
    name: edge.name,
    segments: segments.map((segment) => {
      const near =
        segment.kind === 'line'
          ? (start.y + segment.to.y) / 2
          : (start.y + 3 * segment.first.y + 3 * segment.second.y + segment.to.y) / 8;
      start = segment.to;
      const go = (point: Point): Point => rule(point, near);
      return segment.kind === 'line'
        ? { kind: 'line', to: go(segment.to) }
        : { kind: 'curve', first: go(segment.first), second: go(segment.second), to: go(segment.to) };
    }),
  };
}

/** A piece with sides: the sides move at every level, what lies across above and below follows. */
function bySides(
  piece: Piece,
  role: Role,
  sides: Sides,
  levels: ReadonlyMap<Level, Length>,
  amounts: readonly Amount[],
  edges: readonly string[],
): Outline {
  const down = downBy(role, levels, amounts);
  const lengthCuts = lengthKnots(levels, amounts);
  const [left, right] = shares(piece, role, sides, edges);
  const neck = amounts.find(({ kind, level }) => kind === 'width' && level === 'neck')?.by ?? 0;
  const rules = new Map<
    string,
    { readonly cuts: readonly number[]; readonly x: (point: Point, near: number) => number }
  >();
  const out = (
    path: readonly Placed[],
    share: number,
    sign: number,
  ): ((point: Point, near: number) => number) => {
    const knots = share === 0 ? [] : outBy(path, sides.bottom.length === 0, levels, amounts);
    const by = (point: Point, near: number): number => sign * share * at(knots, point.y, near);
    const cuts = [...lengthCuts, ...knots.map(([y]) => y)];
    for (const { edge } of path) rules.set(edge.name, { cuts, x: by });
    return by;
  };
  const sideOf = { left: out(sides.left, left, -1), right: out(sides.right, right, 1) };
  const corner = (point: Point): number | undefined => {
    for (const side of ['left', 'right'] as const)
      for (const { from, to } of sides[side])
        if ((from.x === point.x && from.y === point.y) || (to.x === point.x && to.y === point.y))
          return sideOf[side](point, point.y);
    return undefined;
  };
  for (const path of [sides.top, sides.bottom]) {
    const [first, last] = [path[0], path.at(-1)];
    if (!first || !last) continue;
    const [begin, end] = [corner(first.from) ?? 0, corner(last.to) ?? 0];
    const even = (left > 0 && right > 0) || path === sides.bottom;
    const width = last.to.x - first.from.x;
    // The corner between neck and shoulder stays where it is unless the neck itself is changed.
    const between = (point: Point): number => {
      const known = corner(point);
      if (known !== undefined) return known;
      if (even && width !== 0) return begin + ((end - begin) * (point.x - first.from.x)) / width;
      const atNeck = path.some(
        ({ edge, from, to }) =>
          isCalled(edge.name, 'neck') && [from, to].some((one) => one.x === point.x && one.y === point.y),
      );
      const atShoulder = path.some(
        ({ edge, from, to }) =>
          isCalled(edge.name, 'shoulder') && [from, to].some((one) => one.x === point.x && one.y === point.y),
      );
      return atNeck && atShoulder ? neck * (right > 0 ? 1 : -1) : 0;
    };
    for (const { edge, from, to } of path) {
      const [a, b] = [between(from), between(to)];
      const wide = to.x - from.x;
      const x = (point: Point): number => (wide === 0 ? a : a + ((b - a) * (point.x - from.x)) / wide);
      rules.set(edge.name, { cuts: lengthCuts, x });
    }
  }
  const all = [...sides.left, ...sides.right, ...sides.top, ...sides.bottom];
  const changed = new Map(
    all.map((one) => {
      const { cuts, x } = rules.get(one.edge.name) ?? { cuts: [], x: () => 0 };
      const go = (point: Point, near: number): Point =>
        pointOf(point.x + x(point, near), point.y + down(point.y, near));
      return [one.edge.name, moved(one, cuts, go)] as const;
    }),
  );
  return closed(piece.outline.edges.map((edge) => changed.get(edge.name) ?? edge));
}

/** An outline begins where its last edge ends. */
const closed = (edges: readonly OutlineEdge[]): Outline => ({
  start: edges.at(-1)?.segments.at(-1)?.to ?? pointOf(0, 0),
  edges,
});

/**
 * The outline of a piece with what it is to be wider or longer. What is not named between two amounts follows evenly; below
 * the last it is as at the last. Edges keep their names and order.
 * @param levels heights of the piece's levels in its drawing
 * @param edges the edges that are moved; where none is named, a panel is changed at the edge further from the centre, and
 *   what goes round by itself on both sides
 */
export function altered(
  piece: Piece,
  role: Role,
  levels: ReadonlyMap<Level, Length>,
  amounts: readonly Amount[],
  edges: readonly string[] = [],
): Outline {
  if (amounts.every(({ by }) => by === 0)) return piece.outline;
  const sides = TALL.includes(role) ? sidesOf(piece.outline) : undefined;
  if (sides) return bySides(piece, role, sides, levels, amounts, edges);
  const by = amounts.find(({ kind, level }) => kind === 'width' && levels.has(level))?.by ?? nm(0);
  return by === 0 ? piece.outline : spread(piece, by, edges);
}
