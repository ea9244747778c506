import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openDemo, parts, press, settled, shown, stored, touch, workCard } from './bench-page.ts';
import { launch, PHONE } from './chromium.ts';
import { orderParts, toBench, toOrder } from './order-page.ts';
import { DIST, type Served, serveApp } from './serve.ts';

let browser: Browser;
let folder: string;
let served: Served;
let context: BrowserContext;

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'slipbaste-newer-'));
  cpSync(DIST, folder, { recursive: true });
  served = await serveApp({ folder });
  context = await browser.newContext(PHONE);
});
afterEach(async () => {
  await context.close();
  await served.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Puts another build where this one was: the title differs, and the worker knows of it. */
function publish(title: string): void {
  const page = join(folder, 'index.html');
  writeFileSync(page, readFileSync(page, 'utf8').replace(/<title>[^<]*</, `<title>${title}<`));
  const worker = join(folder, 'sw.js');
  const text = readFileSync(worker, 'utf8');
  const changed = text.replace(/(url:"index\.html",revision:")[^"]*/, `$1${title}`);
  expect(changed).not.toBe(text);
  writeFileSync(worker, changed);
}

/** The page comes back into view, which is when the app asks for a newer build; waits until one is stored. */
async function newerIsStored(page: Page): Promise<void> {
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await page.waitForFunction(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    return registration?.waiting?.state === 'installed';
  });
}

describe('a newer build', () => {
  it('is not offered at the bench, is offered beside it, and loads once with the card as it was', async () => {
    const page = await context.newPage();
    await page.goto(`${served.origin}/`);
    await openDemo(page);
    await stored(page);
    const old = await page.title();
    await press(page);
    publish('A newer build');
    await newerIsStored(page);
    const offer = page.locator('[data-part="update"]');
    const { step } = await shown(page);
    while ((await shown(page)).step === step) {
      expect(await offer.count()).toBe(0);
      await press(page);
    }
    await press(page);
    expect(await offer.count()).toBe(0);
    // A touch counts once it is written: what is still on its way may go with the page.
    await settled(page);
    const before = await shown(page);
    await page.reload();
    await settled(page);
    expect(await page.title()).toBe(old);

    await toOrder(page);
    await offer.waitFor();
    let loads = 0;
    page.on('load', () => {
      loads += 1;
    });
    await touch(offer.getByRole('button', { name: 'Take it now' }));
    await expect.poll(() => page.title()).toBe('A newer build');
    await orderParts(page).lines.first().waitFor();
    await toBench(page);
    const after = await shown(page);
    expect([after.step, after.pad, after.detail, after.undo]).toEqual([
      before.step,
      before.pad,
      before.detail,
      before.undo,
    ]);
    expect(loads).toBe(1);
    await touch(parts(page).home);
    await page.locator('li[data-outfit]').waitFor();
    expect(await offer.count()).toBe(0);
  });

  it('can be put off', async () => {
    const page = await context.newPage();
    await page.goto(`${served.origin}/`);
    await openDemo(page, 'plain-shirt');
    await stored(page);
    publish('A newer build');
    await newerIsStored(page);
    await toOrder(page);
    const offer = page.locator('[data-part="update"]');
    await touch(offer.getByRole('button', { name: 'Later' }));
    await offer.waitFor({ state: 'detached' });
    await toBench(page);
    await workCard(page);
    expect(await page.title()).not.toBe('A newer build');
  });

  it('taken in one tab leaves the card of another alone until its maker says yes', async () => {
    const one = await context.newPage();
    await one.goto(`${served.origin}/`);
    await openDemo(one);
    await stored(one);
    const two = await context.newPage();
    await two.goto(`${served.origin}/#/`);
    await two.locator('li[data-outfit]').waitFor();
    await one.bringToFront();
    await press(one);
    const before = await shown(one);
    publish('A newer build');
    await two.bringToFront();
    await newerIsStored(two);
    const offer = two.locator('[data-part="update"]');
    await offer.waitFor();
    let reloaded = false;
    one.on('load', () => {
      reloaded = true;
    });
    await touch(offer.getByRole('button', { name: 'Take it now' }));
    await expect.poll(() => two.title()).toBe('A newer build');
    await one.bringToFront();
    expect(await shown(one)).toEqual(before);
    await workCard(one);
    // The parts of the older build are no longer kept, so the other screens must still come.
    await toOrder(one);
    await one.locator('[data-part="update"]').waitFor();
    expect(reloaded).toBe(false);
  });
});
