import { type Length, zero } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { FLAT_ENOUGH, flattenEdge, type Polygon, pointOf, samePoint } from './flatten.ts';
import { signedArea } from './measure.ts';
import { sidesCross } from './offset-crossing.ts';
import type { Outline, Point } from './outline.ts';

/** A side moving outwards: after a part `t` of the way, the line `nx x + ny y = c + t by`. */
interface Side {
  readonly nx: number;
  readonly ny: number;
  readonly c: number;
  readonly by: number;
  readonly start: Point;
  readonly place: number;
  before: number;
  after: number;
}
interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A corner sharper than this (its mitre reaches over twice the allowance) is cut off square, as cloth is trimmed. */
const LONGEST_MITRE = 2;
const NEARLY_ON = 0.35; // sine of about 20 degrees: edges that run on so straight step from one allowance to the other

function sidesOf(outline: Outline, allowance: (edge: string) => Length, tolerance: Length): Side[] {
  const corners: { at: Point; by: Length }[] = [];
  let from = outline.start;
  for (const edge of outline.edges) {
    const by = allowance(edge.name);
    for (const to of flattenEdge(from, edge, tolerance)) {
      if (!samePoint(from, to)) corners.push({ at: from, by });
      from = to;
    }
  }
  const n = corners.length;
  const turn = signedArea(corners.map((c) => c.at)) < 0 ? -1 : 1;
  return corners.map(({ at, by }, i) => {
    const end = corners[(i + 1) % n]?.at ?? at;
    const long = Math.hypot(end.x - at.x, end.y - at.y) || 1;
    const [nx, ny] = [(turn * (end.y - at.y)) / long, (-turn * (end.x - at.x)) / long];
    return {
      nx,
      ny,
      c: nx * at.x + ny * at.y,
      by,
      start: at,
      place: i,
      before: (i + n - 1) % n,
      after: (i + 1) % n,
    };
  });
}

/**
 * Where side `a` ends and side `b` starts after a part `t` of the way: one spot when mitred, two where it is cut off.
 * Sides that met only after those between were used up have no corner of their own to cut off; facing each other, none.
 */
function corner(a: Side, b: Side, t: number, turn: number, count: number): readonly [Spot, Spot] | undefined {
  const cross = a.nx * b.ny - a.ny * b.nx;
  const dot = a.nx * b.nx + a.ny * b.ny;
  const [p, q] = [a.c + t * a.by, b.c + t * b.by];
  const met = (a.place + 1) % count === b.place;
  if (!met && Math.abs(cross) < 1e-9) {
    if (dot < 0) return undefined;
    const spot = { x: b.start.x + b.nx * t * b.by, y: b.start.y + b.ny * t * b.by };
    return [spot, spot];
  }
  const outward = cross * turn > 0;
  const flat = Math.abs(cross) < 1e-9 || (Math.abs(cross) < NEARLY_ON && dot > 0 && a.by !== b.by);
  const sharp = outward && dot < 2 / (LONGEST_MITRE * LONGEST_MITRE) - 1;
  if (!met || (!flat && !sharp)) {
    const spot = { x: (p * b.ny - q * a.ny) / cross, y: (q * a.nx - p * b.nx) / cross };
    return [spot, spot];
  }
  const { x, y } = b.start;
  const on = a.nx * x + a.ny * y;
  const reach = sharp ? t * Math.max(a.by, b.by) : 0;
  return [
    { x: x + a.nx * (p - on) - turn * a.ny * reach, y: y + a.ny * (p - on) + turn * a.nx * reach },
    { x: x + b.nx * t * b.by + turn * b.ny * reach, y: y + b.ny * t * b.by - turn * b.nx * reach },
  ];
}

function lengthAt(sides: readonly Side[], side: Side, turn: number, t: number): number {
  const [before, after] = [sides[side.before], sides[side.after]];
  if (!before || !after) return Number.NEGATIVE_INFINITY;
  const from = corner(before, side, t, turn, sides.length)?.[1];
  const to = corner(side, after, t, turn, sides.length)?.[0];
  if (!from || !to) return Number.NEGATIVE_INFINITY;
  return turn * ((to.y - from.y) * side.nx - (to.x - from.x) * side.ny);
}

/**
 * The cutting line of a piece: its outline moved outwards by the seam allowance of each edge. Corners are mitred;
 * one so sharp that its mitre would reach over twice the allowance is cut off square. Where two edges with
 * different allowances run on nearly in one line there is a step. Chords of a hollow curve that the allowance uses up close in.
 *
 * Refused, in a sentence: an outline without area; an allowance below zero; a hollow narrower than its allowances,
 * where the cutting line would cross itself.
 * @param allowance of each edge by its name; of an edge not named, `usual`
 */
export function addAllowance(
  outline: Outline,
  allowance: ReadonlyMap<string, Length>,
  usual: Length = zero,
  tolerance: Length = FLAT_ENOUGH,
): Result<Polygon, string> {
  if (usual < 0 || [...allowance.values()].some((by) => by < 0))
    return bad('A seam allowance is below zero; give zero or more.');
  const sides = sidesOf(outline, (edge) => allowance.get(edge) ?? usual, tolerance);
  const area = signedArea(sides.map((s) => s.start));
  if (sides.length < 3 || area === 0)
    return bad('The outline has no area; give at least three corners that enclose some.');
  const turn = area < 0 ? -1 : 1;
  const narrow =
    'The outline is hollow and too narrow there for its allowances; give smaller ones on those edges.';
  const alive = new Set(sides.keys());

  // A side's length changes evenly on the way out, so two readings tell when it is used up.
  const vanishing = (i: number): number => {
    const side = sides[i];
    if (!side) return Number.POSITIVE_INFINITY;
    const [now, then] = [lengthAt(sides, side, turn, 0), lengthAt(sides, side, turn, 1)];
    return then > 0 ? Number.POSITIVE_INFINITY : now === then ? 0 : now / (now - then);
  };
  const when = sides.map((_, i) => vanishing(i));
  for (;;) {
    let next = -1;
    let soonest = 1;
    for (const i of alive) {
      const t = when[i] ?? 1;
      if (t < soonest) [next, soonest] = [i, t];
    }
    const gone = sides[next];
    if (!gone) break;
    alive.delete(next);
    const [before, after] = [sides[gone.before], sides[gone.after]];
    if (alive.size < 3 || !before || !after) return bad(narrow);
    before.after = gone.after;
    after.before = gone.before;
    if (!corner(before, after, 0, turn, sides.length)) return bad(narrow);
    when[gone.before] = vanishing(gone.before);
    when[gone.after] = vanishing(gone.after);
  }

  const cut: Point[] = [];
  const push = ({ x, y }: Spot): void => {
    const point = pointOf(x, y);
    const last = cut.at(-1);
    if (!last || !samePoint(last, point)) cut.push(point);
  };
  for (const i of alive) {
    const side = sides[i];
    const before = side && sides[side.before];
    const spots = side && before && corner(before, side, 1, turn, sides.length);
    if (!spots) return bad(narrow);
    for (const spot of spots) push(spot);
  }
  const [first] = cut;
  const last = cut.at(-1);
  if (cut.length > 1 && first && last && samePoint(first, last)) cut.pop();
  if (signedArea(cut) * turn < area * turn || sidesCross(cut)) return bad(narrow);
  return good(cut);
}
