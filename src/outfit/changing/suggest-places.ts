import type { Garment } from '../outfit.ts';
import type { PlaceAsked, Unit } from '../units/unit.ts';

/** Somewhere a unit could be put: as a description spells it, and as the maker reads it. */
export interface PlaceChoice {
  readonly at: readonly string[];
  readonly say: string;
}

/** Where a unit would most likely be put, by the names of its places; a place that nothing fits is left out. */
export function suggestPlaces(_garment: Garment, _unit: Unit): Readonly<Record<string, readonly string[]>> {
  throw new Error('not yet');
}

/** Where one place could be, the likeliest first. */
export function placeChoices(_garment: Garment, _asked: PlaceAsked): readonly PlaceChoice[] {
  throw new Error('not yet');
}
