import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { useApp } from './app.ts';
import { axeFaults, tooWide } from './axe.ts';
import { openDemo, touch, wordsOf } from './bench-page.ts';
import { PHONE } from './chromium.ts';
import { contrasts } from './contrast.ts';
import { addGarment, beginOwn, described, putOn } from './describe-page.ts';
import { crowded, cutOff, overlapping } from './legibility.ts';

const app = useApp({ ...PHONE, deviceScaleFactor: 1 });

async function clean(page: Page, where: string): Promise<void> {
  expect.soft(await axeFaults(page), where).toEqual([]);
  expect.soft(await tooWide(page), `${where}: wider than the screen`).toBeLessThanOrEqual(0);
  // At its foot nothing lies over anything: the button that stays in sight is in its place.
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
  expect.soft(await crowded(page, 8), where).toEqual([]);
  expect.soft(await cutOff(page), where).toEqual([]);
  expect.soft(await overlapping(page), where).toEqual([]);
}

const part = (page: Page, name: string): Locator => page.locator(`[data-part="${name}"]`);
const keep = (page: Page): Promise<void> => touch(part(page, 'keep'));
const own = (page: Page, name: string): Promise<void> => touch(page.getByRole('link', { name, exact: true }));
const edge = (inside: Locator, ref: string): Locator => inside.locator(`button[data-edge="${ref}"]`);

/** A blouse that has its front. */
async function beginBlouse(page: Page): Promise<void> {
  await beginOwn(page, 'The lamplighter', '2027-02-13');
  await addGarment(page, 'Blouse');
  await putOn(page, 'plain-front');
}

describe('parts of the maker’s own', () => {
  it('a piece, a work in two steps and a seam to a ready-made piece stand like those that are ready-made', async () => {
    const page = await app.open();
    const { field, garment, undo } = described(page);
    await beginBlouse(page);

    await own(page, 'Own piece');
    await part(page, 'piece').waitFor();
    await clean(page, 'a new piece');
    await field('wide').locator('input').fill('9');
    await field('high').locator('input').fill('4');
    await field('name').locator('input').fill('Peplum');
    // The page is loaded anew in the middle of it.
    await page.reload();
    await part(page, 'piece').waitFor();
    expect(await field('wide').locator('input').inputValue()).toBe('9');
    expect(await field('name').locator('input').inputValue()).toBe('Peplum');
    await keep(page);
    await page.getByRole('heading', { level: 1, name: 'Peplum' }).waitFor();

    // Its edge is touched on the drawing, and called something else.
    await page.locator('[data-touch="peplum.upper"]').tap({ force: true });
    await part(page, 'edge-panel').waitFor();
    expect(await wordsOf(part(page, 'edge-panel'))).toMatch(/9 in long, in no seam yet/);
    await field('edge-name').locator('input').fill('waist');
    await touch(part(page, 'rename'));
    await page.locator('[data-edge-of="peplum.waist"]').waitFor();
    await clean(page, 'a piece');

    await touch(part(page, 'join-edge'));
    await part(page, 'join').waitFor();
    const to = field('to');
    await touch(to.locator('button[data-piece="front"]'));
    await touch(edge(to, 'front.hem'));
    await part(page, 'fits').locator('[data-within]').first().waitFor();
    await clean(page, 'a new join');
    await field('name').locator('input').fill('Peplum seam');
    await keep(page);
    await garment.waitFor();
    expect(await wordsOf(undo)).toMatch(/put in Peplum seam/);

    await own(page, 'Own work');
    await part(page, 'work').waitFor();
    await clean(page, 'a new work');
    await touch(page.locator('[data-kind="own"]'));
    await field('name').locator('input').fill('Stencilled lamps');
    await touch(field('on').getByRole('radio', { name: 'Peplum' }));
    const row = (i: number): Locator => page.locator(`[data-row="${i}"]`);
    await row(0).locator('textarea').fill('Stencil the lamps along the lower edge');
    await touch(part(page, 'add-steps'));
    await row(1).locator('textarea').fill('Press the stencilling from the wrong side');
    await row(1).locator('select').selectOption({ label: 'Iron' });
    await clean(page, 'an own work');
    await keep(page);
    await garment.waitFor();
    await page.locator('li[data-unit=""] summary').tap();
    const mine = page.locator('li[data-unit=""] a[data-part-of]');
    expect(await mine.allInnerTexts()).toEqual([
      expect.stringMatching(/^Peplum/),
      expect.stringMatching(/^Stencilled lamps/),
      expect.stringMatching(/^Peplum seam/),
    ]);

    // The order of making has them.
    await page.goto(`${app.served.origin}/#/order/the-lamplighter`);
    await page.getByText('Stencil the lamps along the lower edge').first().waitFor();
  });

  it('a ready-made piece changed by hand is hers, one undo takes that back, and it can be ready-made again', async () => {
    const page = await app.open();
    const { card, field, garment, undo } = described(page);
    await beginBlouse(page);
    const toPiece = async (): Promise<void> => {
      await touch(card('front').locator('summary'));
      await touch(card('front').locator('a[data-part-of="front"]'));
      await part(page, 'piece').waitFor();
    };
    await toPiece();
    await clean(page, 'a ready-made piece');
    const was = await field('allowance').locator('input').inputValue();
    await field('allowance').locator('input').fill('7/8');
    await keep(page);
    await garment.waitFor();
    await toPiece();
    expect(await wordsOf(part(page, 'origin'))).toMatch(/Changed by hand, your own/);
    await touch(undo);
    await expect.poll(() => wordsOf(part(page, 'origin'))).toMatch(/^Brought by Front/);
    expect(await field('allowance').locator('input').inputValue()).toBe(was);
    await field('allowance').locator('input').fill('7/8');
    await keep(page);
    await garment.waitFor();
    await toPiece();
    await touch(part(page, 'take-ready'));
    await expect.poll(() => wordsOf(part(page, 'origin'))).toMatch(/^Brought by Front/);
    expect(await field('allowance').locator('input').inputValue()).toBe(was);
  });

  it('a work is put on an edge with the keyboard alone', async () => {
    const context = await app.another({ viewport: { width: 390, height: 844 } });
    const page = await context.newPage();
    await page.goto(`${app.served.origin}/`);
    await openDemo(page, 'plain-shirt');
    await page.goto(`${app.served.origin}/#/outfit/plain-shirt/garment/shirt/work`);
    await part(page, 'work').waitFor();
    await page.locator('[data-kind="stay-stitch"] input').focus();
    await page.keyboard.press('Space');
    const button = edge(page.locator('[data-field="edge"]'), 'front.hem');
    await page.locator('[data-field="name"] input').focus();
    for (let i = 0; i < 40; i += 1) {
      if (await button.evaluate((one) => one === document.activeElement)) break;
      await page.keyboard.press('Tab');
    }
    expect(await button.evaluate((one) => one === document.activeElement)).toBe(true);
    await page.keyboard.press('Enter');
    expect(await button.getAttribute('aria-pressed')).toBe('true');
    await part(page, 'keep').focus();
    await page.keyboard.press('Enter');
    await described(page).garment.waitFor();
    expect(await wordsOf(described(page).undo)).toMatch(/put on Stay-stitching/);
  });

  it('every part of a demonstration has a page that is clean', async () => {
    const page = await app.open();
    await openDemo(page);
    for (const at of [
      'piece/centre-front',
      'work/front-tucks',
      'work/front-buttons',
      'join/neck',
      'try-on',
      'work',
      'join',
    ]) {
      await page.goto(`${app.served.origin}/#/outfit/harbour-clockmaker/garment/shirt/${at}`);
      await part(page, at.split('/')[0] ?? '').waitFor();
      for (const summary of await page.locator('.more-fields > summary').all()) await touch(summary);
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        await clean(page, `${at}, ${colorScheme}`);
        const faint = (await contrasts(app.browser, page)).filter(({ ratio }) => ratio < 7);
        expect
          .soft(
            faint.map(({ text, ratio }) => `${text}: ${ratio.toFixed(2)}`),
            at,
          )
          .toEqual([]);
      }
    }
    expect(await largeEnough(page)).toBe(true);
  });
});

/** Edge targets in the list are as large as fingers need, and stand apart. */
async function largeEnough(page: Page): Promise<boolean> {
  await page.goto(`${app.served.origin}/#/outfit/harbour-clockmaker/garment/shirt/piece/back`);
  await part(page, 'edge-picker').waitFor();
  const boxes = await page.locator('.edge-list button').evaluateAll((all) =>
    all.map((one) => {
      const { width, height } = one.getBoundingClientRect();
      return [width, height];
    }),
  );
  return boxes.length > 3 && boxes.flat().every((side) => side >= 48);
}
