import type { Garment } from '../outfit.ts';
import { UNITS } from '../units/all.ts';
import type { Unit, UnitGroup } from '../units/unit.ts';
import { suggestPlaces } from './suggest-places.ts';

/** What a unit needs that this garment has not: labels of its places, none where it fits. */
export function missingFor(garment: Garment, unit: Unit): readonly string[] {
  const found = suggestPlaces(garment, unit);
  return Object.entries(unit.places).flatMap(([name, { optional, label }]) =>
    optional || (found[name]?.length ?? 0) > 0 ? [] : [label],
  );
}

/** Put on when the garment hangs together; the maker looks for them herself. */
const TRIMS: readonly UnitGroup[] = ['Frills', 'Decoration', 'Legs'];

/** What a garment can begin with. */
const BODIES: readonly UnitGroup[] = ['Body', 'Legs', 'Skirts and waist'];

/** So many of one group are offered at once. */
const OF_A_GROUP = 3;

/**
 * What a maker is likely to put on next, in the order of making: what hangs on edges that are there, and is not on yet;
 * for an empty garment, what it can begin with.
 */
export function suggestUnits(garment: Garment): readonly Unit[] {
  const count = new Map<UnitGroup, number>();
  return UNITS.filter((unit) => {
    const seen = count.get(unit.group) ?? 0;
    if (seen === OF_A_GROUP || garment.units.some((use) => use.unit === unit.id)) return false;
    const places = Object.values(unit.places);
    if (garment.pieces.length === 0) {
      if (!BODIES.includes(unit.group) || places.some(({ optional }) => !optional)) return false;
    } else {
      if (TRIMS.includes(unit.group) || places.length === 0) return false;
      const found = suggestPlaces(garment, unit);
      const all = Object.entries(unit.places).every(
        ([name, { optional }]) => optional || (found[name]?.length ?? 0) > 0,
      );
      if (!all || Object.values(found).every((at) => at.length === 0)) return false;
    }
    count.set(unit.group, seen + 1);
    return true;
  });
}
