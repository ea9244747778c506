import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { writeSource } from '../../src/cloth/source.ts';
import { explain } from '../../src/order/explain.ts';
import { demo } from '../outfit/demo-files.ts';
import { useApp } from './app.ts';
import { openDemo, parts, settled, shown, touch, wordsOf } from './bench-page.ts';
import { cardOf, orderOf } from './demo.ts';
import { askWhy, closeSheet, listed, orderParts, toBench, toOrder } from './order-page.ts';

const app = useApp();
const outfit = demo('harbour-clockmaker');
const running = orderOf(outfit);

/** Opens the demonstration and its running order. */
async function openOrder(): Promise<Page> {
  const page = await app.open();
  await openDemo(page);
  await toOrder(page);
  return page;
}

/** Adds a reason in the open sheet: the step of the sheet goes before or after another. */
async function addReason(
  page: Page,
  side: 'before' | 'after',
  other: string,
  because: string,
): Promise<void> {
  const { sheet } = orderParts(page);
  await sheet.getByLabel('This step goes').selectOption(side);
  await sheet.getByLabel('which step').selectOption(other);
  await sheet.getByLabel('because').fill(because);
  await touch(sheet.getByRole('button', { name: 'Add the reason' }));
}

describe('the running order', () => {
  it('lists every step once, in the derived order, and says which are ready', async () => {
    const page = await openOrder();
    const lines = await listed(page);
    expect(lines.map(({ step }) => step)).toEqual(running.sequence);
    for (const { step, state } of lines) {
      if (step === running.sequence[0]) expect(state).toBe('open');
      else expect([step, state]).toEqual([step, running.ready.has(step) ? 'ready' : 'waits']);
    }
    const words = await wordsOf(page.locator('main'));
    expect(words).toContain(`0 of ${running.sequence.length} steps done, ${running.ready.size} ready`);
    expect(words).toContain(`${running.changeovers} changes`);
  });

  it('opens any step that is ready, and none that waits', async () => {
    const page = await openOrder();
    const { ready, waiting } = orderParts(page);
    expect(await waiting.getByRole('button', { name: /^Work on this/ }).count()).toBe(0);
    expect(await ready.getByRole('button', { name: /^Work on this/ }).count()).toBe(running.ready.size - 1);
    const picked = [...running.ready].at(-1)!;
    await touch(
      orderParts(page)
        .line(picked)
        .getByRole('button', { name: /^Work on this/ }),
    );
    await settled(page);
    expect((await shown(page)).step).toBe(picked);
    expect(await wordsOf(parts(page).instruction)).toBe(cardOf(outfit, running, picked).say);
    await page.reload();
    await settled(page);
    expect((await shown(page)).step).toBe(picked);
  });

  it('says why not yet, why now and what waits, each with its source', async () => {
    const page = await openOrder();
    const waiting = running.sequence.find((id) => explain(running, id).notYet.length > 1)!;
    const why = explain(running, waiting);
    await askWhy(page, waiting);
    const words = await wordsOf(orderParts(page).sheet);
    expect(words).toContain(running.steps.get(waiting)!.say);
    for (const reason of [...why.notYet, ...why.waits]) {
      expect(words).toContain(reason.say);
      expect(words).toContain(reason.because);
      expect(words).toContain(writeSource(reason.source));
    }
    await page.keyboard.press('Escape');
    await orderParts(page).sheet.waitFor({ state: 'detached' });
  });

  it('lets a reason be waived, shows that on the card, and takes it back', async () => {
    const page = await openOrder();
    const held = running.sequence.find((id) => {
      const { notYet } = explain(running, id);
      return notYet.length === 1 && notYet[0]?.waive !== '';
    })!;
    const [reason] = explain(running, held).notYet;
    const after = orderOf(outfit, { waived: new Set([reason!.waive]) });
    expect(after.ready.has(held)).toBe(true);
    await askWhy(page, held);
    await touch(orderParts(page).sheet.getByRole('button', { name: 'Waive this reason' }).first());
    await expect.poll(() => listed(page)).toContainEqual({ step: held, state: 'ready' });
    expect((await listed(page)).map(({ step }) => step)).toEqual(after.sequence);
    await closeSheet(page);
    await touch(
      orderParts(page)
        .line(held)
        .getByRole('button', { name: /^Work on this/ }),
    );
    await settled(page);
    await expect
      .poll(async () => (await shown(page)).words)
      .toContain(`You waived: ${cardOf(outfit, after, held).waived[0]}`);
    await toOrder(page);
    await expect.poll(() => wordsOf(orderParts(page).undo)).toBe('Undo: waiving');
    await touch(orderParts(page).undo);
    await expect.poll(async () => (await listed(page)).map(({ step }) => step)).toEqual(running.sequence);
  });

  it('lets a reason be added, and keeps it', async () => {
    const page = await openOrder();
    const [first, second] = [...running.ready];
    const reason = { before: second!, after: first!, because: 'the big table is laid already' };
    const after = orderOf(outfit, { added: [reason] });
    await askWhy(page, first!);
    await addReason(page, 'after', second!, reason.because);
    await expect.poll(() => wordsOf(orderParts(page).sheet)).toContain(reason.because);
    await closeSheet(page);
    await expect.poll(async () => (await listed(page)).map(({ step }) => step)).toEqual(after.sequence);
    await page.reload();
    await orderParts(page).lines.first().waitFor();
    await expect.poll(async () => (await listed(page)).map(({ step }) => step)).toEqual(after.sequence);
  });

  it('tells a ring of reasons in words, and opens it again', async () => {
    const page = await openOrder();
    const link = running.constraints.find((c) => running.ready.has(c.before))!;
    await askWhy(page, link.before);
    await addReason(page, 'after', link.after, 'I like it better so');
    const { loop, undo, sheet } = orderParts(page);
    await loop.waitFor();
    const words = await wordsOf(loop);
    expect(words).toContain('I like it better so');
    expect(words).toContain(running.steps.get(link.before)!.say);
    expect(words).toContain(running.steps.get(link.after)!.say);
    if ((await sheet.count()) > 0) await closeSheet(page);
    await page.reload();
    await loop.waitFor();
    expect(await wordsOf(undo)).toBe('Undo: your reason');
    await touch(undo);
    await loop.waitFor({ state: 'detached' });
    await expect.poll(async () => (await listed(page)).map(({ step }) => step)).toEqual(running.sequence);
    await toBench(page);
    expect((await shown(page)).step).toBe(running.sequence[0]);
  });

  it('says which mark would not live, and changes the order for another marker', async () => {
    const page = await openOrder();
    const [concern] = running.concerns;
    expect(running.concerns.length).toBeGreaterThan(0);
    const { concern: shownConcern } = orderParts(page);
    expect(await shownConcern.count()).toBe(running.concerns.length);
    expect(await wordsOf(shownConcern.first())).toContain(concern!.say);
    expect((await listed(page)).map(({ step }) => step)).toContain(concern!.again);
    const [other] = concern!.otherMarkers;
    await touch(shownConcern.first().getByRole('button', { name: `Mark with ${other!.name} instead` }));
    await expect.poll(() => shownConcern.count()).toBe(running.concerns.length - 1);
    const steps = (await listed(page)).map(({ step }) => step);
    expect(steps).not.toContain(concern!.again);
    expect(steps).toHaveLength(running.sequence.length - 1);
    expect(await wordsOf(orderParts(page).undo)).toBe('Undo: the change');
    await touch(orderParts(page).undo);
    await expect.poll(() => shownConcern.count()).toBe(running.concerns.length);
  });
});

describe('what finding out late costs', () => {
  const late = (page: Page) => page.locator('[data-part="late"]');
  const here = (page: Page) => page.locator('[data-part="late-here"]');

  it('is drawn along the order, and told for any point that is touched or reached by keys', async () => {
    const page = await openOrder();
    await late(page).locator('svg').waitFor();
    expect(await wordsOf(late(page))).toContain('guessed until your own try-ons are known');
    const box = (await late(page).locator('svg').boundingBox())!;
    await page.touchscreen.tap(box.x + box.width * 0.9, box.y + box.height * 0.3);
    await expect
      .poll(() => wordsOf(here(page)))
      .toMatch(/^After step \d+ of \d+, found here: about .+; worst: /);
    await page.getByRole('slider').press('Home');
    await expect.poll(() => wordsOf(here(page))).toMatch(/^After step 1 of /);
    await page.getByRole('slider').press('End');
    const steps = running.sequence.length;
    await expect.poll(() => wordsOf(here(page))).toContain(`After step ${steps} of ${steps}`);
    await touch(late(page).locator('summary', { hasText: 'At each try-on' }));
    const tryOns = running.sequence.filter((id) => running.steps.get(id)?.action === 'fit');
    expect(await late(page).locator('tbody tr').count()).toBe(tryOns.length + 1);
  });

  it('offers a try-on that saves more than it costs, puts it in at one touch, and takes it back', async () => {
    const page = await openOrder();
    await touch(late(page).locator('summary', { hasText: 'Which other try-on' }));
    const offer = page.locator('[data-part="gate-offer"]').first();
    await offer.waitFor();
    const name = await wordsOf(offer.locator('h3'));
    expect(await wordsOf(offer)).toMatch(/so it saves about /);
    await touch(offer.getByRole('button', { name: /^Put this try-on in/ }));
    await expect.poll(async () => (await listed(page)).length).toBeGreaterThan(running.sequence.length);
    const fit = page.locator('.sitting li[data-step$="/fit"]').filter({ hasText: new RegExp(name, 'i') });
    expect(await fit.count()).toBe(1);
    await expect.poll(() => late(page).getByRole('heading', { name, exact: true }).count()).toBe(0);
    await touch(orderParts(page).undo);
    await expect.poll(async () => (await listed(page)).map(({ step }) => step)).toEqual(running.sequence);
  });
});
