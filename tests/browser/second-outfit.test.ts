import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../.ci/house.mjs';
import { UNITS } from '../../src/outfit/units/all.ts';
import { demo, demoData } from '../outfit/demo-files.ts';
import { useApp } from './app.ts';
import { openDemo, press, shown, touch } from './bench-page.ts';
import { PHONE } from './chromium.ts';
import { orderOf } from './demo.ts';
import { described, firstCard } from './describe-page.ts';
import { describeDress, savedDescription, tryOn } from './dress-hands.ts';
import { listed, toOrder } from './order-page.ts';

const NAME = 'glasshouse-astronomer';
const FILE = join(ROOT, `demo-data/${NAME}.json`);

const app = useApp({ ...PHONE, deviceScaleFactor: 1 });

/** Keeps a picture for looking at, where a folder for pictures is named. */
async function picture(page: Page, name: string): Promise<void> {
  const folder = process.env.PICTURES;
  if (folder)
    await page.screenshot({ path: join(folder, `${name}.png`), fullPage: !name.startsWith('order') });
}

const narrow = async (page: Page): Promise<void> =>
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);

/**
 * Stores what the screen made as a demonstration. Two lines are added to it here, and nothing else: where its schema
 * lies, and that it is invented, which no maker says of her own outfit.
 */
function store(saved: string): void {
  const told = saved
    .replace('{\n', '{\n  "$schema": "../public/outfit.schema.json",\n')
    .replace(/\n {2}"about": .*\n/, (line) => `${line}  "invented": true,\n`);
  writeFileSync(FILE, told);
}

/** From the page of the garment: the order as the screen lists it, and the first card. */
async function toCards(page: Page): Promise<readonly string[]> {
  await firstCard(page);
  expect((await shown(page)).words).toContain('Ballgown');
  await narrow(page);
  await picture(page, `card-${page.viewportSize()?.width}`);
  await toOrder(page);
  await narrow(page);
  await picture(page, `order-${page.viewportSize()?.width}`);
  return (await listed(page)).map(({ step }) => step);
}

describe('a whole outfit of another kind', () => {
  it('is described by touching and typing from an empty app, and is the demonstration that is stored', {
    timeout: 300_000,
  }, async () => {
    const page = await app.open();
    await describeDress(page);
    expect(await described(page).misfits.count()).toBe(0);
    await narrow(page);
    await picture(page, 'garment-390');
    await touch(page.getByRole('link', { name: 'The Glasshouse Astronomer' }));
    const { name, text } = await savedDescription(page);
    await picture(page, 'overview-390');
    expect(name).toBe('the-glasshouse-astronomer.json');
    if (process.env.UPDATE_DEMO === '1') store(text);
    const { $schema: _, invented, ...stored } = demoData(NAME) as Record<string, unknown>;
    expect(invented).toBe(true);
    expect(JSON.parse(text)).toEqual(stored);

    await touch(page.locator('[data-garment="ballgown"]'));
    const steps = await toCards(page);
    expect(steps).toEqual(orderOf(demo(NAME)).sequence);
    await touch(page.getByRole('link', { name: 'To the bench' }));
    expect((await press(page)).pad).not.toBe('');
  });

  it('is of ready-made parts and parts of a maker’s own only: no line of the program knows it', () => {
    const { garments } = demo(NAME);
    const ready = new Set(UNITS.map(({ id }) => id));
    const uses = garments.flatMap(({ units }) => units);
    expect(uses.filter(({ unit }) => !ready.has(unit))).toEqual([]);
    expect(uses.flatMap(({ own }) => own)).toEqual([]);
    const brought = new Set(uses.flatMap((use) => use.brought));
    const own = garments.flatMap((one) => [...one.pieces, ...one.works, ...one.joins, ...one.gates]);
    expect(own.map(({ id }) => id).filter((id) => !brought.has(id))).toEqual([
      'wrist-float',
      'rolled-edge-of-the-floats',
      'float-seam',
      'the-dress-with-its-frill-danced-in',
    ]);
    const files = readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' });
    const knowing = files.filter(
      (file) => /\.tsx?$/.test(file) && /glasshouse/i.test(readFileSync(join(ROOT, 'src', file), 'utf8')),
    );
    expect(knowing).toEqual([join('screens', 'outfits', 'outfits.tsx')]);
  });

  it('is changed on a tablet as well: its last part taken out and put in again makes the same file', async () => {
    const context = await app.another({
      ...PHONE,
      deviceScaleFactor: 1,
      viewport: { width: 820, height: 1180 },
    });
    const page = await context.newPage();
    await page.goto(`${app.served.origin}/`);
    await openDemo(page, NAME);
    await page.goto(`${app.served.origin}/#/outfit/the-glasshouse-astronomer/garment/ballgown`);
    await described(page).garment.waitFor();
    const mine = page.locator('li[data-unit=""]');
    await touch(mine.locator('summary'));
    await touch(mine.locator('a', { hasText: 'danced in' }));
    await touch(page.locator('[data-part="take-out"]'));
    await touch(page.locator('dialog[open]').getByRole('button', { name: /^Take/ }));
    await described(page).garment.waitFor();
    await tryOn(page);
    await narrow(page);
    await picture(page, 'garment-820');
    await touch(page.getByRole('link', { name: 'The Glasshouse Astronomer' }));
    const { $schema: _, ...stored } = demoData(NAME) as Record<string, unknown>;
    expect(JSON.parse((await savedDescription(page)).text)).toEqual(stored);
    await picture(page, 'overview-820');
    await touch(page.locator('[data-garment="ballgown"]'));
    expect(await toCards(page)).toEqual(orderOf(demo(NAME)).sequence);
  });
});
