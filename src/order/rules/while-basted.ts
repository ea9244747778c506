import type { Join } from '../../outfit/outfit.ts';
import { type Made, stepOf } from '../expand/made.ts';
import type { StepId } from '../step.ts';
import type { Found } from './rule.ts';

/** The join that a step is part of, where it is basted for a try-on first. */
function tacked(made: Made, step: StepId): Join | undefined {
  const join = made.looked.joins.get(step.split('/')[1] ?? '');
  return join?.tacked ? join : undefined;
}

/**
 * Two seams that are basted for the same try-on: what must be done of one before the other holds for the bastings, and
 * again for the stitching after it. Otherwise each would wait for the other, since the try-on needs both basted and
 * neither stitched. Anything else is as it was found.
 */
export function* whileBasted(made: Made, found: Found): Iterable<Found> {
  const [one, other] = [tacked(made, found.before), tacked(made, found.after)];
  const together =
    one && other && one !== other
      ? made.garment.gates.some((gate) => gate.after.includes(one.id) && gate.after.includes(other.id))
      : false;
  const first = together && made.subjects.get(one?.id ?? '');
  const second = together && made.subjects.get(other?.id ?? '');
  const [basted, stitched] = [first && stepOf(first, 'baste'), second && stepOf(second, 'stitch')];
  if (!basted || !stitched) {
    yield found;
    return;
  }
  yield { ...found, before: basted };
  yield { ...found, after: stitched };
}
