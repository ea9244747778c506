import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { useApp } from './app.ts';
import { settled, shown, stored, wordsOf } from './bench-page.ts';
import { PHONE } from './chromium.ts';
import { addGarment, beginOwn, described } from './describe-page.ts';
import {
  AGAIN,
  type Doings,
  NOTHING,
  SLOW,
  secondsAtScreen,
  secondsOf,
  sumOf,
  tableOf,
  USUAL,
} from './hand-time.ts';
import { personAt } from './person.ts';

/** A length of the paper pattern, as it is measured, and the field that it belongs to. */
type Measured = readonly (readonly [field: string, length: string])[];

/**
 * An invented paper pattern: a blouse with a panelled front, a flat collar with points and buttoned cuffs. Its pieces are
 * 1 centre front, 2 side front, 3 back, 4 sleeve, 5 front facing, 6 pocket, and the cuff and the collar (upper and under
 * alike). Measured in inches along the seam lines; two pieces that make one front are measured together.
 */
const PATTERN = {
  fronts: [
    ['chest', '10 1/4'],
    ['neckWide', '2 3/4'],
    ['shoulder', '4 7/8'],
    ['armhole', '9 1/4'],
    ['side', '14 1/2'],
    ['neckDeep', '2 7/8'],
  ],
  back: [
    ['chest', '10 1/4'],
    ['neckWide', '2 7/8'],
    ['shoulder', '5'],
    ['armhole', '9 1/4'],
    ['side', '14 1/2'],
    ['neckDeep', '7/8'],
  ],
  collar: [['width', '2 5/8']],
  facing: [['width', '2 1/4']],
  sleeve: [
    ['length', '22 3/4'],
    ['wide', '13 3/4'],
    ['lower', '11 1/2'],
  ],
  cuff: [
    ['wrist', '6 3/4'],
    ['depth', '2 3/4'],
  ],
  pocket: [
    ['wide', '4 3/4'],
    ['high', '5 1/4'],
  ],
} as const satisfies Record<string, Measured>;

/** The hem is printed on the paper, so it is read there. */
const HEM = '3/4';

/** As she types the side of the back first. */
const SLIP = '15 1/2';

const app = useApp({ ...PHONE, deviceScaleFactor: 1 });
const shot = process.env.PICTURES;
let pictures = 0;
async function picture(page: Page, name: string): Promise<void> {
  pictures += 1;
  if (shot) await page.screenshot({ path: `${shot}/${String(pictures).padStart(2, '0')}-${name}.png` });
}

it('is described from a paper pattern and its first card opened within ten minutes, on a telephone with no network', async () => {
  const page = await app.open();
  await stored(page);
  await app.unplug();
  const she = await personAt(page);
  const { overview, garment, units, unit, field, misfits, toBench } = described(page);
  const parts: [string, Doings][] = [];
  const part = (name: string): void => {
    parts.push([name, she.part()]);
  };
  const button = (name: string) => page.getByRole('button', { name, exact: true });
  const entry = (name: string) => field(name).locator('input');
  /** What stands chosen already needs no touch. */
  const chooses = async (name: string, value: string): Promise<void> => {
    const option = field(name).locator('label.option', { has: page.locator(`input[value="${value}"]`) });
    if (!(await option.locator('input').isChecked())) await she.touch(option);
  };
  /** From what is likely next, where it is among them; else from all there are. */
  const begins = async (id: string): Promise<void> => {
    const part = page.locator(`a[data-unit="${id}"][data-fits]`);
    if ((await part.count()) === 0) {
      await she.touch(page.getByRole('link', { name: 'Ready-made part' }));
      await she.sees(units);
    }
    await she.touch(part);
    await she.sees(unit);
  };
  const fills = async (measured: Measured, slip: Record<string, string> = {}): Promise<void> => {
    for (const [i, [name, length]] of measured.entries()) {
      await she.measures(entry(name), slip[name] ?? length);
      if (i + 1 < measured.length) await she.goesOn();
    }
  };
  const puts = async (name: string): Promise<void> => {
    await picture(page, name);
    await she.touch(button('Put it on'));
    await she.sees(garment);
    part(name);
    await picture(page, `${name}-on`);
  };

  await she.sees(page.locator('[data-part="outfits"]'));
  await picture(page, 'start');
  await she.touch(button('Describe your own outfit'));
  await she.types(page.getByLabel('Its name'), 'Spring concert');
  await she.types(page.getByLabel('Ready by'), '02132027');
  expect(await page.getByLabel('Ready by').inputValue()).toBe('2027-02-13');
  await she.touch(page.locator('label.option', { hasText: 'inches' }));
  await picture(page, 'own');
  await she.touch(button('Begin it'));
  await she.sees(overview);
  await she.types(page.getByLabel('What it is'), 'Blouse');
  await picture(page, 'garment');
  // The key of the keyboard hands it in.
  await she.goesOn();
  await she.sees(garment);
  part('outfit and garment');

  await begins('princess-front');
  await fills(PATTERN.fronts);
  await puts('fronts');

  // One length is mistyped: she is told by how much it does not fit, and mends it.
  await begins('plain-back');
  await fills(PATTERN.back, { side: SLIP });
  expect(await wordsOf(misfits)).toContain('1 in longer');
  await picture(page, 'misfit');
  await she.types(entry('side'), PATTERN.back[4][1]);
  expect(await misfits.count()).toBe(0);
  await puts('back');

  await begins('flat-collar');
  await fills(PATTERN.collar);
  await chooses('corner', 'point');
  await puts('collar');

  await begins('facing');
  await fills(PATTERN.facing);
  await puts('facing');

  await begins('plain-sleeve');
  await fills(PATTERN.sleeve);
  await chooses('ends', 'cuff');
  await puts('sleeve');

  await begins('buttoned-cuff');
  await fills(PATTERN.cuff);
  await puts('cuff');

  await begins('hem');
  await she.types(entry('turn'), HEM);
  await puts('hem');

  await she.touch(page.getByRole('link', { name: 'Own piece' }));
  await she.sees(page.locator('main[data-part="piece"]'));
  await fills(PATTERN.pocket);
  await she.types(entry('name'), 'Pocket');
  await picture(page, 'pocket');
  await she.goesOn();
  await page.getByRole('heading', { level: 1, name: 'Pocket' }).waitFor();
  await she.sees(page.locator('main[data-part="piece"]'));
  part('pocket');
  await picture(page, 'pocket-in');

  await she.touch(button('Put a work on this piece'));
  await she.sees(page.locator('main[data-part="work"]'));
  await she.touch(page.locator('label[data-kind="own"]'));
  await she.types(field('say').locator('textarea'), 'Turn in its edges, stitch it to the left front');
  await picture(page, 'work');
  await she.touch(button('Put it on'));
  await she.sees(page.locator('main[data-part="piece"], main[data-part="garment"]'));
  await picture(page, 'work-on');
  part('work on the pocket');

  await she.touch(toBench);
  await settled(page);
  await she.sees(page.locator('[data-part="card"]'));
  await picture(page, 'first-card');
  expect((await shown(page)).words).toContain('Blouse');
  part('first card');

  const all = parts.reduce((sum, [, doings]) => sumOf(sum, doings), NOTHING);
  console.log(`\n${tableOf(parts, [AGAIN, USUAL, SLOW])}\n`);
  expect(all.measured).toBe(Object.values(PATTERN).flat().length);
  expect(secondsOf(all, USUAL)).toBeLessThan(10 * 60);
  // Without the measuring, which no screen can shorten; and what reading and swiping may come to at the most.
  expect(secondsAtScreen(all, USUAL)).toBeLessThan(6.5 * 60);
  expect(all.swipes).toBeLessThan(10);
  expect(all.words).toBeLessThan(500);
});

it('takes the same figures from keys alone, with letters twice as large', async () => {
  const page = await app.open();
  const { garment, unit, field } = described(page);
  await beginOwn(page, 'Spring concert', '2027-02-13');
  await addGarment(page, 'Blouse');
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  /** Goes on with the key until the control that is meant is in hand. */
  const tabTo = async (is: (one: Element) => boolean): Promise<void> => {
    const test = `(${is.toString()})(document.activeElement)`;
    for (let n = 0; n < 60; n += 1) {
      await page.keyboard.press('Tab');
      if (await page.evaluate<boolean>(test)) return;
    }
    throw new Error(`Not to be reached with the key: ${test}`);
  };
  await tabTo((one) => one.matches('[data-part="next"] a[data-unit="princess-front"]'));
  await picture(page, 'begin-200');
  await page.keyboard.press('Enter');
  await unit.waitFor();
  await tabTo((one) => one.matches('[data-field="chest"] input'));
  for (const [name, length] of PATTERN.fronts) {
    expect(
      await field(name)
        .locator('input')
        .evaluate((one) => one === document.activeElement),
    ).toBe(true);
    await page.keyboard.type(length);
    if (name !== 'neckDeep') await page.keyboard.press('Enter');
  }
  await picture(page, 'fronts-200');
  await tabTo((one) => one.matches('button[type="submit"]'));
  await picture(page, 'put-on-200');
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  await page.keyboard.press('Enter');
  await garment.waitFor();
  await page.locator('.just-put').waitFor();
  await picture(page, 'garment-200');
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  await page
    .locator('.just-put')
    .getByRole('link', { name: /^Change/ })
    .click();
  for (const [name, length] of PATTERN.fronts)
    expect(await field(name).locator('input').inputValue(), name).toBe(length);
});
