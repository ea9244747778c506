import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { useApp } from './app.ts';
import { controls, crowded, cutOff, fontSizes, outOfReach, overlapping } from './legibility.ts';
import { places, still } from './places.ts';

const app = useApp();
const benches = places.filter(({ bench }) => bench);

/** Least sizes in CSS pixels of what must be read from the machine, 60 to 70 cm away. */
const READ_FROM_AFAR: Readonly<Record<string, number>> = {
  'main h1': 31,
  '[data-part="figure"]': 72,
  '.settings dt': 28,
  '.settings dd': 28,
  '.mark-words': 28,
  '.readout-line': 28,
  '.timer-words': 28,
  // A long list is for looking through; the line in hand stands on the pad as well.
  '.ticks:not(.tick-list) .tick': 28,
  '.rest': 28,
  '.caution b': 28,
  '.other-timer b': 28,
  '.pad-label': 31,
  '.pad-detail': 28,
};

async function tooSmall(page: Page): Promise<readonly string[]> {
  const sizes = await fontSizes(page, Object.keys(READ_FROM_AFAR));
  return [...sizes]
    .filter(([part, px]) => px < (READ_FROM_AFAR[part] ?? 0))
    .map(([part, px]) => `${part}: ${px} px`);
}

/** What is wrong with the pad: lower than 20 mm on a phone, or than a quarter of the screen, or not all across. */
const padFaults = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const pad = document.querySelector('[data-part="pad"]');
    if (!pad) return [];
    const { left, right, bottom, width, height } = pad.getBoundingClientRect();
    const faults: string[] = [];
    if (height < 128) faults.push(`pad ${height} px high`);
    if (height < innerHeight / 4 - 0.5) faults.push(`pad ${height} of ${innerHeight} px high`);
    if (left > 0.5 || right < innerWidth - 0.5) faults.push(`pad ${width} of ${innerWidth} px across`);
    if (bottom < innerHeight - 0.5 || bottom > innerHeight + 0.5)
      faults.push(`pad ends at ${bottom} of ${innerHeight}`);
    return faults;
  });

const small = async (page: Page): Promise<readonly string[]> =>
  (await controls(page))
    .filter(({ width, height }) => width < 47.99 || height < 47.99)
    .map(({ name, width, height }) => `${name.slice(0, 40)}: ${width.toFixed()} × ${height.toFixed()}`);

describe.each(benches)('$name', ({ go }) => {
  it('is read and touched from an arm’s length, upright and lying, on a small phone and a tablet', async () => {
    const page = await app.context.newPage();
    await go(page, app.served.origin);
    for (const [width, height] of [
      [390, 844],
      [320, 568],
      [820, 1180],
      [1180, 820],
    ] as const) {
      await page.setViewportSize({ width, height });
      await still(page);
      const at = `${width} × ${height}`;
      expect.soft(await tooSmall(page), at).toEqual([]);
      expect.soft(await padFaults(page), at).toEqual([]);
      expect.soft(await small(page), at).toEqual([]);
      expect.soft(await crowded(page, 8), at).toEqual([]);
      expect.soft(await cutOff(page), at).toEqual([]);
      expect.soft(await overlapping(page), at).toEqual([]);
      expect.soft(await outOfReach(page), at).toEqual([]);
    }
  });
});

describe.each(places)('$name', ({ go, bench }) => {
  it('can be had with letters twice as large, and magnified twice, with nothing lost', async () => {
    const page = await app.context.newPage();
    await go(page, app.served.origin);
    expect.soft(await cutOff(page), 'as it is').toEqual([]);
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    await still(page);
    expect.soft(await cutOff(page), 'letters twice as large').toEqual([]);
    if (bench)
      expect
        .soft([...(await overlapping(page)), ...(await outOfReach(page))], 'letters twice as large')
        .toEqual([]);
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '';
    });
    await page.setViewportSize({ width: 195, height: 422 });
    await still(page);
    expect.soft(await cutOff(page), 'magnified twice').toEqual([]);
    if (bench)
      expect.soft([...(await overlapping(page)), ...(await outOfReach(page))], 'magnified twice').toEqual([]);
  });
});

describe('the page', () => {
  it('lets itself be magnified with two fingers', async () => {
    const page = await app.open();
    const content = await page.locator('meta[name="viewport"]').getAttribute('content');
    expect(content).not.toMatch(/user-scalable\s*=\s*no|maximum-scale/);
  });
});
