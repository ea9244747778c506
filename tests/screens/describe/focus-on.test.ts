import { afterEach, describe, expect, test, vi } from 'vitest';
import { focusOn } from '../../../src/screens/describe/focus-on.ts';

afterEach(() => {
  document.body.replaceChildren();
});

/** A page with a heading, a form and two buttons. */
function page(): (selector: string) => HTMLElement {
  const main = document.createElement('main');
  for (const [tag, id] of [
    ['h1', 'head'],
    ['form', 'form'],
    ['button', 'gone'],
    ['button', 'next'],
  ] as const) {
    const made = document.createElement(tag);
    made.id = id;
    main.append(made);
  }
  document.body.append(main);
  return (selector) => document.querySelector<HTMLElement>(selector)!;
}

describe('the focus after a control has taken itself away', () => {
  test('goes to what is named', async () => {
    const at = page();
    at('#gone').focus();
    at('#gone').remove();
    focusOn('#next');
    await vi.waitFor(() => expect(document.activeElement).toBe(at('#next')));
  });

  test('goes to a form as a whole, and to the heading where what is named is not there', async () => {
    const at = page();
    focusOn('#form');
    await vi.waitFor(() => expect(document.activeElement).toBe(at('#form')));
    at('#form').blur();
    focusOn('#nothing');
    await vi.waitFor(() => expect(document.activeElement).toBe(at('#head')));
  });

  test('stays where it is, where it is somewhere', async () => {
    const at = page();
    at('#gone').focus();
    focusOn('#next');
    await new Promise((done) => requestAnimationFrame(() => setTimeout(() => setTimeout(done))));
    expect(document.activeElement).toBe(at('#gone'));
  });
});
