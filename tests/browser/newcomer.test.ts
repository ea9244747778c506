import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { type Marking, writeLength } from '../../src/length/writing.ts';
import type { Card } from '../../src/order/card-types.ts';
import { undoName } from '../../src/screens/bench/undo-name.ts';
import { demo } from '../outfit/demo-files.ts';
import { useApp } from './app.ts';
import { openDemo, parts, press, settled, shown, touch, wordsOf, workCard } from './bench-page.ts';
import { cardOf, orderOf } from './demo.ts';

const app = useApp();
const outfit = demo('harbour-clockmaker');
const marking: Marking = outfit.units === 'in' ? { unit: 'in', per: 16 } : { unit: 'mm', step: 0.5 };

/** The step that comes next once these are done, worked out here. */
function next(done: readonly string[]): Card {
  const running = orderOf(outfit, { done });
  return cardOf(
    outfit,
    running,
    running.sequence.slice(running.doneCount).find((id) => running.ready.has(id)),
  );
}

/** Works a card with marks, comparing every figure on the screen with the card's own. */
async function setMarks(page: Page, card: Card): Promise<number> {
  if (card.readout.kind !== 'marks') throw new Error('This card has no marks.');
  let set = 0;
  for (const { from, marks } of card.readout.sets) {
    for (const [i, mark] of marks.entries()) {
      const now = await shown(page);
      const figure = writeLength(mark.at, marking).text;
      expect(now.figure).toBe(figure);
      expect(now.words).toContain(mark.name);
      expect(now.words).toContain(`${i + 1} of ${marks.length}`);
      expect(now.words).toContain(`from ${from}`);
      expect(await page.locator('svg.tape').getAttribute('aria-label')).toBe(`Tape, pinned at ${figure}`);
      const after = await press(page);
      expect(after.undo).toBe(`Undo: mark ${i + 1}`);
      set += 1;
    }
  }
  expect((await shown(page)).pad).toBe('Done');
  await press(page);
  return set;
}

/** What undo says after an item of a card: its words cut to one short line, or its place in the list. */
const undoOf = (card: Card, item = ''): string =>
  `Undo: ${undoName({ deed: 'a-1', kind: 'item-done', step: card.step, item }, card)}`;

describe('a newcomer', () => {
  it('finds an empty page that says what to do first, and one button that does it', async () => {
    const page = await app.open();
    await page.getByRole('heading', { name: 'Slipbaste' }).waitFor();
    const button = page.getByRole('button', { name: 'Open the Harbour Clockmaker' });
    await button.waitFor();
    expect(await page.locator('.main').count()).toBe(1);
    await touch(button);
    await settled(page);
    const first = next([]);
    const now = await shown(page);
    expect(now.step).toBe(first.step);
    expect(await wordsOf(parts(page).instruction)).toBe(first.say);
    expect(now.words).toContain(`card ${first.k} of ${first.n}`);
    expect(await parts(page).undo.isDisabled()).toBe(true);
  });

  it('works twenty cards in the derived order with the pad alone, marks and ticks among them', async () => {
    const page = await app.open();
    await openDemo(page);
    const done: string[] = [];
    const kinds = new Set<string>();
    let marks = 0;
    while (done.length < 20) {
      const card = next(done);
      const now = await shown(page);
      expect(now.step).toBe(card.step);
      expect(now.readout).toBe(card.readout.kind);
      expect(await wordsOf(parts(page).instruction)).toBe(card.say);
      expect(now.words).toContain(card.garment);
      expect(now.words).toContain(`card ${card.k} of ${card.n}`);
      for (const { name, figure } of card.settings) expect(now.words).toMatch(`${name}\n${figure}`);
      for (const caution of card.cautions) expect(now.words.replace(/\s+/g, ' ')).toContain(caution);
      kinds.add(card.readout.kind);
      if (card.readout.kind === 'marks') marks += await setMarks(page, card);
      else if (card.readout.kind === 'ticks') {
        for (const { item, name } of card.readout.items) {
          expect(await shown(page)).toMatchObject({ pad: 'Tick', detail: name });
          expect((await press(page)).undo).toBe(undoOf(card, item));
        }
        await press(page);
      } else await workCard(page);
      done.push(card.step);
    }
    expect((await shown(page)).step).toBe(next(done).step);
    expect([...kinds].sort()).toEqual(['marks', 'none', 'ticks']);
    expect(marks).toBeGreaterThan(20);
  });

  it('takes back with one touch, which says what it takes back', async () => {
    const page = await app.open();
    await openDemo(page);
    const { undo } = parts(page);
    const first = next([]);
    const second = next([first.step]);
    if (first.readout.kind !== 'ticks') throw new Error('The first card has no ticks.');
    const [one, two] = first.readout.items;

    await press(page);
    expect(await shown(page)).toMatchObject({ detail: two?.name, undo: undoOf(first, one?.item) });
    await touch(undo);
    await expect.poll(() => shown(page)).toMatchObject({ detail: one?.name, undo: 'Undo' });
    expect(await undo.isDisabled()).toBe(true);

    await workCard(page);
    expect(await shown(page)).toMatchObject({ step: second.step, undo: 'Undo: last step' });
    await touch(undo);
    const last = first.readout.items.at(-1);
    await expect
      .poll(() => shown(page))
      .toMatchObject({ step: first.step, pad: 'Done', undo: undoOf(first, last?.item) });
    for (const item of [...first.readout.items].reverse()) {
      await expect.poll(() => shown(page)).toMatchObject({ undo: undoOf(first, item.item) });
      await touch(undo);
    }
    await expect.poll(() => shown(page)).toMatchObject({ step: first.step, detail: one?.name, undo: 'Undo' });
  });
});
