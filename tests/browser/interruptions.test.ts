import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { demo } from '../outfit/demo-files.ts';
import { kept, useApp } from './app.ts';
import {
  bringIn,
  deedsKept,
  openDemo,
  parts,
  press,
  settled,
  shown,
  stored,
  touch,
  workCard,
} from './bench-page.ts';
import { firstWith, savedCopy, worked } from './demo.ts';
import { startKillable } from './ledger-chromium.ts';

const app = useApp();
const count = firstWith(demo('harbour-clockmaker'), 'count');

/** What must be the same after any interruption. */
const place = async (page: Page) => {
  const { step, pad, detail, figure, undo } = await shown(page);
  return { step, pad, detail, figure, undo };
};

describe('after an interruption', () => {
  it('a reload shows the same card, the same mark and the same undo', async () => {
    const page = await app.open();
    await openDemo(page);
    const marks = firstWith(demo('harbour-clockmaker'), 'marks');
    for (const step of marks.before) {
      expect((await shown(page)).step).toBe(step);
      await workCard(page);
    }
    await press(page);
    const before = await place(page);
    const deeds = await deedsKept(page);
    expect(before).toMatchObject({ step: marks.step, undo: 'Undo: mark 1' });
    await page.reload();
    await settled(page);
    expect(await place(page)).toEqual(before);
    expect(await deedsKept(page)).toBe(deeds);
    await touch(parts(page).undo);
    await expect.poll(async () => (await shown(page)).words).toContain('1 of 5');
  });

  it('the app opened anew from its first address comes back to the card', async () => {
    const page = await app.open();
    await openDemo(page);
    await press(page);
    const before = await place(page);
    await kept(page, 3);
    await page.close();
    const again = await app.open();
    await settled(again);
    expect(await place(again)).toEqual(before);
  });

  it('works on without a network and without a host, over reloads and in a new page', async () => {
    const page = await app.open();
    await openDemo(page);
    await stored(page);
    await press(page);
    const before = await place(page);
    await app.context.setOffline(true);
    await app.unplug();
    await page.reload();
    await settled(page);
    expect(await place(page)).toEqual(before);
    await workCard(page);
    await touch(parts(page).order);
    await page.locator('li[data-state="open"]').waitFor();
    await touch(page.getByRole('link', { name: 'Outfits' }));
    await page.locator('li[data-outfit]').waitFor();
    await touch(page.getByRole('button', { name: 'Open the plain shirt' }));
    await settled(page);
    await touch(parts(page).why);
    await parts(page).sheet.waitFor();
    const another = await app.open('#/');
    await another.locator('li[data-outfit]').nth(1).waitFor();
  });

  it('going back and forth between screens keeps the card and the place', async () => {
    const page = await app.open();
    await openDemo(page);
    await press(page);
    const before = await place(page);
    await touch(parts(page).order);
    await page.locator('main[data-part="running-order"]').waitFor();
    await page.goBack();
    await settled(page);
    expect(await place(page)).toEqual(before);
    await touch(parts(page).home);
    await touch(page.getByRole('link', { name: /^(Go on|Begin) with/ }));
    await settled(page);
    expect(await place(page)).toEqual(before);
  });
});

describe('a browser that is killed at the bench', () => {
  let profile: string;
  beforeEach(() => {
    profile = mkdtempSync(join(tmpdir(), 'slipbaste-bench-killed-'));
  });
  afterEach(() => rmSync(profile, { recursive: true, force: true, maxRetries: 5 }));

  const start = async (): Promise<Awaited<ReturnType<typeof startKillable>>> => {
    const started = await startKillable(profile);
    await started.page.setViewportSize({ width: 390, height: 844 });
    return started;
  };

  it('comes back to the same card with every counted bead, with no host there', async () => {
    const first = await start();
    const errors: string[] = [];
    first.page.on('pageerror', (error) => errors.push(error.message));
    await first.page.goto(`${app.served.origin}/`);
    await bringIn(first.page, await savedCopy('harbour-clockmaker', worked(count.before, count.step)));
    await stored(first.page);
    await touch(first.page.getByRole('link', { name: /^Go on/ }));
    await settled(first.page);
    for (let i = 0; i < 5; i += 1) await press(first.page);
    await expect.poll(async () => (await shown(first.page)).inFlight).toBe(false);
    const before = await place(first.page);
    expect(before).toMatchObject({ step: count.step, figure: '10' });
    await first.kill();
    await app.unplug();

    const second = await start();
    second.page.on('pageerror', (error) => errors.push(error.message));
    await second.page.goto(`${app.served.origin}/`);
    await settled(second.page);
    expect(await place(second.page)).toEqual(before);
    expect(await press(second.page)).toMatchObject({ figure: '12' });
    await second.kill();
    expect(errors).toEqual([]);
  });

  it('loses no touch that the figure had come to rest on, killed in a stream of touches', async () => {
    let acknowledged = 0;
    for (let round = 0; round < 4; round += 1) {
      const { page, kill } = await start();
      await page.goto(`${app.served.origin}/`);
      if (round === 0) {
        await bringIn(page, await savedCopy('harbour-clockmaker', worked(count.before, count.step)));
        await touch(page.getByRole('link', { name: /^Go on/ }));
      }
      await settled(page);
      const total = async (): Promise<number> =>
        Number(/(\d+) of \d+ in all/.exec((await shown(page)).words)?.[1]);
      expect(await total()).toBeGreaterThanOrEqual(acknowledged);
      if (round === 3) {
        await kill();
        break;
      }
      let enough = (): void => undefined;
      const reached = new Promise<void>((done) => {
        enough = done;
      });
      const wanted = acknowledged + 11 + 6 * round;
      await page.exposeFunction('atRest', (beads: number) => {
        acknowledged = Math.max(acknowledged, beads);
        if (acknowledged >= wanted) enough();
      });
      // A touch at every frame; each figure at rest is told outside, as the maker's eye would see it.
      await page.evaluate(() => {
        const told = (globalThis as unknown as { atRest: (beads: number) => Promise<void> }).atRest;
        const look = (): void => {
          const figure = document.querySelector('[data-part="figure"]');
          const all = /^(\d+) of \d+ in all/.exec(
            document.querySelector('.readout .quiet')?.textContent ?? '',
          );
          if (figure?.getAttribute('data-in-flight') === 'false' && all) void told(Number(all[1]));
          document.querySelector<HTMLElement>('[data-part="pad"]')?.click();
          requestAnimationFrame(look);
        };
        look();
      });
      await reached;
      await kill();
    }
    expect(acknowledged).toBeGreaterThan(30);
  });
});
