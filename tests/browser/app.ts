import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect } from 'vitest';
import { deedsKept } from './bench-page.ts';
import { launch, PHONE } from './chromium.ts';
import { type Served, serveApp } from './serve.ts';
import { type Watch, watch } from './watch.ts';

/** The built app in one browser, with a fresh context for every test. */
export interface App {
  readonly browser: Browser;
  readonly served: Served;
  /** The context of the running test. */
  readonly context: BrowserContext;
  readonly watch: Watch;
  /** Another page of the running test, at an address of the app. */
  open(hash?: string): Promise<Page>;
  /** A context of another kind, closed after the test; watched like the first one. */
  another(options: BrowserContextOptions): Promise<BrowserContext>;
  /** Takes the host away; it stays away until the next test. */
  unplug(): Promise<void>;
}

/**
 * Sets up browser, host and context for the tests of one file, and takes them away. After every test the browser must
 * have had nothing to complain of.
 */
export function useApp(options: BrowserContextOptions = PHONE): App {
  let browser: Browser;
  let served: Served;
  let plugged = true;
  let contexts: { context: BrowserContext; watch: Watch }[] = [];
  const make = async (kind: BrowserContextOptions): Promise<BrowserContext> => {
    const context = await browser.newContext({ locale: 'en-GB', ...kind });
    context.setDefaultTimeout(15_000);
    contexts.push({ context, watch: await watch(context, served.origin, () => plugged) });
    return context;
  };
  beforeAll(async () => {
    [browser, served] = await Promise.all([launch(), serveApp()]);
  });
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });
  beforeEach(async () => {
    if (!plugged) {
      served = await serveApp();
      plugged = true;
    }
    await make(options);
  });
  afterEach(async () => {
    const complaints = contexts.flatMap((one) => one.watch.complaints);
    await Promise.all(contexts.map(({ context }) => context.close()));
    contexts = [];
    expect(complaints).toEqual([]);
  });
  return {
    get browser() {
      return browser;
    },
    get served() {
      return served;
    },
    get context() {
      return contexts[0]!.context;
    },
    get watch() {
      return contexts[0]!.watch;
    },
    async open(hash = '') {
      const page = await contexts[0]!.context.newPage();
      await page.goto(`${served.origin}/${hash}`);
      return page;
    },
    another: make,
    async unplug() {
      plugged = false;
      await served.close();
    },
  };
}

/** Waits until so many deeds lie in the ledger's database. */
export async function kept(page: Page, deeds: number): Promise<void> {
  await expect.poll(() => deedsKept(page)).toBe(deeds);
}
