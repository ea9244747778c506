import { type Length, mm } from '../length/length.ts';
import type { Sourced } from './advice.ts';
import { practice, published } from './source.ts';
import { KNEE_BY_CALF } from './stretch-leg-measures.ts';

const survey = (where: string) =>
  published(
    '2012 Anthropometric Survey of US Army Personnel (Gordon et al., report TR-15/007)',
    '2014',
    `${where}; computed from the rows of 1 986 women and 4 082 men`,
  );

/**
 * At least 98 of 100 of the women and of the men measured lie between these.
 * @each {}
 */
export const MEASURED: Sourced<Readonly<Record<string, readonly [least: Length, most: Length]>>> = {
  value: {
    height: [mm(1482.5), mm(1927)],
    neck: [mm(329), mm(502)],
    chest: [mm(784), mm(1276.2)],
    hip: [mm(861.8), mm(1218)],
    shoulder: [mm(113.8), mm(175)],
    'across-back': [mm(306.9), mm(515)],
    'upper-arm': [mm(244), mm(448)],
    'arm-length': [mm(477.7), mm(670)],
    wrist: [mm(138), mm(198)],
    thigh: [mm(495), mm(774)],
    calf: [mm(312.7), mm(467)],
    ankle: [mm(185), mm(268)],
    heel: [mm(277), mm(385)],
    'knee-to-floor': [mm(390), mm(556.2)],
    'foot-length': [mm(219), mm(302)],
    ball: [mm(203), mm(284)],
  },
  source: survey('1st to 99th percentile, of whichever sex lies further out'),
};

/**
 * A waist sits where the garment wants it, the survey’s at the navel: hardly anybody’s is smaller than the first or larger than the second.
 */
export const WAIST_MEASURED: Sourced<readonly [least: Length, most: Length]> = {
  value: [mm(580), mm(1214)],
  source: published(
    'Johnson, Journal of Statistics and Data Science Education 29(3); Gordon et al., report TR-15/007',
    '2021',
    'smallest waist of 175 young women; 99th percentile of 4 082 men (2014), computed from the rows',
  ),
};

/**
 * Taken to the level of the navel, at least 98 of 100 of the women and of the men measured have more than this.
 * @each {}
 */
export const LEAST_TO_NAVEL: Sourced<Readonly<Record<string, Length>>> = {
  value: { 'back-waist': mm(364.9), rise: mm(522.8), 'waist-to-floor': mm(868.7) },
  source: survey('1st percentile, of whichever sex lies further out'),
};

/**
 * One measure as a multiple of another: nobody in the survey lies outside.
 * @unit times
 * @each {}
 */
export const MEASURED_PARTS: Sourced<Readonly<Record<string, readonly [least: number, most: number]>>> = {
  value: {
    'thigh of the hip': [0.524, 0.688],
    'thigh of the calf': [1.303, 2.059],
    'calf of the ankle': [1.402, 2.153],
    'heel of the ankle': [1.123, 1.751],
    'upper arm of the wrist': [1.421, 2.63],
    'way from crotch to floor of the height': [0.421, 0.542],
    'knee to floor of the way from crotch to floor': [0.529, 0.63],
  },
  source: survey('least and greatest quotient, rounded outwards'),
};

/**
 * A hip is at least this part of the waist at the navel, for everybody in the survey.
 * @unit times
 */
export const HIP_OF_WAIST: Sourced<number> = { value: 0.819, source: survey('least quotient, rounded down') };

/**
 * A hip is hardly ever more than this many times a waist taken where it is smallest.
 * @unit times
 */
export const MOST_HIP_OF_WAIST: Sourced<number> = { value: 1.75, source: practice };

/**
 * A hand without its thumb is at least this many times as large round as the wrist, for everybody in the survey.
 * @unit times
 */
export const HAND_OF_WRIST: Sourced<number> = {
  value: 1.054,
  source: survey('least quotient, rounded down'),
};

/**
 * The knee as a multiple of the calf in nine of ten young women, widened by a tenth on either side, since others were not measured.
 * @unit times
 */
export const KNEE_LIKELY: Sourced<readonly [least: number, most: number]> = {
  value: [KNEE_BY_CALF.value[0] * 0.9, KNEE_BY_CALF.value[1] * 1.1],
  source: KNEE_BY_CALF.source,
};

/** From the waist to the floor and the three parts of the same way, measured one by one, differ by no more than this. */
export const WAY_DOWN_OFF: Sourced<Length> = { value: mm(60), source: practice };
