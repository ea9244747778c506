import type { Point } from '../../src/shape/index.ts';

/** Exact: which side of the line from `a` to `b` a point lies on. */
function side(a: Point, b: Point, p: Point): number {
  const area =
    (BigInt(b.x) - BigInt(a.x)) * (BigInt(p.y) - BigInt(a.y)) -
    (BigInt(b.y) - BigInt(a.y)) * (BigInt(p.x) - BigInt(a.x));
  return area > 0n ? 1 : area < 0n ? -1 : 0;
}

const sides = (polygon: readonly Point[]): (readonly [Point, Point])[] =>
  polygon.map((a, i) => [a, polygon[(i + 1) % polygon.length]!] as const);

const between = (a: Point, b: Point, p: Point): boolean =>
  p.x >= Math.min(a.x, b.x) &&
  p.x <= Math.max(a.x, b.x) &&
  p.y >= Math.min(a.y, b.y) &&
  p.y <= Math.max(a.y, b.y);

/** Exact: is a point strictly inside, counting how often the outline winds round it? */
function strictlyInside(polygon: readonly Point[], p: Point): boolean {
  let winds = 0;
  for (const [a, b] of sides(polygon)) {
    const s = side(a, b, p);
    if (s === 0 && between(a, b, p)) return false;
    if (a.y <= p.y && b.y > p.y && s > 0) winds++;
    if (a.y > p.y && b.y <= p.y && s < 0) winds--;
  }
  return winds !== 0;
}

/** Points a micrometre inside each side, a quarter, half and three quarters along it. */
function justInside(polygon: readonly Point[]): Point[] {
  return sides(polygon)
    .flatMap(([a, b]) => {
      const long = Math.hypot(b.x - a.x, b.y - a.y);
      return [0.25, 0.5, 0.75].flatMap((t) =>
        [-1000, 1000].map((d) => ({
          x: Math.round(a.x + (b.x - a.x) * t + (d * (b.y - a.y)) / long) as Point['x'],
          y: Math.round(a.y + (b.y - a.y) * t - (d * (b.x - a.x)) / long) as Point['y'],
        })),
      );
    })
    .filter((p) => strictlyInside(polygon, p));
}

/**
 * Do two outlines share any area? Knows nothing of slices or of how they were laid: they do where sides truly cross, or a
 * place inside the one lies inside the other. Touching is not overlapping.
 */
export function overlap(a: readonly Point[], b: readonly Point[]): boolean {
  for (const [p, q] of sides(a)) {
    for (const [r, s] of sides(b)) {
      if (Math.max(p.x, q.x) < Math.min(r.x, s.x) || Math.max(r.x, s.x) < Math.min(p.x, q.x)) continue;
      if (side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0) return true;
    }
  }
  return justInside(a).some((p) => strictlyInside(b, p)) || justInside(b).some((p) => strictlyInside(a, p));
}

/** How near two outlines that do not overlap come to each other, in nanometres. */
export function apart(a: readonly Point[], b: readonly Point[]): number {
  const near = (of: readonly Point[], to: readonly Point[]): number => {
    let best = Number.POSITIVE_INFINITY;
    for (const p of of) {
      for (const [q, r] of sides(to)) {
        const [dx, dy] = [r.x - q.x, r.y - q.y];
        const long = dx * dx + dy * dy;
        const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - q.x) * dx + (p.y - q.y) * dy) / long));
        best = Math.min(best, Math.hypot(p.x - q.x - t * dx, p.y - q.y - t * dy));
      }
    }
    return best;
  };
  return Math.min(near(a, b), near(b, a));
}
