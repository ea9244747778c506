/**
 * After a control took itself away: the focus goes to the first of `next` on the page, or to its head, instead of
 * nowhere. Where the focus is still somewhere, it stays there.
 */
export function focusOn(next = 'main h1'): void {
  const move = (): void => {
    if (document.activeElement !== null && document.activeElement !== document.body) return;
    const found = document.querySelector<HTMLElement>(next) ?? document.querySelector<HTMLElement>('main h1');
    // A form or a heading takes it as well, though no key leads there.
    if (found && found.tabIndex < 0) found.tabIndex = -1;
    found?.focus({ preventScroll: true });
  };
  // Once the page has been drawn anew: only then is the focus taken from what is folded away.
  requestAnimationFrame(() => setTimeout(move));
}
