import { bad, good, type Result } from '../length/result.ts';
import { clipLine, directionOf, type Line, type Stretch } from '../shape/clip.ts';
import { type Polygon, pointOf } from '../shape/flatten.ts';
import { distance } from '../shape/measure.ts';
import type { Point } from '../shape/outline.ts';
import { acrossOf, type FoldMap, openMap, type TuckFamily } from './fold-map.ts';
import { LEAST_CROSSING } from './lattice.ts';
import { openOutline } from './open-outline.ts';
import { type Refusal, refusal } from './refusal.ts';
import { lineAt, linesOf, type MarkedLine, straightLines } from './tuck-lines.ts';

/** What {@link crossTucks} gives back. */
export interface CrossTucksMade {
  /** Outline to cut, or to mark on the flat cloth when the maker cuts after tucking. */
  readonly cut: Polygon;
  /** Lines of the tucks sewn first, on the flat cloth. */
  readonly first: readonly MarkedLine[];
  /** Lines of the tucks sewn second, on the flat cloth before anything is sewn: straight, or in zigzag where the two cross aslant. */
  readonly second: readonly MarkedLine[];
  /** The same lines on the cloth once the first tucks are sewn and pressed: always straight. */
  readonly secondAfterPressing: readonly MarkedLine[];
  /** True where the two cross at right angles, so that both can be marked with a ruler beforehand. */
  readonly square: boolean;
  readonly assumed: readonly string[];
}

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
 * Marks for tucks that cross: all of one direction are sewn and pressed first, then the others across them, through
 * every layer.
 *
 * The second family is measured on the cloth as the first leaves it (its datum does not move). Source for the order:
 * NIMI Dress Making, trade practical, p. 207 (c. 2024), seen as an excerpt.
 *
 * @param outline finished corners of the piece (straighten curves first)
 * Refused: families that run within 5° of each other; tucks that cannot be sewn; an edge that cuts off a fold.
 */
export function crossTucks(input: {
  readonly first: TuckFamily;
  readonly second: TuckFamily;
  readonly outline: Polygon;
}): Result<CrossTucksMade, Refusal> {
  const { first, second, outline } = input;
  const [a, b] = [directionOf(first.across), directionOf(second.across)];
  if (Math.abs(a.x * b.y - a.y * b.x) < Math.sin((LEAST_CROSSING.value * Math.PI) / 180)) {
    return bad(
      refusal(
        'second',
        'The two groups of tucks run the same way.',
        'Give directions at least 5 degrees apart.',
      ),
    );
  }
  const [one, two] = [openMap(first), openMap(second)];
  if (!one.ok) return one;
  if (!two.ok) return two;
  const tucked = openOutline(outline, [second]);
  if (!tucked.ok) return tucked;
  const cut = openOutline(tucked.value, [first]);
  if (!cut.ok) return cut;
  const lifted = two.value.marks.flatMap((mark, tuck) =>
    linesOf(mark).map(([name, flat]): MarkedLine => {
      const line = lineAt(second, flat);
      return {
        tuck,
        line: name,
        runs: clipLine(tucked.value, line).flatMap((s) => unfolded(one.value, line, s)),
      };
    }),
  );
  return good({
    cut: cut.value,
    first: straightLines(one.value, cut.value),
    second: lifted,
    secondAfterPressing: straightLines(two.value, tucked.value),
    square: Math.abs(a.x * b.x + a.y * b.y) < 1e-9,
    assumed: ['The first tucks are pressed flat before the second are sewn.'],
  });
}
