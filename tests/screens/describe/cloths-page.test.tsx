import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { inches, mm } from '../../../src/length/length.ts';
import { leave, problem } from '../../../src/screens/describe/change.ts';
import { gaugeOf, percentOf } from '../../../src/screens/describe/gauge.ts';
import { clearDesks, desk, empty, shirt } from './desk.ts';
import { PageAt } from './pages.tsx';

afterEach(() => {
  cleanup();
  leave();
  problem.value = '';
  clearDesks();
});

const part = (name: string): HTMLElement => document.querySelector<HTMLElement>(`[data-part="${name}"]`)!;
const row = (kind: 'cloth' | 'marker', id: string): HTMLElement =>
  document.querySelector<HTMLElement>(`li[data-${kind}="${id}"]`)!;
const type = (name: string, value: string): void =>
  void fireEvent.input(document.querySelector(`[data-field="${name}"] input`)!, { target: { value } });
const choose = (name: string): void => void fireEvent.click(screen.getByRole('radio', { name }));
const press = (name: string | RegExp): void => void fireEvent.click(screen.getByRole('button', { name }));

describe('cloths', () => {
  test('are told in plain words with their iron', () => {
    render(<PageAt session={desk(empty).session} at="cloths" />);
    const told = row('cloth', 'cotton');
    expect(told.textContent).toMatch(
      /Cotton, 55 1\/8 in wide, does not stretch, thread to match, needle 70\/10/,
    );
    expect(within(told).getByRole('img').getAttribute('aria-label')).toContain('three dots');
  });

  test('one is added, its stretch measured', async () => {
    const { session, outfit } = desk(empty);
    render(<PageAt session={session} at="cloths" />);
    press('Add a cloth');
    press('Add this cloth');
    expect(part('cloth-form').textContent).toContain('Say which needle');
    type('name', 'Black stretch velvet');
    type('fibre', 'polyester and elastane');
    type('thread', 'black');
    type('needle', '75/11');
    type('width', '150 cm');
    type('across', '7');
    type('along', '5');
    choose('1 dot: 110 °C');
    choose('all one way');
    expect(part('stretch').textContent).toBe('It stretches 75 % across and 25 % along.');
    press('Add this cloth');
    await session.settled();
    expect(outfit().cloths[1]).toEqual({
      id: 'black-stretch-velvet',
      name: 'Black stretch velvet',
      width: mm(1500),
      fibre: 'polyester and elastane',
      stretch: { across: 75, along: 25 },
      iron: 110,
      oneWay: true,
      thread: 'black',
      needle: '75/11',
    });
    expect(part('cloth-form')).toBeNull();
  });

  test('what is impossible is said at its field', async () => {
    const { session, acts } = desk(empty);
    render(<PageAt session={session} at="cloths" />);
    press('Change Light cotton');
    type('across', '3');
    expect(part('fault').textContent).toContain('at least as long as at rest');
    type('across', '40');
    expect(part('fault').textContent).toContain('five times');
    type('across', '4');
    type('width', '0');
    expect(part('fault').textContent).toContain('wider than nothing');
    press('Keep this cloth');
    await session.settled();
    expect(acts()).toEqual([]);
  });

  test('one is changed; what was typed before survives closing', async () => {
    const { session, outfit } = desk(shirt);
    const first = render(<PageAt session={session} at="cloths" />);
    press('Change Cotton shirting');
    type('thread', 'ecru');
    first.unmount();
    render(<PageAt session={session} at="cloths" />);
    press('Keep this cloth');
    await session.settled();
    expect(outfit().cloths[0]).toEqual({ ...shirt.cloths[0]!, thread: 'ecru' });
  });

  test('the focus goes with the form that is opened and back to where it was opened', async () => {
    render(<PageAt session={desk(shirt).session} at="cloths" />);
    const first = shirt.cloths[0]!;
    const key = (name: string): void => {
      screen.getByRole('button', { name }).focus();
      press(name);
    };
    key(`Change ${first.name}`);
    await vi.waitFor(() => expect(document.activeElement).toBe(part('cloth-form')));
    key('Leave it as it was');
    await vi.waitFor(() => expect(row('cloth', first.id).contains(document.activeElement)).toBe(true));
    key('Add a marker');
    await vi.waitFor(() => expect(document.activeElement).toBe(part('marker-form')));
  });

  test('one in use is not taken out, and what uses it is named', async () => {
    const { session, acts } = desk({ ...shirt, cloths: [...shirt.cloths, { ...empty.cloths[0]! }] });
    render(<PageAt session={session} at="cloths" />);
    press('Remove Cotton shirting');
    expect(part('in-use').textContent).toMatch(/Front|Shirt/);
    expect(acts()).toEqual([]);
    press('Remove Light cotton');
    await session.settled();
    expect(row('cloth', 'cotton')).toBeNull();
  });

  test('a stretch that no rule shows stays what it is where nothing about it was changed', async () => {
    const odd = { ...empty.cloths[0]!, stretch: { across: 33.37, along: 0 } };
    const { session, outfit } = desk({ ...empty, cloths: [odd] });
    render(<PageAt session={session} at="cloths" />);
    press('Change Light cotton');
    type('thread', 'blue');
    press('Keep this cloth');
    await session.settled();
    expect(outfit().cloths[0]).toEqual({ ...odd, thread: 'blue' });
  });
});

describe('markers', () => {
  test('one is added and changed', async () => {
    const { session, outfit } = desk(empty);
    render(<PageAt session={session} at="cloths" />);
    press('Add a marker');
    type('name', 'Blue pen');
    choose('goes with water');
    press('Add this marker');
    await session.settled();
    expect(outfit().markers.at(-1)).toEqual({ id: 'blue-pen', name: 'Blue pen', kind: 'water-fading' });
    press('Change Blue pen');
    choose('goes under the iron');
    press('Keep this marker');
    await session.settled();
    expect(outfit().markers.at(-1)?.kind).toBe('heat-fading');
    expect(row('marker', 'blue-pen').textContent).toContain('Goes under the iron');
  });

  test('one in use is not taken out', () => {
    const { session, acts } = desk(shirt);
    render(<PageAt session={session} at="cloths" />);
    press('Remove Tailor’s chalk');
    expect(part('in-use').textContent).toMatch(/gathers|buttons/);
    expect(acts()).toEqual([]);
  });
});

describe('the gauge of a stretch', () => {
  test.each([
    [{ across: 75, along: 0 }, 'in', inches(4), inches(7)],
    [{ across: 80, along: 40 }, 'in', inches(5), inches(9)],
    [{ across: 80, along: 40 }, 'mm', mm(100), mm(180)],
    [{ across: 0, along: 0 }, 'in', inches(4), inches(4)],
  ] as const)('%j in %s comes out at marks of the rule', (stretch, unit, rest, across) => {
    const gauge = gaugeOf(stretch, unit);
    expect([gauge.rest, gauge.across]).toEqual([rest, across]);
    expect(percentOf(gauge.rest, gauge.across)).toBe(stretch.across);
    expect(percentOf(gauge.rest, gauge.along)).toBe(stretch.along);
  });
});
