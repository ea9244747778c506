import { fresh, runningOrder } from '../../../src/order/running.ts';
import type { Running } from '../../../src/order/running-types.ts';
import { disagreements } from '../../../src/outfit/agreement.ts';
import { addGarment } from '../../../src/outfit/changing/garments.ts';
import { newOutfit } from '../../../src/outfit/changing/new-outfit.ts';
import { type PartList, type PartOf, putPart } from '../../../src/outfit/changing/parts.ts';
import { suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import { putOn } from '../../../src/outfit/changing/units.ts';
import type { Garment, Outfit } from '../../../src/outfit/outfit.ts';
import { unitCalled } from '../../../src/outfit/units/all.ts';

/** A unit put on as a maker would: its name, what is written in its fields, and a place where the proposed one is not meant. */
export interface PutOn {
  readonly unit: string;
  readonly name: string;
  readonly entries?: Readonly<Record<string, string>>;
  readonly at?: Readonly<Record<string, readonly string[]>>;
}

/** One garment of ready-made units, put on one after the other at the places that are proposed. */
export function garmentOf(units: readonly PutOn[], from?: Outfit): Outfit {
  const begun =
    from ??
    newOutfit({
      id: 'worn',
      name: 'Worn',
      event: 'The invented day',
      date: '2030-01-01',
      units: 'in',
    });
  let { outfit, garment } = addGarment(begun, { name: 'Waist' });
  for (const { unit, name, entries = {}, at = {} } of units) {
    const ready = unitCalled(unit);
    const here = outfit.garments.find(({ id }) => id === garment);
    if (!ready || !here) throw new Error(`no unit ${unit}`);
    const places = { ...suggestPlaces(here, ready), ...at };
    const made = putOn(outfit, garment, unit, { name, entries, at: places, cloths: {} });
    if (!made.ok) throw new Error(`${name}: ${JSON.stringify(made.error)}`);
    outfit = made.value.outfit;
  }
  const wrong = disagreements(outfit);
  if (wrong.length > 0) throw new Error(JSON.stringify(wrong));
  return outfit;
}

/** The outfit with one part of its first garment changed by hand. */
export function byHand<L extends PartList>(
  outfit: Outfit,
  list: L,
  id: string,
  change: Partial<PartOf[L]>,
): Outfit {
  const [garment] = outfit.garments;
  const part = (garment?.[list] as readonly PartOf[L][] | undefined)?.find((one) => one.id === id);
  if (!garment || !part) throw new Error(`no ${id} in ${list}`);
  const made = putPart(outfit, garment.id, list, { ...part, ...change } as PartOf[L]);
  if (!made.ok) throw new Error(JSON.stringify(made.error));
  return made.value;
}

/** The running order, which must have one. */
export function orderOfWorn(outfit: Outfit): Running {
  const running = runningOrder(outfit, fresh);
  if (!running.ok) throw new Error(running.error.say);
  return running.value;
}

/** The first garment. */
export function first(outfit: Outfit): Garment {
  const [garment] = outfit.garments;
  if (!garment) throw new Error('no garment');
  return garment;
}
