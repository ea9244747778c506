import { spell } from '../chains.ts';
import type { EdgeRef, Garment, Outfit } from '../outfit.ts';
import { rawEdges } from '../raw-edges.ts';
import { UNITS } from '../units/all.ts';
import type { Unit } from '../units/unit.ts';
import { suggestPlaces } from './suggest-places.ts';

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
    const use = { id: `tried-${unit.id}`, name: unit.name, entries: {}, at, cloths: {} };
    const made = unit.build({ outfit, garment: here }, use);
    if (!made.ok) return places.some(([name, { kind }]) => kind === 'edges' && at[name]?.includes(meant));
    const { pieces, works, joins } = made.value;
    const after: Garment = {
      ...here,
      pieces: [...here.pieces, ...pieces],
      works: [...here.works, ...works],
      joins: [...here.joins, ...joins],
    };
    return !rawEdges(after).some((one) => spell(one) === meant);
  });
  const isFrill = ({ group }: Unit): boolean => group === 'Frills';
  return [...found.filter((unit) => !isFrill(unit)), ...found.filter(isFrill)];
}
