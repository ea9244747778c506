import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { useApp } from './app.ts';
import { axeFaults } from './axe.ts';
import { parts, press, shown, wordsOf } from './bench-page.ts';
import { PHONE } from './chromium.ts';
import { contrasts } from './contrast.ts';
import { places, still } from './places.ts';

// One pixel a CSS pixel: the pictures that contrast is measured on are a quarter as large.
const app = useApp({ ...PHONE, deviceScaleFactor: 1 });

describe.each(places)('$name', ({ go, name }) => {
  it('is clean by axe, and its text has 7:1 on what is painted behind it, on paper and on dark cloth', async () => {
    const page = await app.context.newPage();
    await go(page, app.served.origin);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      await still(page);
      expect.soft(await axeFaults(page), `${name}, ${colorScheme}`).toEqual([]);
      const found = await contrasts(app.browser, page);
      expect(found.length).toBeGreaterThan(2);
      const faint = found.filter(({ ratio }) => ratio < 7);
      expect
        .soft(
          faint.map(({ text, ink, ratio }) => `“${text}” ${ink}: ${ratio.toFixed(2)}`),
          `${name}, ${colorScheme}`,
        )
        .toEqual([]);
    }
  });
});

describe('motion', () => {
  it('slides the tape for those who do not mind, and moves nothing for those who do', async () => {
    const marks = places.find(({ name }) => name === 'bench, marks')!;
    const motion = async (page: Page) => {
      await marks.go(page, app.served.origin);
      const before = await shown(page);
      expect((await press(page)).figure).not.toBe(before.figure);
      return page.evaluate(() => ({
        tape: getComputedStyle(document.querySelector('.tape-slide') ?? document.body).animationName,
        running: document.getAnimations().length,
      }));
    };
    expect((await motion(await app.context.newPage())).tape).toBe('tape-slide');
    const calm = await app.another({ viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' });
    expect(await motion(await calm.newPage())).toEqual({ tape: 'none', running: 0 });
  });
});

describe('to those who hear the page', () => {
  it('says each card and each change once, politely, and names the pad and undo by what they do', async () => {
    const page = await app.context.newPage();
    await places.find(({ name }) => name === 'bench, marks')!.go(page, app.served.origin);
    const { card, live, pad, undo } = parts(page);
    const said = page.locator('[aria-live="polite"]');
    expect(await said.count()).toBe(2);
    expect(await live.textContent()).toContain(await wordsOf(card.locator('h1')));
    const before = await said.nth(1).textContent();
    expect(before).toMatch(/^Mark 3 of \d+, fold 3: .* inch(es)? from /);
    await press(page);
    await expect.poll(() => said.nth(1).textContent()).toMatch(/^Mark 4 of /);
    await page.getByRole('button', { name: /^(Mark set, next|Last mark set)/ }).waitFor();
    expect(await wordsOf(pad)).toMatch(/^(Mark set, next|Last mark set)/);
    expect((await undo.textContent())?.trim()).toBe('Undo: mark 3');
    expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
    expect(await page.getByRole('main').count()).toBe(1);
  });
});
