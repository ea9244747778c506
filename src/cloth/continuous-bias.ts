import { add, type Length, longest, nm, shortest, subtract, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Refusal, refusal } from './refusal.ts';

/** One long bias strip, cut round and round a tube sewn from a rectangle. */
export interface ContinuousBiasInput {
  /** The two sides of the rectangle, along the threads. */
  readonly across: Length;
  readonly along: Length;
  /** Cut width of the strip. */
  readonly strip: Length;
  /** Seam allowance of both seams. */
  readonly join: Length;
}

/** What {@link continuousBias} gives back. */
export interface ContinuousBiasMade {
  /** Length of the strip along its middle, with its joins sewn. */
  readonly total: Length;
  /** How many times the strip goes round the tube. */
  readonly rounds: number;
  /** Joins in the strip, of both seams. */
  readonly joins: number;
  /** Legs of the triangle cut off one end, and sewn to the other end. */
  readonly triangle: Length;
  /** From line to line on both straight edges, and how far one edge is shifted along the other to close the tube. */
  readonly step: Length;
  /** Left over at one bias edge, measured along the straight edge: trim it off before sewing the tube. */
  readonly trim: Length;
  readonly assumed: readonly string[];
}

/**
 * A continuous strip: cut a triangle off one end at 45 degrees, sew it to the other end, rule lines parallel to the
 * slanted edges, sew the straight edges into a tube with one edge shifted by one line, and cut along the spiral.
 * The area less both seams is the strip's length times its width. Follows from the measures.
 *
 * Refused: no size; allowances below zero or as wide as the cloth; a strip so wide that it does not go round twice.
 */
export function continuousBias(input: ContinuousBiasInput): Result<ContinuousBiasMade, Refusal> {
  const { across, along, strip, join } = input;
  const wrong = checked(strip, join);
  if (wrong) return bad(wrong);
  if (across <= 0) return bad(refusal('across', 'The cloth has no width.', 'Give a width above zero.'));
  if (along <= 0) return bad(refusal('along', 'The cloth has no length.', 'Give a length above zero.'));
  const short = shortest(across, along);
  const long = longest(across, along);
  const round = subtract(short, times(join, 2));
  if (round <= 0) {
    const cure = 'Give a narrower allowance or a larger piece of cloth.';
    return bad(refusal('join', 'The seams use up the whole cloth.', cure));
  }
  const straight = subtract(long, times(join, 2));
  const step = strip * Math.SQRT2;
  // A nanometre lost to rounding must not cost a whole round.
  const rounds = Math.floor((straight + 1) / step);
  if (rounds < 2) {
    const cure = 'Give a narrower strip or a larger piece of cloth, or cut separate strips.';
    return bad(refusal('strip', 'The strip would not go round the tube twice.', cure));
  }
  const before = Math.max(0, Math.floor((long - join - short) / step));
  return good({
    total: nm(rounds * round * Math.SQRT2),
    rounds,
    joins: Math.max(0, rounds - before) + rounds - 1,
    triangle: short,
    step: nm(step),
    trim: nm(Math.max(0, straight - rounds * step)),
    assumed: [
      'The two seams take the same allowance.',
      'The longer side is the one the lines are marked on.',
    ],
  });
}

/**
 * Side of the smallest square that gives a continuous strip of at least `needed`.
 * Refused: no length or width; an allowance below zero.
 */
export function continuousSquare(input: {
  readonly strip: Length;
  readonly join: Length;
  readonly needed: Length;
}): Result<ContinuousBiasMade & { readonly side: Length }, Refusal> {
  const { strip, join, needed } = input;
  const wrong = checked(strip, join);
  if (wrong) return bad(wrong);
  if (needed <= 0) return bad(refusal('needed', 'No strip is wanted.', 'Give a length above zero.'));
  const step = strip * Math.SQRT2;
  let inside = Number.POSITIVE_INFINITY;
  // More rounds need a longer straight edge and a shorter way round; the best is where the two cross.
  for (let rounds = 2; rounds * step < inside; rounds++) {
    inside = Math.min(inside, Math.max(rounds * step, needed / (Math.SQRT2 * rounds)));
  }
  const side = add(nm(Math.ceil(inside)), times(join, 2));
  const made = continuousBias({ across: side, along: side, strip, join });
  return made.ok ? good({ ...made.value, side }) : made;
}

function checked(strip: Length, join: Length): Refusal | undefined {
  if (strip <= 0) return refusal('strip', 'The strip has no width.', 'Give a width above zero.');
  if (join < 0) return refusal('join', 'The allowance of the joins is below zero.', 'Give zero or more.');
  return undefined;
}
