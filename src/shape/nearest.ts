import { type Length, nm } from '../length/length.ts';
import { FLAT_ENOUGH, flattenEdge, pointOf } from './flatten.ts';
import type { Outline, Point } from './outline.ts';

/** The place on an outline that is nearest to a point. */
export interface Nearest {
  readonly edge: string;
  /** The place itself. */
  readonly point: Point;
  /** How far the place is from the start of its edge, along it. */
  readonly along: Length;
  /** How far the point is from the place. */
  readonly away: Length;
}

/**
 * The nearest place on any edge of an outline. Where two places are as near, the first one round the outline.
 * Nothing for an outline without edges.
 * @param tolerance farthest the straightened curves may lie from the true ones
 */
export function nearestOn(
  outline: Outline,
  point: Point,
  tolerance: Length = FLAT_ENOUGH,
): Nearest | undefined {
  let best: Nearest | undefined;
  let least = Number.POSITIVE_INFINITY;
  let start = outline.start;
  for (const edge of outline.edges) {
    let gone = 0;
    let from = start;
    for (const to of flattenEdge(start, edge, tolerance)) {
      const [dx, dy] = [to.x - from.x, to.y - from.y];
      const long = Math.hypot(dx, dy);
      const t =
        long === 0
          ? 0
          : Math.min(1, Math.max(0, ((point.x - from.x) * dx + (point.y - from.y) * dy) / (long * long)));
      const [x, y] = [from.x + t * dx, from.y + t * dy];
      const away = Math.hypot(point.x - x, point.y - y);
      if (away < least) {
        least = away;
        best = { edge: edge.name, point: pointOf(x, y), along: nm(gone + t * long), away: nm(away) };
      }
      gone += long;
      from = to;
    }
    start = edge.segments.at(-1)?.to ?? start;
  }
  return best;
}
