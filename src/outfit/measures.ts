/** One measure of a body: what it is called and how it is taken. */
export interface Measure {
  readonly id: string;
  /** One to four words. */
  readonly name: string;
  /** How it is taken, one or two short sentences. */
  readonly how: string;
  readonly group: 'Whole' | 'Upper body' | 'Arm' | 'Lower body' | 'Leg' | 'Foot';
}

const measure = <const I extends string>(
  id: I,
  name: string,
  group: Measure['group'],
  how: string,
): Measure & { readonly id: I } => ({ id, name, how, group });

/** Every measure that a wearer can have, in the order in which a body is best measured: from the top down, group by group. */
export const MEASURES = [
  measure('height', 'Height', 'Whole', 'From the floor to the top of the head, without shoes.'),
  measure('neck', 'Neck', 'Upper body', 'Round the base of the neck, where a collar seam lies.'),
  measure('shoulder', 'Shoulder', 'Upper body', 'From the side of the neck to the shoulder bone.'),
  measure(
    'across-back',
    'Across the back',
    'Upper body',
    'From arm crease to arm crease, level with the middle of the armholes.',
  ),
  measure(
    'chest',
    'Chest',
    'Upper body',
    'Round the fullest part, level all round, arms hanging, breathing quietly.',
  ),
  measure(
    'waist',
    'Waist',
    'Upper body',
    'Round the body, where the garment’s waist is to sit. Tie a tape there: other measures begin at it.',
  ),
  measure(
    'back-waist',
    'Back length',
    'Upper body',
    'From the neck bone that stands out, down the back to the waist.',
  ),
  measure(
    'armhole',
    'Round the arm',
    'Arm',
    'Over the shoulder bone and under the arm, as an armhole seam lies.',
  ),
  measure('upper-arm', 'Upper arm', 'Arm', 'Round the fullest part, the arm bent.'),
  measure('arm-length', 'Arm length', 'Arm', 'From the shoulder bone over the bent elbow to the wrist bone.'),
  measure('wrist', 'Wrist', 'Arm', 'Round the wrist bone.'),
  measure('hand', 'Hand', 'Arm', 'Round the hand at its widest, the thumb laid into the palm.'),
  measure('hip', 'Hip', 'Lower body', 'Round the fullest part of the seat, level all round.'),
  measure(
    'waist-to-crotch',
    'Waist to crotch',
    'Lower body',
    'Straight down from the waist to the level of the crotch, not along the body.',
  ),
  measure(
    'rise',
    'Rise, whole',
    'Lower body',
    'From the waist in front, between the legs, to the waist behind.',
  ),
  measure('waist-to-floor', 'Waist to floor', 'Lower body', 'Down the side, without shoes.'),
  measure('thigh', 'Thigh', 'Leg', 'Round the leg, just below the crotch.'),
  measure('knee', 'Knee', 'Leg', 'Round the middle of the kneecap, slightly bent.'),
  measure('calf', 'Calf', 'Leg', 'Round the fullest part.'),
  measure('ankle', 'Ankle', 'Leg', 'Round the leg at its thinnest, just above the bones.'),
  measure(
    'crotch-to-knee',
    'Crotch to knee',
    'Leg',
    'Down the inside of the leg to the middle of the kneecap.',
  ),
  measure('knee-to-floor', 'Knee to floor', 'Leg', 'From the middle of the kneecap, without shoes.'),
  measure('heel', 'Heel', 'Foot', 'Round the point of the heel and the front crease of the ankle.'),
  measure('foot-length', 'Foot length', 'Foot', 'From the heel to the longest toe, standing.'),
  measure('ball', 'Ball of the foot', 'Foot', 'Round the foot at its widest, standing.'),
] as const satisfies readonly Measure[];

/** Name of a measure in a file. */
export type MeasureId = (typeof MEASURES)[number]['id'];
