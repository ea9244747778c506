import { bad, good, type Result } from '../length/result.ts';
import type { Polygon } from '../shape/flatten.ts';
import { signedArea } from '../shape/measure.ts';
import { openMap, type TuckFamily } from './fold-map.ts';
import { type Opening, openLoops } from './open-loops.ts';
import { type Refusal, refusal } from './refusal.ts';

/** Opens through every family, the last sewn first, and hands each stage to a check that may refuse it. */
function openThrough(
  polygon: Polygon,
  families: readonly TuckFamily[],
  check: (openings: readonly Opening[], family: number) => Refusal | undefined,
): Result<readonly Polygon[], Refusal> {
  if (polygon.length < 3 || signedArea(polygon) === 0) {
    return bad(
      refusal(
        'polygon',
        polygon.length < 3 ? 'The outline has fewer than three corners.' : 'The outline has no area.',
        'Give at least three corners in order round the piece.',
      ),
    );
  }
  let open: readonly Polygon[] = [polygon];
  for (let i = families.length - 1; i >= 0; i--) {
    const family = families[i];
    if (!family) continue;
    const map = openMap(family);
    if (!map.ok) return map;
    const openings = openLoops(open, map.value);
    if (!openings) {
      return bad(
        refusal(
          'polygon',
          'The outline touches or crosses itself.',
          'Give corners in order once round the piece.',
        ),
      );
    }
    const wrong = check(openings, i);
    if (wrong) return bad(wrong);
    open = openings.map((one) => one.loop);
  }
  return good(open);
}

/**
 * The finished outline of a piece as it lies on the flat cloth, for marking: every closed line that folds onto it. There
 * is more than one where the cloth inside would fall apart if it were cut along it, or needs a hole: a small loose
 * bit under a tuck has a line of its own. For an outline to cut by, see {@link openOutline}.
 *
 * @param polygon finished corners in order (straighten curves first)
 * @param families tucks in the order in which they are sewn
 * Refused: an outline without area, or one that crosses itself on a line of a tuck; tucks that cannot be sewn.
 */
export const openLines = (
  polygon: Polygon,
  families: readonly TuckFamily[],
): Result<readonly Polygon[], Refusal> => openThrough(polygon, families, () => undefined);

/**
 * Opens the finished outline of a piece into the outline to cut, so that its edge is true when the tucks are folded,
 * sewn and pressed: slanted edges get the small points and notches that lie inside the tucks.
 *
 * Time grows with the corners and with the places where edges cross the lines of tucks.
 *
 * @param polygon finished corners in order (straighten curves first)
 * @param families tucks in the order in which they are sewn; each one's datum stays where it is while that family is
 *   sewn, and later families are measured on the cloth as the earlier ones leave it
 *
 * Refused: an outline without area, or one that crosses itself on a line of a tuck; tucks that cannot be sewn (see
 * `tucks`); an edge that cuts off the fold of a tuck whose stitching line lies on the other side of it, so that a bit
 * of cloth comes loose; a hollow that ends inside a tuck, which would need a hole in the cloth.
 */
export function openOutline(polygon: Polygon, families: readonly TuckFamily[]): Result<Polygon, Refusal> {
  const open = openThrough(polygon, families, (openings, family) => {
    const [, other] = openings;
    if (!other) return undefined;
    const group = families.length > 1 ? ` of group ${family + 1}` : '';
    const tuck = `tuck ${other.tuck + 1}${group}`;
    return other.hole
      ? refusal(
          'tucks',
          `A hollow of the edge ends inside ${tuck}, so the flat cloth would need a hole there.`,
          'Move the tuck so that the hollow ends beside it, or make it shallower.',
        )
      : refusal(
          'tucks',
          `The edge of the piece cuts off the fold of ${tuck}, so the cloth would fall apart there.`,
          'Move the tuck so that its stitching line and its fold both lie inside the piece or both outside, or make it shallower.',
        );
  });
  if (!open.ok) return open;
  return good(open.value[0] ?? polygon);
}
