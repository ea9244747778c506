import { type Refusal, refusal } from '../../cloth/refusal.ts';
import type { LegMade } from '../../cloth/stretch-leg-measures.ts';
import { type Length, longer, shorter, subtract } from '../../length/length.ts';
import type { ReadingUnit } from '../../length/reading.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { inUnit } from './leg-drawing.ts';

/** Where the knee lies on the cut leg, from the waist at the side. */
export const kneeOf = (leg: LegMade): Length =>
  leg.levels.find(({ name }) => name === 'knee')?.y ?? leg.crotchLevel;

/**
 * A level of the draft from how far it lies above the knee on the cut leg; below the knee with a minus sign.
 *
 * Refused at `field`: a level outside the inner seams, with what would do in the maker's own unit.
 */
export function levelUpFromKnee(
  leg: LegMade,
  up: Length,
  field: string,
  unit: ReadingUnit,
): Result<Length, Refusal> {
  const knee = kneeOf(leg);
  const end = leg.outline.edges.find(({ name }) => name === 'inner-front')?.segments.at(-1)?.to.y ?? knee;
  const level = subtract(knee, up);
  if (longer(level, leg.crotchLevel) && shorter(level, end)) return good(level);
  const [most, least] = [subtract(knee, leg.crotchLevel), subtract(knee, end)];
  return bad(
    refusal(
      field,
      'This level does not cross the leg between the crotch and the end of the inner seam.',
      `Give less than ${inUnit(most, unit)} above the knee, and below it more than ${inUnit(least, unit)}.`,
    ),
  );
}
