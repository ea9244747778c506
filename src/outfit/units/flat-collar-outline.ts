import type { Length } from '../../length/length.ts';
import { pointOf } from '../../shape/flatten.ts';
import type { Outline, Point } from '../../shape/outline.ts';
import { along, backwards, longOf, type OnPath, type Path, pointsOn, through } from './neck-line.ts';

/** Places along the neck at which the outer edge is drawn, besides its two ends. */
const PLACES = 8;
/** How far the handles of a rounded corner reach to where the corner would be: about a quarter of a circle. */
const ROUNDING = 0.55;
/** A pointed corner reaches further by this part of the width. */
const POINTED = 0.35;
/** The shape between a neck line and a line beside it; its front corner square, rounded or drawn out to a point. */
export function besideNeck(neck: Path, wide: Length, corner: 'square' | 'round' | 'point'): Outline {
  const points = pointsOn(neck);
  const long = longOf(neck);
  // Where pieces meet at an angle the outer edge goes round smoothly, so the way is taken over a stretch.
  const wayAt = (far: number): OnPath['way'] => {
    const reach = Math.min(long / 6, far, long - far);
    if (reach < 1000) return along(points, far).way;
    const [a, b] = [along(points, far - reach).at, along(points, far + reach).at];
    const gone = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    return { x: (b.x - a.x) / gone, y: (b.y - a.y) / gone };
  };
  const beside = (far: number, by: number): Point => {
    const { at } = along(points, far);
    const way = wayAt(far);
    return pointOf(at.x + way.y * by, at.y - way.x * by);
  };
  const rounded = corner === 'round' ? Math.min(wide * 0.8, long / 3) : 0;
  const reach = long - rounded;
  const outer = Array.from({ length: PLACES + 1 }, (_, i) => beside((reach * i) / PLACES, wide));
  const start = pointOf(0, -wide);
  const [, second = start] = outer;
  const segments = [...through([start, ...outer.slice(1)], pointOf(-second.x, second.y))];
  const end = wayAt(long);
  const full = beside(long, wide);
  if (corner === 'round') {
    const from = outer.at(-1) ?? full;
    const low = beside(long, wide - rounded);
    const way = wayAt(reach);
    const pull = Math.hypot(full.x - from.x, full.y - from.y) * ROUNDING;
    segments.push({
      kind: 'curve',
      first: pointOf(from.x + way.x * pull, from.y + way.y * pull),
      second: pointOf(low.x + end.y * rounded * ROUNDING, low.y - end.x * rounded * ROUNDING),
      to: low,
    });
  } else if (corner === 'point') {
    segments.push({
      kind: 'line',
      to: pointOf(full.x + end.x * wide * POINTED, full.y + end.y * wide * POINTED),
    });
  }
  const back = backwards(neck);
  return {
    start,
    edges: [
      { name: 'outer', segments },
      { name: 'front-end', segments: [{ kind: 'line', to: back.start }] },
      { name: 'neck', segments: back.segments },
      { name: 'fold', segments: [{ kind: 'line', to: start }] },
    ],
  };
}
