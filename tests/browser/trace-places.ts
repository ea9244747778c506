import type { Page } from 'playwright-core';
import { openDemo, touch } from './bench-page.ts';
import type { Place } from './places.ts';

/** The page for outlines with one of our own drawings in it. */
async function traced(page: Page, origin: string, drawing: string): Promise<void> {
  await page.goto(`${origin}/`);
  await openDemo(page, 'plain-shirt');
  await page.goto(`${origin}/#/outfit/plain-shirt/garment/shirt/trace`);
  await page.locator('[data-part="trace-file"]').setInputFiles(`tests/traced/data/${drawing}.svg`);
  await touch(page.locator('[data-choose]').first());
}

/** Outlines from a drawing program, in every state that looks different. */
export const tracePlaces: readonly Place[] = [
  {
    name: 'outlines, edges to name',
    bench: false,
    async go(page, origin) {
      await traced(page, origin, 'layers-in-mm');
      await touch(page.locator('[data-edge="1"]'));
      await touch(page.locator('[data-name="shoulder"]'));
    },
  },
  {
    name: 'outlines, corners and marks',
    bench: false,
    async go(page, origin) {
      await traced(page, origin, 'layers-in-mm');
      await touch(page.locator('[data-mode="marks"]'));
      await touch(page.locator('[data-near]').first());
      await touch(page.locator('[data-mode="corners"]'));
    },
  },
  {
    name: 'outlines, of no known size',
    bench: false,
    async go(page, origin) {
      await traced(page, origin, 'half-front');
      await page.locator('[data-part="trace-unscaled"]').waitFor();
    },
  },
];
