import { bad, good, type Result } from '../../length/result.ts';
import type { Cloth, Garment, Marker, Outfit, Wearer } from '../outfit.ts';
import type { Problem } from '../problem.ts';
import { keepFigures } from './keep-figures.ts';
import { put } from './part-lists.ts';
import { makeAnew, type UnitFault } from './units.ts';

/** Changes what is said of the outfit as a whole. Figures of units stay what they are, whatever lengths are shown in. */
export function setAbout(
  outfit: Outfit,
  now: Partial<Pick<Outfit, 'name' | 'about' | 'event' | 'units'>>,
): Outfit {
  const after = { ...outfit, ...now };
  return after.units === outfit.units ? after : keptIn(outfit, after, after.garments);
}

const keptIn = (before: Outfit, after: Outfit, garments: readonly Garment[]): Outfit =>
  garments.reduce((sofar, { id }) => keepFigures(before, sofar, id), after);

/** Makes the units of some garments anew; all that stands against it where it cannot be done. */
function remade(outfit: Outfit, garments: readonly Garment[]): Result<Outfit, readonly UnitFault[]> {
  const faults: UnitFault[] = [];
  let now = outfit;
  for (const { id } of garments) {
    const made = makeAnew(now, id);
    if (made.ok) now = made.value;
    else faults.push(...made.error);
  }
  return faults.length > 0 ? bad(faults) : good(now);
}

/** Adds a cloth, or puts it in the stead of the one of the same id; what is cut from it is made anew. */
export function putCloth(outfit: Outfit, cloth: Cloth): Result<Outfit, readonly UnitFault[]> {
  const isNew = !outfit.cloths.some(({ id }) => id === cloth.id);
  const now = { ...outfit, cloths: put(outfit.cloths, cloth) };
  const cut = now.garments.filter(
    ({ units, pieces }) => units.length > 0 && pieces.some((piece) => piece.cloth === cloth.id),
  );
  return isNew ? good(now) : remade(now, cut);
}

const garmentsNaming = (
  outfit: Outfit,
  names: (garment: Garment) => readonly { readonly name: string }[],
): readonly string[] =>
  outfit.garments.flatMap((garment) => names(garment).map(({ name }) => `${name} of ${garment.name}`));

/** Names in a row, the first few of very many. */
const listed = (names: readonly string[]): string =>
  names.length > 5 ? `${names.slice(0, 4).join(', ')} and ${names.length - 4} more` : names.join(', ');

/** Takes a cloth out; refused, naming what is cut from it, while it is used, and where it is the only one. */
export function removeCloth(outfit: Outfit, id: string): Result<Outfit, readonly Problem[]> {
  const place = outfit.cloths.findIndex((cloth) => cloth.id === id);
  const cloth = outfit.cloths[place];
  if (!cloth) return good(outfit);
  const at = `/cloths/${place}`;
  if (outfit.cloths.length === 1) {
    return bad([
      { at, wrong: `${cloth.name} is the only cloth`, cure: 'add another before you take it out' },
    ]);
  }
  const used = garmentsNaming(outfit, ({ pieces, units }) => [
    ...pieces.filter((piece) => piece.cloth === id),
    ...units.filter((use) => Object.values(use.cloths).includes(id)),
  ]);
  if (used.length > 0) {
    const cure = 'choose another cloth for them first';
    return bad([{ at, wrong: `${cloth.name} is used: ${listed(used)}`, cure }]);
  }
  return good({ ...outfit, cloths: outfit.cloths.filter((one) => one !== cloth) });
}

/** Adds a marker, or puts it in the stead of the one of the same id. */
export const putMarker = (outfit: Outfit, marker: Marker): Outfit => ({
  ...outfit,
  markers: put(outfit.markers, marker),
});

/** Takes a marker out; refused, naming what it marks, while it is used, and where it is the only one. */
export function removeMarker(outfit: Outfit, id: string): Result<Outfit, readonly Problem[]> {
  const place = outfit.markers.findIndex((marker) => marker.id === id);
  const marker = outfit.markers[place];
  if (!marker) return good(outfit);
  const at = `/markers/${place}`;
  if (outfit.markers.length === 1) {
    return bad([
      { at, wrong: `${marker.name} is the only marker`, cure: 'add another before you take it out' },
    ]);
  }
  const used = garmentsNaming(outfit, ({ works }) =>
    works.filter((work) => 'marker' in work && work.marker === id),
  );
  if (used.length > 0) {
    return bad([{ at, wrong: `${marker.name} marks ${listed(used)}`, cure: 'mark them with another first' }]);
  }
  return good({ ...outfit, markers: outfit.markers.filter((one) => one !== marker) });
}

/** Adds a wearer, or puts them in the stead of the one of the same id; the garments of that wearer are made anew. */
export function putWearer(outfit: Outfit, wearer: Wearer): Result<Outfit, readonly UnitFault[]> {
  const old = outfit.wearers.find(({ id }) => id === wearer.id);
  const now = keepWearer(outfit, wearer);
  if (JSON.stringify(old?.measures) === JSON.stringify(wearer.measures)) return good(now);
  return remade(
    now,
    now.garments.filter((garment) => garment.wearer === wearer.id),
  );
}

/** The same without making anything anew: for measures that are right though a unit cannot be made with them yet. */
export const keepWearer = (outfit: Outfit, wearer: Wearer): Outfit => ({
  ...outfit,
  wearers: put(outfit.wearers, wearer),
});

/** Takes a wearer out; their garments are then for nobody in particular, and keep the figures they have. */
export function removeWearer(outfit: Outfit, id: string): Outfit {
  const theirs = outfit.garments.filter((garment) => garment.wearer === id);
  const after: Outfit = {
    ...outfit,
    wearers: outfit.wearers.filter((wearer) => wearer.id !== id),
    garments: outfit.garments.map((garment) => {
      if (garment.wearer !== id) return garment;
      const { wearer: _, ...rest } = garment;
      return rest;
    }),
  };
  return keptIn(outfit, after, theirs);
}
