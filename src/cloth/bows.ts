import { add, type Length, nm, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Refusal, refusal } from './refusal.ts';

/** A bow made of folded strips: loops, a knot round its middle, and tails if wanted. Finished sizes. */
export interface BowInput {
  /** From the end of one loop to the end of the other. */
  readonly width: Length;
  /** Height of a loop. */
  readonly height: Length;
  /** Width of the knot, across the bow. */
  readonly knot: Length;
  /** Way round the middle of the bow when it is drawn together; wrap a tape round a sample. */
  readonly middle: Length;
  readonly allowance: Length;
  /** Two tails, each of this length along its longer edge and this width. */
  readonly tails?: { readonly length: Length; readonly width: Length };
}

/** A strip to cut, and how many. The long folds and seams run along its length. */
export interface BowStrip {
  readonly part: 'loops' | 'knot' | 'tail';
  readonly count: number;
  readonly length: Length;
  readonly width: Length;
  /** Marks along the length, from one cut end. */
  readonly marks: readonly Length[];
}

/** What {@link bow} gives back. */
export interface BowMade {
  readonly strips: readonly BowStrip[];
  readonly assumed: readonly string[];
}

/**
 * Strips for a bow, each double with its fold along one edge. The loops are one strip, twice as long as the bow is wide, its ends sewn
 * together behind the knot. Marks: where the loops turn and their front middle; the middle of the knot. Follows from the measures.
 *
 * Refused: sizes of zero or less; an allowance below zero; a knot as wide as the bow; a middle larger than the loops
 * laid flat, which is not drawn together.
 */
export function bow(input: BowInput): Result<BowMade, Refusal> {
  const { width, height, knot, middle, allowance, tails } = input;
  if (width <= 0) return bad(refusal('width', 'The bow has no width.', 'Give a width above zero.'));
  if (height <= 0) return bad(refusal('height', 'The loops have no height.', 'Give a height above zero.'));
  if (knot <= 0 || knot >= width)
    return bad(
      refusal('knot', 'The knot does not lie on the bow.', 'Give a width above zero, less than the bow.'),
    );
  if (middle <= 0 || middle > 2 * height) {
    const cure = 'Give a way round above zero and no more than twice the height.';
    return bad(refusal('middle', 'This is not the way round a middle drawn together.', cure));
  }
  if (allowance < 0) return bad(refusal('allowance', 'The allowance is below zero.', 'Give zero or more.'));
  if (tails && (tails.length <= 0 || tails.width <= 0))
    return bad(refusal('tails', 'The tails have no size.', 'Give a length and a width above zero.'));
  const seams = times(allowance, 2);
  const along = (part: number): Length => nm(allowance + 2 * width * part);
  const strips: BowStrip[] = [
    {
      part: 'loops',
      count: 1,
      length: add(times(width, 2), seams),
      width: add(times(height, 2), seams),
      marks: [along(1 / 4), along(1 / 2), along(3 / 4)],
    },
    {
      part: 'knot',
      count: 1,
      length: add(middle, seams),
      width: add(times(knot, 2), seams),
      marks: [nm(allowance + middle / 2)],
    },
  ];
  if (tails) {
    const [length, wide] = [add(tails.length, seams), add(times(tails.width, 2), seams)];
    strips.push({ part: 'tail', count: 2, length, width: wide, marks: [] });
  }
  return good({ strips, assumed: ['Every strip is folded double along its length.'] });
}
