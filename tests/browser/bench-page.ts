import type { Locator, Page } from 'playwright-core';
import type { Deed } from '../../src/store/deed.ts';
import type { demos } from '../outfit/demo-files.ts';
import { NAMES } from './demo.ts';

/** The parts of the bench, as a maker finds them. */
export const parts = (page: Page) => {
  const part = (name: string): Locator => page.locator(`[data-part="${name}"]`);
  return {
    card: part('card'),
    pad: part('pad'),
    undo: part('undo'),
    figure: part('figure'),
    instruction: page.locator('main h1'),
    why: part('why'),
    order: part('order'),
    aloud: part('aloud'),
    more: part('more'),
    home: part('home'),
    wake: part('wake'),
    live: part('live'),
    settings: part('settings'),
    timers: page.locator('li[data-timer]'),
    sheet: page.locator('dialog[open]'),
  };
};

/** The words of a part as they stand on the screen: what is drawn but not shown, or shown in capitals, counts so. */
// biome-ignore lint/performance/useDomNodeTextContent: a maker reads what is rendered.
export const wordsOf = (part: Locator): Promise<string> => part.innerText();

/** What the card says at this moment, for comparing. */
export interface Shown {
  readonly step: string;
  readonly readout: string;
  /** Label of the pad, without its detail. */
  readonly pad: string;
  readonly detail: string;
  /** The figure in hand as it is read aloud; empty where the card has none. */
  readonly figure: string;
  readonly undo: string;
  /** All words of the card. */
  readonly words: string;
  /** True until the ledger has every touch that the figure shows. */
  readonly inFlight: boolean;
}

const read = (): Shown => {
  const text = (found: Element | null | undefined): string => found?.textContent?.trim() ?? '';
  const card = document.querySelector<HTMLElement>('[data-part="card"]');
  const figure = card?.querySelector('[data-part="figure"]');
  return {
    step: card?.dataset.step ?? '',
    readout: card?.dataset.readout ?? '',
    pad: text(card?.querySelector('.pad-label')),
    detail: text(card?.querySelector('.pad-detail')),
    figure: text(figure?.querySelector('.unseen') ?? figure),
    undo: text(card?.querySelector('[data-part="undo"]')),
    // biome-ignore lint/performance/useDomNodeTextContent: a maker reads what is rendered.
    words: card?.innerText ?? '',
    inFlight: figure?.getAttribute('data-in-flight') === 'true',
  };
};

/** Reads the card. */
export const shown = (page: Page): Promise<Shown> => page.evaluate(read);

/** Waits until the pad takes touches again: for a moment after a change of meaning it does not. */
export const settled = async (page: Page): Promise<void> => {
  await page.locator('[data-part="pad"]:not([aria-disabled="true"])').waitFor();
};

/** Waits until the words of the card are others than `before`. */
const changed = (page: Page, before: Shown): Promise<unknown> =>
  page.waitForFunction(
    ([step, pad, detail, figure, undo]) => {
      const card = document.querySelector<HTMLElement>('[data-part="card"]');
      const text = (query: string): string => card?.querySelector(query)?.textContent?.trim() ?? '';
      const drawn = card?.querySelector('[data-part="figure"] .unseen') ? ' .unseen' : '';
      return (
        (card?.dataset.step ?? '') !== step ||
        text('.pad-label') !== pad ||
        text('.pad-detail') !== detail ||
        // The figure of a timer changes by itself.
        (card?.dataset.readout !== 'timers' && text(`[data-part="figure"]${drawn}`) !== figure) ||
        text('[data-part="undo"]') !== undo
      );
    },
    [before.step, before.pad, before.detail, before.figure, before.undo] as const,
  );

/** Touches the pad once, as soon as it takes touches, and waits until the card says something else. */
export async function press(page: Page): Promise<Shown> {
  const before = await shown(page);
  await settled(page);
  await touch(page.locator('[data-part="pad"]'));
  await changed(page, before);
  return shown(page);
}

/** Touches a control with a finger, or clicks it where the context has no touch screen. */
export async function touch(control: Locator): Promise<void> {
  const fingers = await control.page().evaluate(() => navigator.maxTouchPoints > 0);
  await (fingers ? control.tap() : control.click());
}

/** Works the open card to its end with the pad alone, and waits for another card. */
export async function workCard(page: Page): Promise<Shown> {
  const { step } = await shown(page);
  let now = await press(page);
  while (now.step === step) now = await press(page);
  return now;
}

/** Opens a demonstration from the outfits page and waits for its first card. */
export async function openDemo(
  page: Page,
  name: (typeof demos)[number] = 'harbour-clockmaker',
): Promise<void> {
  await touch(page.getByRole('button', { name: `Open the ${NAMES[name]}` }));
  await settled(page);
}

/** Brings a file in on the outfits page, and gives back what the page answered. */
export async function bringIn(
  page: Page,
  file: { name: string; mimeType: string; buffer: Buffer } | string,
): Promise<string> {
  const answer = page.locator('.answer');
  await page.locator('[data-part="bring-in"]').setInputFiles(file);
  await answer.filter({ hasText: /\S/ }).waitFor();
  return (await wordsOf(answer)).trim();
}

/** How many deeds lie in the ledger's database, read past the app. */
export const deedsKept = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open('slipbaste');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const counting = db.transaction('deeds').objectStore('deeds').count();
          counting.onsuccess = () => {
            db.close();
            resolve(counting.result);
          };
          counting.onerror = () => reject(counting.error);
        };
      }),
  );

/** Waits until the app is stored on the device and the worker has the page under its care. */
export const stored = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');

/** The deeds in the ledger's database, read past the app: what was written and when, in ms since 1970. */
export const deedsIn = (page: Page): Promise<readonly Deed[]> =>
  page.evaluate(
    () =>
      new Promise<Deed[]>((resolve, reject) => {
        const opening = indexedDB.open('slipbaste');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const reading = db.transaction('deeds').objectStore('deeds').getAll();
          reading.onsuccess = () => {
            db.close();
            resolve(reading.result);
          };
          reading.onerror = () => reject(reading.error);
        };
      }),
  );
