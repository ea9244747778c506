import { bad, good, type Result } from '../length/result.ts';
import type { Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { practice, published, type Source } from './source.ts';

/** How heavy a cloth is, from sheer to canvas. */
export type Weight = 'sheer' | 'light' | 'medium' | 'heavy' | 'very heavy';

/** What sewing asks about a cloth. */
export interface SewnCloth {
  readonly weight: Weight;
  readonly knit: boolean;
  /** Does it stretch along the seam? Some woven cloths do. */
  readonly stretches: boolean;
}

const system = published('Needle Number System (trade technical article)', 'undated', 'seen as an excerpt');

/**
 * Needle for a weight of cloth, by its metric number: the blade in hundredths of a millimetre.
 * @unit
 * @each {} cloth
 */
export const NEEDLE_BY_WEIGHT: Sourced<Readonly<Record<Weight, number>>> = {
  value: { sheer: 60, light: 70, medium: 80, heavy: 90, 'very heavy': 100 },
  source: system,
};
/**
 * The rule that gives the other number of a needle holds for metric numbers within these.
 * @unit
 */
export const NEEDLE_RANGE: Sourced<readonly [least: number, most: number]> = {
  value: [60, 110],
  source: system,
};
/**
 * The other number of a needle whose metric number is 60.
 * @unit
 */
export const FIRST_NEEDLE: Sourced<number> = { value: 8, source: system };
/**
 * The other number of a needle grows by one while its metric number grows by this.
 * @unit
 */
export const NEEDLE_STEP: Sourced<number> = { value: 5, source: system };
/** A ball point goes between the loops of a knit and does not cut them. */
export const BALL_POINT: Source = practice;
const WEIGHTS: readonly Weight[] = ['sheer', 'light', 'medium', 'heavy', 'very heavy'];

/** A needle by both of its numbers. */
export interface Needle {
  /** Metric number: blade diameter in hundredths of a millimetre. */
  readonly metric: number;
  /** The other number printed beside it, such as the 12 of 80/12. */
  readonly other: number;
  readonly point: 'ball' | 'round';
  readonly assumed: readonly string[];
}

/**
 * The other number of a metric needle: (metric - 60) / 5 + 8, whole below 19 (Needle Number System, trade technical
 * article, seen as an excerpt).
 * Refused: a metric number outside 60 to 110, or not of five, where the rule does not hold.
 */
export function otherNumber(metric: number): Result<number, Refusal> {
  const [least, most] = NEEDLE_RANGE.value;
  if (!(metric >= least && metric <= most) || metric % NEEDLE_STEP.value !== 0) {
    return bad(
      refusal(
        'metric',
        'The rule does not hold for this number.',
        'Give 60 to 110 in steps of 5, or read the packet.',
      ),
    );
  }
  return good((metric - least) / NEEDLE_STEP.value + FIRST_NEEDLE.value);
}

/**
 * The needle for the cloths of one seam: for the heaviest, with a ball point where any is a knit.
 * Refused: no cloth.
 */
export function needleFor(cloths: readonly SewnCloth[]): Result<Needle, Refusal> {
  const heaviest = WEIGHTS.findLast((weight) => cloths.some((cloth) => cloth.weight === weight));
  if (heaviest === undefined)
    return bad(refusal('cloths', 'There is no cloth to sew.', 'Give one cloth or more.'));
  const metric = NEEDLE_BY_WEIGHT.value[heaviest];
  const other = otherNumber(metric);
  if (!other.ok) return other;
  return good({
    metric,
    other: other.value,
    point: cloths.some((cloth) => cloth.knit) ? 'ball' : 'round',
    assumed: [
      'The heaviest cloth decides the size.',
      'Try it on a sample; the maker of the machine knows better.',
    ],
  });
}
