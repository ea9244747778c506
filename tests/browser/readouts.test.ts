import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { demos } from '../outfit/demo-files.ts';
import { demo } from '../outfit/demo-files.ts';
import { useApp } from './app.ts';
import { bringIn, deedsIn, parts, press, settled, shown, touch } from './bench-page.ts';
import { firstWith, savedCopy, worked } from './demo.ts';

const app = useApp();

/** Brings in a saved copy in which everything before `step` is done, and goes to the bench. */
async function comeTo(page: Page, name: (typeof demos)[number], before: readonly string[], step: string) {
  await bringIn(page, await savedCopy(name, worked(before, step)));
  await touch(page.getByRole('link', { name: /^(Begin|Go on)/ }));
  await settled(page);
  expect((await shown(page)).step).toBe(step);
}

describe('a counted line', () => {
  const { step, before, card } = firstWith(demo('harbour-clockmaker'), 'count');
  if (card.readout.kind !== 'count') throw new Error('This card counts nothing.');
  const { lines, of, perTouch } = card.readout;
  const [first, second] = lines;
  const total = lines.reduce((sum, line) => sum + line.target, 0);

  it('counts two at a time to the target, says the total and the pace, and goes to the next line', async () => {
    await app.context.clock.install();
    const page = await app.open();
    await comeTo(page, 'harbour-clockmaker', before, step);
    expect(perTouch).toBe(2);
    for (let counted = 0; counted < first!.target; counted += 2) {
      const now = await shown(page);
      expect(now).toMatchObject({ figure: String(counted), pad: 'Count 2' });
      expect(now.words).toContain(`of ${first!.target} ${of}`);
      expect(now.words).toContain(`line 1 of ${lines.length}`);
      expect(now.words).toContain(`${counted} of ${total} in all`);
      expect(now.words).toContain('two at a time');
      expect((await press(page)).undo).toBe('Undo: last count');
      await app.context.clock.fastForward(4_000);
    }
    expect(await shown(page)).toMatchObject({ figure: String(first!.target), pad: 'Line done' });

    await expect.poll(async () => (await shown(page)).inFlight).toBe(false);
    const taps = (await deedsIn(page)).filter((deed) => deed.act.kind === 'tap').map((deed) => deed.at);
    const minutes = (Math.max(...taps) - Math.min(...taps)) / 60_000;
    expect((await shown(page)).words).toContain(
      `${Math.round((first!.target - perTouch) / minutes)} a minute`,
    );

    expect(await press(page)).toMatchObject({ figure: '0', pad: 'Count 2', undo: 'Undo: line done' });
    expect((await shown(page)).words).toContain(`of ${second!.target} ${of}`);
    expect((await shown(page)).words).toContain(`line 2 of ${lines.length}`);
    expect((await shown(page)).words).toContain(`${first!.target} of ${total} in all`);
  });

  it('takes every touch of a fast hand, and gives each back', async () => {
    const page = await app.open();
    await comeTo(page, 'harbour-clockmaker', before, step);
    const pad = (await parts(page).pad.boundingBox())!;
    const undo = (await parts(page).undo.boundingBox())!;
    const touches = first!.target / 2 - 1;
    // As fast as the browser takes them, with nothing waited for in between.
    for (let i = 0; i < touches; i += 1) {
      await page.touchscreen.tap(pad.x + pad.width * (i % 2 === 0 ? 0.2 : 0.8), pad.y + pad.height / 2);
    }
    await expect.poll(async () => (await shown(page)).figure).toBe(String(2 * touches));
    for (let i = 0; i < touches; i += 1) {
      await page.touchscreen.tap(undo.x + undo.width / 2, undo.y + undo.height / 2);
    }
    await expect
      .poll(() => shown(page))
      .toMatchObject({ figure: '0', inFlight: false, undo: 'Undo: last step' });
    const acts = (await deedsIn(page)).map((deed) => deed.act.kind);
    expect(acts.filter((kind) => kind === 'tap')).toHaveLength(touches);
    expect(acts.filter((kind) => kind === 'undone')).toHaveLength(touches);
  });

  it('can be ended early or run over, and says so', async () => {
    const page = await app.open();
    await comeTo(page, 'harbour-clockmaker', before, step);
    await press(page);
    await touch(page.getByRole('button', { name: 'End line at 2' }));
    await expect.poll(async () => (await shown(page)).words).toContain(`line 2 of ${lines.length}`);
    expect((await shown(page)).words).toContain(`2 of ${total} in all`);
    await touch(parts(page).undo);
    await expect.poll(() => shown(page)).toMatchObject({ figure: '2', pad: 'Count 2' });
    while ((await shown(page)).pad !== 'Line done') await press(page);
    await touch(page.getByRole('button', { name: 'One more' }));
    await expect
      .poll(() => shown(page))
      .toMatchObject({ figure: String(first!.target + 1), pad: 'Line done', detail: '1 over' });
  });
});

describe('timers', () => {
  const outfit = demo('plain-shirt');
  const { step: collar } = firstWith(outfit, 'timers');
  const { step, before, card } = firstWith(outfit, 'timers', collar);
  if (card.readout.kind !== 'timers') throw new Error('This card has no timers.');
  const { timers } = card.readout;

  /** Seconds left of each timer by the ledger and the page's own clock, in the order of the card. */
  const left = (page: Page): Promise<readonly number[]> =>
    deedsIn(page).then(async (deeds) => {
      const now = await page.evaluate(() => Date.now());
      return timers.map(({ item, seconds }) => {
        const started = deeds.find(({ act }) => act.kind === 'timer-started' && act.item === item);
        return started ? Math.max(0, (started.at + seconds * 1000 - now) / 1000) : seconds;
      });
    });
  const written = async (page: Page): Promise<readonly number[]> =>
    (await page.locator('li[data-timer] [data-part="figure"]').allInnerTexts()).map((text) =>
      text.split(':').reduce((sum, part) => sum * 60 + Number(part), 0),
    );
  const states = (page: Page) =>
    page.locator('li[data-timer]').evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset.state));
  /** The figures are those that the ledger and the clock give, to within the second that passes while looking. */
  const expectRight = async (page: Page): Promise<void> => {
    await expect
      .poll(async () => {
        const [shown, exact] = [await written(page), await left(page)];
        return shown.every(
          (one, i) => one <= timers[i]!.seconds && Math.abs(one - Math.ceil(exact[i] ?? 0)) <= 1,
        );
      })
      .toBe(true);
  };

  it('run several at once, go on over a reload, and are over when their time is', async () => {
    expect(timers.length).toBeGreaterThanOrEqual(3);
    await app.context.clock.install();
    const page = await app.open();
    await comeTo(page, 'plain-shirt', before, step);
    expect(await states(page)).toEqual(timers.map(() => 'waiting'));
    expect(await written(page)).toEqual(timers.map(({ seconds }) => seconds));
    await press(page);
    await app.context.clock.fastForward(5_000);
    await press(page);
    expect((await states(page)).slice(0, 3)).toEqual(['running', 'running', 'waiting']);
    await expectRight(page);

    await page.reload();
    await settled(page);
    expect((await states(page)).slice(0, 3)).toEqual(['running', 'running', 'waiting']);
    await expectRight(page);

    await app.context.clock.fastForward(8_000);
    await expect.poll(async () => (await states(page)).slice(0, 3)).toEqual(['over', 'running', 'waiting']);
    while ((await states(page)).includes('waiting')) await press(page);
    await expect.poll(() => shown(page)).toMatchObject({ pad: 'Done', detail: 'a timer is still running' });
    await expectRight(page);

    await app.context.clock.fastForward('15:00');
    await expect.poll(() => states(page)).toEqual(timers.map(() => 'over'));
    expect(await shown(page)).toMatchObject({ pad: 'Done', detail: '' });
    expect(await page.locator('li[data-timer]', { hasText: 'time is up' }).count()).toBe(timers.length);
  });

  it('can be stopped, begun again and taken back', async () => {
    const page = await app.open();
    await comeTo(page, 'plain-shirt', before, step);
    const { undo } = parts(page);
    await press(page);
    await touch(page.getByRole('button', { name: `Stop ${timers[0]!.name}` }));
    await expect.poll(() => states(page)).toEqual(timers.map(() => 'waiting'));
    expect((await shown(page)).undo).toBe(`Undo: stop ${timers[0]!.name}`);
    await touch(undo);
    await expect.poll(async () => (await states(page))[0]).toBe('running');
    expect((await shown(page)).undo).toBe(`Undo: start ${timers[0]!.name}`);
    await touch(undo);
    await expect.poll(async () => (await states(page))[0]).toBe('waiting');
  });

  it('that still run are in sight on the next card, right after the page slept', async () => {
    await app.context.clock.install();
    const page = await app.open();
    await comeTo(page, 'plain-shirt', before, step);
    while ((await shown(page)).pad !== 'Done') await press(page);
    await press(page);
    expect((await shown(page)).step).not.toBe(step);
    const other = page.locator('.other-timer');
    const longest = Math.max(...timers.map(({ seconds }) => seconds));
    await expect.poll(() => other.allInnerTexts()).not.toEqual([]);
    expect(longest).toBe(900);
    // The clock jumps, as when the device slept: no interval ran meanwhile.
    await app.context.clock.setSystemTime(Date.now() + 14 * 60_000);
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await expect.poll(async () => (await other.allInnerTexts()).join()).toMatch(/\b(0:\d\d|1:00)\b/);
  });
});
