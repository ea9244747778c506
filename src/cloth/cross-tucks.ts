import { bad, good, type Result } from '../length/result.ts';
import { directionOf } from '../shape/clip.ts';
import type { Polygon } from '../shape/flatten.ts';
import { openMap, type TuckFamily } from './fold-map.ts';
import { LEAST_CROSSING } from './lattice.ts';
import { liftedLines } from './lifted-lines.ts';
import { openOutline } from './open-outline.ts';
import { type Refusal, refusal } from './refusal.ts';
import { type MarkedLine, straightLines } from './tuck-lines.ts';

export type { MarkedLine } from './tuck-lines.ts';

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
  // Through both at once, so that what is refused names the group as well as the tuck.
  const cut = openOutline(outline, [first, second]);
  if (!cut.ok) return cut;
  const tucked = openOutline(outline, [second]);
  if (!tucked.ok) return tucked;
  return good({
    cut: cut.value,
    first: straightLines(one.value, cut.value),
    second: liftedLines(one.value, two.value, tucked.value),
    secondAfterPressing: straightLines(two.value, tucked.value),
    square: Math.abs(a.x * b.x + a.y * b.y) < 1e-9,
    assumed: ['The first tucks are pressed flat before the second are sewn.'],
  });
}
