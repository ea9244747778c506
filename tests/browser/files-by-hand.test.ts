import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { readOutfitFile } from '../../src/outfit/reading-file.ts';
import { fuzzFile } from '../outfit/fuzz-files.ts';
import { useApp } from './app.ts';
import { bringIn, deedsIn, settled, touch, wordsOf, workCard } from './bench-page.ts';

const app = useApp();
const example = (name: string): string => readFileSync(`public/examples/${name}.jsonc`, 'utf8');
const file = (text: string, name = 'outfit.jsonc') => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(text),
});
const outfits = (page: Page) => page.locator('li[data-outfit]');
const choose = (page: Page, text: string) => page.locator('[data-part="bring-in"]').setInputFiles(file(text));

describe('an outfit written by hand', () => {
  it.each([
    ['small-blouse', 'Blouse of the lamp seller'],
    ['gathered-skirt', 'Skirt of the bell ringer'],
    ['stretch-legs', 'Legs of the tumbler'],
  ])('%s is brought in, comments and all, and its first card opens', async (name, called) => {
    const page = await app.open();
    expect(await bringIn(page, file(example(name)))).toBe(`${called} is on this device now.`);
    await touch(page.getByRole('link', { name: /^Begin/ }));
    await settled(page);
  });

  it('is there to begin with, on the first page, with every field explained', async () => {
    const page = await app.open();
    await touch(page.locator('[data-part="by-hand"] summary'));
    for (const name of ['A small blouse', 'A gathered skirt', 'Stretch legs', 'Every field explained']) {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        touch(page.getByRole('link', { name })),
      ]);
      const kept = await download.path();
      expect(readFileSync(kept, 'utf8')).toMatch(/^(\/\/|\{)/);
    }
  });

  it('is refused with every mistake in it and where it stands, and nothing is added', async () => {
    const page = await app.open();
    const spoilt = example('small-blouse')
      .replace('"width": "44 in"', '"width": "44"')
      .replace('"cut": "pair", // a left', '"cut": "twice", // a left');
    expect(await bringIn(page, file(spoilt))).toMatch(/In this file 2 things are not right yet/);
    const wrongs = page.locator('[data-part="wrongs"] li');
    const lineOf = (words: string): number =>
      spoilt.split('\n').findIndex((line) => line.includes(words)) + 1;
    expect(await wrongs.allTextContents()).toEqual([
      expect.stringContaining(`Line ${lineOf('"44"')}, column 7cloths: Cream cotton lawn, width`),
      expect.stringContaining(`Line ${lineOf('twice')}, column 11garments: Blouse, pieces: Front, cut`),
    ]);
    await choose(page, example('small-blouse').replace('"units": "in",', '"units": "in"'));
    await expect.poll(() => wrongs.count()).toBe(1);
    expect(await wordsOf(wrongs)).toMatch(/Line 14, column 3\s*Here " stands where a comma/);
    expect(await outfits(page).count()).toBe(0);
  });

  it('is refused with a dozen mistakes that are all in reach on a phone, and brought in again once mended', async () => {
    const page = await app.open();
    const right = example('small-blouse');
    const spoils: readonly (readonly [string, string])[] = [
      ['"width": "44 in"', '"width": "44"'],
      ['"cut": "pair", // a left', '"cut": "twice", // a left'],
      ['"cloth": "lawn"', '"cloth": "lwan"'],
      ['"turn": "3/4 in",', ''],
      ['"by": "hand"', '"by": "hands"'],
      ['"this": ["front.shoulder"]', '"this": ["front.sholder"]'],
      ['"depth": "1/2 in",\n          "worked"', '"dept": "1/2 in",\n          "worked"'],
      ['"closes": true,', '"closes": "yes",'],
      ['"to": ["back.side", "sleeve.back-seam"]', '"to": ["back side", "sleeve.back-seam"]'],
      ['"tack": ["side"]', '"tack": ["sied"]'],
      ['"kind": "hem",\n          "id": "hem"', '"kind": "hemm",\n          "id": "hem"'],
      ['"name": "The blouse, basted"', '"name": ""'],
    ];
    const spoilt = spoils.reduce((text, [was, now]) => text.replace(was, now), right);
    expect(await bringIn(page, file(spoilt, 'blouse of the lamp seller, second try.jsonc'))).toMatch(
      /In this file 12 things are not right yet/,
    );
    const answer = page.locator('.answer');
    await answer.getByRole('heading', { name: 'blouse of the lamp seller, second try.jsonc' }).waitFor();
    expect(await answer.locator('li').count()).toBe(12);
    expect(await answer.locator('li').allTextContents()).toContainEqual(
      expect.stringMatching(
        /Line \d+, column \d+garments: Blouse, joins: Shoulder seam, this: 1.*front.sholder does not exist.Did you mean front.shoulder\?$/,
      ),
    );
    const wide = await answer.evaluate((part) => part.scrollWidth - part.clientWidth);
    expect(wide).toBeLessThanOrEqual(0);
    if (process.env.PICTURES)
      await page.screenshot({ path: `${process.env.PICTURES}/wrongs.png`, fullPage: true });
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      touch(answer.getByRole('button', { name: 'Choose the mended file' }).first()),
    ]);
    await chooser.setFiles(file(right));
    await expect.poll(() => wordsOf(answer)).toBe('Blouse of the lamp seller is on this device now.');
  });

  /** Two seams, each of which runs over the other. */
  const inARing = (text: string): string => text.replace('"worked": "flat",', '"ring": true,');

  it('whose order runs in a ring is opened, and it is said at once where to mend it', async () => {
    const page = await app.open();
    await bringIn(page, file(inARing(example('small-blouse'))));
    const ring = page.locator('[data-part="ring"]');
    expect(await wordsOf(ring)).toMatch(
      /“Side and sleeve seam” and “Armhole seam” would wait for each other/,
    );
    expect(await wordsOf(outfits(page))).toMatch(/cannot be sewn in any order yet/);
    if (process.env.PICTURES) await page.screenshot({ path: `${process.env.PICTURES}/ring.png` });
    await touch(page.getByRole('link', { name: 'Mend it in its description' }));
    await page.getByRole('heading', { level: 1, name: 'Blouse of the lamp seller' }).waitFor();
  });

  it('does not take the place of one that can be sewn where it cannot', async () => {
    const page = await app.open();
    await bringIn(page, file(example('small-blouse')));
    await outfits(page).waitFor();
    await choose(page, inARing(example('small-blouse')));
    await expect
      .poll(() => wordsOf(page.locator('.answer')))
      .toMatch(/stays as it is: the file describes it so that it cannot be sewn/);
    expect(await page.getByRole('button', { name: 'Take what the file says' }).count()).toBe(0);
    expect(await deedsIn(page)).toHaveLength(1);
  });

  it('that is sewn at already changes nothing before the maker has seen what it touches', async () => {
    const page = await app.open();
    await bringIn(page, file(example('small-blouse')));
    await touch(page.getByRole('link', { name: /^Begin/ }));
    await settled(page);
    for (let n = 0; n < 3; n += 1) await workCard(page);
    await page.goto(`${app.served.origin}/#/`);
    await outfits(page).waitFor();
    const before = (await deedsIn(page)).length;
    await choose(
      page,
      example('small-blouse')
        .replace('"turn": "3/4 in"', '"turn": "1 in"')
        .replace(/"depth": "1\/2 in"/, '"depth": "5/8 in"'),
    );
    await expect.poll(() => wordsOf(page.locator('.answer'))).toMatch(/What was sewn, 3 steps, stays done/);
    await touch(page.getByRole('button', { name: 'Take what the file says' }));
    const effect = page.locator('[data-part="effect"]');
    await effect.waitFor();
    expect(await wordsOf(effect)).toMatch(/Not the same as before/);
    if (process.env.PICTURES) await page.screenshot({ path: `${process.env.PICTURES}/effect.png` });
    expect((await deedsIn(page)).filter(({ act }) => act.kind === 'redescribed')).toHaveLength(0);
    await touch(effect.getByRole('button', { name: 'Leave it as it was' }));
    await page.goto(`${app.served.origin}/#/`);
    await choose(page, example('small-blouse').replace('"turn": "3/4 in"', '"turn": "1 in"'));
    await touch(page.getByRole('button', { name: 'Take what the file says' }));
    await touch(effect.getByRole('button', { name: 'Change it so' }));
    await page.getByRole('button', { name: 'Undo: took the description of the file' }).waitFor();
    expect((await deedsIn(page)).filter(({ act }) => act.kind === 'redescribed')).toHaveLength(1);
    expect((await deedsIn(page)).length).toBeGreaterThan(before);
  });

  it('that is here already is changed only when asked to', async () => {
    const page = await app.open();
    await bringIn(page, file(example('small-blouse')));
    await outfits(page).waitFor();
    await choose(page, example('small-blouse'));
    await expect
      .poll(() => wordsOf(page.locator('.answer')))
      .toMatch(/here already, as the file describes it/);
    expect(await deedsIn(page)).toHaveLength(1);
    await choose(
      page,
      example('small-blouse').replace('Blouse of the lamp seller', 'Blouse of the night watch'),
    );
    await expect.poll(() => wordsOf(page.locator('.answer'))).toMatch(/Nothing was changed yet/);
    expect(await deedsIn(page)).toHaveLength(1);
    await touch(page.getByRole('button', { name: 'Take what the file says' }));
    await expect.poll(() => wordsOf(outfits(page))).toMatch(/Blouse of the night watch/);
    await touch(page.getByRole('link', { name: /^Description/ }));
    await touch(page.getByRole('button', { name: /^Undo/ }));
    await page.getByRole('heading', { level: 1, name: 'Blouse of the lamp seller' }).waitFor();
  });

  it('is not read where it is far too large', async () => {
    const page = await app.open();
    const large = `{"garments": [], "name": "${'a'.repeat(3_000_000)}"}`;
    expect(await bringIn(page, file(large))).toMatch(/too large for a description: 4 MB, and 2 MB/);
  });

  it('never harms the page, however it is spoilt', async () => {
    const page = await app.open();
    let there = 0;
    for (let n = 3; n < 200; n += 14) {
      const text = fuzzFile(n);
      const before = Date.now();
      await page.reload();
      await page.locator('[data-part="bring-in"]').waitFor();
      const said = await bringIn(page, file(text, `spoilt-${n}.json`));
      expect(Date.now() - before, `file ${n}`).toBeLessThan(10_000);
      const read = readOutfitFile(text);
      if (read.ok) there += 1;
      expect(said, `file ${n}`).toMatch(
        read.ok
          ? /on this device now|here already/
          : /not right yet|cannot be read|not a Slipbaste file|empty/,
      );
    }
    expect(await outfits(page).count()).toBeLessThanOrEqual(there);
  });
});
