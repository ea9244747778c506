import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { writeLength } from '../../src/length/writing.ts';
import type { Act } from '../../src/store/deed.ts';
import { demo } from '../outfit/demo-files.ts';
import { useApp } from './app.ts';
import { axeFaults } from './axe.ts';
import { bringIn, deedsIn, openDemo, parts, press, settled, shown, touch } from './bench-page.ts';
import { contrasts } from './contrast.ts';
import { firstWith, savedCopy, worked } from './demo.ts';
import { controls, crowded, cutOff, fontSizes, outOfReach, overlapping } from './legibility.ts';
import { still } from './places.ts';

const app = useApp();
const marks = firstWith(demo('harbour-clockmaker'), 'marks');
const count = firstWith(demo('harbour-clockmaker'), 'count');

const tucks = (step: string, n = 5): Act => ({
  kind: 'reckoned',
  step,
  reckoning: 'parallel-tucks',
  title: 'Parallel tucks',
  unit: 'in',
  entries: { depth: '1/8', count: '9' },
  figures: Array.from({ length: n }, (_, i) =>
    i === 0
      ? { name: 'cloth for the tucked part', figure: '15 1/4 in' }
      : { name: `fold ${i}`, figure: `${i} 1/8 in from the neck seam` },
  ),
});

const put = (page: Page) => page.locator('[data-part="reckoned"]');
const figures = (page: Page): Promise<string[]> => page.locator('[data-reckoned] dd').allInnerTexts();

/** What axe finds wrong, and text fainter than 7:1, on paper and on dark cloth. */
async function hardToRead(page: Page): Promise<readonly string[]> {
  const found: string[] = [];
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    await still(page);
    found.push(...(await axeFaults(page)));
    for (const { text, ratio } of await contrasts(app.browser, page)) {
      if (ratio < 7) found.push(`${colorScheme}: “${text}” ${ratio.toFixed(2)}`);
    }
  }
  return found;
}

/** Brings in a copy in which these figures were put on the card of a step, and goes to that card. */
async function comeTo(page: Page, { step, before }: typeof marks, ...acts: Act[]): Promise<void> {
  await bringIn(page, await savedCopy('harbour-clockmaker', [...worked(before, step), ...acts]));
  await touch(page.getByRole('link', { name: /^(Begin|Go on)/ }));
  await settled(page);
  expect((await shown(page)).step).toBe(step);
}

describe('figures reckoned in the reckoner', () => {
  it('are put on the card on the bench, stand there after a reload, and open their reckoning again', async () => {
    const page = await app.open();
    await openDemo(page);
    const { step } = await shown(page);
    await page.goto(`${app.served.origin}/#/reckoner/parallel-tucks`);
    const field = page.locator('[data-field] input').first();
    await field.fill('13');
    await touch(page.locator('[data-part="to-card"]'));
    await touch(page.locator(`[data-part="on-bench"] [data-step="${step}"]`));
    await touch(page.getByRole('link', { name: 'To the bench' }));
    await settled(page);
    expect((await shown(page)).step).toBe(step);
    const there = await figures(page);
    expect(there.length).toBeGreaterThan(0);
    await page.reload();
    await settled(page);
    expect(await figures(page)).toEqual(there);

    await page.evaluate(() => localStorage.removeItem('slipbaste.reckoner.parallel-tucks'));
    await touch(page.locator('[data-part="reckon-again"]'));
    await expect.poll(() => field.inputValue()).toBe('13');
    await page.goBack();
    await settled(page);
    await touch(parts(page).undo);
    await expect.poll(() => put(page).count()).toBe(0);
  });

  it('are put on any card that is found by its words, and taken off again there', async () => {
    const page = await app.open();
    await openDemo(page);
    await page.goto(`${app.served.origin}/#/reckoner/parallel-tucks`);
    await touch(page.locator('[data-part="to-card"]'));
    await page.getByLabel('Look for a card').fill(marks.card.say);
    await touch(page.locator(`[data-step="${marks.step}"]`));
    await page.getByText(`On the card now: ${marks.card.say}`).waitFor();
    const acts = async () =>
      (await deedsIn(page)).flatMap(({ act }) => (act.kind === 'reckoned' ? [act.step] : []));
    expect(await acts()).toEqual([marks.step]);
    await touch(page.getByRole('button', { name: 'Undo', exact: true }));
    await page.getByText('Taken off again').waitFor();
  });
});

describe('figures on a card', () => {
  it('come with a copy, stand there after a reload, and are gone with one touch of undo', async () => {
    const page = await app.open();
    await comeTo(page, marks, tucks(marks.step));
    await put(page).waitFor();
    expect(await figures(page)).toEqual([
      '15 1/4 in',
      '1 1/8 in from the neck seam',
      '2 1/8 in from the neck seam',
    ]);
    await page.reload();
    await settled(page);
    expect(await figures(page)).toHaveLength(3);
    await touch(page.getByRole('button', { name: '2 more figures' }));
    await expect.poll(() => figures(page)).toHaveLength(5);
    expect((await shown(page)).undo).toBe('Undo: the figures');
    await touch(parts(page).undo);
    await expect.poll(() => put(page).count()).toBe(0);
    await page.reload();
    await settled(page);
    expect(await put(page).count()).toBe(0);
    const acts = (await deedsIn(page)).map((deed) => deed.act.kind);
    expect(acts.filter((kind) => kind === 'reckoned' || kind === 'undone').sort()).toEqual([
      'reckoned',
      'undone',
    ]);
  });

  it('can be read by all, and by a program that reads aloud, and so can the cards to choose from', async () => {
    const page = await app.open();
    await comeTo(page, marks, tucks(marks.step));
    await put(page).scrollIntoViewIfNeeded();
    expect(await hardToRead(page)).toEqual([]);
    await page.goto(`${app.served.origin}/#/reckoner/parallel-tucks`);
    await touch(page.locator('[data-part="to-card"]'));
    await page.locator('[data-part="others"] summary').first().waitFor();
    expect(await hardToRead(page)).toEqual([]);
    expect(await cutOff(page)).toEqual([]);
    expect(await crowded(page, 8)).toEqual([]);
    const small = (await controls(page)).filter(({ width, height }) => width < 47.99 || height < 47.99);
    expect(small).toEqual([]);
  });

  it('are taken off one by one, and marks set meanwhile stay', async () => {
    const page = await app.open();
    await comeTo(page, marks, tucks(marks.step), { ...tucks(marks.step, 1), title: 'Again' } as Act);
    await press(page);
    await touch(page.getByRole('button', { name: /^Take off the card ?: Parallel tucks$/ }));
    await expect.poll(() => page.locator('[data-reckoned] h2').allInnerTexts()).toEqual(['Again']);
    expect((await shown(page)).undo).toBe('Undo: mark 1');
  });

  it.each([
    ['marks', marks],
    ['a count', count],
  ])('are read and touched from an arm’s length beside %s, and cover nothing', async (_name, at) => {
    const page = await app.open();
    await comeTo(page, at, tucks(at.step), tucks(at.step, 2));
    for (const [width, height] of [
      [390, 844],
      [320, 568],
      [820, 1180],
      [1180, 820],
      [195, 422],
    ] as const) {
      await page.setViewportSize({ width, height });
      await still(page);
      const size = `${width} × ${height}`;
      const small = await fontSizes(page, ['.on-card h2', '.on-card dt', '.on-card dd']);
      expect.soft(Math.min(...small.values()), size).toBeGreaterThanOrEqual(28);
      expect.soft(await cutOff(page), size).toEqual([]);
      expect.soft(await overlapping(page), size).toEqual([]);
      expect.soft(await outOfReach(page), size).toEqual([]);
      if (width < 320) continue;
      const low = (await controls(page)).filter((one) => one.width < 47.99 || one.height < 47.99);
      expect.soft(low, size).toEqual([]);
      expect.soft(await crowded(page, 8), size).toEqual([]);
    }
  });
});

describe('a card with marks', () => {
  it('offers its marks as strips of paper, the distances as they stand on the tape', async () => {
    const page = await app.open();
    await comeTo(page, marks);
    if (marks.card.readout.kind !== 'marks') throw new Error('This card has no marks.');
    const { sets } = marks.card.readout;
    await touch(page.getByRole('button', { name: 'Print a marking strip' }));
    expect(await parts(page).sheet.locator('[data-part="page-count"]').textContent()).toMatch(/page/);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      touch(page.locator('[data-part="save-svg"]')),
    ]);
    const svg = readFileSync(await download.path(), 'utf8');
    for (const set of sets) {
      expect(svg).toContain(set.name);
      for (const { at } of set.marks) expect(svg).toContain(writeLength(at, { unit: 'in', per: 16 }).text);
    }
    await page.getByRole('button', { name: 'Close' }).click();
    await press(page);
    expect((await shown(page)).undo).toBe('Undo: mark 1');
  });

  it('and no other card offers it', async () => {
    const page = await app.open();
    await comeTo(page, count);
    expect(await page.locator('[data-part="print-strip"]').count()).toBe(0);
  });
});
