import type { Locator, Page } from 'playwright-core';
import { bringIn, deedsIn, touch } from './bench-page.ts';
import { savedCopy, worked } from './demo.ts';

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

/** Begins at the try-on of a garment of the demonstration, with the list of what is looked at first folded away. */
export async function toTryOn(page: Page, origin: string, garment = 'shirt', done: readonly string[] = []) {
  await page.goto(`${origin}/`);
  await bringIn(page, await savedCopy('harbour-clockmaker', worked(done)));
  await page.goto(`${origin}/#/try/harbour-clockmaker/${garment}`);
  await tried(page).garment.waitFor();
}

/** Folds the list of what is looked at first. */
export async function foldChecks(page: Page): Promise<void> {
  await touch(tried(page).checks.locator('summary'));
  await page.locator('[data-part="checks"]:not([open])').waitFor();
}

/** Waits until a deed of this kind is in the ledger, and gives back all of them. */
export async function deedsOf(page: Page, kind: string) {
  const all = await deedsIn(page);
  return all.filter(({ act }) => act.kind === kind);
}
