/** What did not fit is entered, cured and finished to the last card, at the size of a phone and with a finger. */
import { isDeepStrictEqual } from 'node:util';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { readOutfit } from '../../src/outfit/reading.ts';
import type { Act } from '../../src/store/deed.ts';
import { addUp } from '../../src/store/progress.ts';
import { demo } from '../outfit/demo-files.ts';
import { useApp } from './app.ts';
import { axeFaults, tooWide } from './axe.ts';
import { deedsIn, parts, press, settled, shown, touch, wordsOf } from './bench-page.ts';
import { orderOf } from './demo.ts';
import { controls, crowded } from './legibility.ts';
import { doneBefore, toTryOn, tried } from './try-on-page.ts';

const app = useApp();
const outfit = demo('harbour-clockmaker');
const { sequence } = orderOf(outfit);

/** Notes one thing: three touches at most to it, then how much. */
async function note(page: Page, view: string, place: string, entry: string, amount: string): Promise<void> {
  const side = page.getByRole('button', { name: view, exact: true });
  if ((await side.getAttribute('aria-pressed')) !== 'true') await touch(side);
  await touch(tried(page).place(place));
  await touch(tried(page).entry(entry));
  await tried(page).amount.fill(amount);
  await touch(tried(page).noteIt);
  await tried(page).garment.waitFor();
}

/** The page of the cure, once it is reckoned. */
async function cured(page: Page): Promise<void> {
  await touch(tried(page).cure);
  await page.locator('main[data-part="cure"][data-state="found"]').waitFor();
}

const part = (page: Page, name: string) => page.locator(`[data-part="${name}"]`);

/** Accepts the cure and goes to its first card. */
async function acceptAndBegin(page: Page): Promise<string> {
  await touch(parts(page).pad);
  await part(page, 'cure-accepted').waitFor();
  const first = await wordsOf(part(page, 'cure-first'));
  await touch(part(page, 'to-first'));
  await settled(page);
  return first;
}

/** Works every card that is left, and gives back which they were. */
async function finish(page: Page): Promise<readonly string[]> {
  const worked: string[] = [];
  const over = page.locator('.finished');
  while ((await over.count()) === 0) {
    const { step } = await shown(page);
    if (worked.at(-1) !== step) worked.push(step);
    if (worked.length > sequence.length) throw new Error('There is no end to it.');
    await press(page);
  }
  return worked;
}

type Reworked = Extract<Act, { kind: 'reworked' }>;

/** What was written when the cure was accepted: exactly one deed. */
async function reworked(page: Page): Promise<Reworked> {
  const found = (await deedsIn(page)).flatMap(({ act }) => (act.kind === 'reworked' ? [act] : []));
  expect(found).toHaveLength(1);
  return found[0]!;
}

describe('the blouse with tucked centre fronts', () => {
  const seen = async (page: Page): Promise<void> => {
    await toTryOn(page, app.served.origin, 'shirt', doneBefore('shirt'));
    await note(page, 'Front', 'upper side', 'surplus-at-the-upper-side', '1/2');
    await note(page, 'Front', 'chest', 'tucks-not-straight', '5/8');
    await note(page, 'Front', 'chest', 'frill-too-far-in', '5/8');
    await cured(page);
  };

  it('is cured by its centre fronts alone, and finished to the last card', async () => {
    const page = await app.open();
    await seen(page);
    expect(await axeFaults(page)).toEqual([]);
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
    // The pad stays at the foot of the screen; what has scrolled below it comes up again.
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    expect(await crowded(page, 8)).toEqual([]);
    expect((await controls(page)).filter(({ width, height }) => width < 48 || height < 48)).toEqual([]);
    const changes = await wordsOf(part(page, 'cure-changes'));
    expect(changes).toContain('Centre front: cut again');
    expect(changes).not.toMatch(/Side front|Side back|Back|frill/);
    const stays = await wordsOf(part(page, 'cure-stays'));
    for (const name of ['Side front', 'Side back', 'Back', 'Shoulder frill']) expect(stays).toContain(name);
    await part(page, 'before-after').locator('.amount', { hasText: '5/8 in wider' }).first().waitFor();

    const first = await acceptAndBegin(page);
    expect(await wordsOf(parts(page).instruction)).toBe(first);
    const { rework, cures } = await reworked(page);
    expect(cures).toHaveLength(3);
    const read = readOutfit(addUp(await deedsIn(page)).description);
    const now = read.ok ? read.value.garments[0]!.pieces : [];
    const was = outfit.garments[0]!.pieces;
    expect(now.map((piece, i) => (isDeepStrictEqual(piece, was[i]) ? '' : piece.id)).filter(Boolean)).toEqual(
      ['centre-front'],
    );
    const worked = await finish(page);
    const undo = rework.undo.map(({ of, action }) => `shirt/${of.id}/${action}-${rework.id}`);
    expect(worked.slice(0, undo.length)).toEqual(undo);
    expect(worked).toEqual(expect.arrayContaining(rework.again.map(({ step }) => step)));
    expect(rework.undo.flatMap(({ action, pieces }) => (action === 'cut-anew' ? pieces : []))).toEqual([
      'centre-front',
    ]);
  });

  it('is as it was after one touch of undo', async () => {
    const page = await app.open();
    await seen(page);
    await touch(parts(page).pad);
    await touch(part(page, 'cure-accepted').locator('[data-part="undo"]'));
    await page.locator('main[data-part="cure"][data-state="found"]').waitFor();
    expect(await wordsOf(part(page, 'cure-changes'))).toContain('Centre front: cut again');
    await page.goto(`${app.served.origin}/#/bench/harbour-clockmaker`);
    await settled(page);
    expect((await shown(page)).step).toMatch(/^shirt\/try-shirt\//);
  });
});

describe('the hose with a low crotch and folds at the ankle', () => {
  it('is cured and finished to the last card', async () => {
    const page = await app.open();
    await toTryOn(page, app.served.origin, 'hose', doneBefore('hose'));
    await note(page, 'Front', 'crotch', 'crotch-low', '3/4');
    await note(page, 'Front', 'ankle', 'ankle-folds', '1/2');
    await cured(page);
    expect(await axeFaults(page)).toEqual([]);
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
    expect(await part(page, 'cure-unmet').count()).toBe(0);
    await acceptAndBegin(page);
    expect((await reworked(page)).cures).toHaveLength(2);
    await finish(page);
  });
});

describe('the sleeve with a tight cuff that droops', () => {
  it('is cured and finished to the last card', async () => {
    const page = await app.open();
    await toTryOn(page, app.served.origin, 'sleeves', doneBefore('sleeves'));
    await note(page, 'Front', 'wrist', 'cuff-tight', '1/2');
    await note(page, 'Front', 'upper arm', 'heavy-sleeve-droops', '3/4');
    await cured(page);
    expect(await axeFaults(page)).toEqual([]);
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
    expect(await part(page, 'cure-unmet').count()).toBe(0);
    await acceptAndBegin(page);
    expect((await reworked(page)).cures).toHaveLength(2);
    await finish(page);
  });
});
