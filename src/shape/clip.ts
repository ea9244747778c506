import type { Length } from '../length/length.ts';
import { type Polygon, pointOf } from './flatten.ts';
import { distance } from './measure.ts';
import type { Point } from './outline.ts';

/** An endless straight line: a point on it and its direction, in degrees turning from rightwards to downwards. */
export interface Line {
  readonly through: Point;
  readonly angle: number;
}

/** A stretch of a line, in nanometres along it from its point; not rounded. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** A stretch of a line as it lies on the cloth. */
export interface Piece {
  readonly from: Point;
  readonly to: Point;
  readonly length: Length;
}

const ON_LINE = 1; // a corner within 1 nm of the line is on it

/** Unit direction of an angle in degrees; the quarter turns are exact. */
export function directionOf(angle: number): { readonly x: number; readonly y: number } {
  const turned = ((angle % 360) + 360) % 360;
  if (turned % 90 === 0) return { x: [1, 0, -1, 0][turned / 90] ?? 1, y: [0, 1, 0, -1][turned / 90] ?? 0 };
  const radians = (turned * Math.PI) / 180;
  return { x: Math.cos(radians), y: Math.sin(radians) };
}

/** Stretches between crossings, with corners on the line counted to the one side or to the other. */
function inside(along: readonly number[], off: readonly number[], onIsAbove: boolean): Stretch[] {
  const above = (s: number): boolean => (s === 0 ? onIsAbove : s > 0);
  const hits: number[] = [];
  let last = off.length - 1;
  for (let i = 0; i < off.length; last = i++) {
    const [s0, s1, t0, t1] = [off[last] ?? 0, off[i] ?? 0, along[last] ?? 0, along[i] ?? 0];
    if (above(s0) !== above(s1)) hits.push(t0 + ((t1 - t0) * s0) / (s0 - s1));
  }
  hits.sort((a, b) => a - b);
  const stretches: Stretch[] = [];
  for (let i = 0; i + 1 < hits.length; i += 2) {
    const [from, to] = [hits[i] ?? 0, hits[i + 1] ?? 0];
    if (to - from > ON_LINE) stretches.push({ from, to });
  }
  return stretches;
}

function merge(a: readonly Stretch[], b: readonly Stretch[]): Stretch[] {
  const merged: Stretch[] = [];
  for (const next of [...a, ...b].sort((p, q) => p.from - q.from)) {
    const last = merged.at(-1);
    if (last && next.from <= last.to + ON_LINE) {
      if (next.to > last.to) merged[merged.length - 1] = { from: last.from, to: next.to };
    } else merged.push(next);
  }
  return merged;
}

/**
 * Where an endless line runs inside a polygon, which may be hollow in places: all stretches, in order along the line.
 * The edge belongs to the shape, so a line along an edge is inside there; a line that only touches a corner is not.
 * A shape without area has no inside.
 */
export function clipLine(polygon: Polygon, line: Line): Stretch[] {
  if (polygon.length < 3) return [];
  const { x: dx, y: dy } = directionOf(line.angle);
  const along: number[] = [];
  const off: number[] = [];
  let touches = false;
  for (const { x, y } of polygon) {
    const [px, py] = [x - line.through.x, y - line.through.y];
    const s = dx * py - dy * px;
    const on = Math.abs(s) < ON_LINE;
    touches ||= on;
    along.push(dx * px + dy * py);
    off.push(on ? 0 : s);
  }
  const under = inside(along, off, true);
  return touches ? merge(under, inside(along, off, false)) : under;
}

/** The place on a line at a distance from its point. */
export function pointAlong(line: Line, at: number): Point {
  const { x, y } = directionOf(line.angle);
  return pointOf(line.through.x + x * at, line.through.y + y * at);
}

/** As {@link clipLine}, with the ends of every stretch as points on the cloth. */
export const clipToPieces = (polygon: Polygon, line: Line): Piece[] =>
  clipLine(polygon, line).map((stretch) => {
    const [from, to] = [pointAlong(line, stretch.from), pointAlong(line, stretch.to)];
    return { from, to, length: distance(from, to) };
  });

/** Is a point inside a polygon? On the very edge it may be either. */
export function holds(polygon: Polygon, { x, y }: Point): boolean {
  let odd = false;
  let last = polygon.at(-1);
  for (const point of polygon) {
    if (last && last.y > y !== point.y > y) {
      if (x < last.x + ((point.x - last.x) * (y - last.y)) / (point.y - last.y)) odd = !odd;
    }
    last = point;
  }
  return odd;
}
