import type { Length } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Polygon, pointOf, samePoint } from './flatten.ts';
import { signedArea } from './measure.ts';
import { sidesCross } from './offset-crossing.ts';
import type { Point } from './outline.ts';

/** A side moving inwards: the line `nx x + ny y = c + t`, after it has moved by `t`. */
interface Side {
  readonly nx: number;
  readonly ny: number;
  readonly c: number;
  /** The corner at its start, for the case that it and the side before lie in one line. */
  readonly start: Point;
  before: number;
  after: number;
}

const PARALLEL = 1e-9;

function sidesOf(polygon: Polygon): Side[] {
  const corners = polygon.filter((p, i) => !samePoint(p, polygon[(i + 1) % polygon.length] ?? p));
  const turn = signedArea(corners) < 0 ? -1 : 1;
  const n = corners.length;
  return corners.map((start, i) => {
    const end = corners[(i + 1) % n] ?? start;
    const long = Math.hypot(end.x - start.x, end.y - start.y);
    const [nx, ny] = [(-turn * (end.y - start.y)) / long, (turn * (end.x - start.x)) / long];
    return { nx, ny, c: nx * start.x + ny * start.y, start, before: (i + n - 1) % n, after: (i + 1) % n };
  });
}

/** Where side `b` starts once both have moved by `t`, or nothing where the two are parallel and face each other. */
function corner(a: Side, b: Side, t: number): { x: number; y: number } | undefined {
  const cross = a.nx * b.ny - a.ny * b.nx;
  if (Math.abs(cross) < PARALLEL) {
    if (a.nx * b.nx + a.ny * b.ny < 0) return undefined;
    return { x: b.start.x + b.nx * t, y: b.start.y + b.ny * t };
  }
  const [p, q] = [a.c + t, b.c + t];
  return { x: (p * b.ny - q * a.ny) / cross, y: (q * a.nx - p * b.nx) / cross };
}

/** Length of a side after moving by `t`, below zero once it has turned over. */
function lengthAt(sides: readonly Side[], side: Side, turn: number, t: number): number {
  const [before, after] = [sides[side.before], sides[side.after]];
  const from = before && corner(before, side, t);
  const to = after && corner(side, after, t);
  if (!from || !to) return Number.NEGATIVE_INFINITY;
  return turn * ((to.x - from.x) * side.ny - (to.y - from.y) * side.nx);
}

/**
 * Moves every side of a polygon inwards by the same distance, as a seam allowance or a clearance does. Corners are
 * mitred. Sides too short to survive (the small chords of a curve next to a corner) close up in the order in which
 * they vanish. Good for convex and mildly hollow shapes.
 *
 * Refused: fewer than three corners or no area; a distance below zero; a shape too narrow for the distance, or one
 * that would fall into two parts. The error is a sentence that says which.
 */
export function insetPolygon(polygon: Polygon, by: Length): Result<Polygon, string> {
  if (by < 0) return bad('The distance inwards is below zero; give zero or more.');
  const area = signedArea(polygon);
  if (polygon.length < 3 || area === 0)
    return bad('The shape has no area; give at least three corners that enclose some.');
  if (by === 0) return good(polygon);
  const narrow = 'The shape is too narrow for this distance inwards; give a smaller one.';
  const sides = sidesOf(polygon);
  const turn = area < 0 ? -1 : 1;
  const alive = new Set(sides.keys());

  // A side's length changes evenly with t, so two readings tell when it is used up.
  const vanishing = (i: number): number => {
    const side = sides[i];
    if (!side) return Number.POSITIVE_INFINITY;
    const [now, then] = [lengthAt(sides, side, turn, 0), lengthAt(sides, side, turn, by)];
    if (then > 0) return Number.POSITIVE_INFINITY;
    return now === then ? 0 : (by * now) / (now - then);
  };
  const when = sides.map((_, i) => vanishing(i));
  for (;;) {
    let next = -1;
    let soonest = Number.POSITIVE_INFINITY;
    for (const i of alive) {
      const t = when[i] ?? Number.POSITIVE_INFINITY;
      if (t < soonest) [next, soonest] = [i, t];
    }
    const gone = sides[next];
    if (!gone) break;
    alive.delete(next);
    if (alive.size < 3) return bad(narrow);
    const [before, after] = [sides[gone.before], sides[gone.after]];
    if (!before || !after) return bad(narrow);
    before.after = gone.after;
    after.before = gone.before;
    when[gone.before] = vanishing(gone.before);
    when[gone.after] = vanishing(gone.after);
  }

  const moved: Point[] = [];
  for (const i of alive) {
    const side = sides[i];
    const before = side && sides[side.before];
    const at = side && before && corner(before, side, by);
    if (!at) return bad(narrow);
    moved.push(pointOf(at.x, at.y));
  }
  const left = signedArea(moved) * turn;
  if (left <= 0 || left > area * turn) return bad(narrow);
  if (sidesCross(moved)) {
    return bad(
      'Moved inwards this far the shape falls into two parts; give a smaller distance or work the parts apart.',
    );
  }
  return good(moved);
}
