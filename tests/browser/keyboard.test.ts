import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demo } from '../outfit/demo-files.ts';
import { useApp } from './app.ts';
import { bringIn, deedsIn, parts, settled, shown, wordsOf } from './bench-page.ts';
import { firstWith, savedCopy, worked } from './demo.ts';

const app = useApp({ viewport: { width: 390, height: 844 } });
const count = firstWith(demo('harbour-clockmaker'), 'count');

/** What has the focus, by its role in the page. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    return at?.getAttribute('data-part') ?? at?.textContent?.trim() ?? '';
  });

/** Presses Tab until something has the focus whose words or part match. Throws when the focus has come round. */
async function tabTo(page: Page, wanted: RegExp): Promise<void> {
  for (let i = 0; i < 60; i += 1) {
    await page.keyboard.press('Tab');
    if (wanted.test(await focused(page))) return;
  }
  throw new Error(`Tab never came to ${wanted}.`);
}

/** Waits until the card shows what is wanted. */
const shows = (page: Page, wanted: Partial<Awaited<ReturnType<typeof shown>>>) =>
  expect.poll(() => shown(page)).toMatchObject(wanted);

/** The bench at the first counted card. */
async function atCount(): Promise<Page> {
  const page = await app.open();
  await bringIn(page, await savedCopy('harbour-clockmaker', worked(count.before, count.step)));
  await tabTo(page, /^Go on/);
  await page.keyboard.press('Enter');
  await settled(page);
  return page;
}

const taps = async (page: Page): Promise<number> =>
  (await deedsIn(page)).filter((deed) => deed.act.kind === 'tap').length;

const nextFrame = (page: Page): Promise<unknown> =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));

/** Teaches a key in the open sheet. */
async function teach(page: Page, meaning: string, key: string): Promise<void> {
  const { sheet } = parts(page);
  await sheet.getByRole('button', { name: `Teach a key for ${meaning}` }).click();
  await sheet.getByRole('button', { name: 'Press the pedal or key now' }).waitFor();
  // It listens from the frame after the one in which it says so, and stops in the frame after it has learned.
  await nextFrame(page);
  await page.keyboard.press(key);
  await sheet.getByRole('button', { name: `Teach a key for ${meaning} (now ${key})` }).waitFor();
  await nextFrame(page);
}

describe('by keyboard alone', () => {
  it('a maker opens the demonstration, works a card, looks at the order and picks a step', async () => {
    const page = await app.open();
    await page.getByRole('button', { name: 'Open the Harbour Clockmaker' }).waitFor();
    await tabTo(page, /^Open the Harbour Clockmaker/);
    await page.keyboard.press('Enter');
    await settled(page);
    const first = await shown(page);
    for (const key of ['Space', 'Enter', 'PageDown', 'ArrowRight', 'ArrowDown']) {
      const before = await shown(page);
      await settled(page);
      await page.keyboard.press(key);
      await expect.poll(async () => (await shown(page)).detail, { message: key }).not.toBe(before.detail);
    }
    for (const key of ['Backspace', 'ArrowLeft', 'PageUp', 'ArrowUp']) {
      const before = await shown(page);
      await page.keyboard.press(key);
      await expect.poll(async () => (await shown(page)).detail, { message: key }).not.toBe(before.detail);
    }
    await tabTo(page, /^undo$/);
    await page.keyboard.press('Space');
    await shows(page, { detail: first.detail, undo: 'Undo' });
    await tabTo(page, /^order$/);
    await page.keyboard.press('Enter');
    await page.locator('li[data-state="ready"]').first().waitFor();
    // The first one is the card on the bench.
    await tabTo(page, /^Work on this/);
    await tabTo(page, /^Work on this/);
    await page.keyboard.press('Enter');
    await settled(page);
    expect((await shown(page)).step).not.toBe(first.step);
  });

  it('Tab goes through every control of the bench, from top to bottom, and shows where it is', async () => {
    const page = await atCount();
    const order: string[] = [];
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    for (let i = 0; i < 12; i += 1) {
      await page.keyboard.press('Tab');
      const at = await page.evaluate(() => {
        const here = document.activeElement;
        const style = here && getComputedStyle(here);
        return {
          // The middle of the card scrolls, and so that it can be scrolled by keys it takes the focus.
          part: here?.getAttribute('data-part') ?? (here?.matches('.middle') ? 'middle' : ''),
          ring: style !== null && style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 2,
        };
      });
      if (at.part === '') break;
      expect(at.ring, at.part).toBe(true);
      order.push(at.part);
      if (at.part === 'pad') break;
    }
    expect(order.filter((part) => part !== 'middle')).toEqual([
      'home',
      'undo',
      'why',
      'order',
      'aloud',
      'more',
      'pad',
    ]);
  });

  it('a sheet opens, keeps the focus inside, closes with Escape and gives the focus back', async () => {
    const page = await atCount();
    const { sheet } = parts(page);
    for (const part of ['why', 'more']) {
      await tabTo(page, new RegExp(`^${part}$`));
      await page.keyboard.press('Enter');
      await sheet.waitFor();
      for (let i = 0; i < 4; i += 1) {
        await page.keyboard.press('Tab');
        expect(
          await page.evaluate(
            () => document.activeElement === document.body || !!document.activeElement?.closest('dialog'),
          ),
        ).toBe(true);
      }
      // The keys of the pad belong to the sheet now.
      await page.keyboard.press('PageDown');
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('Escape');
      await sheet.waitFor({ state: 'detached' });
      await expect.poll(() => focused(page)).toBe(part);
    }
    expect(await taps(page)).toBe(0);
  });
});

describe('a key or pedal at the bench', () => {
  it('counts once a press, also when the pad has the focus', async () => {
    const page = await atCount();
    await parts(page).pad.focus();
    for (const [i, key] of ['Space', 'Enter', 'PageDown'].entries()) {
      await page.keyboard.press(key);
      await shows(page, { figure: String(2 * (i + 1)), inFlight: false });
    }
    await parts(page).pad.click();
    await shows(page, { figure: '8', inFlight: false });
    await page.keyboard.press('Space');
    await shows(page, { figure: '10', inFlight: false });
    expect(await taps(page)).toBe(5);
  });

  it('does not also press the button that has the focus', async () => {
    const page = await atCount();
    await page.keyboard.press('PageDown');
    await shows(page, { figure: '2' });
    await parts(page).undo.focus();
    // Space belongs to the focused button alone, the pedal's key to the pad alone.
    await page.keyboard.press('Space');
    await shows(page, { figure: '0', inFlight: false });
    await parts(page).more.focus();
    await page.keyboard.press('PageDown');
    await shows(page, { figure: '2', inFlight: false });
    expect(await parts(page).sheet.count()).toBe(0);
    expect(await taps(page)).toBe(2);
  });

  it('counts once however long it is held', async () => {
    const page = await atCount();
    for (const key of ['Space', 'PageDown']) {
      // The driver sends every press of a key that is down as a repeat.
      for (let i = 0; i < 6; i += 1) await page.keyboard.down(key);
      await page.keyboard.up(key);
    }
    await shows(page, { figure: '4', inFlight: false });
    for (let i = 0; i < 6; i += 1) await page.keyboard.down('Backspace');
    await page.keyboard.up('Backspace');
    await shows(page, { figure: '2', inFlight: false });
    expect(await taps(page)).toBe(2);
  });

  it('does not scroll the page, and leaves the browser’s own shortcuts alone', async () => {
    const page = await atCount();
    await page.keyboard.press('Control+ArrowRight');
    await page.keyboard.press('Alt+PageDown');
    await page.keyboard.press('PageDown');
    await shows(page, { figure: '2', inFlight: false });
    expect(await page.evaluate(() => scrollY)).toBe(0);
    expect(await taps(page)).toBe(1);
  });

  it('is learned, kept over a reload and forgotten', async () => {
    const page = await atCount();
    await parts(page).more.click();
    await teach(page, 'the pad', 'b');
    await teach(page, 'undo', 'F9');
    await page.keyboard.press('Escape');
    await parts(page).sheet.waitFor({ state: 'detached' });
    await page.keyboard.press('b');
    await shows(page, { figure: '2', inFlight: false });
    await page.reload();
    await settled(page);
    await page.keyboard.press('b');
    await shows(page, { figure: '4', inFlight: false });
    await page.keyboard.press('F9');
    await shows(page, { figure: '2', inFlight: false });
    await parts(page).more.click();
    await parts(page).sheet.getByRole('button', { name: 'Forget taught keys' }).click();
    await page.keyboard.press('Escape');
    await page.keyboard.press('b');
    await page.keyboard.press('PageDown');
    await shows(page, { figure: '4', inFlight: false });
    expect(await taps(page)).toBe(3);
  });

  it('is left to a field in which the maker writes', async () => {
    const page = await atCount();
    await parts(page).more.click();
    const note = parts(page).sheet.getByLabel('A note');
    await note.fill('silk thread');
    await note.press('Space');
    await note.press('Backspace');
    await note.press('Backspace');
    expect(await note.inputValue()).toBe('silk threa');
    await parts(page).sheet.getByRole('button', { name: 'Keep the note' }).click();
    await expect.poll(() => wordsOf(parts(page).sheet)).toContain('silk threa');
    expect(await taps(page)).toBe(0);
  });
});
