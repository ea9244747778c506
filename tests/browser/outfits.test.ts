import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoData } from '../outfit/demo-files.ts';
import { kept, useApp } from './app.ts';
import {
  bringIn,
  deedsIn,
  openDemo,
  parts,
  press,
  settled,
  shown,
  touch,
  wordsOf,
  workCard,
} from './bench-page.ts';
import { savedCopy } from './demo.ts';

const app = useApp();
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'slipbaste-copies-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const outfits = (page: Page) => page.locator('li[data-outfit]');

async function toOutfits(page: Page): Promise<void> {
  await touch(parts(page).home);
  await outfits(page).first().waitFor();
}

/** Saves a copy of the only outfit and gives back where it lies. */
async function saveCopy(page: Page): Promise<string> {
  const link = page.locator('a[data-part="save-copy"]');
  await link.waitFor();
  const [download] = await Promise.all([page.waitForEvent('download'), touch(link)]);
  expect(download.suggestedFilename()).toMatch(/^the-harbour-clockmaker-\d{4}-\d\d-\d\d\.slipbaste$/);
  const path = join(folder, download.suggestedFilename());
  await download.saveAs(path);
  return path;
}

describe('a saved copy', () => {
  it('brings everything back on a device whose storage was cleared', async () => {
    const page = await app.open();
    await openDemo(page);
    await workCard(page);
    await press(page);
    const before = await shown(page);
    await kept(page, 12);
    const deeds = await deedsIn(page);
    await toOutfits(page);
    const path = await saveCopy(page);
    expect(await wordsOf(outfits(page))).toContain('Last copy saved today');

    // Another device: a browser that knows nothing.
    const other = await app.another({ viewport: { width: 390, height: 844 } });
    const fresh = await other.newPage();
    await fresh.goto(`${app.served.origin}/`);
    await fresh.getByRole('button', { name: 'Open the Harbour Clockmaker' }).waitFor();
    expect(await outfits(fresh).count()).toBe(0);
    expect(await bringIn(fresh, path)).toBe(`${deeds.length} deeds brought in, 0 were here already.`);
    await touch(fresh.getByRole('link', { name: /^Go on/ }));
    await settled(fresh);
    const after = await shown(fresh);
    expect([after.step, after.pad, after.detail]).toEqual([before.step, before.pad, before.detail]);
    expect(after.undo).toBe(before.undo);
    expect(await deedsIn(fresh)).toEqual(deeds);

    // Brought in twice, it adds nothing.
    await toOutfits(fresh);
    expect(await bringIn(fresh, path)).toBe(`0 deeds brought in, ${deeds.length} were here already.`);
  });

  it('is offered with a word when the browser has thrown the work away', async () => {
    const page = await app.open();
    await openDemo(page);
    await press(page);
    await toOutfits(page);
    const path = await saveCopy(page);
    await page.goto('about:blank');
    const session = await app.context.newCDPSession(page);
    await session.send('Storage.clearDataForOrigin', {
      origin: app.served.origin,
      storageTypes: 'indexeddb',
    });
    await page.goto(`${app.served.origin}/#/`);
    expect(await wordsOf(page.locator('[data-part="missing"]'))).toMatch(/no longer has it.*last backup/);
    await bringIn(page, path);
    await outfits(page).waitFor();
    expect(await page.locator('[data-part="missing"]').count()).toBe(0);
  });

  it('is refused in clear words where it is broken, and nothing is lost or added', async () => {
    const page = await app.open();
    await openDemo(page);
    await toOutfits(page);
    await page.locator('a[data-part="save-copy"]').waitFor();
    const deeds = await deedsIn(page);
    const good = await savedCopy('plain-shirt', []);
    const spoilt = Buffer.from(good.buffer);
    spoilt[Math.floor(spoilt.length / 2)]! ^= 0x55;
    // Neighbours must be refused in different words, so that one answer is not taken for the next.
    const damaged = /^The file (is|was) .*damaged/;
    const files: [string, Buffer, RegExp][] = [
      ['cut-short.slipbaste', good.buffer.subarray(0, good.buffer.length / 2), damaged],
      ['letter.txt', Buffer.from('Dear aunt, thank you for the cloth.'), /^This is not a Slipbaste file/],
      ['spoilt.slipbaste', spoilt, damaged],
      ['nothing.slipbaste', Buffer.alloc(0), /^The file is empty/],
      ['picture.png', readFileSync('public/icons/icon-192.png'), /not a Slipbaste file/],
    ];
    for (const [name, buffer, words] of files) {
      const path = join(folder, name);
      writeFileSync(path, buffer);
      await page.locator('[data-part="bring-in"]').setInputFiles(path);
      await expect.poll(() => wordsOf(page.locator('.answer')), { message: name }).toMatch(words);
    }
    expect(await deedsIn(page)).toEqual(deeds);
    expect(await outfits(page).count()).toBe(1);
  });
});

describe('a description written by hand', () => {
  it('is begun, and one that does not hold together is refused with every place in it', async () => {
    const page = await app.open();
    const raw = demoData('plain-shirt') as { garments: { joins: { this: string[] }[]; name: string }[] };
    raw.garments[0]!.joins[0]!.this = ['frunt.side'];
    const spoilt = {
      name: 'shirt.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(raw)),
    };
    const said = await bringIn(page, spoilt);
    expect(said).toContain('frunt');
    expect(said).toMatch(/did you mean|front/);
    expect(await outfits(page).count()).toBe(0);
    const fine = { ...spoilt, buffer: Buffer.from(JSON.stringify(demoData('plain-shirt'))) };
    await page.locator('[data-part="bring-in"]').setInputFiles(fine);
    await outfits(page).waitFor();
    await touch(page.getByRole('link', { name: /^Begin/ }));
    await settled(page);
  });
});

describe('several outfits', () => {
  it('are kept apart, each with its own place', async () => {
    const page = await app.open();
    await openDemo(page);
    await workCard(page);
    const clock = await shown(page);
    await toOutfits(page);
    await openDemo(page, 'plain-shirt');
    await press(page);
    const shirt = await shown(page);
    expect(shirt.step).not.toBe(clock.step);
    await toOutfits(page);
    await expect.poll(() => outfits(page).count()).toBe(2);
    await touch(
      outfits(page)
        .filter({ hasText: 'Harbour Clockmaker' })
        .getByRole('link', { name: /^Go on/ }),
    );
    await settled(page);
    expect((await shown(page)).step).toBe(clock.step);
    // Opening a demonstration again goes on with it.
    await toOutfits(page);
    await openDemo(page, 'plain-shirt');
    expect(await shown(page)).toMatchObject({ step: shirt.step, detail: shirt.detail });
  });
});
