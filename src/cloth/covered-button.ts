import { inches, type Length, ratio, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Advice, advise, type Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory, practice, published } from './source.ts';

/**
 * Buttons are sized in lines, and so many lines make an inch.
 * @unit lines
 */
export const LINES_PER_INCH: Sourced<number> = {
  value: 40,
  source: published('Sizes, Inc., entry Buttons', 'undated', '40 line is 1 in; seen as an excerpt'),
};
/**
 * The circle of cloth that covers a button is this many times as wide as the button.
 * @unit times
 */
export const COVER: Sourced<number> = { value: 2, source: practice };
/**
 * No button is smaller or larger than these.
 * @unit lines
 */
export const BUTTON_LINES: Sourced<readonly [least: number, most: number]> = {
  value: [8, 120],
  source: memory,
};

/** A button covered with cloth. */
export interface CoveredButtonInput {
  /** Size of the form, in lines. */
  readonly lines: number;
  /** Thickness of the covering cloth; counts on bulky cloth. Zero if not given. */
  readonly cloth?: Length;
}

/** What {@link coveredButton} gives back. */
export interface CoveredButtonMade {
  /** Diameter of the form, and of the button with its cover. */
  readonly form: Length;
  readonly diameter: Length;
  /** Diameter of the circle of cloth to cut. */
  readonly circle: Length;
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
}

/**
 * Size and cover of a button known by its lines.
 * Refused: lines not from 8 to 120, which no button has; a cloth below zero or thicker than a quarter of the form.
 */
export function coveredButton({ lines, cloth }: CoveredButtonInput): Result<CoveredButtonMade, Refusal> {
  const [least, most] = BUTTON_LINES.value;
  if (!(lines >= least && lines <= most))
    return bad(refusal('lines', 'No button is of this size.', 'Give 8 to 120 lines; 40 lines is 1 in.'));
  const form = inches(lines, LINES_PER_INCH.value);
  const thick = cloth ?? times(form, 0);
  if (thick < 0 || thick * 4 > form) {
    const cure = 'Give zero or more, and no more than a quarter of the button.';
    return bad(refusal('cloth', 'The cloth is too thick to cover this button.', cure));
  }
  return good({
    form,
    diameter: times(form, 1 + (2 * thick) / form),
    circle: times(form, COVER.value),
    advice: [
      advise('Measure the covered button before making its holes.', practice),
      advise('The template that came with the form goes above this circle.', practice),
    ],
    assumed: [
      'A flat form; a domed one takes a wider circle.',
      ...(cloth === undefined ? ['The cloth has no thickness of its own.'] : []),
    ],
  });
}

/**
 * Size of a button in lines, from its diameter, not rounded.
 * Refused: a diameter of zero or less.
 */
export function linesOf(diameter: Length): Result<number, Refusal> {
  if (diameter <= 0)
    return bad(refusal('diameter', 'The button has no size.', 'Give a diameter above zero.'));
  return good(ratio(diameter, inches(1)) * LINES_PER_INCH.value);
}
