import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { units } from '../../src/screens/choices.ts';
import Reckoner from '../../src/screens/reckoner/reckoner.tsx';
import { takeRule } from '../../src/screens/reckoner/rule.ts';

vi.mock('../../src/reckon/all.ts', () => import('./reckonings.ts'));

beforeEach(() => {
  localStorage.clear();
  takeRule('in');
});
afterEach(() => {
  cleanup();
  units.value = 'outfit';
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

const part = (name: string): HTMLElement | null =>
  document.querySelector<HTMLElement>(`[data-part="${name}"]`);
const open = (reckoning = 'parallel-tucks') => render(<Reckoner reckoning={reckoning} />);
const field = (label: string): HTMLInputElement => screen.getByLabelText<HTMLInputElement>(label);
const type = (label: string, text: string): void => {
  fireEvent.input(field(label), { target: { value: text } });
};
const main = (): string => part('main-figure')!.querySelector('.figure .unseen')!.textContent!;
const figures = (): Record<string, string> =>
  Object.fromEntries(
    [...part('figures')!.querySelectorAll('div')].map((one) => [
      one.querySelector('dt')!.textContent!,
      one.querySelector('.unseen')?.textContent ?? one.querySelector('dd')!.textContent!,
    ]),
  );

describe('one reckoning', () => {
  test('gives the result at once, and a new one at every touch of a key', () => {
    open();
    // Five tucks of a quarter take twice that each.
    expect(main()).toBe('2 1/2 in');
    type('How many', '7');
    expect(main()).toBe('3 1/2 in');
    type('Depth of a tuck', '3/8');
    expect(main()).toBe('5 1/4 in');
    // First stitching at 1 in; the fold lies one depth past it, and each tuck adds spacing and twice the depth.
    expect(figures()['Fold 1, on the flat cloth']).toBe('1 3/8 in');
    expect(figures()['Fold 2, on the flat cloth']).toBe('2 7/8 in');
  });

  test('choices are radio buttons', () => {
    open();
    expect(screen.getByRole<HTMLInputElement>('radio', { name: 'away from the edge' }).checked).toBe(true);
    fireEvent.click(screen.getByRole('radio', { name: 'towards the edge' }));
    expect(screen.getByRole<HTMLInputElement>('radio', { name: 'towards the edge' }).checked).toBe(true);
  });

  test('a fault stands at its field, the last good result stays and says so', () => {
    open();
    type('Depth of a tuck', '3/');
    const input = field('Depth of a tuck');
    expect(input.getAttribute('aria-invalid')).toBe('true');
    const told = input
      .getAttribute('aria-describedby')!
      .split(' ')
      .map((id) => document.getElementById(id)!);
    expect(told.at(-1)!.textContent).toContain('is not a length; write one such as 1/4 in.');
    expect(document.querySelectorAll('[data-part="fault"]')).toHaveLength(1);
    expect(main()).toBe('2 1/2 in');
    expect(part('main-figure')!.className).toContain('stale');
    expect(part('main-figure')!.textContent).toContain('Still the last good result');
    expect(part('copy')).toBeNull();
    type('Depth of a tuck', '3/8');
    expect(part('fault')).toBeNull();
    expect(part('main-figure')!.className).not.toContain('stale');
    expect(main()).toBe('3 3/4 in');
  });

  test('every faulty field says its own fault', () => {
    open();
    type('How many', 'x');
    type('Spacing, finished', '');
    const faulty = [...document.querySelectorAll('[data-part="fault"]')].map(
      (one) => one.closest<HTMLElement>('[data-field]')!.dataset.field,
    );
    expect(faulty).toEqual(['count', 'spacing']);
  });

  test('what was typed is there again, right or wrong', () => {
    open();
    type('How many', '9');
    type('Depth of a tuck', '1/');
    cleanup();
    open();
    expect(field('How many').value).toBe('9');
    expect(field('Depth of a tuck').value).toBe('1/');
    expect(part('main-figure')!.textContent).toContain('Mend the field');
    type('Depth of a tuck', '1/2');
    expect(main()).toBe('9 in');
  });

  test('back to the starting values, and back again', () => {
    open();
    expect(part('start-again')).toBeNull();
    type('How many', '9');
    fireEvent.click(part('start-again')!);
    expect(field('How many').value).toBe('5');
    expect(main()).toBe('2 1/2 in');
    cleanup();
    open();
    fireEvent.click(part('take-back')!);
    expect(field('How many').value).toBe('9');
    expect(main()).toBe('4 1/2 in');
    expect(part('take-back')).toBeNull();
  });

  test('another rule keeps what was typed with its meaning', () => {
    open();
    type('Depth of a tuck', '1/2');
    expect(main()).toBe('5 in');
    fireEvent.click(screen.getByRole('button', { name: 'Millimetres' }));
    expect(field('Depth of a tuck').value).toBe('1/2 in');
    expect(main()).toBe('127 mm');
    // Never touched: it takes the round start of the other rule.
    expect(field('Spacing, finished').value).toBe('20');
    type('Depth of a tuck', '6');
    expect(main()).toBe('60 mm');
    fireEvent.click(screen.getByRole('button', { name: 'Inches' }));
    expect(field('Depth of a tuck').value).toBe('6 mm');
    // 60 mm are 2.362 in, nearest to 2 3/8.
    expect(main()).toBe('2 3/8 in');
    expect(part('main-figure')!.textContent).toContain('a hair less: 0.3 mm');
  });

  test('the rule chosen for everything holds here, and is changed here', () => {
    units.value = 'mm';
    open();
    expect(field('Depth of a tuck').value).toBe('6');
    fireEvent.click(screen.getByRole('button', { name: 'Inches' }));
    expect(units.value).toBe('in');
    expect(field('Depth of a tuck').value).toBe('1/4');
  });

  test('marks are read one at a time', () => {
    open();
    const strip = part('strip')!;
    const now = (): string => strip.querySelector('.strip-now')!.textContent!;
    expect(now()).toContain('tuck 1, stitch1 of 15, from the edge');
    fireEvent.click(within(strip).getByRole('button', { name: 'Next mark' }));
    expect(now()).toContain('1 1/4 in');
    expect(now()).toContain('tuck 1, fold');
    fireEvent.click(within(strip).getByRole('button', { name: 'Previous mark' }));
    fireEvent.click(within(strip).getByRole('button', { name: 'Previous mark' }));
    expect(now()).toContain('1 of 15');
  });

  test('with the key for onward the next field has the keyboard', () => {
    open();
    field('How many').focus();
    fireEvent.keyDown(field('How many'), { key: 'Enter' });
    expect(document.activeElement).toBe(field('Depth of a tuck'));
  });

  test('right keyboards', () => {
    open();
    expect(field('How many').getAttribute('inputmode')).toBe('numeric');
    expect(field('Depth of a tuck').getAttribute('inputmode')).toBe('text');
  });

  test('is copied as plain text: name, entries, figures, marks, sources', async () => {
    const copied: string[] = [];
    vi.stubGlobal('navigator', {
      ...navigator,
      language: 'en-US',
      clipboard: { writeText: async (text: string) => void copied.push(text) },
    });
    open();
    type('How many', '2');
    fireEvent.click(part('copy')!);
    await screen.findByText('Copied.');
    expect(copied[0]!.split('\n').slice(0, 13)).toEqual([
      'Parallel tucks',
      '',
      'How many: 2',
      'Depth of a tuck: 1/4 in',
      'Spacing, finished: 3/4 in',
      'First stitching line: 1 in',
      'Pressed: away from the edge',
      '',
      'Cloth that the tucks take: 1 in',
      'Fold 1, on the flat cloth: 1 1/4 in',
      'Fold 2, on the flat cloth: 2 1/2 in',
      '',
      'Tucks, on the flat cloth, from the edge',
    ]);
    expect(copied[0]).toContain('1. tuck 1, stitch: 1 in');
    expect(copied[0]).toMatch(/From: .*1916/);
  });

  test('where nothing can be copied the text is shown to take by hand', async () => {
    vi.stubGlobal('navigator', { ...navigator, language: 'en-US', clipboard: undefined });
    document.execCommand = () => false;
    open();
    fireEvent.click(part('copy')!);
    expect((await screen.findByLabelText<HTMLTextAreaElement>('The result as text')).value).toContain(
      'Parallel tucks',
    );
  });

  test('the new result is said once the typing rests', () => {
    vi.useFakeTimers();
    open();
    type('How many', '6');
    type('How many', '8');
    const said = (): string => document.querySelector('p.unseen[role="status"]')!.textContent!;
    expect(said()).toBe('');
    act(() => void vi.advanceTimersByTime(1000));
    expect(said()).toBe('Cloth that the tucks take: 4 in');
  });
});

describe('the list', () => {
  const links = (): string[] =>
    [...document.querySelectorAll<HTMLElement>('[data-reckoning]')].map((one) => one.dataset.reckoning!);

  test('has every reckoning under its group, with a way to it', () => {
    render(<Reckoner />);
    expect(screen.getByRole('heading', { name: 'Tucks and bands' })).toBeTruthy();
    expect(screen.getByRole('link', { name: /Parallel tucks/ }).getAttribute('href')).toBe(
      '#/reckoner/parallel-tucks',
    );
    expect(links()).toEqual(['parallel-tucks', 'a-buttonhole']);
  });

  test('finds by the words of a maker, in any order and without marks over letters', () => {
    render(<Reckoner />);
    const look = (text: string): string[] => {
      fireEvent.input(part('search')!, { target: { value: text } });
      return links();
    };
    expect(look('TUCKS párallel')[0]).toBe('parallel-tucks');
    expect(look('depth of a tuck')).toEqual(['parallel-tucks']);
    expect(look('hole')).toEqual(['a-buttonhole']);
    expect(look('no such thing at all')).toEqual([]);
    expect(screen.getByText(/Nothing here goes by/)).toBeTruthy();
    expect(look('')).toContain('parallel-tucks');
  });

  test('shows pictures when the page is idle, and then finds by the names of figures', async () => {
    // Nothing here has a place on a screen, so the watcher of places would wait for ever.
    vi.stubGlobal('IntersectionObserver', undefined);
    render(<Reckoner />);
    await vi.waitFor(() => expect(document.querySelector('.sheet-small')).toBeTruthy());
    fireEvent.input(part('search')!, { target: { value: 'cloth that the tucks take' } });
    await vi.waitFor(() => expect(links()).toContain('parallel-tucks'));
  });

  test('what was used last stands first', () => {
    open('a-buttonhole');
    cleanup();
    render(<Reckoner />);
    expect(screen.getAllByRole('heading', { level: 2 })[0]!.textContent).toBe('Used last');
    expect(links()[0]).toBe('a-buttonhole');
  });

  test('an unknown name leads here and says so', () => {
    open('nothing-of-the-kind');
    expect(part('reckonings')).toBeTruthy();
    expect(screen.getByText(/no reckoning of that name/)).toBeTruthy();
  });
});
