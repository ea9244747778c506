import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { build } from 'vite';
import { BROWSER_FLAGS, findChromium, NO_CHROMIUM } from '../../.ci/chromium.mjs';
import { ROOT } from '../../.ci/house.mjs';
import { type Served, serveApp } from './serve.ts';

/** Builds the page that has the ledger and nothing else, and serves it. `close` takes it away again. */
export const serveLedgerPage = async (): Promise<Served> => {
  const folder = mkdtempSync(join(tmpdir(), 'slipbaste-ledger-page-'));
  await build({
    configFile: false,
    root: join(ROOT, 'tests/browser/ledger-page'),
    base: './',
    logLevel: 'warn',
    build: { outDir: folder, emptyOutDir: true, target: 'es2022', modulePreload: { polyfill: false } },
  });
  const served = await serveApp({ folder });
  return {
    ...served,
    close: async () => {
      await served.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
};

/** Opens the page and waits until the ledger's module has run. */
export const openBench = async (page: Page, served: Served): Promise<void> => {
  await page.goto(`${served.origin}/`);
  await page.waitForFunction(() => globalThis.bench !== undefined);
};

/** A browser of which every process can be killed at once. */
export interface Killable {
  readonly page: Page;
  /** SIGKILL to the browser and all it started, as when a phone's battery is pulled; done when it is gone. */
  kill(): Promise<void>;
}

/**
 * Starts a browser on `profile`, apart from the driver, which only talks to it: the driver's own browsers are
 * closed tidily, and that is what must not happen here.
 */
export const startKillable = async (profile: string): Promise<Killable> => {
  const program = findChromium();
  if (program === undefined) throw new Error(NO_CHROMIUM);
  const flags = ['--headless=new', '--remote-debugging-port=0', `--user-data-dir=${profile}`];
  const child = spawn(program, [...BROWSER_FLAGS, ...flags, 'about:blank'], {
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const gone = new Promise<void>((done) => child.once('exit', () => done()));
  const address = await new Promise<string>((resolve, reject) => {
    let heard = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      heard += text;
      const found = /DevTools listening on (ws:\S+)/.exec(heard);
      if (found?.[1] !== undefined) resolve(found[1]);
    });
    child.once('exit', () => reject(new Error(`The browser ended before it began: ${heard}`)));
  });
  const browser = await chromium.connectOverCDP(address);
  const context = browser.contexts()[0];
  if (context === undefined) throw new Error('The browser has no window.');
  return {
    page: await context.newPage(),
    async kill() {
      const ended = child.exitCode !== null || child.signalCode !== null;
      if (child.pid !== undefined && !ended) process.kill(-child.pid, 'SIGKILL');
      await gone;
      await browser.close().catch(() => undefined);
    },
  };
};
