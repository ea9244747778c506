/** One measure of a body: what it is called and how it is taken. */
export interface Measure {
  readonly id: string;
  /** One to four words. */
  readonly name: string;
  /** How it is taken, one or two short sentences. */
  readonly how: string;
  readonly group: 'Upper body' | 'Arm' | 'Lower body' | 'Foot' | 'Whole';
}

const measure = <const I extends string>(
  id: I,
  name: string,
  group: Measure['group'],
  how: string,
): Measure & { readonly id: I } => ({ id, name, how, group });

/** Every measure that a wearer can have, in the order in which a body is best measured. */
export const MEASURES = [
  measure('height', 'Height', 'Whole', 'From the floor to the top of the head, without shoes.'),
  measure('neck', 'Neck', 'Upper body', 'Round the base of the neck, where a collar seam lies.'),
  measure('chest', 'Chest', 'Upper body', 'Round the fullest part, level all round, arms hanging.'),
  measure('waist', 'Waist', 'Upper body', 'Round the body, where the garment’s waist is to sit.'),
  measure('hip', 'Hip', 'Lower body', 'Round the fullest part of the seat.'),
  measure('shoulder', 'Shoulder', 'Upper body', 'From the side of the neck to the shoulder bone.'),
  measure(
    'across-back',
    'Across the back',
    'Upper body',
    'From arm crease to arm crease, level with the middle of the armholes.',
  ),
  measure('back-waist', 'Back length', 'Upper body', 'From the neck bone down the back to the waist.'),
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
  measure('thigh', 'Thigh', 'Lower body', 'Round the leg, just below the crotch.'),
  measure('knee', 'Knee', 'Lower body', 'Round the middle of the kneecap, slightly bent.'),
  measure('calf', 'Calf', 'Lower body', 'Round the fullest part.'),
  measure('ankle', 'Ankle', 'Lower body', 'Round the leg, just above the bones.'),
  measure('heel', 'Heel', 'Foot', 'Round the heel and the front crease of the ankle.'),
  measure(
    'waist-to-crotch',
    'Waist to crotch',
    'Lower body',
    'Straight down from the waist, not along the body.',
  ),
  measure('rise', 'Rise, whole', 'Lower body', 'Waist in front, between the legs, to the waist behind.'),
  measure('crotch-to-knee', 'Crotch to knee', 'Lower body', 'Down the inside of the leg.'),
  measure('knee-to-floor', 'Knee to floor', 'Lower body', 'From the middle of the kneecap, without shoes.'),
  measure('waist-to-floor', 'Waist to floor', 'Lower body', 'Down the side, without shoes.'),
  measure('foot-length', 'Foot length', 'Foot', 'From the heel to the longest toe, standing.'),
  measure('ball', 'Ball of the foot', 'Foot', 'Round the foot at its widest.'),
] as const satisfies readonly Measure[];

/** Name of a measure in a file. */
export type MeasureId = (typeof MEASURES)[number]['id'];
