import { type Length, mm, nm } from '../length/length.ts';
import type { Outline, OutlineEdge, Point, Segment } from './outline.ts';

/** Corner points in order round a shape; the last joins the first and is not repeated. */
export type Polygon = readonly Point[];

/** How far a straightened curve may lie from the true one, unless said otherwise: 0.1 mm, a thread's breadth. */
export const FLAT_ENOUGH: Length = mm(0.1);

const FINEST = 1000; // 1 micrometre: finer than any cloth, and keeps the number of points within reason

/** A point from coordinates in nanometres. */
export const pointOf = (x: number, y: number): Point => ({ x: nm(x), y: nm(y) });

/** Do two points lie on the same spot? */
export const samePoint = (a: Point, b: Point): boolean => a.x === b.x && a.y === b.y;

const bend = (a: Point, b: Point, c: Point): number => Math.hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y);

/**
 * How many equal steps of the parameter keep the chords of a cubic within the tolerance.
 * Source: Wang's bound on the distance of a Bézier curve from its chords (from memory).
 */
function stepsFor(start: Point, curve: Segment & { kind: 'curve' }, tolerance: number): number {
  const most = Math.max(bend(start, curve.first, curve.second), bend(curve.first, curve.second, curve.to));
  return Math.max(1, Math.ceil(Math.sqrt((0.75 * most) / tolerance)));
}

function pushSegment(points: Point[], start: Point, segment: Segment, tolerance: number): void {
  if (segment.kind === 'curve') {
    const { first, second, to } = segment;
    const steps = stepsFor(start, segment, tolerance);
    for (let k = 1; k < steps; k++) {
      const t = k / steps;
      const s = 1 - t;
      const [a, b, c, d] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
      points.push(
        pointOf(
          a * start.x + b * first.x + c * second.x + d * to.x,
          a * start.y + b * first.y + c * second.y + d * to.y,
        ),
      );
    }
  }
  points.push(segment.to);
}

/**
 * The points of one edge, from `start` to its end, both included.
 * @param tolerance farthest the chords may lie from the curve; anything under 1 µm is taken as 1 µm
 */
export function flattenEdge(start: Point, edge: OutlineEdge, tolerance: Length = FLAT_ENOUGH): Point[] {
  const points = [start];
  let from = start;
  for (const segment of edge.segments) {
    pushSegment(points, from, segment, Math.max(FINEST, tolerance));
    from = segment.to;
  }
  return points;
}

/** Where an edge of an outline starts: the end of the edge before it. */
export function edgeStarts(outline: Outline): ReadonlyMap<string, Point> {
  const starts = new Map<string, Point>();
  let from = outline.start;
  for (const edge of outline.edges) {
    starts.set(edge.name, from);
    from = edge.segments.at(-1)?.to ?? from;
  }
  return starts;
}

/** An outline as corner points within the tolerance of its curves; points on the same spot as the one before are left out. */
export function flattenOutline(outline: Outline, tolerance: Length = FLAT_ENOUGH): Polygon {
  const points: Point[] = [];
  let from = outline.start;
  for (const edge of outline.edges) {
    for (const point of flattenEdge(from, edge, tolerance)) {
      const last = points.at(-1);
      if (!last || !samePoint(last, point)) points.push(point);
      from = point;
    }
  }
  const [first] = points;
  const last = points.at(-1);
  if (points.length > 1 && first && last && samePoint(first, last)) points.pop();
  return points;
}
