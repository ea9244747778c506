import { add, type Length, mm, nm, subtract, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Refusal, refusal } from './refusal.ts';

/** A ring flatter than this, a kilometre from its middle, is a straight strip. */
const FLATTEST = mm(1_000_000);

/** A frill cut from rings, such as falls from a cuff. */
export interface CircleFrillInput {
  /** Length of the seam that its inner edge is sewn to. */
  readonly seam: Length;
  /** Finished depth, from the seam to the hem. */
  readonly depth: Length;
  /** How many whole circles it is made of; more circles ripple more. A half or a quarter circle is allowed. */
  readonly circles: number;
  /** Allowance at the inner edge. */
  readonly allowance: Length;
  /** Allowance at the outer edge for its hem; zero where it is bound or left. */
  readonly hem: Length;
  /** Allowance on each side of the slit in each ring, where rings are joined or closed. Zero if not given. */
  readonly slit?: Length;
}

/** What {@link circleFrill} gives back; all radii are from the middle of the ring. */
export interface CircleFrillMade {
  /** Radius of the seam line. */
  readonly radius: Length;
  /** Radius to cut inside, and outside. */
  readonly cutInside: Length;
  readonly cutOutside: Length;
  /** Radius of the finished outer edge, and that edge's whole length. */
  readonly outside: Length;
  readonly outerEdge: Length;
  /** Side of the cloth square that one ring is cut from. */
  readonly square: Length;
  /** How many rings to cut, the last one being part of a ring where `circles` is not whole. */
  readonly rings: number;
  readonly assumed: readonly string[];
}

/**
 * A circular frill: the seam line of all rings together is as long as the seam, so r = L / 2πk, where L also covers
 * the slits' allowances. Follows from the measures.
 *
 * Refused: no seam, depth or circles; allowances below zero; an inner allowance that reaches the middle of the ring; a ring so
 * large that it is a straight strip.
 */
export function circleFrill(input: CircleFrillInput): Result<CircleFrillMade, Refusal> {
  const { seam, depth, circles, allowance, hem, slit = nm(0) } = input;
  if (seam <= 0) return bad(refusal('seam', 'The seam has no length.', 'Give a length above zero.'));
  if (depth <= 0) return bad(refusal('depth', 'The frill has no depth.', 'Give a depth above zero.'));
  if (!(circles > 0 && circles <= 100)) {
    return bad(
      refusal(
        'circles',
        'This is not a number of circles.',
        'Give a number above zero and up to 100; a quarter is 0.25.',
      ),
    );
  }
  for (const [field, size] of Object.entries({ allowance, hem, slit })) {
    if (size < 0) return bad(refusal(field, 'This allowance is below zero.', 'Give zero or more.'));
  }
  const rings = Math.ceil(circles);
  const exact = (seam + 2 * slit * rings) / (2 * Math.PI * circles);
  if (exact > FLATTEST) {
    const cure = 'Give more of a circle, or cut a straight strip.';
    return bad(refusal('circles', 'So small a part of a circle is all but straight.', cure));
  }
  const radius = nm(exact);
  const cutInside = subtract(radius, allowance);
  if (cutInside <= 0) {
    return bad(
      refusal(
        'circles',
        'The ring is so small that its allowance reaches the middle.',
        'Give fewer circles or a narrower allowance.',
      ),
    );
  }
  const outside = add(radius, depth);
  const cutOutside = add(outside, hem);
  return good({
    radius,
    cutInside,
    cutOutside,
    outside,
    outerEdge: nm(outside * 2 * Math.PI * circles - 2 * slit * rings),
    square: times(cutOutside, 2),
    rings,
    assumed: input.slit === undefined ? ['The slits take no allowance.'] : [],
  });
}
