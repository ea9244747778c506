import { type Length, nm, times, zero } from '../../length/length.ts';
import type { Outline, OutlineEdge } from '../../shape/outline.ts';
import { curved, point } from './rectangle.ts';

/** Handles of this part of the half width make a quarter of an ellipse. */
const ROUND = 0.5523;

/** An oval of a width and a height in four edges, its box at the datum: `top-right`, `bottom-right`, `bottom-left`, `top-left`. */
export function ovalOutline(wide: Length, high: Length): Outline {
  const [a, b] = [times(wide, 1 / 2), times(high, 1 / 2)];
  const at = (x: number, y: number) => point(nm(a * (1 + x)), nm(b * (1 + y)));
  const quarter = (name: string, x: number, y: number, toX: number, toY: number): OutlineEdge =>
    curved(name, at(x + toX * ROUND, y + toY * ROUND), at(toX + x * ROUND, toY + y * ROUND), at(toX, toY));
  return {
    start: point(a, zero),
    edges: [
      quarter('top-right', 0, -1, 1, 0),
      quarter('bottom-right', 1, 0, 0, 1),
      quarter('bottom-left', 0, 1, -1, 0),
      quarter('top-left', -1, 0, 0, -1),
    ],
  };
}
