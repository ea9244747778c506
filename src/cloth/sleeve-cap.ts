import { inBothRules } from '../length/both-rules.ts';
import { add, type Length, nm, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { pointOf } from '../shape/flatten.ts';
import type { Point, Segment } from '../shape/outline.ts';
import type { Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { practice } from './source.ts';
import { type Cubic, cubicLength, segmentOf } from './stretch-leg-curves.ts';

/**
 * The curve of a cap runs level out of the underarm over these parts of its half width: behind, and hollower in front.
 * @unit part
 */
export const CAP_HOLLOW: Sourced<readonly [back: number, front: number]> = {
  value: [0.42, 0.38],
  source: practice,
};
/**
 * The curve of a cap runs level over its crown for these parts of its half width, behind and in front.
 * @unit part
 */
export const CAP_CROWN: Sourced<readonly [back: number, front: number]> = {
  value: [0.45, 0.42],
  source: practice,
};
/**
 * The crown of a cap lies between these parts of the width from the back, as the armhole asks.
 * @unit part
 */
export const CROWN_WITHIN: Sourced<readonly [least: number, most: number]> = {
  value: [0.4, 0.6],
  source: practice,
};
/**
 * A cap higher than this part of the width of its sleeve is taken for a slip.
 * @unit part
 */
export const HIGHEST_CAP: Sourced<number> = { value: 0.9, source: practice };

/** What a cap is drafted to. */
export interface CapInput {
  /** Runs of the armhole before and behind the shoulder. */
  readonly front: Length;
  readonly back: Length;
  /** Width of the sleeve at the underarm. */
  readonly wide: Length;
  /** Added to the armhole, once the fullness is reckoned. */
  readonly ease: Length;
  /** How many times the armhole the cap is long; 1 for a plain one. */
  readonly fullness: number;
}

/** What {@link sleeveCap} gives back; the underarm lies level, the crown at height 0. */
export interface CapMade {
  /** From the underarm up to the crown. */
  readonly height: Length;
  /** Where the shoulder seam meets it. */
  readonly crown: Point;
  /** From the back underarm at the left, over the crown, to the front underarm. */
  readonly start: Point;
  readonly curve: readonly [Segment, Segment];
}

/** The two curves of a cap of a width, a height and a crown. */
function curves(wide: number, height: number, crown: number): readonly [Cubic, Cubic] {
  const [hollowBack, hollowFront] = CAP_HOLLOW.value;
  const [crownBack, crownFront] = CAP_CROWN.value;
  const front = wide - crown;
  return [
    [
      { x: 0, y: height },
      { x: hollowBack * crown, y: height },
      { x: crown * (1 - crownBack), y: 0 },
      { x: crown, y: 0 },
    ],
    [
      { x: crown, y: 0 },
      { x: crown + crownFront * front, y: 0 },
      { x: wide - hollowFront * front, y: height },
      { x: wide, y: height },
    ],
  ];
}

/** Halves an interval until it is closer than a tenth of a micrometre. */
function halve(from: number, to: number, tooMuch: (at: number) => boolean): number {
  let [low, high] = [from, to];
  while (high - low > 100) {
    const middle = (low + high) / 2;
    if (tooMuch(middle)) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/**
 * A cap as long as its armhole asks, found by trying heights; its crown lies so that the front of the cap meets the
 * front of the armhole and the back its back, the ease shared between them.
 *
 * Refused: no armhole; a width of zero or less; ease below zero; a fullness not from 1 to 6; a sleeve so wide that the
 * cap would be flat, or so narrow that it would stand higher than the sleeve is wide.
 */
export function sleeveCap({ front, back, wide, ease, fullness }: CapInput): Result<CapMade, Refusal> {
  const armhole = add(front, back);
  if (front < 0 || back < 0 || armhole <= 0)
    return bad(refusal('armhole', 'The armhole has no length.', 'Give its front and its back.'));
  if (wide <= 0) return bad(refusal('wide', 'The sleeve has no width.', 'Give a width above zero.'));
  if (ease < 0)
    return bad(refusal('ease', 'The cap would be shorter than the armhole.', 'Give zero or more.'));
  if (!(fullness >= 1 && fullness <= 6))
    return bad(refusal('fullness', 'A cap cannot be gathered so.', 'Give 1 to 6; 1 1/2 is usual.'));
  const length = add(times(armhole, fullness), ease);
  const longFor = (height: number, crown: number): readonly [number, number] => {
    const [a, b] = curves(wide, height, crown);
    return [cubicLength(a), cubicLength(b)];
  };
  const wanted = (back / armhole) * length;
  const [least, most] = CROWN_WITHIN.value;
  const crownFor = (height: number): number =>
    halve(least * wide, most * wide, (crown) => {
      const [behind, before] = longFor(height, crown);
      // As much of the whole behind as the armhole has, whatever the whole is at this height.
      return behind * length > wanted * (behind + before);
    });
  const wholeAt = (height: number): number => {
    const [behind, before] = longFor(height, crownFor(height));
    return behind + before;
  };
  const highest = wide * HIGHEST_CAP.value;
  if (length <= wide || wholeAt(highest) < length) {
    const flat = length <= wide;
    const cure = flat
      ? `Give a sleeve narrower than ${inBothRules(length, 'down')} round the upper arm, or put it into a larger armhole.`
      : 'Give a wider sleeve, or less fullness.';
    const wrong = flat
      ? 'The sleeve is as wide as its cap is long, so the cap would be flat.'
      : 'The cap would stand nearly as high as the sleeve is wide.';
    return bad(refusal('wide', wrong, cure));
  }
  const height = halve(0, highest, (at) => wholeAt(at) > length);
  const crown = crownFor(height);
  const [behind, before] = curves(wide, height, crown);
  return good({
    height: nm(height),
    crown: pointOf(crown, 0),
    start: pointOf(0, height),
    curve: [segmentOf(behind), segmentOf(before)],
  });
}
