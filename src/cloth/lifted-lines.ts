import { clipLine, directionOf, type Line, type Stretch } from '../shape/clip.ts';
import { type Polygon, pointOf } from '../shape/flatten.ts';
import { distance } from '../shape/measure.ts';
import type { Point } from '../shape/outline.ts';
import { acrossOf, type FoldMap } from './fold-map.ts';
import { lineAt, linesOf, type MarkedLine } from './tuck-lines.ts';

const inLine = (a: Point, b: Point, c: Point): boolean =>
  Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) <= 4 * Math.hypot(c.x - a.x, c.y - a.y);

/** A stretch of a straight line on the folded cloth, as it lies on the flat cloth: through every layer that it is sewn through. */
function unfolded(map: FoldMap, line: Line, stretch: Stretch): Point[][] {
  const n = directionOf(map.family.across);
  const d = directionOf(line.angle);
  const start = acrossOf(map.family, line.through);
  const grows = d.x * n.x + d.y * n.y;
  const runs: Point[][] = [];
  for (const { from, to, shift, way } of map.layers) {
    const ends = [from, to].map((flat) => (shift + way * flat - start) / grows);
    const low = Math.max(stretch.from, Math.min(...ends));
    const high = Math.min(stretch.to, Math.max(...ends));
    if (high - low <= 1) continue;
    const place = (t: number): Point => {
      const u = start + t * grows;
      return pointOf(
        line.through.x + t * d.x + ((u - shift) * way - u) * n.x,
        line.through.y + t * d.y + ((u - shift) * way - u) * n.y,
      );
    };
    const [a, b] = grows * way > 0 ? [place(low), place(high)] : [place(high), place(low)];
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && distance(last, a) <= 4) {
      const before = run.at(-2);
      if (before && inLine(before, last, b)) run.pop();
      run.push(b);
    } else runs.push([a, b]);
  }
  return runs;
}

/**
 * The lines of a second family as they lie on the flat cloth before the first is sewn: straight where the two cross
 * square, else in zigzag through every layer.
 *
 * @param tucked the cloth with the first tucks sewn and pressed, before the second
 */
export const liftedLines = (first: FoldMap, second: FoldMap, tucked: Polygon): MarkedLine[] =>
  second.marks.flatMap((mark, tuck) =>
    linesOf(mark).map(([name, flat]): MarkedLine => {
      const line = lineAt(second.family, flat);
      return { tuck, line: name, runs: clipLine(tucked, line).flatMap((s) => unfolded(first, line, s)) };
    }),
  );
