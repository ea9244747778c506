import { type Refusal, refusal } from '../../cloth/refusal.ts';
import type { ClothGauge } from '../../cloth/stretch.ts';
import type { LegInput, LegMeasures } from '../../cloth/stretch-leg-measures.ts';
import type { ChoiceField, Fields, LengthField, Values } from '../../fields/fields.ts';
import { inches, type Length, mm } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';

const length = (label: string, inch: string, metric: string, means: string) =>
  ({ kind: 'length', label, means, start: { in: inch, mm: metric } }) as const satisfies LengthField;
const spare = (label: string, means: string) =>
  ({
    kind: 'length',
    label,
    means,
    start: { in: '', mm: '' },
    optional: true,
  }) as const satisfies LengthField;

/** Fields that stand in every reckoning of a leg once they are typed in one, each under its own name. */
const measured = <const F extends Fields>(fields: F): F =>
  Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [name, { ...field, shared: `leg.${name}` }]),
    // Only what `shared` says is added to each.
  ) as unknown as F;

/**
 * The measures that every leg asks for, in the order in which a body is measured: girths from the top down, then
 * heights, then the cloth. What stands there first is an invented wearer of middle size.
 */
export const MEASURE_FIELDS = measured({
  waist: length('Waist', '32', '800', 'Round the body, where the top edge is to sit.'),
  hip: length('Hip', '40', '1000', 'Round the fullest part.'),
  thigh: length('Thigh', '24', '610', 'Round the leg, just below the crotch.'),
  knee: length('Knee', '14 1/2', '365', 'Round the middle of the kneecap, slightly bent.'),
  calf: length('Calf', '14 1/2', '370', 'Round the fullest part.'),
  ankle: length('Ankle', '8 3/4', '220', 'Round the leg, just above the bones.'),
  heel: length('Heel', '12 1/4', '310', 'Round the heel and the front crease of the ankle.'),
  waistToCrotch: length('Waist to crotch', '10', '250', 'Straight down from the waist, not along the body.'),
  rise: length('Rise, whole', '24', '600', 'Waist in front, between the legs, to the waist behind.'),
  crotchToKnee: length('Crotch to knee', '13', '330', 'Down the inside of the leg.'),
  kneeToFloor: length('Knee to floor', '17 3/4', '450', 'From the middle of the kneecap, without shoes.'),
  stretchRound: {
    kind: 'number',
    label: 'Stretch round',
    means: 'Of the cloth: 4 in that go to 7 in stretch 75 %.',
    unit: '%',
    start: '80',
  },
  stretchAlong: {
    kind: 'number',
    label: 'Stretch along',
    means: 'The same the other way of the cloth; 0 if it does not.',
    unit: '%',
    start: '40',
  },
} as const);

/** What is added round the pieces. */
export const ALLOWANCE_FIELDS = {
  seam: { ...length('Seam allowance', '3/8', '10', 'Added outside every seam.'), usual: true },
  hem: { ...length('Top and hem', '1', '25', 'Added at the waist and at the ankle.'), usual: true },
} as const;

/** Where a slit, a zip or lacing lets the leg pass, so that it need not stretch there. */
export const OPENING_FIELD = {
  kind: 'choice',
  usual: true,
  label: 'Opening',
  means: 'A slit, a zip or lacing that lets it pass.',
  options: [
    { value: 'none', label: 'none' },
    { value: 'waist', label: 'at the waist' },
    { value: 'ankle', label: 'at the ankle' },
    { value: 'both', label: 'at both' },
  ],
  start: 'none',
} as const satisfies ChoiceField;

/** What may be left empty, last in the form. */
export const SPARE_FIELDS = {
  hipHeight: spare('Hip above crotch', 'Straight up; a third of the way if left empty.'),
  ankleHeight: spare('Ankle above floor', 'A quarter of the knee’s height if left empty.'),
  lowerThigh: spare('Just above the knee', 'Only to see whether the knee is likely.'),
  otherThigh: spare('Other leg, thigh', 'To see whether the legs differ.'),
  otherKnee: spare('Other leg, knee', 'To see whether the legs differ.'),
  otherCalf: spare('Other leg, calf', 'To see whether the legs differ.'),
  otherAnkle: spare('Other leg, ankle', 'To see whether the legs differ.'),
} as const;

/** Fields of a leg by the names that the arithmetic has for them. */
export const LEG_BLAME = {
  'measures.waist': 'waist',
  'measures.hip': 'hip',
  'measures.thigh': 'thigh',
  'measures.knee': 'knee',
  'measures.calf': 'calf',
  'measures.ankle': 'ankle',
  'measures.heel': 'heel',
  'measures.waistToCrotch': 'waistToCrotch',
  'measures.rise': 'rise',
  'measures.crotchToKnee': 'crotchToKnee',
  'measures.kneeToFloor': 'kneeToFloor',
  'gauge.round': 'stretchRound',
  'gauge.along': 'stretchAlong',
} as const satisfies Record<string, keyof typeof MEASURE_FIELDS>;

type Measured = Values<typeof MEASURE_FIELDS> & {
  readonly [name in keyof typeof SPARE_FIELDS]?: Length | undefined;
} & {
  readonly opening?: 'none' | 'waist' | 'ankle' | 'both';
  readonly footed?: 'ankle' | 'foot';
  readonly footLength?: Length | undefined;
  readonly ball?: Length | undefined;
};

/** No body measures more than this; it is a slip of the finger. */
const MOST_BODY = inches(120);
/** No cloth goes to five times its length. */
const MOST_STRETCH = 400;
/** Allowances past this are no allowances. */
const MOST_ALLOWANCE = inches(6);

const given = <K extends string, V>(name: K, value: V | undefined): { [k in K]?: V } =>
  value === undefined ? {} : ({ [name]: value } as { [k in K]: V });

const drawnOut = (percent: number) => ({ rest: mm(100), stretched: mm(100 + percent) });

/** A cloth as it would be gauged, from what it stretches both ways in per cent. */
export const gaugeOf = (round: number, along: number): ClothGauge => ({
  round: drawnOut(round),
  along: drawnOut(along),
});

/**
 * The input of the draft from what was filled in.
 *
 * Refused, each at its own field: a measure over 120 in; a stretch below zero or over 400 %; a foot without its measures.
 */
export function legInput(values: Measured): Result<LegInput, Refusal> {
  for (const [name, value] of Object.entries(values)) {
    const stretch = name.startsWith('stretch');
    if (typeof value !== 'number') continue;
    if (stretch && !(value >= 0 && value <= MOST_STRETCH)) {
      const cure = 'Give 0 to 400 %; 4 in that go to 7 in stretch 75 %.';
      return bad(refusal(name, 'A cloth does not stretch by this.', cure));
    }
    if (!stretch && value > MOST_BODY) {
      const cure = 'Give less than 120 in, which is 3048 mm.';
      return bad(refusal(name, 'No body measures so much.', cure));
    }
  }
  const { footLength, ball } = values;
  const footed = values.footed === 'foot';
  for (const [name, value] of [
    ['footLength', footLength],
    ['ball', ball],
  ] as const) {
    if (footed && !(value !== undefined && value > 0)) {
      const cure = 'Measure it on the body, or end the leg at the ankle.';
      return bad(refusal(name, 'A leg with a foot needs this measure.', cure));
    }
  }
  const measures: LegMeasures = {
    heel: values.heel,
    ankle: values.ankle,
    calf: values.calf,
    knee: values.knee,
    thigh: values.thigh,
    hip: values.hip,
    waist: values.waist,
    waistToCrotch: values.waistToCrotch,
    rise: { whole: values.rise },
    crotchToKnee: values.crotchToKnee,
    kneeToFloor: values.kneeToFloor,
    ...given('lowerThigh', values.lowerThigh),
    ...given('crotchToHip', values.hipHeight),
    ...given('floorToAnkle', values.ankleHeight),
    ...(footLength !== undefined && ball !== undefined ? { foot: { length: footLength, ball } } : {}),
  };
  return good({
    measures,
    footed,
    gauge: gaugeOf(values.stretchRound, values.stretchAlong),
    opening: {
      ankle: values.opening === 'ankle' || values.opening === 'both',
      waist: values.opening === 'waist' || values.opening === 'both',
    },
    other: {
      ...given('thigh', values.otherThigh),
      ...given('knee', values.otherKnee),
      ...given('calf', values.otherCalf),
      ...given('ankle', values.otherAnkle),
    },
  });
}

/** Refuses an allowance below zero or over 6 in, at its field. */
export function allowancesFit(values: {
  readonly seam: Length;
  readonly hem: Length;
}): Result<true, Refusal> {
  for (const name of ['seam', 'hem'] as const) {
    if (values[name] < 0 || values[name] > MOST_ALLOWANCE) {
      const cure = 'Give zero or more, and no more than 6 in, which is 152 mm.';
      return bad(refusal(name, 'This is not an allowance.', cure));
    }
  }
  return good(true);
}
