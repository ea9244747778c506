import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { bringIn, touch } from './bench-page.ts';
import type { Place } from './places.ts';

const blouse = readFileSync('public/examples/small-blouse.jsonc', 'utf8');
const file = (text: string) => ({
  name: 'blouse.jsonc',
  mimeType: 'application/json',
  buffer: Buffer.from(text),
});

/** Brings the example in and goes to a page of it. */
async function at(page: Page, origin: string, where: string): Promise<void> {
  await page.goto(`${origin}/`);
  await bringIn(page, file(blouse));
  await page.goto(`${origin}/#/outfit/lamp-seller-blouse/${where}`);
  await page.locator('main.page h1').first().waitFor();
}

/** Wearers, cloths and the occasion, and a file with mistakes, in every state that looks different. */
export const wearerPlaces: readonly Place[] = [
  {
    name: 'outfits, mistakes in a file',
    bench: false,
    async go(page, origin) {
      await page.goto(`${origin}/`);
      await bringIn(
        page,
        file(blouse.replace('44 in', '44').replace('"cut": "pair", // a left', '"cut": 2, //')),
      );
      await touch(page.locator('[data-part="by-hand"] summary'));
    },
  },
  {
    name: 'description, who wears it',
    bench: false,
    go: (page, origin) => at(page, origin, 'wearer'),
  },
  {
    name: 'description, measures in doubt',
    bench: false,
    async go(page, origin) {
      await at(page, origin, 'wearer/lamp-seller');
      await page.locator('[data-field="neck"] input').fill('3');
      await page.locator('[data-field="shoulder"] input').fill('broad');
      await page.locator('[data-field="height"] input').fill('5 ft 4 in');
      await page.locator('[data-part="doubt"]').waitFor();
    },
  },
  {
    name: 'description, a wearer to remove',
    bench: false,
    async go(page, origin) {
      await at(page, origin, 'wearer/lamp-seller');
      await touch(page.getByRole('button', { name: 'Remove this wearer' }));
      await page.locator('[data-part="remove-wearer"]').waitFor();
    },
  },
  {
    name: 'description, cloths, one in use',
    bench: false,
    async go(page, origin) {
      await at(page, origin, 'cloths');
      await touch(page.getByRole('button', { name: 'Remove Cream cotton lawn' }));
      await page.locator('[data-part="in-use"]').waitFor();
    },
  },
  {
    name: 'description, a cloth being changed',
    bench: false,
    async go(page, origin) {
      await at(page, origin, 'cloths');
      await touch(page.getByRole('button', { name: 'Change Cream cotton lawn' }));
      await touch(page.getByRole('button', { name: 'Add a marker' }));
      await page.locator('[data-field="across"] input').fill('3');
    },
  },
  {
    name: 'description, about the outfit',
    bench: false,
    go: (page, origin) => at(page, origin, 'about'),
  },
];
