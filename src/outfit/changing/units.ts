import type { Advice } from '../../cloth/advice.ts';
import type { Fault } from '../../fields/fields.ts';
import { bad, good, type Result } from '../../length/result.ts';
import type { Garment, Outfit, UnitUse } from '../outfit.ts';
import { unitCalled } from '../units/all.ts';
import type { Putting } from '../units/unit.ts';
import { fall } from './fall.ts';
import type { Fallen } from './fallen.ts';
import { fromOn, type Remade, remake } from './making.ts';
import { freshId, idsIn } from './new-outfit.ts';
import { garmentIn, LISTS, withGarment } from './part-lists.ts';

/** What stands against a unit being made. */
export interface UnitFault {
  /** Id of the garment. */
  readonly garment: string;
  /** Id of the unit as the garment has it; empty for one that is being put on now, or where the fault is of no unit. */
  readonly unit: string;
  readonly name: string;
  readonly faults: readonly Fault[];
}

/** A change of units that was possible. */
export interface UnitsMade {
  readonly outfit: Outfit;
  /** Id of the unit that was put on or changed. */
  readonly unit: string;
  readonly advice: readonly Advice[];
  /** What was taken for granted. */
  readonly assumed: readonly string[];
}

const refused = (garment: string, unit: string, name: string, say: string) =>
  bad([{ garment, unit, name, faults: [{ field: '', say }] }]);

const madeOf = (outfit: Outfit, { garment, built }: Remade, unit: string): UnitsMade => {
  const { advice, assumed } = built.get(unit) ?? { advice: [], assumed: [] };
  return { outfit: withGarment(outfit, garment), unit, advice, assumed };
};

/** Longest id of a unit, so that the ids of its parts have room after it. */
const MOST = 32;
/** More of the same name than this are a slip. */
const TRIES = 100;

/** Ids that one unit gives to its parts and something else of the garment has already. */
const taken = (before: Garment, use: UnitUse): boolean => {
  const known = new Set(LISTS.flatMap((list) => before[list].map(({ id }) => id)));
  return use.brought.some((id) => known.has(id));
};

/** Puts a ready-made unit on a garment, after those that it has. */
export function putOn(
  outfit: Outfit,
  garment: string,
  unit: string,
  putting: Omit<Putting, 'id'> & { readonly id?: string },
): Result<UnitsMade, readonly UnitFault[]> {
  const here = garmentIn(outfit, garment);
  const ready = unitCalled(unit);
  const name = putting.name.trim() === '' ? (ready?.name ?? unit) : putting.name;
  if (!here) return refused(garment, '', name, 'This garment is not in the outfit any more.');
  if (!ready) return refused(garment, '', name, 'This version does not know this part.');
  const ids = new Set(idsIn(here));
  for (let tries = 0; tries < TRIES; tries += 1) {
    const id = putting.id ?? freshId(ids, name, MOST);
    if (ids.has(id))
      return refused(garment, '', name, `Something in ${here.name} is called “${id}” already.`);
    const { entries, at, cloths } = putting;
    const use: UnitUse = { id, name, unit, entries, at, cloths, brought: [], own: [] };
    // Built once by itself, to see which ids its parts will have.
    const made = ready.build({ outfit, garment: here }, use);
    if (!made.ok) return bad([{ garment, unit: '', name, faults: made.error }]);
    const brought = LISTS.flatMap((list) => made.value[list].map((part) => part.id));
    if (putting.id === undefined && taken(here, { ...use, brought })) {
      ids.add(id);
      continue;
    }
    const remade = remake(outfit, { ...here, units: [...here.units, use] }, new Set([id]));
    if (remade.ok) return good(madeOf(outfit, remade.value, id));
    return bad(remade.error.map((fault) => (fault.unit === id ? { ...fault, unit: '' } : fault)));
  }
  return refused(garment, '', name, 'Give it another name: too many are called so already.');
}

/** Changes a unit's name, figures, places or cloths; it and those put on after it are made anew. */
export function changeUnit(
  outfit: Outfit,
  garment: string,
  use: string,
  putting: Partial<Omit<Putting, 'id'>>,
): Result<UnitsMade, readonly UnitFault[]> {
  const here = garmentIn(outfit, garment);
  const old = here?.units.find(({ id }) => id === use);
  if (!here || !old) return refused(garment, use, use, 'This part is not in the garment any more.');
  if (!unitCalled(old.unit)) {
    return refused(garment, use, old.name, 'This version does not know this part, so it cannot change it.');
  }
  const units = here.units.map((one) => (one === old ? { ...old, ...putting, id: old.id } : one));
  const changed = { ...here, units };
  const remade = remake(outfit, changed, fromOn(changed, use));
  return remade.ok ? good(madeOf(outfit, remade.value, use)) : remade;
}

/** Takes a unit off: its parts, and everything else that hangs on them. */
export function takeOff(
  outfit: Outfit,
  garment: string,
  use: string,
): { readonly outfit: Outfit; readonly also: readonly Fallen[] } {
  const here = garmentIn(outfit, garment);
  if (!here) return { outfit, also: [] };
  const fallen = fall(outfit, here, { units: [use] });
  return { outfit: withGarment(outfit, fallen.garment), also: fallen.also };
}

/** Makes all units of a garment anew, one after the other, from what the maker wrote in their fields. */
export function makeAnew(outfit: Outfit, garment: string): Result<Outfit, readonly UnitFault[]> {
  const here = garmentIn(outfit, garment);
  if (!here) return refused(garment, '', garment, 'This garment is not in the outfit any more.');
  const remade = remake(outfit, here, fromOn(here));
  return remade.ok ? good(withGarment(outfit, remade.value.garment)) : remade;
}
