import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { settled, touch } from './bench-page.ts';

/** The parts of the description, as a maker finds them. */
export const described = (page: Page) => {
  const part = (name: string): Locator => page.locator(`[data-part="${name}"]`);
  return {
    overview: part('overview'),
    garment: part('garment'),
    units: part('units'),
    unit: part('unit'),
    outcome: part('outcome'),
    faults: part('fault'),
    misfits: part('misfit'),
    undo: part('undo'),
    effect: part('effect'),
    toBench: part('to-bench'),
    /** A field of the form that is open, by its name. */
    field: (name: string): Locator => page.locator(`[data-field="${name}"]`),
    /** A unit as the garment has it. */
    card: (id: string): Locator => page.locator(`li[data-unit="${id}"]`),
  };
};

/** Begins an outfit from the outfits page, as a maker does who has a name and a day for it. */
export async function beginOwn(page: Page, name: string, date: string, rule = 'inches'): Promise<void> {
  await touch(page.getByRole('button', { name: 'Describe your own outfit' }));
  await page.getByLabel('Its name').fill(name);
  await page.getByLabel('Ready by').fill(date);
  await touch(page.getByRole('radio', { name: rule }));
  await touch(page.getByRole('button', { name: 'Begin it' }));
  await described(page).overview.waitFor();
}

/** Adds a garment and goes to its page. */
export async function addGarment(page: Page, name: string): Promise<void> {
  const form = page.locator('[data-part="add-garment"]');
  // It stands open in an outfit with nothing in it.
  await described(page).overview.waitFor();
  if ((await form.count()) === 0) await touch(page.getByRole('button', { name: 'Add a garment' }));
  await page.getByLabel('What it is').fill(name);
  await touch(page.getByRole('button', { name: 'Add it' }));
  await described(page).garment.waitFor();
  await page.getByRole('heading', { level: 1, name }).waitFor();
}

/** Opens the form of a ready-made part from the page of the garment. */
export async function openUnit(page: Page, unit: string): Promise<void> {
  await touch(page.getByRole('link', { name: 'Ready-made part' }));
  await touch(page.locator(`a[data-unit="${unit}"][data-fits]`));
  await described(page).unit.waitFor();
}

/** Puts a ready-made part on with what is proposed: three touches. `change` may touch the form before it is handed in. */
export async function putOn(
  page: Page,
  unit: string,
  change: (page: Page) => Promise<void> = async () => {},
): Promise<void> {
  await openUnit(page, unit);
  await change(page);
  await touch(page.getByRole('button', { name: 'Put it on' }));
  await described(page).garment.waitFor();
  await expect.poll(() => page.locator('.just-put').count()).toBe(1);
}

/** Goes to the bench from a page of the description; the first card is open. */
export async function firstCard(page: Page): Promise<void> {
  await touch(described(page).toBench);
  await settled(page);
}
