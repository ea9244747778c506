import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { leave, problem } from '../../../src/screens/describe/change.ts';
import { clearDesks, desk, empty, shirt } from './desk.ts';
import { PageAt } from './pages.tsx';

afterEach(() => {
  cleanup();
  leave();
  problem.value = '';
  clearDesks();
});

const box = (name: string): HTMLInputElement =>
  document.querySelector<HTMLInputElement>(`[data-field="${name}"] .field`)!;
const type = (name: string, value: string): void => void fireEvent.input(box(name), { target: { value } });
const press = (name: string): void => void fireEvent.click(screen.getByRole('button', { name }));

describe('about an outfit', () => {
  test('everything is changed in one deed', async () => {
    const { session, outfit, acts } = desk(empty);
    render(<PageAt session={session} at="about" />);
    type('name', 'The lamplighter’s cat');
    type('event', 'The last parade');
    type('date', '2027-03-01');
    type('about', 'Grey, with a tail.');
    fireEvent.click(screen.getByRole('radio', { name: 'millimetres' }));
    press('Keep this');
    await session.settled();
    expect(acts()).toHaveLength(1);
    expect(outfit()).toMatchObject({
      ...empty,
      name: 'The lamplighter’s cat',
      about: 'Grey, with a tail.',
      event: { name: 'The last parade', date: '2027-03-01' },
      units: 'mm',
    });
  });

  test('what is missing is said at its field, and nothing typed is lost', () => {
    const { session, acts } = desk(empty);
    const first = render(<PageAt session={session} at="about" />);
    type('name', ' ');
    type('event', 'The last parade');
    press('Keep this');
    expect(screen.getByText(/Give the outfit a name/)).toBeTruthy();
    expect(document.activeElement).toBe(box('name'));
    expect(acts()).toEqual([]);
    first.unmount();
    render(<PageAt session={session} at="about" />);
    expect(box('event').value).toBe('The last parade');
  });

  test('what is invented stays so, and says so', async () => {
    const { session, outfit } = desk(shirt);
    render(<PageAt session={session} at="about" />);
    expect(screen.getByText(/are invented/)).toBeTruthy();
    type('name', 'A shirt');
    press('Keep this');
    await session.settled();
    expect(outfit().invented).toBe(true);
  });
});
