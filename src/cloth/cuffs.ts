import { add, type Length, nm, shorter, subtract, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Refusal, refusal } from './refusal.ts';

/** A straight cuff. */
export interface CuffInput {
  readonly wrist: Length;
  /** Room round the wrist. */
  readonly ease: Length;
  /** Finished depth. */
  readonly depth: Length;
  readonly allowance: Length;
  /** How it closes: buttoned, with so much lying over each other, or a closed ring that must pass the hand. */
  readonly closes:
    | { readonly by: 'buttons'; readonly overlap: Length }
    | { readonly by: 'ring'; readonly hand: Length };
  /** In one piece folded at its lower edge, or of two pieces. */
  readonly pieces: 1 | 2;
  /** Length of the sleeve's lower edge that is set into it. */
  readonly sleeve: Length;
}

/** What {@link cuff} gives back. */
export interface CuffMade {
  /** Finished length along the seam, overlap included; and the part of it that the sleeve is set to. */
  readonly length: Length;
  readonly round: Length;
  /** One piece, or each of two. */
  readonly cut: { readonly length: Length; readonly width: Length; readonly count: number };
  /** Fold along the length, from the upper cut edge; none with two pieces. */
  readonly fold: Length | undefined;
  /** Quarter marks of cuff and sleeve, from the end under the overlap of each; each pair is pinned together. */
  readonly marks: readonly { readonly cuff: Length; readonly sleeve: Length }[];
  /** How many times the sleeve is as long as its place. */
  readonly fullness: number;
  readonly assumed: readonly string[];
}

/**
 * A cuff and its marks. Follows from the measures.
 *
 * Refused: no wrist or depth; ease, overlap or allowance below zero; an overlap of half the wrist or more; a ring that the hand
 * does not pass; a sleeve shorter than its place.
 */
export function cuff(input: CuffInput): Result<CuffMade, Refusal> {
  const { wrist, ease, depth, allowance, closes, pieces, sleeve } = input;
  if (wrist <= 0) return bad(refusal('wrist', 'The wrist has no measure.', 'Give a measure above zero.'));
  if (ease < 0)
    return bad(refusal('ease', 'The cuff would be narrower than the wrist.', 'Give zero or more.'));
  if (depth <= 0) return bad(refusal('depth', 'The cuff has no depth.', 'Give a depth above zero.'));
  if (allowance < 0) return bad(refusal('allowance', 'The allowance is below zero.', 'Give zero or more.'));
  const round = add(wrist, ease);
  if (closes.by === 'ring' && shorter(round, closes.hand)) {
    const cure = 'Give more ease, or close it with buttons.';
    return bad(refusal('ease', 'The hand does not pass this ring.', cure));
  }
  const overlap = closes.by === 'buttons' ? closes.overlap : nm(0);
  if (overlap < 0 || overlap * 2 >= wrist) {
    const cure = 'Give zero or more, and less than half the wrist.';
    return bad(refusal('closes', 'This is not an overlap of a cuff.', cure));
  }
  if (shorter(sleeve, round)) {
    const cure = 'Give a longer lower edge, or less ease.';
    return bad(refusal('sleeve', 'The lower edge of the sleeve is shorter than its place.', cure));
  }
  const length = add(round, overlap);
  const seams = times(allowance, 2);
  return good({
    length,
    round,
    cut: {
      length: add(length, seams),
      width: add(times(depth, pieces === 1 ? 2 : 1), seams),
      count: pieces,
    },
    fold: pieces === 1 ? add(depth, allowance) : undefined,
    marks: [0, 1, 2, 3, 4].map((k) => ({
      cuff: add(overlap, times(round, k / 4)),
      sleeve: times(sleeve, k / 4),
    })),
    fullness: sleeve / subtract(length, overlap),
    assumed: closes.by === 'buttons' ? ['The sleeve is set to the cuff without its overlap.'] : [],
  });
}
