import fc from 'fast-check';
import { mm } from '../../src/length/index.ts';
import type { Point } from '../../src/shape/index.ts';

/** A point from millimetres. */
export const at = (x: number, y: number): Point => ({ x: mm(x), y: mm(y) });

/** A rectangle from the datum. */
export const rectangle = (width: number, height: number): Point[] => [
  at(0, 0),
  at(width, 0),
  at(width, height),
  at(0, height),
];

/** An L, hollow at one corner. */
export const ell: readonly Point[] = [at(0, 0), at(100, 0), at(100, 40), at(40, 40), at(40, 100), at(0, 100)];

/** A U: a line across its top is inside twice. */
export const horseshoe: readonly Point[] = [
  at(0, 0),
  at(30, 0),
  at(30, 60),
  at(70, 60),
  at(70, 0),
  at(100, 0),
  at(100, 100),
  at(0, 100),
];

/** Shapes with one corner on every ray from the middle: never crossing themselves, often hollow. */
export const star = fc
  .array(fc.integer({ min: 40, max: 120 }), { minLength: 3, maxLength: 16 })
  .map((radii) =>
    radii.map((r, i) => {
      const turn = (2 * Math.PI * i) / radii.length;
      return at(200 + r * Math.cos(turn), 200 + r * Math.sin(turn));
    }),
  );

/** Convex shapes: corners on one circle. */
export const convex = fc
  .uniqueArray(fc.integer({ min: 0, max: 359 }), { minLength: 3, maxLength: 20 })
  .map((angles) =>
    angles
      .sort((a, b) => a - b)
      .map((a) => at(200 + 100 * Math.cos((a * Math.PI) / 180), 200 + 100 * Math.sin((a * Math.PI) / 180))),
  );

/** How far a point is from the nearest side of a polygon, in nanometres. */
export function toNearestSide(polygon: readonly Point[], p: Point): number {
  let best = Number.POSITIVE_INFINITY;
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length] as Point;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const long = dx * dx + dy * dy;
    const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / long));
    best = Math.min(best, Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy));
  });
  return best;
}
