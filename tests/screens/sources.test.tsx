import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { FULLNESS } from '../../src/cloth/gathers.ts';
import { units } from '../../src/screens/choices.ts';
import { countKinds } from '../../src/screens/sources/find.ts';
import list from '../../src/screens/sources/gather.ts?figures';
import Sources from '../../src/screens/sources/sources.tsx';

const counts = countKinds(list);
const entry = (id: string): HTMLElement => {
  const found = document.querySelector<HTMLElement>(`[data-figure="${id}"], [data-rule="${id}"]`);
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
    expect(document.querySelectorAll('[data-figure], [data-rule]')).toHaveLength(0);
    expect(screen.getByRole('status').textContent).toMatch(/^Nothing here/);
    fireEvent.input(screen.getByRole('searchbox'), { target: { value: '' } });
    expect(screen.getByRole('status').textContent).toBe(`${counts.published} of ${counts.all} shown.`);
    for (const cite of document.querySelectorAll('cite')) expect(cite.dataset.kind).toBe('published');
  });
});
