import type { Length } from '../length/length.ts';
import { mm } from '../length/length.ts';
import type { Outline } from '../shape/outline.ts';
import type { Advice, Sourced } from './advice.ts';
import { memory, practice, published, type Source } from './source.ts';
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
  /** How far the waist stands above the side at the front and at the back; below zero where it lies lower. */
  readonly raised: { readonly front: Length; readonly back: Length };
  /** How far the side was lifted above its measure, so that the waist runs smoothly where the rises are long. */
  readonly lifted: Length;
  /** How far the points at the crotch reach past the rises. */
  readonly reach: { readonly front: Length; readonly back: Length };
  readonly crotchLevel: Length;
  readonly reduction: { readonly round: number; readonly along: number };
  readonly advice: readonly Advice[];
  /** Those of the above that concern only the part above the crotch. */
  readonly adviceAbove: readonly Advice[];
  readonly assumed: readonly string[];
}

const SURVEY = '2012 Anthropometric Survey of US Army Personnel (Gordon et al., report TR-15/007)';
const survey = (where: string) => published(SURVEY, '2014', where);

/**
 * This part of the whole rise lies behind, half way between women and men.
 * @unit part
 */
export const BACK_SHARE: Sourced<number> = {
  value: 0.56,
  source: survey('crotch length, posterior: medians 0.548 women, 0.574 men, computed from the rows'),
};
/**
 * The point at the crotch reaches past the front rise by a part of the hip as cut, as the measured rise asks, within these.
 * @unit part
 */
export const REACH_FRONT: Sourced<readonly [least: number, most: number]> = {
  value: [0.03, 0.08],
  source: practice,
};
/**
 * The point at the crotch reaches past the back rise by a part of the hip as cut, as the measured rise asks, within these.
 * @unit part
 */
export const REACH_BACK: Sourced<readonly [least: number, most: number]> = {
  value: [0.07, 0.15],
  source: practice,
};
/**
 * At the crotch the inner seam leans inwards by this part of its way down, and the rises meet it squarely, so that they run smoothly on across it.
 * @unit part
 */
export const INNER_LEAN: Sourced<number> = { value: 0.27, source: practice };
/** The waist is drafted this much lower at the front than at the side, where the measured rise allows. */
export const WAIST_LOWER: Sourced<Length> = { value: mm(10), source: practice };
/** The waist is drafted this much higher at the back than at the side, where the measured rise allows. */
export const WAIST_HIGHER: Sourced<Length> = { value: mm(20), source: practice };
/**
 * Where long rises lift the waist at front and back, the side is lifted with it, by this part of the height of the crotch at most.
 * @unit part
 */
export const MOST_LIFT: Sourced<number> = { value: 0.25, source: practice };
/**
 * The hip lies this part of the way up from the crotch to the waist, unless measured.
 * @unit part
 */
export const HIP_PART: Sourced<number> = { value: 1 / 3, source: practice };
/**
 * The hip is drafted within these parts of the way up from the crotch to the waist, above the curve of the crotch.
 * @unit part
 */
export const HIP_WITHIN: Sourced<readonly [least: number, most: number]> = {
  value: [1 / 3, 0.7],
  source: practice,
};
/**
 * The ankle lies at this part of the height of the knee, unless measured.
 * @unit part
 */
export const ANKLE_PART: Sourced<number> = { value: 1 / 4, source: memory };
/**
 * An ankle measured higher than this part of the height of the knee is taken for a slip.
 * @unit part
 */
export const HIGHEST_ANKLE: Sourced<number> = { value: 0.6, source: memory };
/**
 * The thigh is drafted no further below the crotch than this part of the way to the knee.
 * @unit part
 */
export const THIGH_WITHIN: Sourced<number> = { value: 1 / 4, source: practice };
/**
 * Of what the waist is narrower than the hip, this part is taken at the front.
 * @unit part
 */
export const WAIST_FRONT: Sourced<number> = { value: 0.4, source: practice };
/**
 * A waist that stands higher than this part of the way down to the crotch calls for measuring the rise again.
 * @unit part
 */
export const HIGH_WAIST: Sourced<number> = { value: 1 / 3, source: practice };
/** A side drafted higher than measured by more than this calls for measuring again; less is only said. */
export const LIFT_UNLIKELY: Sourced<Length> = { value: mm(30), source: practice };
/** A waist that dips at the side, or stands higher in front than behind, by more than this calls for measuring again. */
export const DIP_UNLIKELY: Sourced<Length> = { value: mm(10), source: practice };
/**
 * The ball of the foot lies this part of the length of the foot behind the tip.
 * @unit part
 */
export const BALL_FROM_TIP: Sourced<number> = { value: 0.28, source: practice };
/**
 * From the front of the ankle to the tip a foot reaches this part of its length.
 * @unit part
 */
export const FOOT_BEFORE_ANKLE: Sourced<number> = { value: 0.7, source: practice };
/**
 * The toes are rounded over this part of half the girth at the ball.
 * @unit part
 */
export const TOE_ROUND: Sourced<number> = { value: 0.6, source: practice };
/** The girth of the thigh lies this far below the crotch. */
export const THIGH_BELOW: Sourced<Length> = { value: mm(50), source: practice };
/**
 * The calf is fullest after this part of the way from the knee to the ankle.
 * @unit part
 */
export const CALF_PART: Sourced<number> = { value: 1 / 3, source: memory };
/** Two legs whose girths differ by more than this are drafted each by itself. */
export const LEGS_DIFFER: Sourced<Length> = { value: mm(10), source: practice };
/**
 * The knee is this many times as large round as the calf, in nine of ten people.
 * @unit times
 */
export const KNEE_BY_CALF: Sourced<readonly [number, number]> = {
  value: [0.931, 1.085],
  source: published(
    'Johnson, Journal of Statistics and Data Science Education 29(3)',
    '2021',
    'body measures of 175 young women, computed from the rows',
  ),
};
/** In most people the hip is larger than the waist and the lower thigh than the calf; a few are built otherwise. */
export const BODY_SURVEY: Source = survey('computed from the rows of 1 986 women and 4 082 men');

const women = published(
  'Johnson, Journal of Statistics and Data Science Education 29(3)',
  '2021',
  'body measures of 175 young women; least squares over the rows',
);
/** The knee that a calf and a lower thigh let expect is this much, and a part of each. */
export const KNEE_BASE: Sourced<Length> = { value: mm(118), source: women };
/**
 * The expected knee has this part of the lower thigh in it.
 * @unit part
 */
export const KNEE_OF_THIGH: Sourced<number> = { value: 0.36, source: women };
/**
 * The expected knee has this part of the calf in it.
 * @unit part
 */
export const KNEE_OF_CALF: Sourced<number> = { value: 0.271, source: women };
/** A knee further than this from the expected one, two deviations, calls for measuring it again. */
export const KNEE_UNLIKELY: Sourced<Length> = { value: mm(25.4), source: women };
