import { pointOf } from '../shape/flatten.ts';
import type { Point, Segment } from '../shape/outline.ts';

type Curve = Extract<Segment, { kind: 'curve' }>;

const between = (a: Point, b: Point, t: number): Point =>
  pointOf(a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t);

/** A curve in two at a part of its parameter: the same line as before. Source: de Casteljau's construction (from memory). */
function halves(start: Point, { first, second, to }: Curve, t: number): readonly [Curve, Curve] {
  const [ab, bc, cd] = [between(start, first, t), between(first, second, t), between(second, to, t)];
  const [abc, bcd] = [between(ab, bc, t), between(bc, cd, t)];
  const mid = between(abc, bcd, t);
  return [
    { kind: 'curve', first: ab, second: abc, to: mid },
    { kind: 'curve', first: bcd, second: cd, to },
  ];
}

const heightOf = (start: Point, { first, second, to }: Curve, t: number): number => {
  const s = 1 - t;
  return s * s * s * start.y + 3 * s * s * t * first.y + 3 * s * t * t * second.y + t * t * t * to.y;
};

/** Where along a curve it is highest or lowest, besides its ends. */
function turns(start: Point, { first, second, to }: Curve): readonly number[] {
  const [p, q, r] = [first.y - start.y, second.y - first.y, to.y - second.y];
  const [a, b, c] = [p - 2 * q + r, 2 * (q - p), p];
  const root = b * b - 4 * a * c;
  const found =
    a === 0
      ? b === 0
        ? []
        : [-c / b]
      : root < 0
        ? []
        : [-1, 1].map((sign) => (-b + sign * Math.sqrt(root)) / (2 * a));
  return found.filter((t) => t > 0 && t < 1).sort((one, two) => one - two);
}

/** Where along a curve it crosses a height. */
function crossingsOf(start: Point, curve: Curve, y: number): readonly number[] {
  const stops = [0, ...turns(start, curve), 1];
  return stops.flatMap((from, i) => {
    const to = stops[i + 1];
    if (to === undefined) return [];
    let [low, high] = [from, to];
    const rising = heightOf(start, curve, high) > heightOf(start, curve, low);
    if ((heightOf(start, curve, low) - y) * (heightOf(start, curve, high) - y) >= 0) return [];
    for (let k = 0; k < 60; k++) {
      const mid = (low + high) / 2;
      if (heightOf(start, curve, mid) < y === rising) low = mid;
      else high = mid;
    }
    return [(low + high) / 2];
  });
}

const SLIVER = 1e-6;

/** A stretch of an edge in as many as it has crossings with some heights, so that each lies between two of them. */
export function cutAt(start: Point, segment: Segment, heights: readonly number[]): readonly Segment[] {
  if (heights.length === 0) return [segment];
  if (segment.kind === 'line') {
    const { to } = segment;
    const ts = heights
      .map((y) => (y - start.y) / (to.y - start.y))
      .filter((t) => t > SLIVER && t < 1 - SLIVER)
      .sort((a, b) => a - b);
    return [...new Set(ts)]
      .map((t): Segment => ({ kind: 'line', to: between(start, to, t) }))
      .concat(segment);
  }
  const ts = [...new Set(heights.flatMap((y) => crossingsOf(start, segment, y)))]
    .filter((t) => t > SLIVER && t < 1 - SLIVER)
    .sort((a, b) => a - b);
  const parts: Segment[] = [];
  let [from, rest, done]: [Point, Curve, number] = [start, segment, 0];
  for (const t of ts) {
    const [one, two] = halves(from, rest, (t - done) / (1 - done));
    parts.push(one);
    [from, rest, done] = [one.to, two, t];
  }
  return [...parts, rest];
}

/** Everywhere that a stretch of an edge is at a height, as places across; both its ends where it lies level there. */
export function acrossAt(start: Point, segment: Segment, y: number): readonly number[] {
  const { to } = segment;
  const ends = [start, to].flatMap((point) => (point.y === y ? [point.x] : []));
  if (segment.kind === 'line') {
    const t = (y - start.y) / (to.y - start.y);
    return t > 0 && t < 1 ? [...ends, start.x + (to.x - start.x) * t] : ends;
  }
  const { first, second } = segment;
  const between = crossingsOf(start, segment, y).map((t) => {
    const s = 1 - t;
    return s * s * s * start.x + 3 * s * s * t * first.x + 3 * s * t * t * second.x + t * t * t * to.x;
  });
  return [...ends, ...between];
}
