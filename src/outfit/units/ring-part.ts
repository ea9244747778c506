import type { Length } from '../../length/length.ts';
import { pointOf } from '../../shape/flatten.ts';
import type { Outline, Point, Segment } from '../../shape/outline.ts';

/** No single curve of an arc turns further than this. */
const EIGHTH = Math.PI / 4;

/**
 * A part of a ring, hanging from its inner edge: `seam` inside, `outer` outside, an end on either side.
 * @param turn part of a whole turn, up to 1
 */
export function ringPart(turn: number, inside: Length, outside: Length): Outline {
  const half = turn * Math.PI;
  const at = (radius: number, angle: number): Point =>
    // Straight down at no angle, to the right above it; the seam's middle lies on the datum's level.
    pointOf(radius * Math.sin(angle), radius * Math.cos(angle) - inside);
  const arc = (radius: number, from: number, to: number, end: Point): readonly Segment[] => {
    const steps = Math.max(1, Math.ceil(Math.abs(to - from) / EIGHTH));
    const each = (to - from) / steps;
    const reach = (4 / 3) * Math.tan(each / 4) * radius;
    return Array.from({ length: steps }, (_, i) => {
      const [a, b] = [from + i * each, from + (i + 1) * each];
      const [start, last] = [at(radius, a), i === steps - 1 ? end : at(radius, b)];
      return {
        kind: 'curve',
        first: pointOf(start.x + reach * Math.cos(a), start.y - reach * Math.sin(a)),
        second: pointOf(last.x - reach * Math.cos(b), last.y + reach * Math.sin(b)),
        to: last,
      };
    });
  };
  const start = at(inside, -half);
  const [right, low, left] = [at(inside, half), at(outside, half), at(outside, -half)];
  return {
    start,
    edges: [
      { name: 'seam', segments: arc(inside, -half, half, right) },
      { name: 'front-end', segments: [{ kind: 'line', to: low }] },
      { name: 'outer', segments: arc(outside, half, -half, left) },
      { name: 'back-end', segments: [{ kind: 'line', to: start }] },
    ],
  };
}
