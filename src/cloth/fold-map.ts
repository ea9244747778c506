import { add, type Length, nm, subtract, times, zero } from '../length/length.ts';
import { good, type Result } from '../length/result.ts';
import { directionOf } from '../shape/clip.ts';
import { pointOf } from '../shape/flatten.ts';
import type { Point } from '../shape/outline.ts';
import type { Refusal } from './refusal.ts';
import { type FinishedTuck, marksOf, type Pressed, type TuckMarks } from './tucks.ts';

/** Parallel tucks somewhere on a piece. */
export interface TuckFamily {
  /** A place that does not move when the tucks are sewn; distances count from here. */
  readonly datum: Point;
  /** Direction in which the tucks follow each other, across their lines: degrees from rightwards, turning downwards. */
  readonly across: number;
  readonly tucks: readonly FinishedTuck[];
  readonly pressed: Pressed;
}

/** One flat layer of the folded cloth: base cloth, or one of the two sides of a tuck. */
export interface Layer {
  readonly kind: 'base' | 'rising' | 'returning';
  /** Where it begins and ends on the flat cloth, from the datum; the first and the last have no end. */
  readonly from: number;
  readonly to: number;
  /** A flat distance u lies finished at `shift + way * u`. */
  readonly shift: number;
  /** -1 where the cloth lies turned back. */
  readonly way: 1 | -1;
  /** Number of the tuck that it is a side of, or that comes before it, from 0; -1 before the first. */
  readonly tuck: number;
}

/** How flat cloth comes to lie when its tucks are sewn and pressed. */
export interface FoldMap {
  readonly family: TuckFamily;
  readonly marks: readonly TuckMarks[];
  /** All layers in order along the flat cloth: base, rising, returning, base, … */
  readonly layers: readonly Layer[];
  readonly takeUp: Length;
}

/** Makes the map of a family of tucks. Refused as `tucks` refuses: no tucks, no depth, folds that overlap. */
export function openMap(family: TuckFamily): Result<FoldMap, Refusal> {
  const marked = marksOf(family.tucks, family.pressed);
  if (!marked.ok) return marked;
  const marks = marked.value;
  const rises = family.pressed === 'away' ? 1 : -1;
  const layers: Layer[] = [];
  let from = Number.NEGATIVE_INFINITY;
  let used = zero;
  for (const [tuck, { firstStitching: stitch, fold, secondStitching, finished, depth }] of marks.entries()) {
    layers.push({ kind: 'base', from, to: stitch, shift: -used + 0, way: 1, tuck: tuck - 1 });
    const rising = { from: stitch, to: fold, shift: finished - rises * stitch };
    layers.push({ kind: 'rising', ...rising, way: rises, tuck });
    const returning = { from: fold, to: secondStitching, shift: finished + rises * secondStitching };
    layers.push({ kind: 'returning', ...returning, way: rises === 1 ? -1 : 1, tuck });
    from = secondStitching;
    used = add(used, times(depth, 2));
  }
  layers.push({
    kind: 'base',
    from,
    to: Number.POSITIVE_INFINITY,
    shift: -used + 0,
    way: 1,
    tuck: marks.length - 1,
  });
  return good({ family, marks, layers, takeUp: used });
}

/** The layer that a flat distance lies in; on a line between two, the earlier. */
function layerAt(layers: readonly Layer[], flat: number): Layer | undefined {
  let [low, high] = [0, layers.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (flat <= (layers[middle]?.to ?? 0)) high = middle;
    else low = middle + 1;
  }
  return layers[low];
}

/** Where a flat distance from the datum lies once the tucks are sewn and pressed. Cloth inside a tuck lies where it is folded to. */
export function finishedOf(map: FoldMap, flat: Length): Length {
  const layer = layerAt(map.layers, flat);
  return layer ? nm(layer.shift + layer.way * flat) : flat;
}

/**
 * Where a finished distance from the datum lies on the flat cloth: the place on the base cloth, under any tuck that
 * lies over it. On a stitching line, the one nearer the datum.
 */
export function flatOf(map: FoldMap, finished: Length): Length {
  const { marks } = map;
  let [low, high] = [0, marks.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((marks[middle]?.finished ?? 0) < finished) low = middle + 1;
    else high = middle;
  }
  const last = marks[low - 1];
  return last ? add(finished, subtract(last.secondStitching, last.finished)) : finished;
}

/** Every flat distance that comes to lie at a finished distance, in order along the cloth: one, or three where a tuck lies over it. */
export function layersOver(map: FoldMap, finished: Length): Length[] {
  const flats = new Set<Length>();
  for (const { from, to, shift, way } of map.layers) {
    const flat = (finished - shift) * way;
    if (flat >= from && flat <= to) flats.add(nm(flat));
  }
  return [...flats];
}

/** A point's distance from the datum across the tucks, in nanometres and not rounded. */
export function acrossOf(family: TuckFamily, p: Point): number {
  const n = directionOf(family.across);
  return (p.x - family.datum.x) * n.x + (p.y - family.datum.y) * n.y;
}

/** A point moved across the tucks. */
export function movedAcross(family: TuckFamily, p: Point, by: number): Point {
  const n = directionOf(family.across);
  return pointOf(p.x + n.x * by, p.y + n.y * by);
}

/** Where a point of the flat cloth lies when finished. */
export function finishedPoint(map: FoldMap, flat: Point): Point {
  const u = acrossOf(map.family, flat);
  const layer = layerAt(map.layers, u);
  return layer ? movedAcross(map.family, flat, layer.shift + layer.way * u - u) : flat;
}

/** Where a finished point lies on the flat cloth, on the base cloth under any tuck. */
export function flatPoint(map: FoldMap, finished: Point): Point {
  const u = acrossOf(map.family, finished);
  return movedAcross(map.family, finished, flatOf(map, nm(u)) - nm(u));
}
