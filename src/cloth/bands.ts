import { inBothRules } from '../length/both-rules.ts';
import { add, inches, type Length, longer, shorter, subtract, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { practice, published } from './source.ts';

/** The first turn of a folded band, which hides the cut edge, unless said otherwise. */
export const FIRST_TURN: Sourced<Length> = { value: inches(1, 2), source: practice };
/** The second turn of a folded band, which is its finished width, unless said otherwise. */
export const SECOND_TURN: Sourced<Length> = { value: inches(1), source: practice };
/** A folded band is stitched this far from its inner fold, unless said otherwise. */
export const STITCH_IN: Sourced<Length> = {
  value: inches(1, 8),
  source: published(
    'Clothing for Women, Baldt',
    '1916',
    'Openings and plackets 1, box plait front; seen as an excerpt',
  ),
};

/** A folded opening band. */
export interface BandInput {
  /** Width of the first turn, which hides the cut edge. 1/2 in if not given. */
  readonly firstTurn?: Length;
  /** Width of the second turn: the width of the finished band. 1 in if not given. */
  readonly secondTurn?: Length;
  /** From the centre-front line to the finished edge. Half the band if not given, so that the buttons sit in its middle. */
  readonly lap?: Length;
  /** From the inner fold to the line of stitching. 1/8 in if not given. */
  readonly stitchIn?: Length;
}

/** What {@link band} gives back. Places are from the centre-front line, growing outwards to the cut edge. */
export interface BandMade {
  /** Width of the finished band. */
  readonly width: Length;
  /** From centre front to the finished edge: how far the two fronts reach over it. */
  readonly lap: Length;
  /** How far the two finished fronts lie over each other when buttoned: twice the lap. */
  readonly overlap: Length;
  /** The finished edge, where the second fold comes, on the flat cloth. */
  readonly finishedEdge: Length;
  /** The first fold, on the flat cloth. */
  readonly firstFold: Length;
  /** The edge to cut, on the flat cloth. */
  readonly cutEdge: Length;
  /** Where the inner fold lies when done. Below zero is inside the front. */
  readonly innerFold: Length;
  /** The line of stitching when done. */
  readonly stitching: Length;
  /** Cloth to add beyond the finished edge when cutting. */
  readonly addition: Length;
  /** What to press in which order, widths as turned. */
  readonly press: readonly [first: Length, second: Length];
  readonly assumed: readonly string[];
}

/**
 * A band made by folding the edge of a front over twice and stitching it down near the inner fold.
 *
 * Refused: widths of zero or less; a first turn wider than the second, whose cut edge would double up in the fold;
 * a lap not inside the band, which would leave the centre line beside it; stitching that misses the first turn.
 */
export function band(input: BandInput = {}): Result<BandMade, Refusal> {
  const assumed: string[] = [];
  const given = (value: Length | undefined, fallback: Length, says: string): Length => {
    if (value === undefined) assumed.push(says);
    return value ?? fallback;
  };
  const firstTurn = given(input.firstTurn, FIRST_TURN.value, `First turn ${inBothRules(FIRST_TURN.value)}.`);
  const secondTurn = given(
    input.secondTurn,
    SECOND_TURN.value,
    `Second turn ${inBothRules(SECOND_TURN.value)}.`,
  );
  const lap = given(input.lap, times(secondTurn, 1 / 2), 'Centre front in the middle of the band.');
  const stitchIn = given(
    input.stitchIn,
    STITCH_IN.value,
    `Stitched ${inBothRules(STITCH_IN.value)} from the inner fold.`,
  );

  if (secondTurn <= 0)
    return bad(refusal('secondTurn', 'The band has no width.', 'Give a second turn above zero.'));
  if (firstTurn <= 0)
    return bad(refusal('firstTurn', 'The cut edge would show.', 'Give a first turn above zero.'));
  if (longer(firstTurn, secondTurn)) {
    const cure = 'Give a first turn no wider than the second.';
    return bad(
      refusal('firstTurn', 'The first turn is wider than the second and would double up in its fold.', cure),
    );
  }
  if (lap <= 0 || !shorter(lap, secondTurn)) {
    return bad(
      refusal(
        'lap',
        'The centre-front line would not lie on the band.',
        'Give a lap above zero and less than the second turn.',
      ),
    );
  }
  if (stitchIn <= 0 || longer(stitchIn, firstTurn)) {
    const cure = 'Give a distance above zero and no more than the first turn.';
    return bad(refusal('stitchIn', 'The stitching would not catch the first turn.', cure));
  }
  const innerFold = subtract(lap, secondTurn);
  return good({
    width: secondTurn,
    lap,
    overlap: times(lap, 2),
    finishedEdge: lap,
    firstFold: add(lap, secondTurn),
    cutEdge: add(lap, secondTurn, firstTurn),
    innerFold,
    stitching: add(innerFold, stitchIn),
    addition: add(secondTurn, firstTurn),
    press: [firstTurn, secondTurn],
    assumed,
  });
}
