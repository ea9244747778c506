import { type Length, nm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type CircleFrillMade, circleFrill } from './circles.ts';
import { type Refusal, refusal } from './refusal.ts';

/** A shaped flounce, known by its two edges. */
export interface FlounceInput {
  /** Length of the seam at its top edge. */
  readonly top: Length;
  /** Length of its finished lower edge. */
  readonly bottom: Length;
  /** Finished depth. */
  readonly depth: Length;
  /** Allowances at the top and at the hem; see `circleFrill`. */
  readonly allowance: Length;
  readonly hem: Length;
  /** Allowance on each side of the slit in each ring. Zero if not given. */
  readonly slit?: Length;
  /** True for a flounce that goes all the way round, whose last ring joins the first. */
  readonly closed?: boolean;
}

/** What {@link flounce} gives back: the rings to cut, and what is added here. */
export interface FlounceMade extends CircleFrillMade {
  /** How many whole circles it amounts to. */
  readonly circles: number;
  readonly parts: readonly RingPart[];
  readonly joins: number;
}

/** A ring, or a part of one, and the smallest rectangle that it is cut from with one end laid along the cloth. */
export interface RingPart {
  /** The part of a whole turn, from 0 to 1. */
  readonly turn: number;
  readonly across: Length;
  readonly along: Length;
}

/**
 * A flounce from its top, bottom and depth: radius = top x depth / (bottom - top) (Baldt, Clothing for Women, 1916, Draft of circular
 * flounce, Fig. 56, seen as an excerpt). The circles follow: (bottom - top) / (2 pi depth).
 *
 * Refused: a bottom no longer than the top, which is a straight strip; what `circleFrill` refuses.
 */
export function flounce(input: FlounceInput): Result<FlounceMade, Refusal> {
  const { top, bottom, depth, allowance, hem, slit, closed = false } = input;
  if (top <= 0) return bad(refusal('top', 'The seam has no length.', 'Give a length above zero.'));
  if (depth <= 0) return bad(refusal('depth', 'The flounce has no depth.', 'Give a depth above zero.'));
  if (bottom <= top) {
    return bad(
      refusal(
        'bottom',
        'The lower edge is no longer than the seam, so nothing flares.',
        'Give a longer lower edge, or cut a straight strip.',
      ),
    );
  }
  const circles = (bottom - top) / (2 * Math.PI * depth);
  const frill = circleFrill({
    seam: top,
    depth,
    circles,
    allowance,
    hem,
    ...(slit === undefined ? {} : { slit }),
  });
  if (!frill.ok) {
    // Neither a seam nor a number of circles is an input here.
    const { field, wrong } = frill.error;
    if (field === 'circles' && circles < 0.01) {
      const cure = 'Give a longer lower edge, or cut a straight strip.';
      return bad(refusal('bottom', 'The two edges are all but alike, so nothing flares.', cure));
    }
    return field === 'circles'
      ? bad(
          refusal('bottom', wrong, 'Give a lower edge nearer to the seam in length, or narrower allowances.'),
        )
      : frill;
  }
  const { cutInside, cutOutside } = frill.value;
  const parts = ringParts(circles, cutInside, cutOutside);
  const assumed = input.closed === undefined ? ['The flounce is open at its ends.'] : [];
  return good({
    ...frill.value,
    circles,
    parts,
    joins: joinsOf(circles, closed),
    assumed: [...frill.value.assumed, ...assumed],
  });
}

/** Joins between the rings of `circles` circles; a closed frill has one more, where the last meets the first. */
export const joinsOf = (circles: number, closed: boolean): number => Math.ceil(circles) - (closed ? 0 : 1);

/**
 * The rings that `circles` circles are cut as: whole ones, and one part where the number is not whole. The rectangle
 * holds the cut ring without allowances at a slit.
 */
export function ringParts(circles: number, inside: Length, outside: Length): readonly RingPart[] {
  const whole = Math.floor(circles);
  const rest = circles - whole;
  const turns = [...Array.from({ length: whole }, () => 1), ...(rest > 0 ? [rest] : [])];
  return turns.map((turn) => {
    const quarters = [0.25, 0.5, 0.75].filter((quarter) => quarter < turn);
    const angles = [0, turn, ...quarters].map((part) => part * 2 * Math.PI);
    const extent = (side: (angle: number) => number): Length => {
      const reach = angles.flatMap((angle) => [inside * side(angle), outside * side(angle)]);
      return nm(Math.max(...reach) - Math.min(...reach));
    };
    return { turn, across: extent(Math.sin), along: extent(Math.cos) };
  });
}
