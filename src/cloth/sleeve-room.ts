import { add, inches, type Length, longer, longest, shortest, subtract, times } from '../length/length.ts';
import type { Sourced } from './advice.ts';
import { practice } from './source.ts';

/** A plain sleeve is wider round the upper arm than the bent arm by this much. */
export const ARM_EASE: Sourced<Length> = { value: inches(2), source: practice };
/** The cap of a plain sleeve is longer than the armhole it is set into by this much. */
export const USUAL_CAP_EASE: Sourced<Length> = { value: inches(3, 4), source: practice };
/** A lower edge that the hand passes closed is wider than the hand by this much. */
export const HAND_EASE: Sourced<Length> = { value: inches(3, 4), source: practice };
/** A band or an elastic that lies round the arm is looser than the arm by this much. */
export const BAND_EASE: Sourced<Length> = { value: inches(1), source: practice };
/** The lower edge of a sleeve that is set into a cuff is wider than the wrist by this much. */
export const CUFF_FULL: Sourced<Length> = { value: inches(3), source: practice };
/** A casing is turned deeper than its elastic is wide by this much. */
export const CASING_ROOM: Sourced<Length> = { value: inches(1, 4), source: practice };
/**
 * A sleeve is between these parts as wide, round the upper arm, as the armhole is long; narrower its cap stands very high, wider it lies nearly flat.
 * @unit part
 */
export const WIDE_OF_ARMHOLE: Sourced<readonly [least: number, most: number]> = {
  value: [0.65, 0.9],
  source: practice,
};

/** The upper arm that a sleeve was drafted round; as wide as the sleeve where that leaves nothing. */
export const onArm = (wide: Length): Length =>
  longer(wide, ARM_EASE.value) ? subtract(wide, ARM_EASE.value) : wide;

/** How wide the lower edge of a sleeve is drafted, so that the hand passes it closed and a cuff can gather it; nothing where neither is known. */
export function lowerWide(wrist: Length | undefined, hand: Length | undefined): Length | undefined {
  const [first, ...rest] = [
    ...(wrist === undefined ? [] : [add(wrist, CUFF_FULL.value)]),
    ...(hand === undefined ? [] : [add(hand, HAND_EASE.value)]),
  ];
  return first && longest(first, ...rest);
}

/** How wide a sleeve is drafted round an upper arm, held to what the armhole takes. */
export function sleeveWide(arm: Length | undefined, armhole: Length | undefined): Length | undefined {
  const wide = arm === undefined ? undefined : add(arm, ARM_EASE.value);
  if (armhole === undefined) return wide;
  const [least, most] = WIDE_OF_ARMHOLE.value;
  const middle = times(armhole, (least + most) / 2);
  return shortest(longest(wide ?? middle, times(armhole, least)), times(armhole, most));
}
