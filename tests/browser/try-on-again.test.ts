/** A cure is taken up on another device, and a second one is accepted while the cards of the first are half done. */
import { expect, it } from 'vitest';
import { writeBackup } from '../../src/store/backup.ts';
import type { Act } from '../../src/store/deed.ts';
import { demo } from '../outfit/demo-files.ts';
import { useApp } from './app.ts';
import { bringIn, deedsIn, parts, press, settled, shown, touch, wordsOf } from './bench-page.ts';
import { PHONE } from './chromium.ts';
import { orderOf, savedCopy, worked } from './demo.ts';
import { tried } from './try-on-page.ts';

const app = useApp();
const { sequence } = orderOf(demo('harbour-clockmaker'));
const before = sequence.slice(0, sequence.indexOf('shirt/try-shirt/fit'));
const saw = (entry: string, side: 'left' | 'right', amount: number): Act => ({
  kind: 'seen',
  garment: 'shirt',
  entry,
  side,
  amount,
});

it('keeps the sides of two cures on the cards, also on another device', async () => {
  const page = await app.open();
  await bringIn(
    page,
    await savedCopy('harbour-clockmaker', [...worked(before), saw('tucks-not-straight', 'left', 15_875_000)]),
  );
  const accept = async (): Promise<void> => {
    await page.locator('main[data-part="cure"][data-state="found"]').waitFor();
    await touch(parts(page).pad);
    await page.locator('[data-part="cure-accepted"]').waitFor();
    await touch(page.locator('[data-part="to-first"]'));
    await settled(page);
  };
  await page.goto(`${app.served.origin}/#/try/harbour-clockmaker/shirt/cure`);
  await accept();
  const first = await shown(page);
  expect(first.step).toMatch(/^shirt\/.*-r-/);
  const next = await press(page);
  expect(next.step).not.toBe(first.step);

  await expect
    .poll(async () => (await deedsIn(page)).filter(({ act }) => act.kind === 'step-done').length)
    .toBe(before.length + 1);
  const copy = await writeBackup('harbour-clockmaker', await deedsIn(page));
  const other = await (await app.another(PHONE)).newPage();
  await other.goto(`${app.served.origin}/`);
  const buffer = Buffer.from(await copy.arrayBuffer());
  await bringIn(other, { name: 'copy.slipbaste', mimeType: 'application/gzip', buffer });
  await other.goto(`${app.served.origin}/#/bench/harbour-clockmaker`);
  await settled(other);
  expect((await shown(other)).step).toBe(next.step);

  await page.goto(`${app.served.origin}/#/try/harbour-clockmaker/shirt/see/tucks-not-straight`);
  await tried(page).amount.fill('5/8');
  await touch(page.locator('[data-field="side"] .option', { hasText: 'Right' }));
  await touch(tried(page).noteIt);
  await tried(page).garment.waitFor();
  await touch(tried(page).cure);
  await accept();
  const cures = (await deedsIn(page)).flatMap(({ act }) => (act.kind === 'reworked' ? [act] : []));
  expect(cures).toHaveLength(2);
  await page.goto(`${app.served.origin}/#/order/harbour-clockmaker`);
  await page.locator('main').filter({ hasText: 'Fold on each mark and pin the tucks' }).waitFor();
  expect(await wordsOf(page.locator('main'))).not.toMatch(/pin the tucks of each centre front, only/);
});
