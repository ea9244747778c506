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

/** Every step in order once a cure is accepted, worked to the end: each step only when all before it is done. */
export function workedToTheEnd(found: Cure, done: readonly string[]): readonly string[] {
  const again = new Set(found.undoing.rework.again.map(({ step }) => step));
  const reworks = [found.undoing.rework];
  const left = done.filter((step) => !again.has(step));
  const worked: string[] = [];
  for (;;) {
    const running = orderOf(found.after, { done: [...left, ...worked], reworks });
    if (running.doneCount === running.sequence.length) return worked;
    const next = running.sequence[running.doneCount];
    if (next === undefined || !running.ready.has(next)) throw new Error(`held up at ${next}`);
    // All that comes before it in the order may be done at once: only the ends are looked at here.
    worked.push(...running.sequence.slice(running.doneCount));
  }
}
