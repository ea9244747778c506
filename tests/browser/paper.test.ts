import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { readPdf } from '../paper/read-pdf.ts';
import { readSvg } from '../paper/read-svg.ts';
import { useApp } from './app.ts';
import { openDemo, parts, touch, wordsOf } from './bench-page.ts';

const app = useApp();

const part = (page: Page, name: string) => page.locator(`[data-part="${name}"]`);
const pages = async (page: Page): Promise<number> =>
  Number(/^\d+/.exec(await wordsOf(part(page, 'page-count')))?.[0]);

/** The pattern of a demonstration, with two small pieces ticked and no others. */
async function toPaper(): Promise<Page> {
  const page = await app.open();
  await openDemo(page);
  await touch(parts(page).home);
  await touch(page.getByRole('link', { name: /^Pattern/ }).first());
  await part(page, 'page-count').waitFor();
  return page;
}

async function tickTwo(page: Page): Promise<void> {
  await touch(page.getByRole('button', { name: 'No pieces' }));
  await page.locator('[data-piece="shirt/collar-upper"]').check();
  await page.locator('[data-piece="sleeves/cuff-outer"]').check();
}

async function savedBy(page: Page, name: string): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent('download'), touch(part(page, name))]);
  expect(download.suggestedFilename()).toMatch(/^the-harbour-clockmaker\.(pdf|svg)$/);
  return readFileSync(await download.path());
}

/** The longest level line on a page that is about as long as a check line. */
const hundred = (paths: readonly (readonly (readonly [number, number])[])[]): number | undefined =>
  paths
    .flatMap(([a, b, c]) => (a && b && !c && Math.abs(a[1] - b[1]) < 0.01 ? [Math.abs(a[0] - b[0])] : []))
    .find((long) => long > 99 && long < 101);

describe('the pattern of an outfit', () => {
  it('is laid for the pieces that are ticked, and written as a PDF at true size by a part that loads then', async () => {
    const page = await toPaper();
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    const all = await pages(page);
    expect(all).toBeGreaterThan(20);
    await tickTwo(page);
    await expect.poll(() => pages(page)).toBeLessThan(6);
    expect(await part(page, 'page-map').locator('svg').count()).toBe(2);
    expect(asked.some((url) => /jspdf/.test(url))).toBe(false);
    await touch(part(page, 'make-pdf'));
    await part(page, 'save-pdf').waitFor();
    expect(asked.some((url) => /jspdf/.test(url))).toBe(true);
    const read = await readPdf(new Uint8Array(await savedBy(page, 'save-pdf')));
    expect(read).toHaveLength(await pages(page));
    for (const { paths } of read) expect(Math.abs(hundred(paths)! - 100)).toBeLessThan(0.1);
    const svg = readSvg((await savedBy(page, 'save-svg')).toString('utf8'));
    expect(Math.abs(hundred(svg.paths)! - 100)).toBeLessThan(0.1);
    expect(svg.words.map(({ words }) => words)).toEqual(
      expect.arrayContaining(['Upper collar', 'Outer cuff']),
    );
  });

  it('comes on the paper that was chosen last', async () => {
    const page = await toPaper();
    await tickTwo(page);
    expect(await wordsOf(part(page, 'page-count'))).toContain('A4');
    await touch(page.getByRole('button', { name: 'Letter' }));
    expect(await wordsOf(part(page, 'page-count'))).toContain('Letter');
    await page.reload();
    await part(page, 'page-count').waitFor();
    expect(await wordsOf(part(page, 'page-count'))).toContain('Letter');
    await tickTwo(page);
    await touch(part(page, 'make-pdf'));
    const [first] = await readPdf(new Uint8Array(await savedBy(page, 'save-pdf')));
    expect([first!.wide, first!.high].map((one) => one.toFixed(1))).toEqual(['215.9', '279.4']);
  });

  it('is written without a network too', async () => {
    const page = await toPaper();
    await tickTwo(page);
    await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
    await app.unplug();
    await touch(part(page, 'make-pdf'));
    await part(page, 'save-pdf').waitFor();
    const bytes = await savedBy(page, 'save-pdf');
    expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
  });

  it('asks for a piece where none is ticked, and makes no file of what is no longer asked for', async () => {
    const page = await toPaper();
    await touch(page.getByRole('button', { name: 'No pieces' }));
    expect(await part(page, 'print-paper').count()).toBe(0);
    await tickTwo(page);
    await touch(part(page, 'make-pdf'));
    await part(page, 'save-pdf').waitFor();
    await page.locator('[data-piece="shirt/collar-upper"]').uncheck();
    await part(page, 'make-pdf').waitFor();
    expect(await part(page, 'save-pdf').count()).toBe(0);
  });
});
