import type { Page } from 'playwright-core';
import { parts, settled, touch } from './bench-page.ts';

/** The parts of the running order, as a maker finds them. */
export const orderParts = (page: Page) => ({
  lines: page.locator('.sitting li[data-step]'),
  /** The line of a step. */
  line: (step: string) => page.locator(`li[data-step="${step}"]`),
  ready: page.locator('li[data-state="ready"]'),
  waiting: page.locator('li[data-state="waits"]'),
  concern: page.locator('[data-part="concern"]'),
  loop: page.locator('[data-part="loop"]'),
  undo: page.locator('[data-part="undo"]'),
  sheet: page.locator('dialog[open]'),
});

/** Goes from the bench to the running order and waits for its lines. */
export async function toOrder(page: Page): Promise<void> {
  await touch(parts(page).order);
  await orderParts(page).lines.first().waitFor();
}

/** Goes from the running order to the bench. */
export async function toBench(page: Page): Promise<void> {
  await touch(page.getByRole('link', { name: 'To the bench' }));
  await settled(page);
}

/** Opens the sheet with the reasons of a step. */
export async function askWhy(page: Page, step: string): Promise<void> {
  await touch(orderParts(page).line(step).getByRole('button', { name: /^Why/ }));
  await orderParts(page).sheet.waitFor();
}

/** Closes the open sheet. */
export async function closeSheet(page: Page): Promise<void> {
  await touch(orderParts(page).sheet.getByRole('button', { name: 'Close' }));
  await orderParts(page).sheet.waitFor({ state: 'detached' });
}

/** Steps as the page lists them, with their states. */
export const listed = (page: Page): Promise<readonly { step: string; state: string }[]> =>
  orderParts(page).lines.evaluateAll((all) =>
    all.map((line) => {
      const { step = '', state = '' } = (line as HTMLElement).dataset;
      return { step, state };
    }),
  );
