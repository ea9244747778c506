import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Act } from '../../src/store/deed.ts';
import { demo } from '../outfit/demo-files.ts';
import { useApp } from './app.ts';
import { bringIn, deedsIn, parts, press, settled, shown, touch } from './bench-page.ts';
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

/** Brings in a copy in which these figures were put on the card of a step, and goes to that card. */
async function comeTo(page: Page, { step, before }: typeof marks, ...acts: Act[]): Promise<void> {
  await bringIn(page, await savedCopy('harbour-clockmaker', [...worked(before, step), ...acts]));
  await touch(page.getByRole('link', { name: /^(Begin|Go on)/ }));
  await settled(page);
  expect((await shown(page)).step).toBe(step);
}

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
