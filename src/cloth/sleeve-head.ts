import { add, type Length, nm, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Advice, advise, type Sourced } from './advice.ts';
import { isFullness } from './gathers.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory, practice } from './source.ts';

/**
 * A sleeve head reaches over this part of the seam of the cap, unless said otherwise.
 * @unit part
 */
export const HEAD_PART: Sourced<number> = { value: 1 / 2, source: memory };

/** A folded strip inside the top of a sleeve that holds its cap up. */
export interface SleeveHeadInput {
  /** Length of the seam of the sleeve cap, from underarm to underarm. */
  readonly cap: Length;
  /** From underarm along the front to the shoulder mark. */
  readonly toShoulder: Length;
  /** Finished depth of the strip, folded. */
  readonly depth: Length;
  readonly allowance: Length;
  /** Part of the seam it covers, 1/2 if not given. */
  readonly part?: number;
  /** How many times its place it is long: 1 for a flat strip, more for a gathered one of net. 1 if not given. */
  readonly fullness?: number;
}

/** What {@link sleeveHead} gives back. */
export interface SleeveHeadMade {
  readonly cut: { readonly length: Length; readonly width: Length };
  /** Fold along the length, from one cut edge. */
  readonly fold: Length;
  /** Mark on the strip for the shoulder, from its front end. */
  readonly shoulder: Length;
  /** Where it begins and ends on the cap's seam, from the front underarm. */
  readonly from: Length;
  readonly to: Length;
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
}

/**
 * A sleeve head, its middle at the shoulder mark. Follows from the measures.
 *
 * Refused: no cap or depth; a shoulder mark not on the seam; a part not above 0 and up to 1, or one that runs past the underarm;
 * fullness not from 1 to 10; an allowance below zero.
 */
export function sleeveHead(input: SleeveHeadInput): Result<SleeveHeadMade, Refusal> {
  const { cap, toShoulder, depth, allowance, part = HEAD_PART.value, fullness = 1 } = input;
  if (cap <= 0) return bad(refusal('cap', 'The cap has no seam.', 'Give a length above zero.'));
  if (depth <= 0) return bad(refusal('depth', 'The strip has no depth.', 'Give a depth above zero.'));
  if (allowance < 0) return bad(refusal('allowance', 'The allowance is below zero.', 'Give zero or more.'));
  if (toShoulder <= 0 || toShoulder >= cap) {
    const cure = 'Measure along the cap from the front underarm.';
    return bad(refusal('toShoulder', 'The shoulder mark is not on the seam.', cure));
  }
  if (!isFullness(fullness))
    return bad(
      refusal('fullness', 'The strip cannot be set to its place.', 'Give 1 to 10; 1 is a flat strip.'),
    );
  const place = part > 0 && part <= 1 ? times(cap, part) : undefined;
  if (place === undefined || place / 2 > toShoulder || place / 2 > cap - toShoulder) {
    const cure = 'Give a smaller part, above zero; 1/2 is usual.';
    return bad(refusal('part', 'The strip would run past the underarm.', cure));
  }
  const length = times(place, fullness);
  return good({
    cut: { length: add(length, times(allowance, 2)), width: times(add(depth, allowance), 2) },
    fold: add(depth, allowance),
    shoulder: nm(allowance + length / 2),
    from: nm(toShoulder - place / 2),
    to: nm(toShoulder + place / 2),
    advice: [
      advise('Baste it in and look at the sleeve on the body before sewing: the cap decides.', practice),
    ],
    assumed: [
      ...(input.part === undefined ? ['It covers half of the seam.'] : []),
      ...(input.fullness === undefined ? ['A flat strip.'] : []),
    ],
  });
}
