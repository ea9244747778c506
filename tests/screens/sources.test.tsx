import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { FULLNESS } from '../../src/cloth/gathers.ts';
import { CHECKS, ENTRIES } from '../../src/fitting/entries/all.ts';
import { units } from '../../src/screens/choices.ts';
import { countKinds } from '../../src/screens/sources/find.ts';
import figures from '../../src/screens/sources/gather.ts?figures';
import { seenShown } from '../../src/screens/sources/seen.ts';
import Sources from '../../src/screens/sources/sources.tsx';

const list = { ...figures, seen: seenShown(ENTRIES, CHECKS) };
const counts = countKinds(list);
const entry = (id: string): HTMLElement => {
  const found = document.querySelector<HTMLElement>(
    `[data-figure="${id}"], [data-rule="${id}"], [data-seen="${id}"]`,
  );
  if (!found) throw new Error(`${id} is not on the page`);
  return found;
};

beforeEach(() => {
  units.value = 'outfit';
});
afterEach(cleanup);

describe('where figures come from', () => {
  test('every figure and every rule stands there, counted by kind', () => {
    render(<Sources />);
    expect(document.querySelectorAll('[data-figure]')).toHaveLength(list.figures.length);
    expect(document.querySelectorAll('[data-rule]')).toHaveLength(list.rules.length);
    expect(screen.getByRole('button', { name: `Published: ${counts.published}` })).toBeTruthy();
    expect(screen.getByRole('button', { name: `All: ${counts.all}` }).getAttribute('aria-pressed')).toBe(
      'true',
    );
  });

  test('a figure is said with its value, unit and source', () => {
    render(<Sources />);
    const fullness = entry('cloth/gathers.ts FULLNESS');
    expect(FULLNESS.value).toBe(2.5);
    expect(fullness.textContent).toContain('2 1/2 times');
    expect(fullness.textContent).toContain('Common practice, no source');
    expect(within(entry('flat before tube')).getByText(/Conover/)).toBeTruthy();
  });

  test('what is seen at a try-on is said with its cause, its cure and its source', () => {
    render(<Sources />);
    expect(document.querySelectorAll('[data-seen]')).toHaveLength(ENTRIES.length + 1);
    const sags = entry('front-sags');
    expect(within(sags).getByRole('heading', { name: 'The front sags below the fullest part' })).toBeTruthy();
    expect(sags.textContent).toContain('Because the front is too long above the chest.');
    expect(sags.textContent).toContain('Take the front up at the neck end of the shoulder');
    expect(within(sags).getByText(/Fitting Dresses \(1946\)/)).toBeTruthy();
    expect(entry('crotch-low').textContent).toContain('From memory');
    expect(entry('checks').textContent).toContain('The side seams fall straight to the floor.');
  });

  test('what is seen is found by its words, its place and its book', () => {
    render(<Sources />);
    const ask = (value: string) => {
      fireEvent.input(screen.getByRole('searchbox', { name: 'Search' }), { target: { value } });
      return [...document.querySelectorAll<HTMLElement>('[data-seen]')].map((one) => one.dataset.seen);
    };
    expect(ask('crotch low')).toContain('crotch-low');
    expect(ask('ankle heel')).toContain('foot-will-not-pass');
    expect(ask('1962 square')).toEqual(['shoulder-tip-wrinkles']);
    expect(screen.getByText('What is seen at a try-on').closest('details')?.open).toBe(true);
    expect(ask('quince')).toEqual([]);
  });

  test('lengths are in the rule of the maker', () => {
    units.value = 'mm';
    render(<Sources />);
    expect(entry('cloth/gathers.ts ROWS_APART').textContent).toContain('6.35 mm (1/4 in)');
  });

  test('what is searched for and the kind that is asked for are left, and how many is said', () => {
    render(<Sources />);
    fireEvent.input(screen.getByRole('searchbox', { name: 'Search' }), { target: { value: 'horsehair' } });
    expect(document.querySelectorAll('[data-figure]')).toHaveLength(2);
    fireEvent.click(screen.getByRole('button', { name: /^Published/ }));
    expect(document.querySelectorAll('[data-figure], [data-rule], [data-seen]')).toHaveLength(0);
    expect(screen.getByRole('status').textContent).toMatch(/^Nothing here/);
    fireEvent.input(screen.getByRole('searchbox'), { target: { value: '' } });
    expect(screen.getByRole('status').textContent).toBe(`${counts.published} of ${counts.all} shown.`);
    for (const cite of document.querySelectorAll('cite')) expect(cite.dataset.kind).toBe('published');
  });
});
