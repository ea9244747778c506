import type { Page } from 'playwright-core';
import type { Card } from '../../src/order/card-types.ts';
import type { Act } from '../../src/store/deed.ts';
import { demo, type demos } from '../outfit/demo-files.ts';
import { bringIn, openDemo, parts, press, settled, touch } from './bench-page.ts';
import { cardOf, firstWith, orderOf, savedCopy, worked } from './demo.ts';
import { describePlaces } from './describe-places.ts';
import { askWhy, orderParts, toOrder } from './order-page.ts';
import { tracePlaces } from './trace-places.ts';
import { tryOnPlaces } from './try-on-places.ts';
import { wearerPlaces } from './wearer-places.ts';

/** A screen in a state worth looking at. */
export interface Place {
  readonly name: string;
  /** True for the bench itself, without a sheet over it. */
  readonly bench: boolean;
  /** Goes there in a fresh browser, from the app's first page at `origin`. */
  go(page: Page, origin: string): Promise<void>;
}

const outfit = demo('harbour-clockmaker');
const running = orderOf(outfit);
const cards = running.sequence.map((id) => cardOf(outfit, running, id));

/** Begins at the bench with everything before `step` done, and these acts besides. */
async function benchAt(
  page: Page,
  origin: string,
  step: string,
  acts: readonly Act[] = [],
  name: (typeof demos)[number] = 'harbour-clockmaker',
) {
  const own = name === 'harbour-clockmaker' ? running : orderOf(demo(name));
  const before = own.sequence.slice(0, own.sequence.indexOf(step));
  await page.goto(`${origin}/`);
  await bringIn(page, await savedCopy(name, [...worked(before, step), ...acts]));
  await touch(page.getByRole('link', { name: /^(Begin|Go on)/ }));
  await settled(page);
}

const words = (card: Card): number =>
  [
    card.say,
    ...card.cautions,
    ...card.settings.map((s) => s.name + s.figure),
    ...card.advice.map((a) => a.say),
  ].join().length;

/** The card with the most on it. */
const fullest = cards.reduce((most, card) => (words(card) > words(most) ? card : most));
const plainest = cards.find((card) => card.readout.kind === 'none' && card.settings.length > 1)!;
const marks = firstWith(outfit, 'marks');
const count = firstWith(outfit, 'count');
const shirt = demo('plain-shirt');
const timers = firstWith(shirt, 'timers', firstWith(shirt, 'timers').step);

/** Every screen, in every state that looks different. */
export const places: readonly Place[] = [
  {
    name: 'outfits, none yet',
    bench: false,
    async go(page, origin) {
      await page.goto(`${origin}/`);
      await page.getByRole('button', { name: 'Open the plain shirt' }).waitFor();
    },
  },
  {
    name: 'outfits, two in work',
    bench: false,
    async go(page, origin) {
      await page.goto(`${origin}/`);
      await bringIn(page, await savedCopy('harbour-clockmaker', worked(marks.before, marks.step)));
      await openDemo(page, 'plain-shirt');
      await touch(parts(page).home);
      await page.locator('a[data-part="save-copy"]').nth(1).waitFor();
    },
  },
  {
    name: 'bench, ticks',
    bench: true,
    async go(page, origin) {
      await page.goto(`${origin}/`);
      await openDemo(page);
      await press(page);
      await press(page);
    },
  },
  {
    name: 'bench, marks',
    bench: true,
    async go(page, origin) {
      await benchAt(page, origin, marks.step);
      await press(page);
      await press(page);
    },
  },
  {
    name: 'bench, settings',
    bench: true,
    go: (page, origin) => benchAt(page, origin, plainest.step),
  },
  {
    name: 'bench, count',
    bench: true,
    async go(page, origin) {
      await benchAt(page, origin, count.step);
      for (let i = 0; i < 4; i += 1) await press(page);
    },
  },
  {
    name: 'bench, timers',
    bench: true,
    async go(page, origin) {
      await benchAt(page, origin, timers.step, [], 'plain-shirt');
      await press(page);
      await press(page);
    },
  },
  {
    name: 'bench, the fullest card',
    bench: true,
    go: (page, origin) => benchAt(page, origin, fullest.step),
  },
  {
    name: 'bench, finished',
    bench: true,
    async go(page, origin) {
      await page.goto(`${origin}/`);
      await bringIn(page, await savedCopy('plain-shirt', worked(orderOf(shirt).sequence)));
      await touch(page.getByRole('link', { name: /^Go on/ }));
      await page.getByRole('heading', { name: /finished/ }).waitFor();
    },
  },
  {
    name: 'sheet, why now',
    bench: false,
    async go(page, origin) {
      await benchAt(page, origin, marks.step);
      await touch(parts(page).why);
      await parts(page).sheet.waitFor();
    },
  },
  {
    name: 'sheet, more',
    bench: false,
    async go(page, origin) {
      await benchAt(page, origin, marks.step);
      await touch(parts(page).more);
      await parts(page).sheet.waitFor();
    },
  },
  {
    name: 'running order',
    bench: false,
    async go(page, origin) {
      await benchAt(page, origin, marks.step);
      await toOrder(page);
    },
  },
  {
    name: 'running order, why not yet',
    bench: false,
    async go(page, origin) {
      await benchAt(page, origin, marks.step);
      await toOrder(page);
      const last = running.sequence.at(-1)!;
      await askWhy(page, last);
    },
  },
  {
    name: 'running order, a ring',
    bench: false,
    async go(page, origin) {
      const link = running.constraints.find((c) => running.ready.has(c.before))!;
      const added: Act = {
        kind: 'reason-added',
        before: link.after,
        after: link.before,
        because: 'I like it better so',
      };
      await page.goto(`${origin}/`);
      await bringIn(page, await savedCopy('harbour-clockmaker', [added]));
      await touch(page.getByRole('link', { name: /^Order/ }));
      await orderParts(page).loop.waitFor();
    },
  },
  {
    name: 'bench, stuck in a ring',
    bench: true,
    async go(page, origin) {
      const link = running.constraints.find((c) => running.ready.has(c.before))!;
      const added: Act = {
        kind: 'reason-added',
        before: link.after,
        after: link.before,
        because: 'I like it better so',
      };
      await page.goto(`${origin}/`);
      await bringIn(page, await savedCopy('harbour-clockmaker', [added]));
      await touch(page.getByRole('link', { name: /^(Begin|Go on)/ }));
      await page.getByRole('heading', { name: /ring/ }).waitFor();
    },
  },
  {
    name: 'reckoner, the list',
    bench: false,
    async go(page, origin) {
      await page.goto(`${origin}/#/reckoner/gathered-frill`);
      await touch(page.getByRole('link', { name: 'Reckoner' }));
      await page.locator('.sheet-small').nth(3).waitFor();
    },
  },
  {
    name: 'reckoner, tucks',
    bench: false,
    async go(page, origin) {
      await page.goto(`${origin}/#/reckoner/parallel-tucks`);
      await touch(page.getByRole('button', { name: 'Inches' }));
      await page.locator('[data-part="sheet-drawing"]').waitFor();
    },
  },
  {
    name: 'reckoner, marks and drawing',
    bench: false,
    async go(page, origin) {
      await page.goto(`${origin}/#/reckoner/stretch-leg`);
      await page.getByRole('button', { name: 'Next mark' }).scrollIntoViewIfNeeded();
    },
  },
  {
    name: 'reckoner, a fault',
    bench: false,
    async go(page, origin) {
      await page.goto(`${origin}/#/reckoner/parallel-tucks`);
      await page.locator('[data-field="depth"] input').fill('3/');
      await page.locator('[data-part="fault"]').waitFor();
    },
  },
  {
    name: 'pattern sheets',
    bench: false,
    async go(page, origin) {
      await page.goto(`${origin}/`);
      await openDemo(page);
      await touch(parts(page).home);
      await touch(page.getByRole('link', { name: /^Pattern/ }).first());
      await page.locator('[data-part="page-count"]').waitFor();
    },
  },
  {
    name: 'where figures come from',
    bench: false,
    async go(page, origin) {
      await page.goto(`${origin}/#/sources`);
      await page.getByRole('heading', { level: 1, name: 'Where figures come from' }).waitFor();
      await page.getByRole('searchbox', { name: 'Search' }).fill('thread');
    },
  },
  {
    name: 'bench, figures from the reckoner',
    bench: true,
    go: (page, origin) =>
      benchAt(page, origin, plainest.step, [
        {
          kind: 'reckoned',
          step: plainest.step,
          reckoning: 'parallel-tucks',
          title: 'Parallel tucks',
          unit: 'in',
          entries: { count: '5' },
          figures: [
            { name: 'Cloth to cut, without allowances', figure: '7 1/2 in' },
            { name: 'Cloth that the tucks take', figure: '2 1/2 in' },
          ],
        },
      ]),
  },
  {
    name: 'an outfit that is not here',
    bench: false,
    async go(page, origin) {
      await page.goto(`${origin}/#/bench/nowhere`);
      await page.getByRole('heading', { name: 'This outfit is not on this device' }).waitFor();
    },
  },
  ...describePlaces,
  ...wearerPlaces,
  ...tracePlaces,
  ...tryOnPlaces,
];

/** Waits until nothing on the page moves any more and its letters are there. */
export const still = (page: Page): Promise<unknown> =>
  page.evaluate(async () => {
    await document.fonts.ready;
    // A layout that follows the size of the letters is there in the frame after the one that measures.
    for (let frame = 0; frame < 3; frame += 1) await new Promise((done) => requestAnimationFrame(done));
    await Promise.all(document.getAnimations().map((one) => one.finished.catch(() => undefined)));
  });
