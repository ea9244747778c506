import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { useApp } from './app.ts';
import { openDemo, parts, stored, touch, wordsOf } from './bench-page.ts';

const app = useApp();

/** Seconds that a person is allowed for finding and touching something, and for a key. Generous; from memory. */
const A_TOUCH = 3;
const A_KEY = 0.6;

/** Someone with one thumb, whose touches and keys are counted. */
function thumb(page: Page) {
  let [touches, keys] = [0, 0];
  return {
    async touch(control: Locator): Promise<void> {
      touches += 1;
      await touch(control);
    },
    async type(text: string): Promise<void> {
      keys += text.length;
      await page.keyboard.type(text);
    },
    /** The key at the corner of the keyboard, on to the next field. */
    async onward(): Promise<void> {
      keys += 1;
      await page.keyboard.press('Enter');
    },
    /** One after the other from the first, onward by the key; an empty text leaves what stands there. */
    async fill(first: Locator, texts: readonly string[]): Promise<void> {
      await this.touch(first);
      for (const [i, text] of texts.entries()) {
        if (i > 0) await this.onward();
        if (text !== '') await this.type(text);
      }
    },
    seconds: () => touches * A_TOUCH + keys * A_KEY,
    counted: () =>
      `${touches} touches, ${keys} keys, about ${(touches * A_TOUCH + keys * A_KEY).toFixed(0)} s`,
  };
}

const field = (page: Page, name: string): Locator => page.locator(`[data-field="${name}"] input`).first();

/** Goes from the outfits to a reckoning by search, with inches. */
async function find(page: Page, hand: ReturnType<typeof thumb>, words: string, id: string): Promise<void> {
  await hand.touch(page.getByRole('link', { name: /tucks, frills, bias/ }));
  await hand.touch(page.locator('[data-part="search"]'));
  await hand.type(words);
  await hand.touch(page.locator(`.chosen [data-reckoning="${id}"]`).first());
  await page.locator(`main[data-reckoning="${id}"]`).waitFor();
  const inches = page.getByRole('button', { name: 'Inches' });
  if ((await inches.getAttribute('aria-pressed')) !== 'true') await hand.touch(inches);
}

/** The figure of a name, as it is read aloud. */
async function figure(page: Page, name: string): Promise<string> {
  const row = page
    .locator('[data-part="figures"] dl > div, [data-part="main-figure"]')
    .filter({ hasText: name });
  const said = row.first().locator('.figure .unseen, .figure:not(:has(.unseen)), .figure-words').first();
  return ((await said.textContent()) ?? '').trim();
}

/** All marks of the strip that is shown, as they are written. */
async function marks(page: Page, strip?: string): Promise<string[]> {
  const part = page.locator('[data-part="strip"]');
  if (strip !== undefined) await part.locator('select').selectOption({ label: strip });
  if (
    !(await part
      .locator('details')
      .getAttribute('open')
      .then((open) => open !== null))
  )
    await touch(part.locator('summary'));
  return part.locator('.all-marks b').allTextContents();
}

describe('with one thumb, on a phone, without a network', () => {
  const begin = async () => {
    const page = await app.open();
    await stored(page);
    await app.unplug();
    await page.reload();
    return { page, hand: thumb(page) };
  };

  it('gives the marks of a tucked front', async () => {
    const { page, hand } = await begin();
    await find(page, hand, 'tucks', 'parallel-tucks');
    await hand.fill(field(page, 'count'), ['7', '3/8', '1', '1 1/2']);
    console.log(`Tucked front: ${hand.counted()}`);
    expect(hand.seconds()).toBeLessThan(60);
    // Seven tucks of 3/8 take 7 x 3/4; finished 1 1/2 + 6 x 1 + 1 1/2.
    expect(await figure(page, 'Cloth that the tucks take')).toBe('5 1/4 in');
    expect(await figure(page, 'Finished width')).toBe('9 in');
    expect(await figure(page, 'Cloth to cut')).toBe('14 1/4 in');
    // First stitching at 1 1/2, each next 1 + 3/4 on; fold and second stitching 3/8 and 3/4 past it.
    const sixteenths = (n: number): string => {
      const [whole, left] = [Math.floor(n / 16), n % 16];
      if (left === 0) return `${whole} in`;
      const by = [8, 4, 2, 1].find((part) => left % part === 0)!;
      return `${whole} ${left / by}/${16 / by} in`;
    };
    const expected = Array.from({ length: 7 }, (_, i) => [0, 6, 12].map((d) => 24 + i * 28 + d)).flat();
    expect(await marks(page)).toEqual(expected.map(sixteenths));
  });

  it('gives the strip and the quarter marks of a cuff frill', async () => {
    const { page, hand } = await begin();
    await find(page, hand, 'gathered', 'gathered-frill');
    await hand.fill(field(page, 'place'), ['9', '2 1/2']);
    console.log(`Cuff frill: ${hand.counted()}`);
    expect(hand.seconds()).toBeLessThan(60);
    // 9 x 2 1/2 times, and 1/2 in at both ends; 2 1/2 deep, 1/2 seam and 1/4 hem.
    expect(await figure(page, 'Cut length of a strip')).toBe('23 1/2 in');
    expect(await figure(page, 'Cut depth')).toBe('3 1/4 in');
    const strips = await page.locator('[data-part="strip"] option').allTextContents();
    expect(await marks(page, strips[0])).toEqual(['0 in', '2 1/4 in', '4 1/2 in', '6 3/4 in', '9 in']);
    expect((await marks(page, strips[1])).filter((mark) => mark !== '0 in')).toEqual([
      '5 5/8 in',
      '11 1/4 in',
      '16 7/8 in',
      '22 1/2 in',
    ]);
  });

  it('gives the marks and the beads of a lattice', async () => {
    const { page, hand } = await begin();
    await find(page, hand, 'lattice', 'beaded-lattice');
    await hand.fill(field(page, 'top'), ['10', '10', '10', '1', '45']);
    console.log(`Lattice: ${hand.counted()}`);
    expect(hand.seconds()).toBeLessThan(60);
    // From the middle of the top edge, 1 in / sin 45° = 1.414 in each way: 0.757, 2.172, 3.586, 5, 6.414, 7.828, 9.243.
    const [top] = await page.locator('[data-part="strip"] option').allTextContents();
    expect(await marks(page, top)).toEqual([
      '3/4 in',
      '2 3/16 in',
      '3 9/16 in',
      '5 in',
      '6 7/16 in',
      '7 13/16 in',
      '9 1/4 in',
    ]);
    // An inch from crossing to crossing, a sixteenth free at both ends: fourteen beads of a sixteenth.
    expect(await figure(page, 'Crossing to crossing')).toBe('1 in');
    expect(await figure(page, 'Beads, crossing to crossing')).toBe('14');
  });

  it('gives the girths of a stretch leg', async () => {
    const { page, hand } = await begin();
    await find(page, hand, 'leg', 'stretch-leg');
    const body = ['30', '38', '22', '14', '13 1/2', '8 1/2', '12', '9', '23', '12 1/2', '17', '80', '40'];
    await hand.fill(field(page, 'waist'), body);
    console.log(`Stretch leg: ${hand.counted()}`);
    expect(hand.seconds()).toBeLessThan(90);
    // A cloth that stretches so far is cut a fifth smaller: 24, 30.4, 17.6, 11.2, 6.8 in.
    expect(await figure(page, 'Waist, finished')).toBe('24 in');
    expect(await figure(page, 'Hip, finished')).toBe('30 3/8 in');
    expect(await figure(page, 'Thigh, finished')).toBe('17 5/8 in');
    expect(await figure(page, 'Knee, finished')).toBe('11 3/16 in');
    expect(await figure(page, 'Ankle, finished')).toBe('6 13/16 in');
    const inner = [await figure(page, 'Inner seam, front'), await figure(page, 'Inner seam, back')];
    expect(inner[0]).toBe(inner[1]);
    // The body is measured once: a leg with frills has its measures already.
    await page.goto(page.url().replace('stretch-leg', 'frills-on-a-leg'));
    await page.locator('main[data-reckoning="frills-on-a-leg"]').waitFor();
    expect(await field(page, 'thigh').inputValue()).toBe('22');
  });
});

describe('while typing', () => {
  it('keeps the main figure in sight, above the field in hand', async () => {
    const page = await app.open('#/reckoner/stretch-leg');
    const main = page.locator('[data-part="main-figure"]');
    for (const name of ['waist', 'calf', 'stretchAlong']) {
      await touch(field(page, name));
      const [figureBox, fieldBox] = [await main.boundingBox(), await field(page, name).boundingBox()];
      expect(figureBox!.y).toBeGreaterThanOrEqual(0);
      expect(figureBox!.y + figureBox!.height).toBeLessThanOrEqual(fieldBox!.y);
    }
  });

  it.each([
    [390, 844],
    [320, 844],
    // With the keyboard of the phone over the lower half.
    [390, 420],
    [320, 420],
  ])(
    'keeps the main figure and the field in hand in sight at %i x %i, right or wrong',
    async (width, height) => {
      const page = await app.open('#/reckoner/stretch-leg');
      await page.setViewportSize({ width, height });
      const main = page.locator('[data-part="main-figure"]');
      const inSight = async (name: string): Promise<void> => {
        const [result, own, label] = await Promise.all([
          main.boundingBox(),
          field(page, name).boundingBox(),
          page.locator(`[data-field="${name}"] label`).boundingBox(),
        ]);
        expect(result!.y, name).toBeGreaterThanOrEqual(0);
        expect(result!.y + result!.height, name).toBeLessThanOrEqual(label!.y + 1);
        expect(own!.y + own!.height, name).toBeLessThanOrEqual(height);
      };
      await touch(field(page, 'waist'));
      for (const name of ['waist', 'hip', 'thigh', 'knee', 'calf', 'ankle']) {
        await page.locator(`[data-field="${name}"] input:focus`).waitFor();
        await inSight(name);
        await page.keyboard.type('9x');
        await page.locator(`[data-field="${name}"] [data-part="fault"]`).waitFor();
        await inSight(name);
        await field(page, name).fill(`${{ waist: 32, hip: 40, thigh: 24, ankle: 8.75 }[name] ?? 14.5} in`);
        await page.locator(`[data-field="${name}"] [data-part="fault"]`).waitFor({ state: 'detached' });
        await page.keyboard.press('Enter');
      }
    },
  );

  it('has fields and controls of at least 60 px', async () => {
    const page = await app.open('#/reckoner/gathered-frill');
    await page.locator('[data-part="main-figure"]').waitFor();
    const heights = await page.evaluate(() =>
      [...document.querySelectorAll('main :is(input.entry, .option, button, nav a, select, summary)')]
        .map((one) => ({ words: one.textContent, high: one.getBoundingClientRect().height }))
        .filter(({ high }) => high > 0),
    );
    expect(heights.length).toBeGreaterThan(10);
    expect(heights.filter(({ high }) => high < 60)).toEqual([]);
  });

  it('says a fault at its field, and has everything again after a reload', async () => {
    const page = await app.open('#/reckoner/parallel-tucks');
    await touch(page.getByRole('button', { name: 'Inches' }));
    await touch(field(page, 'depth'));
    await page.keyboard.type('3/');
    const fault = page.locator('[data-field="depth"] [data-part="fault"]');
    expect(await wordsOf(fault)).toContain('write one such as 1/4 in');
    await page.reload();
    expect(await field(page, 'depth').inputValue()).toBe('3/');
    await fault.waitFor();
    await field(page, 'depth').press('End');
    await page.keyboard.type('8');
    await fault.waitFor({ state: 'detached' });
    // Five of 3/8.
    expect(await figure(page, 'Cloth that the tucks take')).toBe('3 3/4 in');
  });

  it('copies as text', async () => {
    await app.context.grantPermissions(['clipboard-read', 'clipboard-write']);
    const page = await app.open('#/reckoner/parallel-tucks');
    await touch(page.locator('[data-part="copy"]'));
    await page.getByText('Copied.').waitFor();
    const text = await page.evaluate(() => navigator.clipboard.readText());
    expect(text.split('\n')[0]).toBe('Parallel tucks');
    expect(text).toMatch(/^How many: 5$/m);
  });

  it('fits with letters of twice the size, without scrolling sideways', async () => {
    const page = await app.open('#/reckoner/gathered-frill');
    await page.locator('[data-part="main-figure"]').waitFor();
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    const spare = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(spare).toBeLessThanOrEqual(0);
  });
});

it('puts the figures on a card of the outfit in work, where they stand at the bench', async () => {
  const page = await app.open();
  await openDemo(page, 'plain-shirt');
  await touch(parts(page).home);
  await touch(page.getByRole('link', { name: /tucks, frills, bias/ }));
  await touch(page.locator('[data-reckoning="parallel-tucks"]').first());
  await touch(page.locator('[data-part="to-card"]'));
  await touch(page.locator('[data-part="put-on-card"] [data-step]').first());
  await touch(page.getByRole('link', { name: 'To the bench' }));
  expect(await wordsOf(page.locator('[data-part="reckoned"]'))).toContain('Parallel tucks');
});

it('lays the marks on paper at true size, and follows the fields', async () => {
  const page = await app.open('#/reckoner/parallel-tucks');
  await touch(page.getByRole('button', { name: 'Inches' }));
  await touch(field(page, 'count'));
  await page.keyboard.type('2');
  await touch(page.locator('[data-part="print"]'));
  const saving = page.waitForEvent('download');
  await touch(page.locator('[data-part="save-svg"]'));
  const svg = readFileSync(await (await saving).path(), 'utf8');
  // Two tucks of 1/4 in, 3/4 in apart, from 1 in: folds at 1 1/4 and 2 1/2 in.
  expect(svg).toMatch(/>1 1\/4 in</);
  expect(svg).toMatch(/>2 1\/2 in</);
  expect(svg).toMatch(/<svg[^>]* width="[\d.]+mm"/);
});

it('is worked with a keyboard alone', async () => {
  const page = await app.open('#/reckoner');
  const search = page.locator('[data-part="search"]');
  const until = async (there: () => Promise<boolean>): Promise<void> => {
    for (let i = 0; i < 40 && !(await there()); i += 1) await page.keyboard.press('Tab');
    expect(await there()).toBe(true);
  };
  const inHand = (query: string) => () =>
    page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, query);
  await search.waitFor();
  await until(inHand('[data-part="search"]'));
  await page.keyboard.type('parallel');
  await until(inHand('[data-reckoning="parallel-tucks"]'));
  await page.keyboard.press('Enter');
  await page.locator('main[data-reckoning="parallel-tucks"]').waitFor();
  expect(await inHand('h1')()).toBe(true);
  await until(inHand('[data-field="count"] input'));
  await page.keyboard.type('3');
  await until(inHand('[data-part="more-fields"] summary'));
  await page.keyboard.press('Enter');
  await until(inHand('[data-field="pressed"] input'));
  await page.keyboard.press('ArrowDown');
  expect(await page.locator('[data-field="pressed"] input').nth(1).isChecked()).toBe(true);
  await until(async () => (await page.evaluate(() => document.activeElement?.textContent)) === 'Next mark');
  // What has the keyboard is in sight, under the figure that stays.
  const [figureBox, box] = await Promise.all([
    page.locator('[data-part="main-figure"]').boundingBox(),
    page.getByRole('button', { name: 'Next mark' }).boundingBox(),
  ]);
  expect(box!.y).toBeGreaterThanOrEqual(figureBox!.y + figureBox!.height);
  await page.keyboard.press('Enter');
  expect(await wordsOf(page.locator('.strip-words'))).toContain('2 of 9');
});

it('comes back to the list where it was left', async () => {
  const page = await app.open('#/reckoner');
  const link = page.locator('[data-reckoning="stretch-leg"]');
  await link.scrollIntoViewIfNeeded();
  const before = await page.evaluate(() => scrollY);
  expect(before).toBeGreaterThan(0);
  await touch(link);
  await page.locator('main[data-part="reckoning"]').waitFor();
  expect(await page.evaluate(() => scrollY)).toBe(0);
  await touch(page.getByRole('link', { name: 'Reckoner' }));
  await link.first().waitFor();
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-reckoning')))
    .toBe('stretch-leg');
  expect(await page.locator('.chosen [data-reckoning="stretch-leg"]').last().isVisible()).toBe(true);
});
