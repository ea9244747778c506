import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/length/length.ts';
import { suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import { putOn } from '../../../src/outfit/changing/units.ts';
import { MEASURES } from '../../../src/outfit/measures.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { unitCalled } from '../../../src/outfit/units/all.ts';
import { leave, problem } from '../../../src/screens/describe/change.ts';
import { keep } from '../../../src/ui/safe-storage.ts';
import { clearDesks, desk, empty } from './desk.ts';
import { edda, forEdda, PageAt, whereTo } from './pages.tsx';

afterEach(() => {
  cleanup();
  leave();
  problem.value = '';
  clearDesks();
});

const part = (name: string): HTMLElement => document.querySelector<HTMLElement>(`[data-part="${name}"]`)!;
const input = (name: string): HTMLInputElement =>
  document.querySelector<HTMLInputElement>(`[data-field="${name}"] input`)!;
const type = (name: string, value: string): void => {
  fireEvent.focusIn(input(name));
  fireEvent.input(input(name), { target: { value } });
};
const rest = (name: string): void => void fireEvent.focusOut(input(name));
const press = (name: string): void => void fireEvent.click(screen.getByRole('button', { name }));
const doubts = (): string[] =>
  [...document.querySelectorAll('[data-part="doubt"]')].map((one) => one.textContent ?? '');
const measured = { ...forEdda };

describe('the wearers', () => {
  test('one is added by name and goes to the measures', async () => {
    const { session, outfit } = desk(empty);
    render(<PageAt session={session} at="wearer" />);
    fireEvent.submit(part('add-wearer'));
    expect(part('add-wearer').textContent).toContain('Give them a name');
    type('name', 'Edda');
    fireEvent.submit(part('add-wearer'));
    await session.settled();
    expect(outfit().wearers).toEqual([{ id: 'edda', name: 'Edda', measures: {} }]);
    expect(whereTo()).toBe('wearer/edda');
  });

  test('are listed with how much was measured', () => {
    render(<PageAt session={desk(measured).session} at="wearer" />);
    expect(screen.getByRole('link', { name: /Edda/ }).textContent).toContain('4 measures');
  });

  test('one that is not there is said to be missing', () => {
    render(<PageAt session={desk(measured).session} at="wearer/nobody" />);
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('This wearer is not in this outfit');
  });
});

describe('the measures of a wearer', () => {
  test('each has its words, its own drawing with a tape, and what was taken', () => {
    render(<PageAt session={desk(measured).session} at="wearer/edda" />);
    const rows = [...document.querySelectorAll('li[data-measure]')];
    expect(rows.map((one) => one.getAttribute('data-measure'))).toEqual(MEASURES.map(({ id }) => id));
    const drawings = rows.map((one) => one.querySelector('svg')?.innerHTML ?? '');
    expect(new Set(drawings).size).toBe(MEASURES.length);
    for (const row of rows) {
      expect(row.querySelectorAll('.body-tape').length).toBeGreaterThan(0);
      expect(row.querySelector('figcaption')?.textContent).toMatch(/\w/);
      expect(row.innerHTML).not.toMatch(/NaN|undefined/);
    }
    expect(input('chest').value).toBe('36');
    expect(input('calf').value).toBe('');
  });

  test('are read as written in either rule, and kept with one touch that undo takes back', async () => {
    const { session, outfit, acts } = desk(measured);
    render(<PageAt session={session} at="wearer/edda" />);
    type('waist', '28 1/2');
    type('ankle', '21.5 cm');
    type('neck', '');
    press('Keep the measures');
    await session.settled();
    expect(outfit().wearers[0]).toEqual({
      ...edda,
      measures: {
        chest: inches(36),
        armhole: inches(16),
        shoulder: inches(5),
        waist: inches(57, 2),
        ankle: mm(215),
      },
    });
    expect(acts()).toHaveLength(1);
    expect(screen.getByRole('button', { name: 'Undo: measured Edda' })).toBeTruthy();
    press('Undo: measured Edda');
    await session.settled();
    expect(outfit().wearers[0]).toEqual(edda);
  });

  test('survive closing before they are kept, and keep their meaning under another rule', async () => {
    const { session, outfit } = desk(measured);
    const first = render(<PageAt session={session} at="wearer/edda" />);
    type('waist', '28');
    type('knee', '14 in');
    first.unmount();
    const metric = desk({ ...measured, units: 'mm' });
    render(<PageAt session={metric.session} at="wearer/edda" />);
    expect(input('waist').value).toBe('28 in');
    type('ankle', '215');
    expect(input('waist').value).toBe('28 in');
    press('Keep the measures');
    await metric.session.settled();
    expect(metric.outfit().wearers[0]?.measures).toMatchObject({
      waist: inches(28),
      knee: inches(14),
      ankle: mm(215),
    });
    expect(outfit().wearers[0]).toEqual(edda);
  });

  test('that cannot be read are said at their field, and nothing is kept', async () => {
    const { session, acts } = desk(measured);
    render(<PageAt session={session} at="wearer/edda" />);
    for (const [name, text, words] of [
      ['knee', 'about knee', /not a length/],
      ['calf', '-3', /more than nothing/],
      ['thigh', '300', /less than 120 in/],
    ] as const) {
      type(name, text);
      rest(name);
      expect(document.querySelector(`[data-field="${name}"] [data-part="fault"]`)?.textContent).toMatch(
        words,
      );
    }
    press('Keep the measures');
    await session.settled();
    expect(acts()).toEqual([]);
    expect(document.activeElement).toBe(input('thigh'));
    expect(part('keep-bar').textContent).toContain('3 measures cannot be read.');
  });

  test('are doubted kindly once the field is left, and kept all the same', async () => {
    const { session, outfit } = desk(measured);
    render(<PageAt session={session} at="wearer/edda" />);
    expect(doubts()).toEqual([]);
    type('wrist', '1');
    expect(doubts()).toEqual([]);
    rest('wrist');
    expect(doubts()).toHaveLength(1);
    expect(doubts()[0]).toMatch(/98 of 100 lie between 5 7\/16 in and 7 13\/16 in\. Measure again.*Gordon/);
    press('Keep the measures');
    await session.settled();
    expect(outfit().wearers[0]?.measures.wrist).toBe(inches(1));
  });

  test('typed for a leg in the reckoner are taken over with one touch', async () => {
    const shared = {
      'leg.waist': { unit: 'in', text: '29' },
      'leg.kneeToFloor': { unit: 'mm', text: '450' },
      'leg.calf': { unit: 'in', text: 'nonsense' },
      'leg.stretchRound': { unit: 'in', text: '80' },
    };
    keep('reckoner.shared', JSON.stringify(shared));
    const { session, outfit } = desk(measured);
    render(<PageAt session={session} at="wearer/edda" />);
    expect(part('from-reckoner').textContent).toContain('waist 29 in, knee to floor 450 mm.');
    press('Take these over');
    expect(part('from-reckoner')).toBeNull();
    expect([input('waist').value, input('knee-to-floor').value]).toEqual(['29', '450 mm']);
    press('Keep the measures');
    await session.settled();
    expect(outfit().wearers[0]?.measures).toMatchObject({ waist: inches(29), 'knee-to-floor': mm(450) });
  });
});

describe('measures that a part cannot be made with', () => {
  test('are said to be so, and kept without it where the maker wants', async () => {
    const unit = unitCalled('plain-front')!;
    const at = suggestPlaces(forEdda.garments[0]!, unit);
    const made = putOn(forEdda, 'blouse', 'plain-front', { name: 'Front', entries: {}, at, cloths: {} });
    if (!made.ok) throw new Error(JSON.stringify(made.error));
    const { session, outfit, acts } = desk(made.value.outfit);
    render(<PageAt session={session} at="wearer/edda" />);
    type('chest', '1/2');
    press('Keep the measures');
    expect(acts()).toEqual([]);
    expect(part('keep-bar').textContent).toMatch(/a part cannot be made\. Front: /);
    press('Keep them, and leave the garments as they are');
    await session.settled();
    expect(outfit().wearers[0]?.measures.chest).toBe(inches(1, 2));
    expect(outfit().garments).toEqual(made.value.outfit.garments);
  });

  test('that change a part are followed by it', async () => {
    const unit = unitCalled('plain-front')!;
    const at = suggestPlaces(forEdda.garments[0]!, unit);
    const made = putOn(forEdda, 'blouse', 'plain-front', { name: 'Front', entries: {}, at, cloths: {} });
    if (!made.ok) throw new Error(JSON.stringify(made.error));
    const { session, outfit } = desk(made.value.outfit);
    render(<PageAt session={session} at="wearer/edda" />);
    type('chest', '42');
    press('Keep the measures');
    await session.settled();
    const wide = (one: Outfit): number =>
      Math.max(
        ...one.garments[0]!.pieces[0]!.outline.edges.flatMap(({ segments }) =>
          segments.map(({ to }) => to.x),
        ),
      );
    expect(wide(outfit())).toBeGreaterThan(wide(made.value.outfit));
  });
});

describe('a wearer', () => {
  test('is renamed', async () => {
    const { session, outfit } = desk(measured);
    render(<PageAt session={session} at="wearer/edda" />);
    type('name', '');
    press('Keep the measures');
    expect(outfit().wearers[0]?.name).toBe('Edda');
    type('name', 'Edda the elder');
    press('Keep the measures');
    await session.settled();
    expect(outfit().wearers[0]).toEqual({ ...edda, name: 'Edda the elder' });
    expect(screen.getByRole('button', { name: 'Undo: renamed Edda' })).toBeTruthy();
  });

  test('is copied with the measures', async () => {
    const { session, outfit } = desk(measured);
    render(<PageAt session={session} at="wearer/edda" />);
    press('Copy as another wearer');
    await session.settled();
    expect(outfit().wearers[1]).toEqual({ id: 'edda-copy', name: 'Edda, copy', measures: edda.measures });
    expect(whereTo()).toBe('wearer/edda-copy');
  });

  test('is removed after being asked, and the garments stay', async () => {
    const { session, outfit } = desk(measured);
    render(<PageAt session={session} at="wearer/edda" />);
    press('Remove this wearer');
    expect(part('remove-wearer').textContent).toContain('Blouse: the figures stay as they are');
    press('Remove');
    await session.settled();
    expect(outfit().wearers).toEqual([]);
    expect(outfit().garments.map(({ name, wearer }) => [name, wearer])).toEqual([['Blouse', undefined]]);
  });
});
