import { add, type Length, longer, nm, ratio, subtract, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Refusal, refusal } from './refusal.ts';
import { published, type Source } from './source.ts';

/** A number of spaces that does not come out whole may go up or down; the spacing is then evened. */
export const TUCK_COUNT_SOURCE: Source = published(
  'Dress Making, Trade Practical, National Instructional Media Institute',
  'about 2024',
  'exercise 48, p. 209; seen as an excerpt',
);

/** Tucks that are to fill a finished width. */
export interface TuckCountInput {
  /** The whole finished width. */
  readonly width: Length;
  /** From each finished edge to the stitching line nearest to it. */
  readonly margin: Length;
  /** From the stitching line to the fold. */
  readonly depth: Length;
  /** Cloth wanted to show between a fold and the next stitching line; zero for blind tucks. */
  readonly showing: Length;
  /** Which way a number of spaces that is not whole goes. */
  readonly round: 'nearest' | 'up' | 'down';
}

/** What {@link tuckCount} gives back. */
export interface TuckCountMade {
  readonly count: number;
  /** Spaces before rounding: how near the wish comes out whole. */
  readonly spacesWanted: number;
  /** From one stitching line to the next, finished, evened over the width. */
  readonly spacing: Length;
  /** Cloth that shows between them, evened. */
  readonly showing: Length;
  /** Cloth that the tucks take. */
  readonly takeUp: Length;
  /** Width to cut or mark on the flat cloth, without allowances. */
  readonly flat: Length;
}

/**
 * How many tucks fill a finished width: the width less both margins, shared into spaces of depth and showing; a
 * number that is not whole is rounded and the spacing evened. One more tuck than spaces.
 * Source: {@link TUCK_COUNT_SOURCE}.
 *
 * Refused: a width or depth of zero or less; a margin or showing below zero; margins that leave no space for two
 * tucks; more than 1000; rounding up so far that the tucks would overlap.
 */
export function tuckCount(input: TuckCountInput): Result<TuckCountMade, Refusal> {
  const { width, margin, depth, showing, round } = input;
  if (width <= 0) return bad(refusal('width', 'The piece has no width.', 'Give a width above zero.'));
  if (margin < 0) return bad(refusal('margin', 'The margin is below zero.', 'Give zero or more.'));
  if (depth <= 0) return bad(refusal('depth', 'The tucks have no depth.', 'Give a depth above zero.'));
  if (showing < 0) {
    return bad(
      refusal('showing', 'The tucks would overlap.', 'Give zero, for tucks that just meet, or more.'),
    );
  }
  const room = subtract(width, times(margin, 2));
  if (longer(depth, room)) {
    const cure = 'Give narrower margins or a wider piece.';
    return bad(refusal('margin', 'Between the margins there is no room for two tucks.', cure));
  }
  const wanted = ratio(room, add(depth, showing));
  // A wish that comes out whole must not be pushed over by the last bit of the division.
  const whole = Math.abs(wanted - Math.round(wanted)) < 1e-6 || round === 'nearest';
  const spaces = Math.max(
    1,
    whole ? Math.round(wanted) : round === 'up' ? Math.ceil(wanted) : Math.floor(wanted),
  );
  if (spaces > 999) {
    const cure = 'Give a greater depth or more cloth showing.';
    return bad(refusal('depth', 'This is more than 1000 tucks.', cure));
  }
  const spacing = nm(room / spaces);
  if (longer(depth, spacing)) {
    const cure = 'Round down, or give more cloth showing.';
    return bad(refusal('round', 'With one more space the tucks would overlap.', cure));
  }
  const takeUp = times(depth, 2 * (spaces + 1));
  return good({
    count: spaces + 1,
    spacesWanted: wanted,
    spacing,
    showing: subtract(spacing, depth),
    takeUp,
    flat: add(width, takeUp),
  });
}
