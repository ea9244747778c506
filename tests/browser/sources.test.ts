import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { useApp } from './app.ts';
import { axeFaults } from './axe.ts';
import { PHONE } from './chromium.ts';
import { contrasts } from './contrast.ts';
import { still } from './places.ts';

const app = useApp({ ...PHONE, deviceScaleFactor: 1 });

async function toSources(on: Page): Promise<void> {
  await on.goto(`${app.served.origin}/#/sources`);
  await on.getByRole('heading', { level: 1, name: 'Where figures come from' }).waitFor();
}

describe('where figures come from', () => {
  it.each([
    ['phone', { width: 390, height: 844 }],
    ['tablet', { width: 820, height: 1180 }],
  ])('is clean by axe and legible on a %s, closed and opened', async (_, viewport) => {
    const here = await (await app.another({ ...PHONE, deviceScaleFactor: 1, viewport })).newPage();
    await toSources(here);
    for (const words of ['', 'thread']) {
      await here.getByRole('searchbox', { name: 'Search' }).fill(words);
      for (const colorScheme of ['light', 'dark'] as const) {
        await here.emulateMedia({ colorScheme });
        await still(here);
        expect.soft(await axeFaults(here), `${words} ${colorScheme}`).toEqual([]);
        const faint = (await contrasts(app.browser, here)).filter(({ ratio }) => ratio < 7);
        expect.soft(faint.map(({ text, ratio }) => `${text}: ${ratio.toFixed(2)}`)).toEqual([]);
      }
      const [wide, room] = await here.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
      expect(wide).toBeLessThanOrEqual(room!);
      const small = await here.evaluate(() =>
        [...document.querySelectorAll('button, summary, input, a.plain')]
          .map((one) => one.getBoundingClientRect())
          .filter(({ height }) => height < 48)
          .map(({ height }) => height),
      );
      expect(small).toEqual([]);
    }
  });

  it('opens a technique by touch and tells the source of a figure', async () => {
    const here = await app.open('#/sources');
    const figure = here.locator('[data-figure="cloth/gathers.ts FULLNESS"]');
    await here.getByText('Gathers', { exact: true }).tap();
    await figure.waitFor();
    expect(await figure.textContent()).toMatch(/2 1\/2 times.*Common practice, no source/);
  });

  it('opens what is seen at a try-on by touch and tells its cause and its book', async () => {
    const here = await app.open('#/sources');
    const sags = here.locator('[data-seen="front-sags"]');
    expect(await sags.isVisible()).toBe(false);
    await here.getByText('What is seen at a try-on', { exact: true }).tap();
    await sags.waitFor();
    expect(await sags.textContent()).toMatch(/Because the front is too long.*Fitting Dresses \(1946\)/);
  });

  it('is there without a network', async () => {
    const here = await app.open();
    await here.evaluate(() => navigator.serviceWorker.ready);
    await here.locator('[data-part="offline-ready"]').waitFor();
    await app.unplug();
    await toSources(here);
    await here.reload();
    await here.getByRole('searchbox', { name: 'Search' }).fill('conover');
    expect(await here.locator('[data-rule="flat before tube"]').isVisible()).toBe(true);
    expect(await here.locator('[data-part="found"]').textContent()).toMatch(/^\d+ of \d+ shown/);
  });
});
