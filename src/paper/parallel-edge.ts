import { type Length, nm } from '../length/length.ts';
import { directionOf } from '../shape/clip.ts';
import type { Polygon } from '../shape/flatten.ts';
import { signedArea } from '../shape/measure.ts';
import type { Point } from '../shape/outline.ts';

/** A point moved some way in a direction, in degrees from rightwards, turning downwards. */
export function pointAcross(from: Point, degrees: number, away: number): Point {
  const { x, y } = directionOf(degrees);
  return { x: nm(from.x + x * away), y: nm(from.y + y * away) };
}

/** `1` where the inside lies to the right of one who walks round the shape, `-1` where it lies to the left; y downwards. */
export const insideOf = (outline: Polygon): 1 | -1 => (signedArea(outline) < 0 ? -1 : 1);

/** A place on a run of points and the direction square to it, towards the inside. */
export interface EdgePlace {
  readonly at: Point;
  /** Unit vector along the run. */
  readonly way: { readonly x: number; readonly y: number };
  /** Unit vector square to it, into the piece. */
  readonly inward: { readonly x: number; readonly y: number };
}

/** The place at a share of a run's length, from 0 to 1. Of a run without length, nothing. */
export function placeAt(run: readonly Point[], share: number, inside: 1 | -1): EdgePlace | undefined {
  const parts = run.flatMap((b, i) => {
    const a = run[i - 1];
    return a ? [{ a, b, long: Math.hypot(b.x - a.x, b.y - a.y) }] : [];
  });
  let left = parts.reduce((sum, { long }) => sum + long, 0) * share;
  const last = parts.findLast(({ long }) => long > 0);
  for (const part of parts) {
    const { a, b, long } = part;
    if (long === 0 || (left > long && part !== last)) {
      left -= long;
      continue;
    }
    const way = { x: (b.x - a.x) / long, y: (b.y - a.y) / long };
    const t = Math.min(left, long);
    return {
      at: { x: nm(a.x + way.x * t), y: nm(a.y + way.y * t) },
      way,
      inward: { x: -way.y * inside, y: way.x * inside },
    };
  }
  return undefined;
}

/**
 * A line beside an edge, square to it everywhere: inwards, or outwards where the distance is below zero. Good for
 * distances that are small beside the edge's bends, as turnings and insets are.
 */
export function beside(run: readonly Point[], away: Length, inside: 1 | -1): readonly Point[] {
  return run.map((p, i) => {
    const [a, b] = [run[i - 1] ?? p, run[i + 1] ?? p];
    const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    const [x, y] = [(-(b.y - a.y) / long) * inside, ((b.x - a.x) / long) * inside];
    return { x: nm(p.x + x * away), y: nm(p.y + y * away) };
  });
}
