import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { launch, PHONE } from './chromium.ts';
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
  folder = mkdtempSync(join(tmpdir(), 'slipbaste-dist-'));
  cpSync(DIST, folder, { recursive: true });
  served = await serveApp({ folder });
  context = await browser.newContext(PHONE);
});
afterEach(async () => {
  await context.close();
  await served.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Opens the app and waits until it is drawn. */
async function open(): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${served.origin}/`);
  await drawn(page);
  return page;
}

const drawn = (page: Page) => page.waitForFunction(() => document.querySelector('#app')?.textContent?.trim());

/** Waits until the page is under the care of a worker that has stored all. */
const stored = (page: Page) =>
  page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');

/** Makes another build of what is served: the page's title differs, and the worker knows of it. */
function publish(title: string): void {
  const page = join(folder, 'index.html');
  const worker = join(folder, 'sw.js');
  writeFileSync(page, readFileSync(page, 'utf8').replace(/<title>[^<]*</, `<title>${title}<`));
  const text = readFileSync(worker, 'utf8');
  const changed = text.replace(/(url:"index\.html",revision:")[^"]*/, `$1${title}`);
  expect(changed).not.toBe(text);
  writeFileSync(worker, changed);
}

const waits = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    const worker = registration.installing ?? registration.waiting;
    if (!worker) return false;
    if (worker.state !== 'installed') {
      await new Promise((done) => worker.addEventListener('statechange', done, { once: true }));
    }
    return worker === registration.waiting;
  });

describe('offline copy', () => {
  it('opens with no host after the first visit, deep addresses and reloads too', async () => {
    const page = await open();
    await stored(page);
    await served.close();
    await page.reload();
    await drawn(page);
    const another = await context.newPage();
    await another.goto(`${served.origin}/?from=home#/anywhere`);
    await drawn(another);
    await expect(another.evaluate(() => fetch('./none.txt').then(String))).rejects.toThrow();
  });

  it('leaves a newer build waiting while a page is open, reloads included', async () => {
    const page = await open();
    await stored(page);
    const before = await page.title();
    publish('A newer build');
    expect(await waits(page)).toBe(true);
    await page.reload();
    await drawn(page);
    expect(await page.title()).toBe(before);
  });

  it('takes the newer build when it is told to', async () => {
    const page = await open();
    await stored(page);
    publish('A newer build');
    expect(await waits(page)).toBe(true);
    await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      const taken = new Promise((done) => navigator.serviceWorker.addEventListener('controllerchange', done));
      registration.waiting?.postMessage({ type: 'SKIP_WAITING' });
      await taken;
    });
    await page.reload();
    await drawn(page);
    expect(await page.title()).toBe('A newer build');
  });
});

describe('page policy', () => {
  it('is broken by nothing that the first screen does', async () => {
    const page = await context.newPage();
    const complaints: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(message.text());
    });
    page.on('pageerror', (error) => complaints.push(error.message));
    await page.goto(`${served.origin}/`);
    await drawn(page);
    await stored(page);
    expect(complaints).toEqual([]);
  });

  it('refuses a style attribute in markup and allows one set through the object model', async () => {
    const page = await open();
    const widths = await page.evaluate(() => {
      const host = document.createElement('div');
      host.innerHTML = '<p style="width: 11px"></p><p></p>';
      document.body.append(host);
      const [raw, set] = [...host.querySelectorAll('p')];
      if (set) set.style.width = '11px';
      return [raw, set].map((one) => one && getComputedStyle(one).width);
    });
    expect(widths[0]).not.toBe('11px');
    expect(widths[1]).toBe('11px');
  });
});
