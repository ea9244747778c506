import type { Page } from 'playwright-core';

/** Something on the page that is smaller, fainter or more cut off than it may be. */
export type Fault = string;

/** Controls that are in sight and not in a sheet's shadow, with their size in CSS pixels. */
export const controls = (page: Page): Promise<readonly { name: string; width: number; height: number }[]> =>
  page.evaluate(() => {
    const within = document.querySelector('dialog[open]') ?? document;
    return [...within.querySelectorAll<HTMLElement>('button, a[href], input, select, textarea, summary')]
      .filter((control) => control.checkVisibility({ visibilityProperty: true }))
      .map((control) => {
        const { width, height } = control.getBoundingClientRect();
        return { name: control.textContent?.trim() || control.tagName, width, height };
      });
  });

/** Pairs of controls that lie nearer to each other than `apart` CSS pixels, or over each other, as far as in sight. */
export const crowded = (page: Page, apart: number): Promise<readonly Fault[]> =>
  page.evaluate((least) => {
    const within = document.querySelector('dialog[open]') ?? document;
    /** The part of a control that is not scrolled away. */
    const inSight = (control: Element) => {
      const { left, right, top, bottom } = control.getBoundingClientRect();
      const scroller = control.closest('.middle, .sheet')?.getBoundingClientRect();
      return scroller
        ? { left, right, top: Math.max(top, scroller.top), bottom: Math.min(bottom, scroller.bottom) }
        : { left, right, top, bottom };
    };
    const found = [
      ...within.querySelectorAll<HTMLElement>('button, a[href], input, select, textarea, summary'),
    ]
      .filter((control) => control.checkVisibility({ visibilityProperty: true }))
      .map((control) => ({
        name: control.textContent?.trim() || control.tagName,
        inner: control.closest('.middle, .sheet') !== null,
        box: inSight(control),
      }))
      .filter(({ box }) => box.bottom > box.top);
    const faults: string[] = [];
    for (const [i, a] of found.entries()) {
      for (const b of found.slice(i + 1)) {
        const across = Math.max(a.box.left - b.box.right, b.box.left - a.box.right);
        const down = Math.max(a.box.top - b.box.bottom, b.box.top - a.box.bottom);
        const gap = Math.max(across, down);
        // What is half scrolled away may come near to what stands below the scroller, never over it.
        const wanted = a.inner === b.inner ? least : 0;
        if (gap < wanted - 0.01) faults.push(`${a.name} and ${b.name}: ${gap.toFixed(1)} px apart`);
      }
    }
    return faults;
  }, apart);

/** Font sizes in CSS pixels of all text in sight, by selector; selectors that match nothing are left out. */
export const fontSizes = (page: Page, selectors: readonly string[]): Promise<ReadonlyMap<string, number>> =>
  page
    .evaluate(
      (wanted) =>
        wanted.flatMap((selector): [string, number][] => {
          const sizes = [...document.querySelectorAll(selector)]
            .filter((one) => one.checkVisibility() && one.textContent?.trim() !== '')
            .map((one) => Number.parseFloat(getComputedStyle(one).fontSize));
          return sizes.length === 0 ? [] : [[selector, Math.min(...sizes)]];
        }),
      selectors,
    )
    .then((pairs) => new Map(pairs));

/** What cannot be read: the page scrolls sideways, or text runs out of a box that hides it. */
export const cutOff = (page: Page): Promise<readonly Fault[]> =>
  page.evaluate(() => {
    const faults: string[] = [];
    const root = document.scrollingElement ?? document.documentElement;
    if (root.scrollWidth > root.clientWidth)
      faults.push(`the page scrolls sideways: ${root.scrollWidth} in ${root.clientWidth}`);
    const seen = new Set<Element>();
    const within = document.querySelector('dialog[open]') ?? document.body;
    const walker = document.createTreeWalker(within, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const text = node.textContent?.trim() ?? '';
      const parent = node.parentElement;
      if (text === '' || !parent?.checkVisibility({ visibilityProperty: true })) continue;
      if (parent.closest('.unseen, svg, option, progress, noscript')) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const words = range.getBoundingClientRect();
      if (words.width === 0) continue;
      if (words.left < -0.5 || words.right > innerWidth + 0.5) {
        faults.push(
          `“${text.slice(0, 40)}” lies beside the page: ${words.left.toFixed()} to ${words.right.toFixed()}`,
        );
      }
      for (let box: Element | null = parent; box && box !== document.body; box = box.parentElement) {
        const style = getComputedStyle(box);
        const { left, right, top, bottom } = box.getBoundingClientRect();
        const hides = (overflow: string) => overflow === 'hidden' || overflow === 'clip';
        if (hides(style.overflowX) && (words.right > right + 1 || words.left < left - 1) && !seen.has(box)) {
          seen.add(box);
          faults.push(`“${text.slice(0, 40)}” is cut off across by .${box.className}`);
        }
        if (hides(style.overflowY) && (words.bottom > bottom + 1 || words.top < top - 1) && !seen.has(box)) {
          // What is scrolled away inside a scroller is not lost.
          const scroller = parent.closest('.middle, .sheet');
          if (scroller && box.contains(scroller)) continue;
          seen.add(box);
          faults.push(`“${text.slice(0, 40)}” is cut off above or below by .${box.className}`);
        }
      }
      // Text that runs out of the button it stands in.
      const button = parent.closest('button, a.plain, a.main');
      if (button) {
        const { left, right, top, bottom } = button.getBoundingClientRect();
        if (
          words.left < left - 1 ||
          words.right > right + 1 ||
          words.top < top - 1 ||
          words.bottom > bottom + 1
        ) {
          faults.push(`“${text.slice(0, 40)}” runs out of its button`);
        }
      }
    }
    return faults;
  });

/**
 * Parts of the bench that lie over each other or outside the screen. Where letters are so large that the whole bench
 * scrolls, only the pad stays, and lies over what can be scrolled away from under it.
 */
export const overlapping = (page: Page): Promise<readonly Fault[]> =>
  page.evaluate(() => {
    const root = document.scrollingElement ?? document.documentElement;
    const scrolls = root.scrollHeight > root.clientHeight + 1;
    const named = (selector: string) =>
      [...document.querySelectorAll(selector)]
        .filter((one) => one.checkVisibility())
        .map((one) => ({ name: one.className || one.tagName, box: one.getBoundingClientRect() }));
    const rows = ['.bench > header', '.bench > .middle', '.bench > nav', scrolls ? '' : '.bench > .pad-edge'];
    const groups = [named(rows.filter(Boolean).join()), named('.middle > *'), named('.place > *')];
    const faults: string[] = [];
    for (const group of groups) {
      for (const [i, a] of group.entries()) {
        for (const b of group.slice(i + 1)) {
          const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
          const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
          if (across > 1 && down > 1) {
            faults.push(`${a.name} lies over ${b.name} by ${across.toFixed()} × ${down.toFixed()}`);
          }
        }
      }
    }
    for (const { name, box } of named('.bench > *:not(.unseen):not(dialog)')) {
      const beside = box.right > innerWidth + 1 || box.left < -1;
      const below = !scrolls && (box.bottom > innerHeight + 1 || box.top < -1);
      if (beside || below) faults.push(`${name} lies outside the screen`);
    }
    return faults;
  });

/** What of the card cannot be seen: nothing of the instruction at first, or its end however far it is scrolled. */
export const outOfReach = (page: Page): Promise<readonly Fault[]> =>
  page.evaluate(() => {
    const faults: string[] = [];
    const root = document.scrollingElement ?? document.documentElement;
    const middle = document.querySelector('.middle');
    const pad = document.querySelector('.pad-edge');
    const heading = document.querySelector('main h1');
    if (!middle || !heading) return ['no card'];
    const foot = (): number => pad?.getBoundingClientRect().top ?? innerHeight;
    const line = Number.parseFloat(getComputedStyle(heading).fontSize);
    const top = heading.getBoundingClientRect().top;
    if (top < -1 || top + line > foot())
      faults.push(`the instruction begins at ${top.toFixed()}, the pad at ${foot().toFixed()}`);
    if (root.scrollHeight > root.clientHeight + 1) {
      scrollTo(0, root.scrollHeight);
      const last = document.querySelector('.tools')?.getBoundingClientRect().bottom ?? 0;
      if (last > foot() + 1) faults.push('the end of the page stays under the pad');
      scrollTo(0, 0);
    } else {
      const { height, bottom } = middle.getBoundingClientRect();
      if (height < innerHeight / 6) faults.push(`the card has ${height.toFixed()} of ${innerHeight} px`);
      middle.scrollTop = middle.scrollHeight;
      const last = [...middle.children].at(-1)?.getBoundingClientRect().bottom ?? 0;
      if (last > bottom + 1) faults.push('the end of the card cannot be scrolled to');
      middle.scrollTop = 0;
    }
    return faults;
  });
