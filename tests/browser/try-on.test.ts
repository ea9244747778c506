import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { inches } from '../../src/length/length.ts';
import { useApp } from './app.ts';
import { touch, wordsOf } from './bench-page.ts';
import { PHONE } from './chromium.ts';
import { controls, crowded } from './legibility.ts';
import { still } from './places.ts';
import { deedsOf, toTryOn, tried } from './try-on-page.ts';

const app = useApp({ ...PHONE, deviceScaleFactor: 1 });

/** A picture as a camera makes it, far larger than what is kept: noise, which no JPEG makes small. */
const photo = (page: Page, width: number, height: number): Promise<Buffer> =>
  page
    .evaluate(
      ([wide, high]) => {
        const canvas = Object.assign(document.createElement('canvas'), { width: wide, height: high });
        const paper = canvas.getContext('2d');
        if (!paper) return '';
        const dots = paper.createImageData(canvas.width, canvas.height);
        for (let i = 0; i < dots.data.length; i += 1) dots.data[i] = i % 4 === 3 ? 255 : (i * 7919) % 251;
        paper.putImageData(dots, 0, 0);
        return canvas.toDataURL('image/jpeg', 0.95).split(',')[1] ?? '';
      },
      [width, height] as const,
    )
    .then((letters) => Buffer.from(letters, 'base64'));

describe('a maker who tries a shirt on', () => {
  it('is at what she sees in two touches, notes it with the third, and has it kept with the reload', async () => {
    const page = await app.context.newPage();
    await toTryOn(page, app.served.origin);
    const { place, entry, noteIt, notes, undo, cure } = tried(page);
    await touch(place('upper side'));
    await touch(entry('surplus-at-the-upper-side'));
    await touch(noteIt);
    await notes.first().waitFor();
    await expect.poll(() => deedsOf(page, 'seen')).toHaveLength(1);
    await page.reload();
    await notes.first().waitFor();
    expect(await wordsOf(notes.first())).toMatch(/under the arm/);
    expect(await wordsOf(place('upper side'))).toMatch(/1/);

    // The amount comes later, in her own units as she says it.
    await touch(page.getByRole('link', { name: /^Look again/ }));
    await tried(page).amount.fill('five eighths');
    await touch(noteIt);
    await cure.waitFor();
    expect(await wordsOf(notes.first())).toContain('5/8 in');
    await expect.poll(() => deedsOf(page, 'undone')).toHaveLength(1);
    const [, kept] = await deedsOf(page, 'seen');
    expect(kept?.act).toMatchObject({ garment: 'shirt', side: 'both', amount: inches(5, 8) });

    // One touch brings the note back as it was, one more takes it off.
    await touch(undo);
    await expect.poll(() => wordsOf(notes.first())).toContain('not measured yet');
    await touch(page.getByRole('link', { name: /^Look again/ }));
    await touch(page.locator('[data-amount="3/4"]'));
    await touch(noteIt);
    await expect.poll(() => wordsOf(notes.first())).toContain('3/4 in');
    await expect.poll(() => deedsOf(page, 'undone')).toHaveLength(3);
    await touch(page.getByRole('button', { name: /^Take off/ }));
    await expect.poll(() => notes.count()).toBe(0);
    await expect.poll(() => deedsOf(page, 'undone')).toHaveLength(4);
    await page.reload();
    await touch(place('upper side'));
    await touch(entry('surplus-at-the-upper-side'));
    expect(await tried(page).amount.inputValue()).toBe('3/4');
  });

  it('touches the body itself as well as the names beside it', async () => {
    const page = await app.context.newPage();
    await toTryOn(page, app.served.origin);
    const box = await page.locator('.body-map svg').boundingBox();
    if (!box) throw new Error('There is no body.');
    // The neck, as the figure is drawn.
    await page.touchscreen.tap(
      box.x + ((50 + 27.5) / 155) * box.width,
      box.y + ((31 + 4) / 208) * box.height,
    );
    await page.locator('[data-part="seen-here"]').waitFor();
    expect(await page.locator('main h1').textContent()).toBe('Neck, front');
  });

  it('keeps a photo with the note, small, and shows it after a reload', async () => {
    const page = await app.context.newPage();
    await toTryOn(page, app.served.origin);
    const large = await photo(page, 3000, 2000);
    expect(large.length).toBeGreaterThan(500_000);
    await touch(tried(page).place('upper side'));
    await touch(tried(page).entry('surplus-at-the-upper-side'));
    const chooser = tried(page).photo.locator('input[type="file"]');
    expect(await chooser.getAttribute('capture')).toBe('environment');
    await chooser.setInputFiles({ name: 'arm.jpg', mimeType: 'image/jpeg', buffer: large });
    const shown = tried(page).photo.locator('img');
    await shown.waitFor();
    await page.reload();
    await shown.waitFor();
    await chooser.setInputFiles({
      name: 'arm.txt',
      mimeType: 'image/jpeg',
      buffer: Buffer.from('no picture'),
    });
    await page.getByText('This picture cannot be read here').waitFor();
    await touch(tried(page).noteIt);
    await expect.poll(() => deedsOf(page, 'seen')).toHaveLength(1);
    await page.reload();
    const small = page.locator('li[data-note] img');
    await small.waitFor();
    const size = await small.evaluate(async (img: HTMLImageElement) => {
      await img.decode();
      return { width: img.naturalWidth, height: img.naturalHeight, letters: img.src.length };
    });
    expect(Math.max(size.width, size.height)).toBeLessThanOrEqual(1024);
    expect(size.width / size.height).toBeCloseTo(1.5, 1);
    expect(size.letters).toBeLessThanOrEqual((170 * 1024 * 4) / 3 + 30);
  });

  it('reaches every place with the keyboard alone, and notes with it', async () => {
    const page = await app.context.newPage();
    await toTryOn(page, app.served.origin);
    await page.locator('[data-part="check-so"]').focus();
    await page.keyboard.press('Enter');
    await page.getByText(/^1 of \d+$/).waitFor();
    const places = await page.locator('button[data-place]').count();
    const met: string[] = [];
    for (let i = 0; i < places + 6; i += 1) {
      await page.keyboard.press('Tab');
      met.push(await page.evaluate(() => document.activeElement?.getAttribute('data-place') ?? ''));
    }
    expect(met.filter(Boolean)).toHaveLength(places);
    await tried(page).place('upper side').focus();
    await page.keyboard.press('Enter');
    await tried(page).entry('surplus-at-the-upper-side').focus();
    await page.keyboard.press('Enter');
    await tried(page).amount.fill('3/4');
    await page.keyboard.press('Enter');
    await tried(page).notes.first().waitFor();
    expect(await wordsOf(tried(page).notes.first())).toContain('3/4 in');
  });

  it.each([
    ['shirt', 390, 844],
    ['hose', 390, 844],
    ['sleeves', 320, 568],
    ['shirt', 820, 1180],
  ])('has room for a finger at each place of the %s at %i × %i', async (garment, width, height) => {
    const page = await app.context.newPage();
    await toTryOn(page, app.served.origin, garment);
    await page.setViewportSize({ width, height });
    for (const view of await page.locator('.views button').all()) {
      await touch(view);
      await still(page);
      const small = (await controls(page)).filter((one) => one.width < 47.99 || one.height < 47.99);
      expect.soft(small).toEqual([]);
      expect.soft(await crowded(page, 8)).toEqual([]);
    }
  });
});
