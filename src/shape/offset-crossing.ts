import type { Polygon } from './flatten.ts';
import type { Point } from './outline.ts';

const way = (p: Point, q: Point, r: Point): number =>
  Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));

/**
 * Do two sides of a polygon run across each other? Sides that only touch do not count.
 * Sides are compared only while their stretches from left to right overlap.
 */
export function sidesCross(polygon: Polygon): boolean {
  const n = polygon.length;
  const sides = polygon.map((a, i) => {
    const b = polygon[(i + 1) % n] ?? a;
    return { a, b, left: Math.min(a.x, b.x), right: Math.max(a.x, b.x) };
  });
  sides.sort((p, q) => p.left - q.left);
  for (const [i, { a, b, right }] of sides.entries()) {
    for (let j = i + 1; j < n; j++) {
      const other = sides[j];
      if (!other || other.left > right) break;
      const { a: c, b: d } = other;
      if (way(a, b, c) * way(a, b, d) < 0 && way(c, d, a) * way(c, d, b) < 0) return true;
    }
  }
  return false;
}
