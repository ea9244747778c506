import type { Sourced } from '../cloth/advice.ts';
import { practice } from '../cloth/source.ts';
import { inches, type Length } from '../length/length.ts';
import type { Misfit } from '../order/undoing/late.ts';
import type { Alteration } from '../order/undoing/undoing-types.ts';
import type { Garment } from '../outfit/outfit.ts';
import type { Entry } from './entry.ts';
import { entriesFor } from './here.ts';
import { cheapest } from './least-work.ts';
import { puzzleOf } from './puzzle-of.ts';

/**
 * How likely something is to be seen at a try-on, until the ledger knows better: where it turns up often, now and then,
 * or seldom.
 * @unit part
 */
export const GUESSED_CHANCE: Sourced<Readonly<Record<Entry['often'], number>>> = {
  value: { often: 0.1, 'now and then': 0.04, seldom: 0.01 },
  source: practice,
};

/**
 * The guess counts as much as this many try-ons of the maker's own.
 * @unit try-ons
 */
export const GUESS_COUNTS_AS: Sourced<number> = { value: 10, source: practice };

/** A misfit is taken to be this much where only its pieces matter. */
export const USUAL_MISFIT: Sourced<Length> = { value: inches(1, 2), source: practice };

const found = new WeakMap<Garment, ReadonlyMap<string, readonly Alteration[]>>();

/**
 * What may turn out not to fit in a garment, each with what would be altered for its likeliest cause that asks for other
 * pieces, and how likely it is: as often as the maker saw it in her try-ons, drawn towards the guess while they are few.
 * @param seen what was seen, once for each time
 * @param tried how many try-ons there were
 */
export function likelyMisfits(
  garment: Garment,
  seen: readonly { readonly garment: string; readonly entry: string }[],
  tried: number,
): readonly Misfit[] {
  const known = found.get(garment) ?? alterationsOf(garment);
  found.set(garment, known);
  const weight = GUESS_COUNTS_AS.value;
  return entriesFor(garment).flatMap((entry): readonly Misfit[] => {
    const alterations = known.get(entry.id);
    if (!alterations) return [];
    const times = seen.filter((one) => one.garment === garment.id && one.entry === entry.id).length;
    const guess = GUESSED_CHANCE.value[entry.often];
    // More was seen than there were try-ons where something was noted in between.
    const chance = Math.min(1, (times + guess * weight) / (Math.max(tried, times) + weight));
    return [{ id: `${garment.id}/${entry.id}`, name: entry.seen, chance, alterations }];
  });
}

/** For each entry, the fewest pieces that put its likeliest cause right; moved at their seams where that is enough. */
function alterationsOf(garment: Garment): ReadonlyMap<string, readonly Alteration[]> {
  const all = new Map<string, readonly Alteration[]>();
  const known = new Map<string, readonly Alteration[] | undefined>();
  for (const entry of entriesFor(garment)) {
    for (const cause of entry.causes) {
      if (cause.wants.length === 0 || cause.wants.some(({ kind }) => kind === 'add')) continue;
      // Many things that are seen come from the same want.
      const key = JSON.stringify(cause.wants);
      const its = known.has(key) ? known.get(key) : fewest(garment, entry.id, cause.id);
      known.set(key, its);
      if (!its) continue;
      all.set(entry.id, its);
      break;
    }
  }
  return all;
}

function fewest(garment: Garment, entry: string, cause: string): readonly Alteration[] | undefined {
  const amount = USUAL_MISFIT.value;
  const seen = { id: entry, garment: garment.id, entry, side: 'both', amount, sure: cause, out: [] } as const;
  const costs = (some: readonly Alteration[]): number =>
    some.reduce((sum, { how }) => sum + (how === 'anew' ? 2 : 1), 0);
  const { puzzle, ways } = puzzleOf(garment, [seen], costs);
  const best = puzzle.seen.length > 0 ? cheapest(puzzle) : undefined;
  const alterations = best?.ways.flatMap((way) => ways.get(way)?.alteration ?? []);
  return alterations && alterations.length > 0 ? alterations : undefined;
}
