import { longer } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { directionOf } from '../shape/clip.ts';
import { type Polygon, pointOf, samePoint } from '../shape/flatten.ts';
import type { Point } from '../shape/outline.ts';
import { acrossOf, type FoldMap, type Layer, openMap, type TuckFamily } from './fold-map.ts';
import { type Refusal, refusal } from './refusal.ts';

/** A corner in the family's own directions: `u` across the tucks from the datum, `v` along them. */
interface Corner {
  readonly u: number;
  readonly v: number;
}

const NEAR = 1; // a corner within 1 nm of a stitching line or fold is on it

const finishedEnds = (layer: Layer): [number, number] => {
  const [a, b] = [layer.shift + layer.way * layer.from, layer.shift + layer.way * layer.to];
  return a < b ? [a, b] : [b, a];
};

/** The finished edge with a corner wherever it crosses a stitching line or a fold. */
function divided(polygon: Polygon, map: FoldMap): Corner[] {
  const { family, marks } = map;
  const n = directionOf(family.across);
  const lines = [...new Set(marks.flatMap((m) => [m.finished, m.foldFinished]))].sort((a, b) => a - b);
  const snapped = polygon.map((p) => {
    const u = acrossOf(family, p);
    const on = lines.find((line) => Math.abs(line - u) <= NEAR);
    return { u: on ?? u, v: (p.y - family.datum.y) * n.x - (p.x - family.datum.x) * n.y };
  });
  const corners: Corner[] = [];
  for (const [i, a] of snapped.entries()) {
    const b = snapped[(i + 1) % snapped.length] ?? a;
    corners.push(a);
    const between = lines.filter((line) => (line - a.u) * (line - b.u) < 0);
    if (b.u < a.u) between.reverse();
    for (const u of between) corners.push({ u, v: a.v + ((b.v - a.v) * (u - a.u)) / (b.u - a.u) });
  }
  return corners;
}

const within = (layer: Layer, a: Corner, b: Corner): boolean => {
  const [low, high] = finishedEnds(layer);
  return Math.min(a.u, b.u) >= low - NEAR && Math.max(a.u, b.u) <= high + NEAR;
};

/** The layer that joins this one at a finished distance `u` which is one of its ends, or nothing if `u` is not an end. */
function joined(layers: readonly Layer[], layer: number, u: number): number | undefined {
  const here = layers[layer];
  if (!here) return undefined;
  const flat = (u - here.shift) * here.way;
  if (Math.abs(flat - here.from) <= NEAR) return layer - 1;
  return Math.abs(flat - here.to) <= NEAR ? layer + 1 : undefined;
}

/**
 * Does the edge from `a` to `b` belong to this layer? One that runs along a stitching line or a fold does where the
 * cloth beside it lies in this layer and does not go on into the next.
 */
function keeps(layers: readonly Layer[], layer: number, a: Corner, b: Corner, side: 1 | -1): boolean {
  const here = layers[layer];
  if (!here || !within(here, a, b)) return false;
  const next = a.u === b.u ? joined(layers, layer, a.u) : undefined;
  const there = next === undefined ? undefined : layers[next];
  if (!there) return true;
  const beside = { u: a.u + side * 2 * NEAR, v: a.v };
  return within(here, a, beside) && !within(there, a, beside);
}

/**
 * Walks the finished edge and follows it through the layers: over a stitching line into the tuck, over its fold and
 * back. Where a layer lies turned back, the walk along the edge goes back too.
 */
function walk(corners: readonly Corner[], layers: readonly Layer[]): { flat: Corner[]; seen: number } {
  const n = corners.length;
  const at = (i: number): Corner => corners[((i % n) + n) % n] ?? { u: 0, v: 0 };
  const turn = corners.reduce((sum, a, i) => sum + a.u * at(i + 1).v - at(i + 1).u * a.v, 0) < 0 ? -1 : 1;
  // The cloth lies to the one hand of an edge all the way round, so an edge along the tucks has it where v does not grow.
  const side = (a: Corner, b: Corner): 1 | -1 => ((b.v - a.v) * turn > 0 ? -1 : 1);
  let start = 0;
  for (let i = 1; i < n; i++) if (at(i).u < at(start).u) start = i;
  while (at(start).u === at(start + 1).u && start < 2 * n) start++; // begin on a side that leads across the tucks
  const first = layers.findIndex((layer) => layer.kind === 'base' && within(layer, at(start), at(start + 1)));

  let [i, way, layer] = [start, 1, first];
  const flat: Corner[] = [];
  let seen = 0;
  const limit = 2 * n * layers.length + 2;
  for (let step = 0; step < limit; step++) {
    const here = layers[layer];
    if (!here) break;
    const [from, to] = [at(i), at(i + way)];
    if (keeps(layers, layer, from, to, way === 1 ? side(from, to) : side(to, from))) {
      flat.push({ u: (from.u - here.shift) * here.way, v: from.v });
      if (from.u !== to.u) seen++;
      i += way;
    } else {
      const next = joined(layers, layer, from.u);
      const there = next === undefined ? undefined : layers[next];
      if (next === undefined || !there) break;
      if (there.way !== here.way) way = -way;
      layer = next;
    }
    if (layer === first && way === 1 && (i - start) % n === 0) break;
  }
  return { flat, seen };
}

/** The first tuck that some part of the edge cuts through without the walk having come by. */
function cutTuck(corners: readonly Corner[], map: FoldMap): number {
  const us = corners.map((c) => c.u);
  const [low, high] = [Math.min(...us), Math.max(...us)];
  const hit = map.marks.findIndex((m) => {
    const [a, b] = longer(m.foldFinished, m.finished)
      ? [m.finished, m.foldFinished]
      : [m.foldFinished, m.finished];
    return (a < low && b > low) || (a < high && b > high);
  });
  return Math.max(0, hit);
}

function openOne(polygon: Polygon, map: FoldMap): Result<Polygon, Refusal> {
  const corners = divided(polygon, map);
  let wanted = 0;
  for (const [i, a] of corners.entries()) {
    const b = corners[(i + 1) % corners.length] ?? a;
    if (a.u === b.u) continue;
    for (const layer of map.layers) if (within(layer, a, b)) wanted++;
  }
  const { flat, seen } = walk(corners, map.layers);
  if (seen !== wanted || seen === 0) {
    return bad(
      refusal(
        'tucks',
        `The edge of the piece cuts off the fold of tuck ${cutTuck(corners, map) + 1}, so the cloth would fall apart there.`,
        'Move the tuck so that its stitching line and its fold both lie inside the piece or both outside, or make it shallower.',
      ),
    );
  }
  const n = directionOf(map.family.across);
  const { x, y } = map.family.datum;
  const points: Point[] = [];
  for (const { u, v } of flat) {
    const p = pointOf(x + u * n.x - v * n.y, y + u * n.y + v * n.x);
    const last = points.at(-1);
    if (!last || !samePoint(last, p)) points.push(p);
  }
  return good(points);
}

/**
 * Opens the finished outline of a piece into the outline to cut, so that its edge is true when the tucks are folded,
 * sewn and pressed: slanted edges get the small points and notches that lie inside the tucks.
 *
 * @param polygon finished corners in order (straighten curves first)
 * @param families tucks in the order in which they are sewn; each one's datum stays where it is while that family is
 *   sewn, and later families are measured on the cloth as the earlier ones leave it
 *
 * Refused: fewer than three corners; tucks that cannot be sewn (see `tucks`); an edge that cuts off the fold of a
 * tuck whose stitching line lies on the other side of it.
 */
export function openOutline(polygon: Polygon, families: readonly TuckFamily[]): Result<Polygon, Refusal> {
  if (polygon.length < 3) {
    return bad(
      refusal(
        'polygon',
        'The outline has fewer than three corners.',
        'Give at least three corners in order round the piece.',
      ),
    );
  }
  let open = polygon;
  for (const family of families.toReversed()) {
    const map = openMap(family);
    if (!map.ok) return map;
    const wider = openOne(open, map.value);
    if (!wider.ok) return wider;
    open = wider.value;
  }
  return good(open);
}
