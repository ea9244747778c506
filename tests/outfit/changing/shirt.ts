import { mm } from '../../../src/length/length.ts';
import type { Result } from '../../../src/length/result.ts';
import { disagreements } from '../../../src/outfit/agreement.ts';
import { addGarment } from '../../../src/outfit/changing/garments.ts';
import { newOutfit } from '../../../src/outfit/changing/new-outfit.ts';
import { suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import { putOn, type UnitFault } from '../../../src/outfit/changing/units.ts';
import type { Garment, Outfit } from '../../../src/outfit/outfit.ts';
import { readOutfit } from '../../../src/outfit/reading.ts';
import { unitCalled } from '../../../src/outfit/units/all.ts';
import type { Putting } from '../../../src/outfit/units/unit.ts';
import { writeOutfit } from '../../../src/outfit/writing.ts';

/** What was possible, or an error that says why it was not. */
export function made<T>(result: Result<T, unknown>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

/** What was said against it. */
export const refused = (result: Result<unknown, readonly UnitFault[]>): readonly UnitFault[] =>
  result.ok ? [] : result.error;

/** An outfit of one garment with nothing in it yet, for an invented wearer. */
export function bare(units: 'in' | 'mm' = 'mm'): Outfit {
  const outfit = newOutfit({ id: 'o', name: 'O', date: '2030-01-01', event: 'The invented day', units });
  const wearer = {
    id: 'chorister',
    name: 'Chorister',
    measures: { chest: mm(920), waist: mm(760), neck: mm(370), 'back-waist': mm(410), shoulder: mm(125) },
  };
  return addGarment({ ...outfit, wearers: [wearer] }, { name: 'Shirt', wearer: 'chorister' }).outfit;
}

/** A unit put where it is likely to go, or where it is told. */
export function put(outfit: Outfit, unit: string, more: Partial<Omit<Putting, 'id'>> = {}): Outfit {
  const [garment] = outfit.garments;
  const ready = unitCalled(unit);
  if (!garment || !ready) throw new Error(`no unit ${unit}`);
  const at = suggestPlaces(garment, ready);
  return made(putOn(outfit, garment.id, unit, { name: ready.name, entries: {}, at, cloths: {}, ...more }))
    .outfit;
}

/** A garment of these units, each put where it is likely to go. */
export const garmentOf = (...units: readonly string[]): Outfit =>
  units.reduce((outfit, unit) => put(outfit, unit), bare());

/** The one garment. */
export function only(outfit: Outfit): Garment {
  const [garment] = outfit.garments;
  if (!garment) throw new Error('no garment');
  return garment;
}

/** Ids of the parts of a garment, list by list. */
export const idsOf = (outfit: Outfit): readonly string[] => {
  const { pieces, works, joins, gates } = only(outfit);
  return [pieces, works, joins, gates].flatMap((list) => list.map(({ id }) => id));
};

/** Everything that would keep this outfit from being read again. */
export function wrongWith(outfit: Outfit): readonly string[] {
  const read = readOutfit(JSON.parse(JSON.stringify(writeOutfit(outfit))));
  return [
    ...disagreements(outfit).map(({ wrong }) => wrong),
    ...(read.ok ? [] : read.error.map(({ at, wrong }) => `${at}: ${wrong}`)),
  ];
}
