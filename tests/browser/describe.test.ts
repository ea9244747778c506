import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { useApp } from './app.ts';
import { axeFaults, tooWide } from './axe.ts';
import { parts, press, shown, touch, wordsOf } from './bench-page.ts';
import { PHONE } from './chromium.ts';
import { addGarment, beginOwn, described, firstCard, openUnit, putOn } from './describe-page.ts';

const app = useApp({ ...PHONE, deviceScaleFactor: 1 });

async function clean(page: Page, where: string): Promise<void> {
  expect.soft(await axeFaults(page), where).toEqual([]);
  expect.soft(await tooWide(page), `${where}: wider than the screen`).toBeLessThanOrEqual(0);
}

describe('a maker with an outfit of her own', () => {
  it('describes a blouse with ready-made parts, changes a figure, takes it back, and opens the first card', async () => {
    const page = await app.open();
    const { field, card, undo, unit, garment, overview } = described(page);
    await beginOwn(page, 'The lamplighter', '2027-02-13');
    await clean(page, 'an outfit with nothing in it');
    await addGarment(page, 'Blouse');
    await clean(page, 'a garment with nothing in it');
    for (const one of ['plain-front', 'plain-back', 'plain-sleeve']) await putOn(page, one);
    expect(await described(page).misfits.count()).toBe(0);
    await clean(page, 'a garment');

    // A figure is changed later, and one touch takes that back.
    await touch(card('front').getByRole('link', { name: /^Change/ }));
    const length = field('side').locator('input');
    const was = await length.inputValue();
    await length.fill('18 1/2');
    await clean(page, 'a part being changed');
    await touch(page.getByRole('button', { name: 'Change it' }));
    await garment.waitFor();
    expect(await wordsOf(undo)).toMatch(/changed Front/);
    await touch(card('front').getByRole('link', { name: /^Change/ }));
    expect(await length.inputValue()).toBe('18 1/2');
    await touch(undo);
    await expect.poll(() => length.inputValue()).toBe(was);
    await touch(page.getByRole('link', { name: 'Blouse' }));

    await firstCard(page);
    const first = await shown(page);
    expect(first.words).toContain('Blouse');
    expect((await press(page)).pad).not.toBe('');

    // And the way back from the bench.
    await touch(parts(page).more);
    await touch(page.getByRole('link', { name: 'Change the description' }));
    await garment.waitFor();
    await touch(page.getByRole('link', { name: 'The lamplighter' }));
    await overview.waitFor();
    expect(await wordsOf(overview.locator('[data-garment]'))).toMatch(/\d+ pieces, \d+ steps/);
    expect(await unit.count()).toBe(0);
  });

  it('finds what she typed again after the page was loaded anew', async () => {
    const page = await app.open();
    const { field, unit } = described(page);
    await touch(page.getByRole('button', { name: 'Describe your own outfit' }));
    await page.getByLabel('Its name').fill('The lamplighter');
    await page.reload();
    expect(await page.getByLabel('Its name').inputValue()).toBe('The lamplighter');
    await page.getByLabel('Ready by').fill('2027-02-13');
    await touch(page.getByRole('button', { name: 'Begin it' }));
    await addGarment(page, 'Blouse');
    await openUnit(page, 'plain-front');
    await field('shoulder').locator('input').fill('121');
    await page.reload();
    await unit.waitFor();
    expect(await field('shoulder').locator('input').inputValue()).toBe('121');
    await touch(page.getByRole('button', { name: 'Put it on' }));
    await described(page).garment.waitFor();
    await touch(
      described(page)
        .card('front')
        .getByRole('link', { name: /^Change/ }),
    );
    expect(await field('shoulder').locator('input').inputValue()).toBe('121');
  });

  it('is told where there is nothing to sew yet, and one button leads to the description', async () => {
    const page = await app.open();
    await beginOwn(page, 'The lamplighter', '2027-02-13', 'millimetres');
    for (const screen of ['bench', 'order', 'paper']) {
      await page.goto(`${app.served.origin}/#/${screen}/the-lamplighter`);
      await page.getByRole('heading', { name: 'Nothing to sew yet' }).waitFor();
      await clean(page, screen);
    }
    await touch(page.getByRole('link', { name: 'Go on describing it' }));
    await described(page).overview.waitFor();
    await page.goto(`${app.served.origin}/#/`);
    await touch(page.getByRole('link', { name: /^Go on describing it/ }));
    await described(page).overview.waitFor();
  });

  it('once sewing has begun, sees what a change touches before it is accepted', async () => {
    const page = await app.open();
    const { card, effect, garment, undo, field } = described(page);
    await beginOwn(page, 'The lamplighter', '2027-02-13');
    await addGarment(page, 'Blouse');
    for (const one of ['plain-front', 'plain-back']) await putOn(page, one);
    await firstCard(page);
    const { step } = await shown(page);
    while ((await shown(page)).step === step) await press(page);
    await touch(parts(page).more);
    await touch(page.getByRole('link', { name: 'Change the description' }));
    await touch(card('back').getByRole('link', { name: /^Change/ }));
    await field('side').locator('input').fill('18');
    await touch(page.getByRole('button', { name: 'Change it' }));
    await effect.waitFor();
    await clean(page, 'what a change touches');
    await touch(page.getByRole('button', { name: 'Leave it as it was' }));
    await effect.waitFor({ state: 'detached' });
    // What was typed stands in the form still.
    expect(await field('side').locator('input').inputValue()).toBe('18');
    await touch(page.getByRole('button', { name: 'Change it' }));
    await touch(page.getByRole('button', { name: 'Change it so' }));
    await garment.waitFor();
    expect(await wordsOf(undo)).toMatch(/changed Back/);
  });
});
