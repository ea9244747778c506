import { cure } from '../../src/fitting/cure.ts';
import type { Cure, Cures } from '../../src/fitting/cure-types.ts';
import type { Observation } from '../../src/fitting/observation.ts';
import type { Length } from '../../src/length/length.ts';
import { runningOrder } from '../../src/order/running.ts';
import type { Running, Standing } from '../../src/order/running-types.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';

/** The order of an outfit. */
export function orderOf(outfit: Outfit, standing: Partial<Standing> = {}): Running {
  const found = runningOrder(outfit, { done: [], added: [], waived: new Set(), ...standing });
  if (!found.ok) throw new Error(found.error.say);
  return found.value;
}

/** Something seen on a garment; its id is that of its entry. */
export const saw = (
  garment: string,
  entry: string,
  amount?: Length,
  more: Partial<Observation> = {},
): Observation => ({
  id: entry,
  garment,
  entry,
  side: 'both',
  out: [],
  ...(amount === undefined ? {} : { amount }),
  ...more,
});

/** What can be done about what was seen, with everything done up to a step, and with it. */
export function cureAfter(
  outfit: Outfit,
  garment: string,
  step: string,
  seen: readonly Observation[],
): { readonly cures: Cures; readonly done: readonly string[]; readonly running: Running } {
  const all = orderOf(outfit).sequence;
  const place = all.indexOf(step);
  if (place < 0) throw new Error(`no step ${step}`);
  const done = all.slice(0, place + 1);
  const running = orderOf(outfit, { done });
  return { cures: cure(outfit, garment, running, seen, { done, id: 'cure-1' }), done, running };
}

/** The steps that are left once a cure is accepted, in their order; every reason of the order is kept by it. */
export function workedToTheEnd(found: Cure, done: readonly string[]): readonly string[] {
  const again = new Set(found.undoing.rework.again.map(({ step }) => step));
  const kept = done.filter((step) => !again.has(step));
  const { sequence, doneCount, constraints, steps, ready } = orderOf(found.after, {
    done: kept,
    reworks: [found.undoing.rework],
  });
  const places = new Map(sequence.map((step, i) => [step, i]));
  const left = sequence.slice(doneCount);
  if (sequence.length !== steps.size) throw new Error('a step is missing');
  if (left[0] !== undefined && !ready.has(left[0])) throw new Error(`${left[0]} cannot be begun`);
  for (const { before, after, because } of constraints) {
    const [one, two] = [places.get(before) ?? -1, places.get(after) ?? -1];
    if (two >= doneCount && one >= two) throw new Error(`${before} comes after ${after}, though ${because}`);
  }
  return left;
}
