import { spell } from '../chains.ts';
import type { EdgeRef, Outfit } from '../outfit.ts';
import { rawEdges } from '../raw-edges.ts';
import { UNITS } from '../units/all.ts';
import type { Unit } from '../units/unit.ts';
import { suggestPlaces } from './suggest-places.ts';
import { putOn } from './units.ts';

/**
 * Ready-made units that can be put on an edge of a garment and leave it raw no longer: sewn to something, turned,
 * bound or faced. One that cannot be made from what is proposed is among them too, since a figure may be all it wants.
 */
export function unitsForEdge(outfit: Outfit, garment: string, edge: EdgeRef): readonly Unit[] {
  const here = outfit.garments.find(({ id }) => id === garment);
  const meant = spell(edge);
  if (!here) return [];
  return UNITS.filter((unit) => {
    const at = suggestPlaces(here, unit, meant);
    const takes = Object.entries(unit.places).some(
      ([name, { kind }]) => kind === 'edges' && at[name]?.includes(meant),
    );
    const whole = Object.entries(unit.places).every(
      ([name, { optional }]) => optional || (at[name]?.length ?? 0) > 0,
    );
    if (!takes || !whole) return false;
    const made = putOn(outfit, garment, unit.id, { name: unit.name, entries: {}, at, cloths: {} });
    const after = made.ok ? made.value.outfit.garments.find(({ id }) => id === garment) : undefined;
    return !after || !rawEdges(after).some((one) => spell(one) === meant);
  });
}
