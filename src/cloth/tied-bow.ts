import { add, type Length, longer, nm, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Advice, advise, type Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory, practice } from './source.ts';

/**
 * Tying a bow takes so many times the finished width of the tie, besides loops and tails; less for thin cloth, more for stiff.
 * @unit times
 */
export const KNOT_TAKES: Sourced<number> = { value: 2, source: memory };

/** A neckcloth or sash of one width, tied in a bow with two loops and two tails. Finished sizes. */
export interface TiedBowInput {
  /** Way round the neck or waist where it lies, over the collar if it is worn so. */
  readonly round: Length;
  /** From the end of one loop to the end of the other, tied. */
  readonly bow: Length;
  /** Each tail, from the knot to its end. */
  readonly tail: Length;
  /** Width of the tie, lying flat. */
  readonly width: Length;
  readonly allowance: Length;
  /** What tying the knot takes: tie a sample and measure what it lost. Twice the width if not given (from memory). */
  readonly knot?: Length;
  /** Longest strip that the cloth gives; a longer tie is cut in halves with a seam at the centre back. No limit if not given. */
  readonly longest?: Length;
}

/** What {@link tiedBow} gives back. */
export interface TiedBowMade {
  /** Finished length from end to end. */
  readonly length: Length;
  /** Strips to cut, all alike: one, or two halves. Each is folded double along its length. */
  readonly cut: { readonly count: 1 | 2; readonly length: Length; readonly width: Length };
  /** Fold along the length, from one cut edge. */
  readonly fold: Length;
  /** Marks from one finished end: where each loop turns, where the knot lies on either side, the centre back. */
  readonly marks: {
    readonly loops: readonly [Length, Length];
    readonly knot: readonly [Length, Length];
    readonly centreBack: Length;
  };
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
}

/**
 * A tie that is knotted into a bow: once round, each loop there and back, two tails and what the knot takes. Common
 * practice, no source; the sum follows from the measures.
 *
 * Refused: sizes of zero or less; an allowance or a knot below zero; cloth too short even for halves.
 */
export function tiedBow(input: TiedBowInput): Result<TiedBowMade, Refusal> {
  const { round, bow, tail, width, allowance, longest } = input;
  for (const [field, size] of Object.entries({ round, bow, tail, width })) {
    if (size <= 0) return bad(refusal(field, 'The tie has no size here.', 'Give a measure above zero.'));
  }
  if (allowance < 0) return bad(refusal('allowance', 'The allowance is below zero.', 'Give zero or more.'));
  const knot = input.knot ?? times(width, KNOT_TAKES.value);
  if (knot < 0) return bad(refusal('knot', 'The knot takes less than nothing.', 'Give zero or more.'));
  const seams = times(allowance, 2);
  const length = add(round, times(bow, 2), times(tail, 2), knot);
  const whole = add(length, seams);
  const half = add(nm(Math.ceil(length / 2)), seams);
  const halves = longest !== undefined && longer(whole, longest);
  if (longest !== undefined && longer(half, longest)) {
    const cure = 'Give a longer cloth, shorter tails or a smaller bow.';
    return bad(refusal('longest', 'The cloth is too short even for half of the tie.', cure));
  }
  // From the end: the tail, the loop there and back, half of the knot; then round to the other side.
  const loop = nm(tail + bow / 2);
  const tied = nm(tail + bow + knot / 2);
  return good({
    length,
    cut: { count: halves ? 2 : 1, length: halves ? half : whole, width: add(times(width, 2), seams) },
    fold: add(width, allowance),
    marks: {
      loops: [loop, nm(length - loop)],
      knot: [tied, nm(length - tied)],
      centreBack: times(length, 1 / 2),
    },
    advice: [
      advise('Tie a strip of the same cloth first: the knot decides how long the tie must be.', practice),
      advise('Leave a gap beside the centre back to turn the tie through.', practice),
    ],
    assumed: [
      ...(input.knot === undefined ? ['The knot takes twice the width of the tie.'] : []),
      ...(halves ? ['Two halves, joined by a seam at the centre back.'] : []),
      'The tie is folded double along its length, and both tails are alike.',
    ],
  });
}
