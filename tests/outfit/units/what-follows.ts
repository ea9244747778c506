import { mm } from '../../../src/length/length.ts';
import { suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { unitCalled } from '../../../src/outfit/units/all.ts';
import { emptyOutfit, garmentOf, MIDDLING, put } from './made-of.ts';

/** A unit, and what is chosen in it. */
export type Worn = readonly [unit: string, entries?: Readonly<Record<string, string>>];

const FRONT: readonly Worn[] = [['plain-front']];
const BODY: readonly Worn[] = [...FRONT, ['plain-back']];
const SLEEVED: readonly Worn[] = [...BODY, ['plain-sleeve']];

/** What usually comes before a unit, the last of it what the unit is put on; a body where it is not said. */
const BEFORE: Readonly<Record<string, readonly Worn[]>> = {
  'plain-front': [],
  'plain-back': FRONT,
  'princess-front': [],
  'princess-back': [['princess-front']],
  'panelled-bodice': [],
  'inset-frill': [['princess-front'], ['princess-back']],
  'neckcloth-bow': [],
  'buttoned-cuff': SLEEVED,
  'sleeve-head-stretch': [['puffed-sleeve', { held: 'head' }]],
  'sleeve-support': SLEEVED,
  'beaded-lattice': SLEEVED,
  'stretch-leg': [],
  'ribbon-frill': [['stretch-leg', { of: 'two' }]],
  'gathered-skirt': [],
  'circle-skirt': [],
  waistband: [['gathered-skirt']],
};

/** What usually comes before a unit. */
export const usuallyBefore = (unit: string): readonly Worn[] => BEFORE[unit] ?? BODY;

/** An outfit with a cloth that stretches, and a wearer measured or not. */
export function clothed(measured: boolean): Outfit {
  const outfit = emptyOutfit('in', measured ? { ...MIDDLING, hand: 8.5 } : undefined);
  const [lawn] = outfit.cloths;
  const knit = { ...lawn!, id: 'knit', name: 'Knit', stretch: { across: 60, along: 40 }, width: mm(1500) };
  return { ...outfit, cloths: [...outfit.cloths, knit] };
}

/** Units put on one after the other with all that is proposed; each is called by its own id, the second time with a number. */
export const wear = (units: readonly Worn[], begun: Outfit): Outfit =>
  units.reduce((outfit, [name, entries = {}], i) => {
    const unit = unitCalled(name)!;
    const again = garmentOf(outfit).units.some(({ id }) => id === name);
    const at = suggestPlaces(garmentOf(outfit), unit);
    return put(outfit, unit, { id: again ? `${name}-${i}` : name, at, entries });
  }, begun);
