import type { Page } from 'playwright-core';
import { inches } from '../../src/length/length.ts';
import { addGarment } from '../../src/outfit/changing/garments.ts';
import { newOutfit } from '../../src/outfit/changing/new-outfit.ts';
import { suggestPlaces } from '../../src/outfit/changing/suggest-places.ts';
import { putOn } from '../../src/outfit/changing/units.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { unitCalled } from '../../src/outfit/units/all.ts';
import { writeOutfitFile } from '../../src/outfit/writing.ts';
import { bringIn, press, settled, shown, touch } from './bench-page.ts';
import { addGarment as addGarmentBy, beginOwn, described } from './describe-page.ts';
import type { Place } from './places.ts';

/** An invented blouse of ready-made parts, for an invented wearer. */
function invented(...units: readonly string[]): Outfit {
  const begun = newOutfit({
    id: 'lamplighter',
    name: 'The lamplighter',
    date: '2027-02-13',
    event: 'A parade',
    units: 'in',
  });
  const measures = { chest: inches(36), waist: inches(28), neck: inches(15), 'arm-length': inches(23) };
  const worn = { ...begun, invented: true, wearers: [{ id: 'edda', name: 'Edda', measures }] };
  let { outfit } = addGarment(worn, { name: 'Blouse', wearer: 'edda' });
  for (const id of units) {
    const unit = unitCalled(id)!;
    const at = suggestPlaces(outfit.garments[0]!, unit);
    const made = putOn(outfit, 'blouse', id, { name: unit.name, entries: {}, at, cloths: {} });
    if (!made.ok) throw new Error(`${id}: ${JSON.stringify(made.error)}`);
    outfit = made.value.outfit;
  }
  return outfit;
}

const BODY = ['plain-front', 'plain-back', 'button-band'] as const;

/** Brings the blouse in and goes to a page of its description. */
async function at(page: Page, origin: string, where: string, units: readonly string[] = BODY): Promise<void> {
  await page.goto(`${origin}/`);
  const buffer = Buffer.from(writeOutfitFile(invented(...units)));
  await bringIn(page, { name: 'lamplighter.json', mimeType: 'application/json', buffer });
  await page.goto(`${origin}/#/outfit/lamplighter${where === '' ? '' : `/${where}`}`);
  // A page that is still being fetched has a heading too, but no name; a drawing kept from before is read again first.
  await page.locator('main.page[data-part] h1').first().waitFor();
  await page.getByText('Reading…', { exact: true }).waitFor({ state: 'hidden' });
}

const page = (name: string, where: string): Place => ({
  name: `description, ${name}`,
  bench: false,
  go: (fresh, origin) => at(fresh, origin, where),
});

/** The pages of garments and their parts, in every state that looks different. */
export const describePlaces: readonly Place[] = [
  {
    name: 'outfits, one of her own begun',
    bench: false,
    async go(fresh, origin) {
      await fresh.goto(`${origin}/`);
      await touch(fresh.getByRole('button', { name: 'Describe your own outfit' }));
      await fresh.getByLabel('Its name').fill('The lamplighter');
      await touch(fresh.getByRole('button', { name: 'Begin it' }));
      await described(fresh).faults.waitFor();
    },
  },
  {
    name: 'description, nothing in it yet',
    bench: false,
    async go(fresh, origin) {
      await fresh.goto(`${origin}/`);
      await beginOwn(fresh, 'The lamplighter', '2027-02-13');
    },
  },
  {
    name: 'description, an empty garment',
    bench: false,
    async go(fresh, origin) {
      await fresh.goto(`${origin}/`);
      await beginOwn(fresh, 'The lamplighter', '2027-02-13');
      await addGarmentBy(fresh, 'Blouse');
    },
  },
  {
    name: 'bench, nothing to sew yet',
    bench: false,
    async go(fresh, origin) {
      await fresh.goto(`${origin}/`);
      await beginOwn(fresh, 'The lamplighter', '2027-02-13');
      await fresh.goto(`${origin}/#/bench/the-lamplighter`);
      await fresh.getByRole('heading', { name: 'Nothing to sew yet' }).waitFor();
    },
  },
  page('the outfit', ''),
  {
    name: 'description, a garment',
    bench: false,
    async go(fresh, origin) {
      await at(fresh, origin, 'garment/blouse');
      await touch(fresh.locator('li[data-unit] summary').first());
      await touch(fresh.getByText('Name, wearer, another like it'));
    },
  },
  {
    name: 'description, what goes with a part',
    bench: false,
    async go(fresh, origin) {
      await at(fresh, origin, 'garment/blouse', [...BODY, 'plain-sleeve']);
      await touch(fresh.getByRole('button', { name: 'Take off Front' }));
      await fresh.locator('[data-part="take-off"]').waitFor();
    },
  },
  page('ready-made parts', 'garment/blouse/add'),
  page('an edge that is still raw', 'garment/blouse/edge/front.neck'),
  page('a part and its figures', 'garment/blouse/add/plain-sleeve'),
  {
    name: 'description, edges to touch',
    bench: false,
    async go(fresh, origin) {
      await at(fresh, origin, 'garment/blouse/add/straight-frill');
      await touch(fresh.getByRole('button', { name: 'Show all places' }).first());
      await touch(fresh.getByRole('button', { name: 'Touch other edges' }).first());
      await fresh.locator('[data-part="edge-picker"]').waitFor();
    },
  },
  {
    name: 'description, a part with a fault',
    bench: false,
    async go(fresh, origin) {
      await at(fresh, origin, 'garment/blouse/unit/front');
      await described(fresh).field('chest').locator('input').fill('9 3/');
      await touch(fresh.getByRole('button', { name: 'Change it' }));
      await described(fresh).faults.first().waitFor();
    },
  },
  {
    name: 'description, what a change touches',
    bench: false,
    async go(fresh, origin) {
      await at(fresh, origin, '');
      await touch(described(fresh).toBench);
      await settled(fresh);
      const { step } = await shown(fresh);
      while ((await shown(fresh)).step === step) await press(fresh);
      await fresh.goto(`${origin}/#/outfit/lamplighter/garment/blouse/unit/front`);
      await described(fresh).field('side').locator('input').fill('18');
      await touch(fresh.getByRole('button', { name: 'Change it' }));
      await described(fresh).effect.waitFor();
    },
  },
  page('a piece', 'garment/blouse/piece/front'),
  page('a piece of her own', 'garment/blouse/piece'),
  page('a work of her own', 'garment/blouse/work'),
  page('a join of her own', 'garment/blouse/join'),
  page('a try-on of her own', 'garment/blouse/try-on'),
  page('an outline from a drawing', 'garment/blouse/trace'),
];
