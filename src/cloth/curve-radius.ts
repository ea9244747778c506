import { type Length, nm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Refusal, refusal } from './refusal.ts';

/**
 * Radius of a curve from a ruler laid across it: `across` is the straight distance between two places on the curve,
 * `bow` how far the curve lies from the ruler at its furthest. Follows from the measures: across² / 8 bow + bow / 2.
 *
 * Refused: no distance; a bow of zero or less, which is no curve; a bow deeper than the half circle over that distance; a curve
 * of more than a kilometre, which is straight.
 */
export function curveRadius(across: Length, bow: Length): Result<Length, Refusal> {
  if (across <= 0)
    return bad(refusal('across', 'The ruler lies across nothing.', 'Give a distance above zero.'));
  if (bow <= 0) return bad(refusal('bow', 'This curve is straight.', 'Give a bow above zero.'));
  if (2 * bow > across) {
    const cure = 'Lay the ruler across less of the curve, no more than half a circle.';
    return bad(refusal('bow', 'The curve goes round more than half a circle.', cure));
  }
  const radius = across ** 2 / (8 * bow) + bow / 2;
  if (radius > 1e12) return bad(refusal('bow', 'This curve is all but straight.', 'Give a larger bow.'));
  return good(nm(radius));
}
