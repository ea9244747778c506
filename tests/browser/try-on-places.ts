import type { Page } from 'playwright-core';
import { inches } from '../../src/length/length.ts';
import type { Act } from '../../src/store/deed.ts';
import { parts, touch } from './bench-page.ts';
import type { Place } from './places.ts';
import { doneBefore, toTryOn, tried } from './try-on-page.ts';

const seen = (garment: string, entry: string, top: number, bottom: number): Act => ({
  kind: 'seen',
  garment,
  entry,
  side: 'both',
  amount: inches(top, bottom),
});

/** What is seen of the blouse whose centre fronts are too narrow. */
const NARROW = [
  seen('shirt', 'surplus-at-the-upper-side', 1, 2),
  seen('shirt', 'tucks-not-straight', 5, 8),
  seen('shirt', 'frill-too-far-in', 5, 8),
];

/** Goes to the cure of a garment at its last try-on. */
async function toCure(page: Page, origin: string, garment: string, acts: readonly Act[]): Promise<void> {
  await toTryOn(page, origin, garment, doneBefore(garment), acts);
  await page.goto(`${origin}/#/try/harbour-clockmaker/${garment}/cure`);
  await page.locator('main[data-part="cure"]:not([data-state="reckoning"])').waitFor();
}

/** Goes to the form about something seen under the arm. */
async function toNote(page: Page, origin: string): Promise<void> {
  await toTryOn(page, origin);
  await touch(tried(page).place('upper side'));
  await touch(page.locator('a[data-entry]').first());
  await tried(page).note.waitFor();
}

/** The try-on in every state that looks different. */
export const tryOnPlaces: readonly Place[] = [
  {
    name: 'try-on, which garment',
    bench: false,
    async go(page, origin) {
      await toTryOn(page, origin);
      await page.goto(`${origin}/#/try/harbour-clockmaker`);
      await page.locator('[data-part="try-garments"]').waitFor();
    },
  },
  { name: 'try-on, look at first', bench: false, go: (page, origin) => toTryOn(page, origin) },
  {
    name: 'try-on, the body',
    bench: false,
    async go(page, origin) {
      await toTryOn(page, origin);
    },
  },
  {
    name: 'try-on, the legs from the side',
    bench: false,
    async go(page, origin) {
      await toTryOn(page, origin, 'hose');
      await touch(page.getByRole('button', { name: 'Side', exact: true }));
    },
  },
  {
    name: 'try-on, what can be seen there',
    bench: false,
    async go(page, origin) {
      await toTryOn(page, origin);
      await touch(tried(page).place('upper side'));
      await page.locator('[data-part="seen-here"]').waitFor();
    },
  },
  {
    name: 'try-on, all that can be seen',
    bench: false,
    async go(page, origin) {
      await toTryOn(page, origin);
      await page.goto(`${origin}/#/try/harbour-clockmaker/shirt/all`);
      await page.locator('[data-part="search"]').fill('tucks');
    },
  },
  { name: 'try-on, how much', bench: false, go: toNote },
  {
    name: 'try-on, how much, a fault and a test',
    bench: false,
    async go(page, origin) {
      await toNote(page, origin);
      await tried(page).amount.fill('rather much');
      await touch(page.getByRole('button', { name: /^Not this/ }).first());
      await touch(page.getByRole('button', { name: /^It is this/ }).nth(1));
      await touch(tried(page).noteIt);
      await page.locator('[data-part="fault"]').waitFor();
    },
  },
  {
    name: 'try-on, two notes',
    bench: false,
    async go(page, origin) {
      await toNote(page, origin);
      await touch(page.locator('[data-amount="3/4"]'));
      await touch(tried(page).noteIt);
      await touch(tried(page).place('chest'));
      await touch(page.locator('a[data-entry]').first());
      await touch(tried(page).noteIt);
      await tried(page).notes.nth(1).waitFor();
      await tried(page).cure.waitFor();
    },
  },
  {
    name: 'cure, nothing noted',
    bench: false,
    go: (page, origin) => toCure(page, origin, 'shirt', []),
  },
  {
    name: 'cure, found',
    bench: false,
    go: (page, origin) => toCure(page, origin, 'shirt', NARROW),
  },
  {
    name: 'cure, of the legs, all unfolded',
    bench: false,
    async go(page, origin) {
      const acts = [seen('hose', 'crotch-low', 3, 4), seen('hose', 'ankle-folds', 1, 2)];
      await toCure(page, origin, 'hose', acts);
      const folded = page.locator('main details:not([open]) > summary');
      while ((await folded.count()) > 0) await touch(folded.first());
    },
  },
  {
    name: 'cure, none',
    bench: false,
    go: (page, origin) =>
      toCure(page, origin, 'shirt', [
        { kind: 'seen', garment: 'shirt', entry: 'frill-too-far-in', side: 'both' },
      ]),
  },
  {
    name: 'cure, on the cards',
    bench: false,
    async go(page, origin) {
      await toCure(page, origin, 'shirt', NARROW);
      await touch(parts(page).pad);
      await page.locator('main[data-part="cure-accepted"]').waitFor();
    },
  },
  {
    name: 'running order, a cure on the cards',
    bench: false,
    async go(page, origin) {
      await toCure(page, origin, 'shirt', NARROW);
      await touch(parts(page).pad);
      await page.locator('main[data-part="cure-accepted"]').waitFor();
      await page.goto(`${origin}/#/order/harbour-clockmaker`);
      await page.locator('[data-part="late-curve"]').waitFor();
    },
  },
  {
    name: 'running order, try-ons that would save most',
    bench: false,
    async go(page, origin) {
      await toTryOn(page, origin);
      await page.goto(`${origin}/#/order/harbour-clockmaker`);
      await touch(page.locator('[data-part="gate-offers"] > summary'));
      await page.locator('[data-part="gate-offer"]').first().waitFor();
    },
  },
];
