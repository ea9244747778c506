import { directionOf } from '../shape/clip.ts';
import type { Polygon } from '../shape/flatten.ts';
import { acrossOf, type TuckFamily } from './fold-map.ts';

/**
 * A corner of a finished edge in the family's own directions: `v` along the tucks, and across them a distance `u` and a place. The lines
 * (stitching and folds, finished) have odd places 1, 3, 5, …; the strips before, between and after them 0, 2, 4, ….
 */
export interface Corner {
  readonly u: number;
  readonly v: number;
  readonly place: number;
  /** Corners before and after it round its loop. */
  before: number;
  after: number;
}

const NEAR = 10; // a corner within 10 nm of a line is on it: more than roundings add up to, less than anyone marks

/** Place of a distance among lines in rising order: the line that is near, else the strip. */
function placeOf(lines: readonly number[], u: number): number {
  let [low, high] = [0, lines.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((lines[middle] ?? 0) < u) low = middle + 1;
    else high = middle;
  }
  const [under, over] = [u - (lines[low - 1] ?? -Infinity), (lines[low] ?? Infinity) - u];
  if (Math.min(under, over) > NEAR) return 2 * low;
  return under < over ? 2 * low - 1 : 2 * low + 1;
}

/**
 * The finished edges of closed lines with a corner wherever they cross a stitching line or a fold.
 * @param lines finished distances of stitching lines and folds from the datum, in rising order
 */
export function dividedCorners(
  loops: readonly Polygon[],
  family: TuckFamily,
  lines: readonly number[],
): Corner[] {
  const n = directionOf(family.across);
  const corners: Corner[] = [];
  for (const loop of loops) {
    const first = corners.length;
    const push = (u: number, v: number, place: number): void => {
      const last = corners.length > first ? corners.at(-1) : undefined;
      if (last && last.u === u && last.v === v) return;
      corners.push({ u, v, place, before: corners.length - 1, after: corners.length + 1 });
    };
    const seen = loop.map((p) => {
      const u = acrossOf(family, p);
      const place = placeOf(lines, u);
      const v = (p.y - family.datum.y) * n.x - (p.x - family.datum.x) * n.y;
      return { u: place % 2 === 1 ? (lines[(place - 1) / 2] ?? u) : u, v, place };
    });
    for (const [i, a] of seen.entries()) {
      const b = seen[(i + 1) % seen.length] ?? a;
      push(a.u, a.v, a.place);
      const step = b.place > a.place ? 1 : -1;
      for (let place = a.place + step; place * step < b.place * step; place += step) {
        const u = place % 2 === 0 ? undefined : lines[(place - 1) / 2];
        if (u !== undefined) push(u, a.v + ((b.v - a.v) * (u - a.u)) / (b.u - a.u), place);
      }
    }
    const [start, end] = [corners[first], corners.at(-1)];
    if (!start || !end) continue;
    if (corners.length > first + 1 && start.u === end.u && start.v === end.v) corners.pop();
    const close = corners.at(-1);
    if (!close) continue;
    start.before = corners.length - 1;
    close.after = first;
  }
  return corners;
}
