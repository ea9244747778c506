import type { Locator, Page } from 'playwright-core';
import type { Act } from '../../src/store/deed.ts';
import { demo } from '../outfit/demo-files.ts';
import { bringIn, deedsIn } from './bench-page.ts';
import { orderOf, savedCopy, worked } from './demo.ts';

/** The parts of the try-on, as a maker finds them. */
export const tried = (page: Page) => {
  const part = (name: string): Locator => page.locator(`[data-part="${name}"]`);
  return {
    garment: part('try-on'),
    checks: part('checks'),
    place: (name: string): Locator => page.locator(`button[data-place="${name}"]`),
    entry: (id: string): Locator => page.locator(`a[data-entry="${id}"]`),
    note: part('note'),
    noteIt: part('note-it'),
    amount: page.locator('[data-field="amount"] input'),
    notes: page.locator('li[data-note]'),
    undo: part('undo'),
    cure: part('find-cure'),
    photo: part('photo'),
  };
};

const { sequence } = orderOf(demo('harbour-clockmaker'));

/** All other garments done, and this one up to its last try-on. */
export function doneBefore(garment: string): readonly string[] {
  const own = sequence.filter((step) => step.startsWith(`${garment}/`));
  const last = own.findLastIndex((step) => step.startsWith(`${garment}/try-`));
  const open = new Set(own.slice(last));
  return sequence.filter((step) => !open.has(step));
}

/** Begins at the try-on of a garment of the demonstration, with these steps done and these acts besides. */
export async function toTryOn(
  page: Page,
  origin: string,
  garment = 'shirt',
  done: readonly string[] = [],
  acts: readonly Act[] = [],
) {
  await page.goto(`${origin}/`);
  await bringIn(page, await savedCopy('harbour-clockmaker', [...worked(done), ...acts]));
  await page.goto(`${origin}/#/try/harbour-clockmaker/${garment}`);
  await tried(page).garment.waitFor();
}

/** Waits until a deed of this kind is in the ledger, and gives back all of them. */
export async function deedsOf(page: Page, kind: string) {
  const all = await deedsIn(page);
  return all.filter(({ act }) => act.kind === kind);
}
