import { inBothRules } from '../length/both-rules.ts';
import { inches, type Length, longest, nm, ratio, shortest, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { geometry, memory, published, type Source } from './source.ts';

/** Notches or clips of a curved seam come this far apart, closer where it curves more. */
export const NOTCHES_APART: Sourced<readonly [least: Length, most: Length]> = {
  value: [inches(1, 4), inches(1, 2)],
  source: published(
    'Apparel: Design, Textiles and Construction, Goodheart-Willcox',
    '2012',
    'p. 452; seen as an excerpt',
  ),
};
/** One notch may open or take up this much at the raw edge; with more the curve turns into corners. */
export const NOTCH_GAP: Sourced<Length> = { value: inches(1, 8), source: memory };
/** A notch stops this far from the stitching. */
export const SHORT_OF_SEAM: Sourced<Length> = { value: inches(1, 16), source: memory };

/** A curved seam whose allowance is to lie flat. */
export interface EaseNotchesInput {
  /** Length of the seam line that curves. */
  readonly seam: Length;
  /** Radius of its curve; the smaller, the sharper. */
  readonly radius: Length;
  readonly allowance: Length;
  /** `inward` where the raw edge is shorter than the seam and must spread; `outward` where it is longer and must shrink. */
  readonly curve: 'inward' | 'outward';
}

/** What {@link easeNotches} gives back. */
export interface EaseNotchesMade {
  /** Cut with the points of the scissors, or take a wedge out. */
  readonly cut: 'clip' | 'wedge';
  /** Places along the seam, from its start, the ends left out. */
  readonly at: readonly Length[];
  readonly apart: Length;
  /** How deep from the raw edge. */
  readonly deep: Length;
  /** How much each opens, or how wide a wedge to take out, at the raw edge. */
  readonly gap: Length;
  readonly assumed: readonly string[];
}

/** Along a curve the raw edge differs from the seam by the part that the allowance is of the radius. */
export const GAP_SOURCE: Source = geometry;

/**
 * Notches for a curved seam. Over a stretch `s` the raw edge differs from the seam by s x allowance / radius; the
 * notches come so close that none takes more than 1/8 in, but within the published 1/4 to 1/2 in.
 *
 * Refused: no seam or radius; an allowance too narrow to notch; an inward raw edge that reaches past the middle of the curve.
 */
export function easeNotches(input: EaseNotchesInput): Result<EaseNotchesMade, Refusal> {
  const { seam, radius, allowance, curve } = input;
  if (seam <= 0) return bad(refusal('seam', 'The seam has no length.', 'Give a length above zero.'));
  if (radius <= 0) return bad(refusal('radius', 'The curve has no radius.', 'Give a radius above zero.'));
  const deep = nm(allowance - SHORT_OF_SEAM.value);
  if (deep <= 0) {
    return bad(
      refusal(
        'allowance',
        'The allowance is too narrow to notch.',
        `Give more than ${inBothRules(SHORT_OF_SEAM.value, 'up')}, or leave it whole.`,
      ),
    );
  }
  if (curve === 'inward' && allowance >= radius) {
    return bad(
      refusal(
        'allowance',
        'The allowance reaches the middle of the curve.',
        'Give an allowance less than the radius.',
      ),
    );
  }
  const [least, most] = NOTCHES_APART.value;
  const wanted = longest(least, shortest(most, times(NOTCH_GAP.value, ratio(radius, allowance))));
  const spaces = Math.max(1, Math.ceil(seam / wanted));
  const apart = nm(seam / spaces);
  return good({
    cut: curve === 'inward' ? 'clip' : 'wedge',
    at: Array.from({ length: spaces - 1 }, (_, i) => nm((seam * (i + 1)) / spaces)),
    apart,
    deep,
    gap: times(apart, ratio(allowance, radius)),
    assumed: [
      'The curve is the same all along the seam.',
      `Notches stop ${inBothRules(SHORT_OF_SEAM.value)} short of the stitching.`,
    ],
  });
}
