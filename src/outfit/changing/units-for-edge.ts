import { spell } from '../chains.ts';
import type { EdgeRef, Outfit } from '../outfit.ts';
import { rawEdges } from '../raw-edges.ts';
import { UNITS } from '../units/all.ts';
import type { Unit } from '../units/unit.ts';
import { suggestPlaces } from './suggest-places.ts';
import { putOn } from './units.ts';

/**
 * Ready-made units that leave an edge of a garment raw no longer where they are put on: sewn to something, turned, bound,
 * faced or folded in. One that goes on it and cannot be made from what is proposed is among them too, since a figure may
 * be all it wants. Frills, which go on nearly any edge, come last.
 */
export function unitsForEdge(outfit: Outfit, garment: string, edge: EdgeRef): readonly Unit[] {
  const here = outfit.garments.find(({ id }) => id === garment);
  const meant = spell(edge);
  if (!here?.pieces.some((piece) => piece.id === edge.piece)) return [];
  const found = UNITS.filter((unit) => {
    const at = suggestPlaces(here, unit, meant);
    const places = Object.entries(unit.places);
    if (!places.every(([name, { optional }]) => optional || (at[name]?.length ?? 0) > 0)) return false;
    const made = putOn(outfit, garment, unit.id, { name: unit.name, entries: {}, at, cloths: {} });
    if (!made.ok) return places.some(([name, { kind }]) => kind === 'edges' && at[name]?.includes(meant));
    const after = made.value.outfit.garments.find(({ id }) => id === garment);
    return after !== undefined && !rawEdges(after).some((one) => spell(one) === meant);
  });
  const isFrill = ({ group }: Unit): boolean => group === 'Frills';
  return [...found.filter((unit) => !isFrill(unit)), ...found.filter(isFrill)];
}
