import type { CDPSession, Locator, Page } from 'playwright-core';
import { type Doings, NOTHING, sumOf } from './hand-time.ts';

/** A piece of text in view. */
interface Text {
  readonly text: string;
  /** A heading, or on something to touch: a link, a button, a field, one of several choices. */
  readonly name: boolean;
}

/** What stands in view to be read; what is covered or kept for readers aloud only does not count. */
const inView = (): readonly Text[] => {
  const found: Text[] = [];
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const range = document.createRange();
  for (let node = walk.nextNode(); node; node = walk.nextNode()) {
    const text = (node.nodeValue ?? '').trim();
    const parent = node.parentElement;
    if (!/[\p{L}\d]/u.test(text) || !parent || parent.closest('.unseen')) continue;
    range.selectNodeContents(node);
    for (const { left, top, width, height } of range.getClientRects()) {
      const at = document.elementFromPoint(left + width / 2, top + height / 2);
      if (width < 2 || !at || !parent.contains(at)) continue;
      const name = parent.closest('a, button, summary, .option, svg, label, legend, h1, h2, h3') !== null;
      found.push(...(name ? [text] : text.split(/(?<=[.;:])\s+/)).map((one) => ({ text: one, name })));
      break;
    }
  }
  return found;
};

/** Where a finger would touch, and whether that can be seen and is not covered. */
const aim = (control: Element): { x: number; y: number; seen: boolean } => {
  const { left, top, width, height } = control.getBoundingClientRect();
  const [x, y] = [left + width / 2, top + height / 2];
  const at = document.elementFromPoint(x, y);
  return { x, y, seen: at !== null && (control.contains(at) || at.contains(control)) };
};

/** How far a thumb moves a page at once, in CSS pixels. */
const SWIPE = 520;

/** Keys for a text: a telephone has figures on a page of keys of their own, and goes back to letters after a space. */
export function keysFor(text: string): Pick<Doings, 'letters' | 'figures'> {
  const numbers = text.split(' ').filter((part) => /^[\d/.]+$/.test(part));
  const figures = numbers.reduce((sum, part) => sum + 1 + part.length, 0);
  return { figures, letters: text.length + numbers.length - figures };
}

/** Somebody who works the app with a finger and her eyes, whose every doing is counted. */
export interface Person {
  /** What she has done since {@link Person.part} was asked last. */
  part(): Doings;
  /** A page has opened: she looks it over and reads what is new to her. */
  sees(part: Locator): Promise<void>;
  /** Scrolls until a control can be touched, and touches it; with `thought`, she makes up her mind before. */
  touch(control: Locator, thought?: boolean): Promise<void>;
  /** Touches a field that is not in hand yet, and types; what stood there is replaced. */
  types(field: Locator, text: string): Promise<void>;
  /** Measures on paper, and types the length. */
  measures(field: Locator, text: string): Promise<void>;
  /** Goes on with the key of the keyboard. */
  goesOn(): Promise<void>;
}

/** A person before a page with a touch screen. */
export async function personAt(page: Page): Promise<Person> {
  let done: Doings = NOTHING;
  let keyboard = false;
  let arrived = false;
  const known = new Set<string>();
  const session: CDPSession = await page.context().newCDPSession(page);
  const height = page.viewportSize()?.height ?? 0;
  const add = (more: Partial<Doings>): void => {
    // What is done first on a page takes a thought of where she is.
    if (arrived && more.measured) more = { ...more, thoughts: 1 };
    if (more.measured || more.thoughts) arrived = false;
    done = sumOf(done, { ...NOTHING, ...more });
  };
  const still = (): Promise<unknown> =>
    page.evaluate(() => new Promise((then) => requestAnimationFrame(() => requestAnimationFrame(then))));
  const read = async (): Promise<void> => {
    await still();
    for (const { text, name } of await page.evaluate(inView)) {
      if (known.has(text)) continue;
      known.add(text);
      add(name ? { names: 1 } : { words: text.split(/\s+/).length });
    }
  };
  /** A finger drawn over the glass, at the edge, where nothing is touched by mistake. */
  const swipe = async (by: number): Promise<void> => {
    const y = (part: number): number => Math.round(height * 0.45 + by * (0.5 - part));
    const finger = (type: 'touchStart' | 'touchMove' | 'touchEnd', part: number) =>
      session.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x: 8, y: y(part) }],
      });
    await finger('touchStart', 0);
    for (let n = 1; n <= 8; n += 1) await finger('touchMove', n / 8);
    // It rests before it is lifted, so that the page does not run on.
    await still();
    await finger('touchMove', 1.002);
    await still();
    await finger('touchEnd', 1);
    await still();
  };
  const reach = async (control: Locator): Promise<{ x: number; y: number }> => {
    await control.waitFor();
    let at = await control.evaluate(aim);
    for (let n = 0; !at.seen; n += 1) {
      if (n === 40) throw new Error(`Not to be reached by scrolling: ${control} ${JSON.stringify(at)}`);
      const by = Math.max(-SWIPE, Math.min(SWIPE, at.y - height * 0.4));
      await swipe(by);
      add({ swipes: 1 });
      await read();
      at = await control.evaluate(aim);
    }
    return at;
  };
  const tap = async (control: Locator): Promise<void> => {
    const { x, y } = await reach(control);
    await page.touchscreen.tap(x, y);
    add({ touches: 1 });
  };
  const enter = async (field: Locator, text: string, more: Partial<Doings>): Promise<void> => {
    add(more);
    if (!(await field.evaluate((one) => one === document.activeElement))) {
      await tap(field);
      await read();
    }
    keyboard = true;
    await page.keyboard.type(text);
    add(keysFor(text));
    await read();
  };
  return {
    part() {
      const now = done;
      done = NOTHING;
      return now;
    },
    async sees(part) {
      await part.waitFor();
      add({ pages: 1 });
      arrived = true;
      await read();
    },
    async touch(control, thought = true) {
      // The keyboard of a telephone lies over the lower half: it is put away first.
      if (keyboard) add({ touches: 1 });
      keyboard = false;
      if (thought) add({ thoughts: 1 });
      await tap(control);
      await read();
    },
    async types(field, text) {
      await enter(field, text, { thoughts: 1 });
    },
    async measures(field, text) {
      // Where to measure is thought of while measuring.
      await enter(field, text, { measured: 1 });
    },
    async goesOn() {
      await page.keyboard.press('Enter');
      add({ letters: 1 });
      keyboard = await page.evaluate(() => document.activeElement?.matches('input, textarea') === true);
      await read();
    },
  };
}
