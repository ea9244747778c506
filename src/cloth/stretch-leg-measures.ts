import type { Length } from '../length/length.ts';
import { mm } from '../length/length.ts';
import type { Outline } from '../shape/outline.ts';
import type { Advice, Sourced } from './advice.ts';
import { memory, practice, published } from './source.ts';
import type { ReductionInput } from './stretch.ts';

/** Measures of one leg and the body above it, all on the body, without ease. Girths are whole, not halved. */
export interface LegMeasures {
  /** Round the heel and the front crease of the ankle, as far as a leg must stretch to go on. */
  readonly heel: Length;
  /** The least girth above the ankle bones. */
  readonly ankle: Length;
  readonly calf: Length;
  /** At the middle of the kneecap, the knee slightly bent. */
  readonly knee: Length;
  /** Just above the knee; only to see whether the other measures are likely. */
  readonly lowerThigh?: Length;
  /** Just below the crotch. */
  readonly thigh: Length;
  readonly hip: Length;
  readonly waist: Length;
  /** From the level of the waist down to the level of the crotch, upright. */
  readonly waistToCrotch: Length;
  /** From the level of the crotch up to the level of the hip, upright; a third of the above if not given. */
  readonly crotchToHip?: Length;
  /** From the front of the waist between the legs to the back: in two parts that meet at the inner seam, or whole. */
  readonly rise: { readonly front: Length; readonly back: Length } | { readonly whole: Length };
  readonly crotchToKnee: Length;
  readonly kneeToFloor: Length;
  /** From the floor up to where the ankle was measured; a quarter of the knee's height if not given. */
  readonly floorToAnkle?: Length;
  /** Needed only for a foot. */
  readonly foot?: { readonly length: Length; readonly ball: Length };
}

/** What {@link import('./stretch-leg.ts').stretchLeg} needs to know. */
export interface LegInput extends ReductionInput {
  readonly measures: LegMeasures;
  /** True for a leg with a foot. Its tube runs straight on and closes at the toes. */
  readonly footed?: boolean;
  /** True where a slit, a zip or lacing lets the ankle or the waist pass without stretching. */
  readonly opening?: { readonly ankle?: boolean; readonly waist?: boolean };
  /** The girths of the other leg that were measured. */
  readonly other?: { readonly [level in 'ankle' | 'calf' | 'knee' | 'thigh']?: Length };
}

/** Names of the levels, from the top down; the last three only with a foot. */
export type LevelName = 'waist' | 'hip' | 'thigh' | 'knee' | 'calf' | 'ankle' | 'heel' | 'ball';

/** A girth of the body and of the finished leg. */
export interface LegLevel {
  readonly name: LevelName;
  /** How far down the draft; of the waist, at the side. */
  readonly y: Length;
  readonly measure: Length;
  /** Part by which the girth is made smaller. */
  readonly reduction: number;
  /** The girth of the finished piece, whole: at waist and hip two pieces together. */
  readonly finished: Length;
}

/** What the draft gives back. */
export interface LegMade {
  /**
   * The finished outline: `waist`, `front-rise`, `inner-front`, then `ankle` or `toe-front` and `toe-back`,
   * `inner-back`, `back-rise`, clockwise. The outer side of the leg runs down through the datum; front on the right.
   */
  readonly outline: Outline;
  readonly levels: readonly LegLevel[];
  readonly rise: { readonly front: Length; readonly back: Length };
  /** How far the waist rises above the side at the front and at the back. */
  readonly raised: { readonly front: Length; readonly back: Length };
  readonly crotchLevel: Length;
  readonly reduction: { readonly round: number; readonly along: number };
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
}

const SURVEY = '2012 Anthropometric Survey of US Army Personnel (Gordon et al., report TR-15/007)';
const survey = (where: string) => published(SURVEY, '2014', where);

/** Part of the whole rise that lies behind: middle of men and women. */
export const BACK_SHARE: Sourced<number> = {
  value: 0.56,
  source: survey('crotch length, posterior: medians 0.548 women, 0.574 men, computed from the rows'),
};
/** Together the two points at the crotch reach this part of the cut hip past the rise, the back twice as far as the front. */
export const CROTCH_REACH: Sourced<number> = { value: 0.15, source: practice };
/** The thigh lies this far below the crotch. */
export const THIGH_BELOW: Sourced<Length> = { value: mm(40), source: practice };
/** The calf is fullest a third of the way from the knee to the ankle. */
export const CALF_PART: Sourced<number> = { value: 1 / 3, source: memory };
/** Legs whose girths differ by more than this are drafted each by itself. */
export const LEGS_DIFFER: Sourced<Length> = { value: mm(10), source: practice };
/** Knee divided by calf, 5th and 95th in a hundred. */
export const KNEE_BY_CALF: Sourced<readonly [number, number]> = {
  value: [0.931, 1.085],
  source: published(
    'Johnson, Journal of Statistics and Data Science Education 29(3)',
    '2021',
    'body measures of 175 young women, computed from the rows',
  ),
};
/** In most people these are larger than those; a few are built otherwise. */
export const BODY_SURVEY = survey('computed from the rows of 1 986 women and 4 082 men');
