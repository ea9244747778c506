import { pointOf } from '../shape/flatten.ts';
import type { Point, Segment } from '../shape/outline.ts';

/** A place on the draft in nanometres, not yet rounded. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}
/** A cubic curve: start, two handles, end. */
export type Cubic = readonly [Spot, Spot, Spot, Spot];

const STEPS = 64;

/** Length of a cubic by chords, in nanometres; of curves as gentle as these it is right to a few micrometres. */
export function cubicLength([p, q, r, s]: Cubic): number {
  let sum = 0;
  let [x, y] = [p.x, p.y];
  for (let k = 1; k <= STEPS; k++) {
    const t = k / STEPS;
    const u = 1 - t;
    const [a, b, c, d] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
    const nextX = a * p.x + b * q.x + c * r.x + d * s.x;
    const nextY = a * p.y + b * q.y + c * r.y + d * s.y;
    sum += Math.hypot(nextX - x, nextY - y);
    [x, y] = [nextX, nextY];
  }
  return sum;
}

const place = ({ x, y }: Spot): Point => pointOf(x, y);

/** A cubic as a segment of an outline. */
export const segmentOf = ([, first, second, to]: Cubic): Segment => ({
  kind: 'curve',
  first: place(first),
  second: place(second),
  to: place(to),
});

/** The same curve from its other end. */
export const turned = ([a, b, c, d]: Cubic): Cubic => [d, c, b, a];

/** The same curve on the other side of the upright through the datum. */
export const mirrored = (curve: Cubic): Cubic => {
  const flip = ({ x, y }: Spot): Spot => ({ x: -x, y });
  const [a, b, c, d] = curve;
  return [flip(a), flip(b), flip(c), flip(d)];
};

/** The same curve further down. */
export const shiftedDown = (curve: Cubic, by: number): Cubic => {
  const shift = ({ x, y }: Spot): Spot => ({ x, y: y + by });
  const [a, b, c, d] = curve;
  return [shift(a), shift(b), shift(c), shift(d)];
};

/**
 * A smooth line downwards through spots, each lower than the one before, that nowhere swings out past two neighbours. It
 * begins as it would go on, or less slanted where `lean` is less.
 * Source: Fritsch and Butland's slopes for monotone cubics (from memory).
 */
export function smoothDown(spots: readonly Spot[], lean: number): Cubic[] {
  const slopeAfter = (i: number): number => {
    const [a, b] = [spots[i], spots[i + 1]];
    return a && b ? (b.x - a.x) / (b.y - a.y) : 0;
  };
  const slopes = spots.map((_, i) => {
    if (i === 0) return Math.max(-lean, Math.min(lean, slopeAfter(0)));
    if (i === spots.length - 1) return slopeAfter(i - 1);
    const [before, after] = [slopeAfter(i - 1), slopeAfter(i)];
    return before * after <= 0 ? 0 : (2 * before * after) / (before + after);
  });
  const curves: Cubic[] = [];
  for (let i = 0; i + 1 < spots.length; i++) {
    const [a, b] = [spots[i], spots[i + 1]];
    if (!a || !b) continue;
    const third = (b.y - a.y) / 3;
    curves.push([
      a,
      { x: a.x + third * (slopes[i] ?? 0), y: a.y + third },
      { x: b.x - third * (slopes[i + 1] ?? 0), y: b.y - third },
      b,
    ]);
  }
  return curves;
}
