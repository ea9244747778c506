import { directionOf } from '../shape/clip.ts';
import { type Polygon, pointOf, samePoint } from '../shape/flatten.ts';
import { signedArea } from '../shape/measure.ts';
import type { Point } from '../shape/outline.ts';
import { type Corner, dividedCorners } from './divided-corners.ts';
import type { FoldMap, Layer } from './fold-map.ts';

/** One closed line of the opened cloth. */
export interface Opening {
  readonly loop: Polygon;
  /** Whether it bounds a hole in the cloth and not cloth. */
  readonly hole: boolean;
  /** Number of the first tuck whose inside it runs through, from 0; -1 when it lies on base cloth only. */
  readonly tuck: number;
}

/** A layer with the places that it covers, both ends included: the lines at its ends, or the first or last strip. */
interface Span extends Layer {
  readonly low: number;
  readonly high: number;
}

/** Every layer with its places, and which layers cover each place. */
function spansOf(map: FoldMap, lines: readonly number[]): { spans: Span[]; over: number[][] } {
  const order = new Map(lines.map((line, i) => [line, 2 * i + 1]));
  const last = 2 * lines.length;
  const spans = map.layers.map((layer): Span => {
    const [a, b] = [layer.shift + layer.way * layer.from, layer.shift + layer.way * layer.to];
    return {
      ...layer,
      low: order.get(Math.min(a, b)) ?? 0,
      high: order.get(Math.max(a, b)) ?? last,
    };
  });
  const over: number[][] = Array.from({ length: last + 1 }, () => []);
  for (const [i, { low, high }] of spans.entries())
    for (let place = low; place <= high; place++) over[place]?.push(i);
  return { spans, over };
}

/**
 * Opens closed finished lines through one family of tucks: every edge is followed through the layers that it lies in,
 * over a stitching line into the tuck, over its fold and back. Where a layer lies turned back, so does the walk
 * along the edge.
 *
 * Gives the closed lines of the flat cloth, that of the largest area first. Nothing when a walk does not close, as can
 * happen where an outline crosses or touches itself.
 * @param loops cloth lies to the same hand of all; holes run the other way round than what they are in
 */
export function openLoops(loops: readonly Polygon[], map: FoldMap): readonly Opening[] | undefined {
  const lines = [...new Set(map.marks.flatMap((m) => [m.finished, m.foldFinished]))].sort((a, b) => a - b);
  const corners = dividedCorners(loops, map.family, lines);
  const { spans, over } = spansOf(map, lines);
  const turn = loops.reduce((sum, loop) => sum + signedArea(loop), 0) < 0 ? -1 : 1;
  const covers = (span: Span | undefined, place: number): boolean =>
    span !== undefined && place >= span.low && place <= span.high;

  /** The layer that joins this one at a place which is one of its ends, or nothing if it is not an end. */
  const joined = (layer: number, place: number): number | undefined => {
    const here = spans[layer];
    if (!here) return undefined;
    const [start, end] = here.way === 1 ? [here.low, here.high] : [here.high, here.low];
    if (place === start && layer > 0) return layer - 1;
    return place === end && layer < spans.length - 1 ? layer + 1 : undefined;
  };

  /** The strip in which the cloth beside an edge lies: for one along the tucks, by the hand on which the cloth is. */
  const besideOf = (a: Corner, b: Corner): number => {
    if (a.place % 2 === 0) return a.place;
    if (a.place !== b.place) return b.place % 2 === 0 ? b.place : (a.place + b.place) / 2;
    return a.place + ((b.v - a.v) * turn > 0 ? -1 : 1);
  };

  /** Does the edge that begins at a corner bound the cloth in this layer? Not where the next layer covers the same side. */
  const keeps = (edge: number, layer: number): boolean => {
    const a = corners[edge];
    const b = a && corners[a.after];
    if (!a || !b) return false;
    const beside = besideOf(a, b);
    if (!covers(spans[layer], beside)) return false;
    if (a.place !== b.place || a.place % 2 === 0) return true;
    const next = joined(layer, a.place);
    return next === undefined || !covers(spans[next], beside);
  };

  /** From an edge in a layer to the next one: in the same layer, or over the line at its end into the layers joined there. */
  const follow = (edge: number, from: number): { edge: number; layer: number } | undefined => {
    let layer = from;
    const here = corners[edge];
    if (!here) return undefined;
    const forward = spans[layer]?.way === 1;
    const place = (forward ? corners[here.after] : here)?.place ?? 0;
    let next = forward ? here.after : here.before;
    for (let tries = 0; tries < 4; tries++) {
      if (keeps(next, layer)) return { edge: next, layer };
      const there = joined(layer, place);
      if (there === undefined) return undefined;
      const way = spans[there]?.way;
      if (way !== spans[layer]?.way)
        next = (way === 1 ? corners[next]?.after : corners[next]?.before) ?? next;
      layer = there;
    }
    return undefined;
  };

  const n = directionOf(map.family.across);
  const { x, y } = map.family.datum;
  const placeOn = (edge: number, { way, shift }: Span): Point | undefined => {
    const here = corners[edge];
    const start = way === 1 ? here : here && corners[here.after];
    if (!start) return undefined;
    const u = (start.u - shift) * way;
    return pointOf(x + u * n.x - start.v * n.y, y + u * n.y + start.v * n.x);
  };

  const done = corners.map(() => new Set<number>());
  const openings: Opening[] = [];
  for (const [begin, a] of corners.entries()) {
    for (const first of over[besideOf(a, corners[a.after] ?? a)] ?? []) {
      if (done[begin]?.has(first) || !keeps(begin, first)) continue;
      const loop: Point[] = [];
      let tuck = -1;
      let at: { edge: number; layer: number } | undefined = { edge: begin, layer: first };
      do {
        const span: Span | undefined = spans[at.layer];
        const seen = done[at.edge];
        const point = span && placeOn(at.edge, span);
        if (!span || !point || !seen || seen.has(at.layer)) return undefined;
        seen.add(at.layer);
        if (span.kind !== 'base' && (tuck < 0 || span.tuck < tuck)) tuck = span.tuck;
        const last = loop.at(-1);
        if (!last || !samePoint(last, point)) loop.push(point);
        at = follow(at.edge, at.layer);
        if (!at) return undefined;
      } while (at.edge !== begin || at.layer !== first);
      openings.push({ loop, hole: signedArea(loop) * turn < 0, tuck });
    }
  }
  const area = ({ loop }: Opening): number => Math.abs(signedArea(loop));
  return openings.sort((p, q) => area(q) - area(p));
}
