import { type Length, nm, zero } from '../length/length.ts';
import { flattenEdge, flattenOutline, type Polygon } from './flatten.ts';
import type { Outline, OutlineEdge, Point } from './outline.ts';

/** Fine enough that a curve a metre long is measured to well under 0.01 mm. */
const MEASURING = nm(1000);

/** From one point to another in a straight line. */
export const distance = (a: Point, b: Point): Length => nm(Math.hypot(b.x - a.x, b.y - a.y));

/** Along points in order, not closed. Of none or one, zero. */
export function pathLength(points: readonly Point[]): Length {
  let sum = 0;
  let last: Point | undefined;
  for (const point of points) {
    if (last) sum += Math.hypot(point.x - last.x, point.y - last.y);
    last = point;
  }
  return nm(sum);
}

/** Length of one edge along its lines and curves. */
export const edgeLength = (start: Point, edge: OutlineEdge): Length =>
  pathLength(flattenEdge(start, edge, MEASURING));

/** Length of every edge of an outline by its name. */
export function edgeLengths(outline: Outline): ReadonlyMap<string, Length> {
  const lengths = new Map<string, Length>();
  let from = outline.start;
  for (const edge of outline.edges) {
    lengths.set(edge.name, edgeLength(from, edge));
    from = edge.segments.at(-1)?.to ?? from;
  }
  return lengths;
}

/**
 * Area of a polygon in square millimetres, above zero when its corners run clockwise as a screen draws it.
 * Fewer than three corners enclose nothing.
 */
export function signedArea(polygon: Polygon): number {
  const [origin] = polygon;
  if (!origin) return 0;
  let twice = 0;
  let last = polygon.at(-1) ?? origin;
  for (const point of polygon) {
    twice += (last.x - origin.x) * (point.y - origin.y) - (point.x - origin.x) * (last.y - origin.y);
    last = point;
  }
  return twice / 2 / 1e12;
}

/** Area inside an outline in square millimetres, whichever way its edges run. */
export const outlineArea = (outline: Outline): number =>
  Math.abs(signedArea(flattenOutline(outline, MEASURING)));

/** The upright box that just holds some points. */
export interface Box {
  readonly left: Length;
  readonly top: Length;
  readonly right: Length;
  readonly bottom: Length;
}

/** The box round some points; of no points, an empty box at the datum. */
export function boundingBox(points: readonly Point[]): Box {
  const [first] = points;
  if (!first) return { left: zero, top: zero, right: zero, bottom: zero };
  let [left, right] = [first.x, first.x];
  let [top, bottom] = [first.y, first.y];
  for (const { x, y } of points) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
  }
  return { left, top, right, bottom };
}
