import type { Page } from 'playwright-core';
import { touch } from './bench-page.ts';
import type { Place } from './places.ts';
import { foldChecks, toTryOn, tried } from './try-on-page.ts';

/** Goes to the form about something seen under the arm. */
async function toNote(page: Page, origin: string): Promise<void> {
  await toTryOn(page, origin);
  await foldChecks(page);
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
      await foldChecks(page);
    },
  },
  {
    name: 'try-on, the legs from the side',
    bench: false,
    async go(page, origin) {
      await toTryOn(page, origin, 'hose');
      await foldChecks(page);
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
];
