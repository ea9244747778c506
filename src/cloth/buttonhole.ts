import { add, inches, type Length, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { published, type Source } from './source.ts';

/** Which rule gives the length; published rules differ, so the maker chooses. */
export type HoleRule =
  /** Diameter and thickness of a flat button. */
  | { readonly rule: 'flat'; readonly diameter: Length; readonly thickness: Length }
  /** As `flat` and 1/8 in more, for bulky cloth. */
  | { readonly rule: 'bulky'; readonly diameter: Length; readonly thickness: Length }
  /** Half of a tape's length once round the button, and 1/8 in; serves domed and odd shapes. */
  | { readonly rule: 'tape'; readonly round: Length }
  /** One and a quarter times the diameter of a ball. */
  | { readonly rule: 'ball'; readonly diameter: Length }
  /** Diameter and 1/16 in: an older rule for a flat button. */
  | { readonly rule: 'older'; readonly diameter: Length }
  /** The diameter itself, worked by hand in linen. */
  | { readonly rule: 'linen'; readonly diameter: Length }
  /** Diameter and 1/8 in, for a hole bound with a strip. */
  | { readonly rule: 'bound'; readonly diameter: Length };

/** What {@link buttonholeLength} gives back. */
export interface HoleLength {
  readonly length: Length;
  /** The rule in words. */
  readonly says: string;
  readonly source: Source;
}

const bulletin = published(
  'Buttons and Buttonholes, Extension Bulletin 576',
  '1965',
  'Size and placement; seen as an excerpt',
);

/** On bulky cloth a buttonhole is longer than the diameter and thickness of its button by this much. */
export const BULKY_MORE: Sourced<Length> = { value: inches(1, 8), source: bulletin };
/** A buttonhole is longer than half the way round its button by this much. */
export const TAPE_MORE: Sourced<Length> = {
  value: inches(1, 8),
  source: published(
    'Machine Buttonholes Made Easy, Guide C-231, Haynes',
    'undated',
    'p. 2; seen as an excerpt',
  ),
};
/**
 * The buttonhole of a ball button is this many times as long as the ball is wide.
 * @unit times
 */
export const BALL_TIMES: Sourced<number> = {
  value: 5 / 4,
  source: published('Textiles and Clothing, Watson', '1907', 'Fastenings: making button holes'),
};

/** By an older rule a buttonhole is longer than its button is wide by this much. */
export const OLDER_MORE: Sourced<Length> = {
  value: inches(1, 16),
  source: published('Clothing for Women, Baldt', '1916', 'Stitches 6, buttonholes; seen as an excerpt'),
};
/** A bound buttonhole is longer than its button is wide by this much. */
export const BOUND_MORE: Sourced<Length> = {
  value: inches(1, 8),
  source: published('Making Bound Buttonholes', 'undated', 'step I; seen as an excerpt'),
};
/** In linen a buttonhole is exactly as long as its button is wide. */
export const LINEN_RULE: Source = published(
  'Encyclopedia of Needlework, Dillmont',
  'undated',
  'Plain sewing, fig. 29',
);
/** A buttonhole is as long as the diameter and the thickness of a flat button together. */
export const FLAT_RULE: Source = bulletin;

/**
 * How long to make a buttonhole. Sew one on a scrap first and try the button: the rule is only where to begin.
 * Refused: a measure of zero or less; a thickness more than twice the diameter, which is a slip.
 */
export function buttonholeLength(button: HoleRule): Result<HoleLength, Refusal> {
  const above = 'Measure the button and give a size above zero.';
  if (button.rule === 'tape') {
    if (button.round <= 0) return bad(refusal('round', 'The way round the button is zero or less.', above));
    return good({
      length: add(times(button.round, 1 / 2), TAPE_MORE.value),
      says: 'Half the way round the button, and 1/8 in',
      source: TAPE_MORE.source,
    });
  }
  if (button.diameter <= 0) return bad(refusal('diameter', 'The diameter is zero or less.', above));
  if (button.rule === 'ball') {
    return good({
      length: times(button.diameter, BALL_TIMES.value),
      says: 'One and a quarter times the ball',
      source: BALL_TIMES.source,
    });
  }
  if (button.rule === 'older') {
    return good({
      length: add(button.diameter, OLDER_MORE.value),
      says: 'Diameter and 1/16 in, an older rule',
      source: OLDER_MORE.source,
    });
  }
  if (button.rule === 'linen') {
    return good({
      length: button.diameter,
      says: 'The diameter itself, in linen',
      source: LINEN_RULE,
    });
  }
  if (button.rule === 'bound') {
    return good({
      length: add(button.diameter, BOUND_MORE.value),
      says: 'Diameter and 1/8 in, for a bound hole',
      source: BOUND_MORE.source,
    });
  }
  const { diameter, thickness } = button;
  if (thickness < 0 || thickness > 2 * diameter) {
    const cure = 'Give the height of the button off the table, less than twice its diameter.';
    return bad(refusal('thickness', 'The thickness is not that of a button of this diameter.', cure));
  }
  return button.rule === 'flat'
    ? good({ length: add(diameter, thickness), says: 'Diameter and thickness', source: bulletin })
    : good({
        length: add(diameter, thickness, BULKY_MORE.value),
        says: 'Diameter and thickness, and 1/8 in for bulky cloth',
        source: bulletin,
      });
}
