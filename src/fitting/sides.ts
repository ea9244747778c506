import type { Length } from '../length/length.ts';
import { flattenEdge } from '../shape/flatten.ts';
import { distance } from '../shape/measure.ts';
import type { Outline, OutlineEdge, Point } from '../shape/outline.ts';
import type { Level } from './entry.ts';
import { isCalled } from './panels.ts';

/** An edge with where it starts and ends. */
export interface Placed {
  readonly edge: OutlineEdge;
  readonly from: Point;
  readonly to: Point;
}

/** How the edges of a piece lie: up its two sides, over the top and along the bottom, each in the order of the outline. */
export interface Sides {
  readonly left: readonly Placed[];
  readonly right: readonly Placed[];
  readonly top: readonly Placed[];
  readonly bottom: readonly Placed[];
}

/** The edges of an outline with their ends. */
export function placed(outline: Outline): readonly Placed[] {
  let from = outline.start;
  return outline.edges.map((edge) => {
    const to = edge.segments.at(-1)?.to ?? from;
    const found = { edge, from, to };
    from = to;
    return found;
  });
}

const ACROSS = [
  'neck',
  'shoulder',
  'hem',
  'waist',
  'cap',
  'upper',
  'wrist',
  'knee',
  'ankle',
  'widest',
  'lap',
];
const UPRIGHT = ['armhole', 'side', 'panel', 'seam', 'inseam', 'rise', 'fold', 'opening', 'centre', 'center'];

/** Does an edge run up and down rather than across, as it is called or else as it is drawn? */
export function upright({ edge, from, to }: Placed): boolean {
  if (isCalled(edge.name, ...UPRIGHT)) return Math.abs(to.y - from.y) > Math.abs(to.x - from.x) / 4;
  if (isCalled(edge.name, ...ACROSS)) return false;
  return Math.abs(to.y - from.y) > Math.abs(to.x - from.x);
}

const middle = (edges: readonly Placed[]): number =>
  edges.reduce((sum, { from, to }) => sum + from.x + to.x, 0) / (2 * edges.length || 1);

/** The sides of a piece; none where it has not just one run of edges going up and one going down. */
export function sidesOf(outline: Outline): Sides | undefined {
  const known = found.get(outline);
  if (known) return known.sides;
  const sides = readSides(outline);
  found.set(outline, { sides });
  return sides;
}

/** An outline never changes, so its sides are read once. */
const found = new WeakMap<Outline, { readonly sides: Sides | undefined }>();

function readSides(outline: Outline): Sides | undefined {
  const edges = placed(outline);
  const way = (one: Placed): -1 | 0 | 1 => (upright(one) ? (one.to.y > one.from.y ? 1 : -1) : 0);
  const ways = edges.map(way);
  // An edge that starts a run: what comes before it goes another way.
  const first = ways.findIndex((one, i) => one !== ways[(i + edges.length - 1) % edges.length]);
  if (first < 0) return undefined;
  const runs: { way: -1 | 0 | 1; edges: Placed[] }[] = [];
  for (let k = 0; k < edges.length; k++) {
    const i = (first + k) % edges.length;
    const [edge, its] = [edges[i], ways[i] ?? 0];
    if (!edge) continue;
    const last = runs.at(-1);
    if (last?.way === its) last.edges.push(edge);
    else runs.push({ way: its, edges: [edge] });
  }
  const down = runs.filter((run) => run.way === 1);
  const up = runs.filter((run) => run.way === -1);
  const [goesDown, goesUp] = [down[0], up[0]];
  if (down.length !== 1 || up.length !== 1 || !goesDown || !goesUp) return undefined;
  const after = (run: (typeof runs)[number]): readonly Placed[] => {
    const next = runs[(runs.indexOf(run) + 1) % runs.length];
    return next?.way === 0 ? next.edges : [];
  };
  const [one, other] = [goesDown.edges, goesUp.edges];
  const downIsRight = middle(one) >= middle(other);
  return {
    right: downIsRight ? one : other,
    left: downIsRight ? other : one,
    bottom: after(goesDown),
    top: after(goesUp),
  };
}

const heights = (path: readonly Placed[]): readonly number[] =>
  path.flatMap(({ from, to }) => [from.y, to.y]);
/** The height of the upper end of a side. */
export const topOf = (path: readonly Placed[]): number => Math.min(...heights(path));
/** The height of the lower end of a side. */
export const bottomOf = (path: readonly Placed[]): number => Math.max(...heights(path));

/** An edge as points from its upper end down. */
export function downward({ edge, from, to }: Placed): readonly Point[] {
  const points = flattenEdge(from, edge);
  return to.y < from.y ? points.reverse() : points;
}

/** How far down along an edge, from its upper end, it reaches a height. */
export function downTo(points: readonly Point[], y: number): number {
  let sum = 0;
  for (const [i, to] of points.entries()) {
    const from = points[i - 1];
    if (!from) continue;
    const long = distance(from, to);
    if (to.y >= y) return sum + (to.y > from.y ? Math.max(0, (long * (y - from.y)) / (to.y - from.y)) : 0);
    sum += long;
  }
  return sum;
}

/** The height at a distance down along an edge. */
export function heightAt(points: readonly Point[], down: number): number {
  let left = down;
  for (const [i, to] of points.entries()) {
    const from = points[i - 1];
    if (!from) continue;
    const long = distance(from, to);
    if (left <= long && long > 0) return from.y + ((to.y - from.y) * left) / long;
    left -= long;
  }
  return points.at(-1)?.y ?? 0;
}

/** Where an outline, straightened, is crossed at a height: as far left and as far right as it goes there. */
export function spanAt(points: readonly Point[], y: Length): { readonly from: number; readonly to: number } {
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let last = points.at(-1);
  for (const point of points) {
    if (last && Math.min(last.y, point.y) <= y && Math.max(last.y, point.y) >= y) {
      const flat = last.y === point.y;
      const at = flat ? point.x : last.x + ((point.x - last.x) * (y - last.y)) / (point.y - last.y);
      from = Math.min(from, at, flat ? last.x : at);
      to = Math.max(to, at, flat ? last.x : at);
    }
    last = point;
  }
  return { from, to };
}

/** Heights of levels in the drawing of a piece, as they are being found. */
export type Heights = Map<Level, number>;

/** The heights of both ends of all edges so called. */
export const endsOf = (outline: Outline, name: string): readonly number[] =>
  placed(outline).flatMap(({ edge, from, to }) => (isCalled(edge.name, name) ? [from.y, to.y] : []));

/** All heights that edges so called go through. */
export const heightsAlong = (outline: Outline, name: string): readonly number[] =>
  placed(outline).flatMap((one) => (isCalled(one.edge.name, name) ? downward(one).map(({ y }) => y) : []));
