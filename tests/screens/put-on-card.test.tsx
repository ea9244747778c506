import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { cardsToChoose, matching } from '../../src/screens/bench/cards-to-choose.ts';
import { units } from '../../src/screens/choices.ts';
import PutOnCard from '../../src/screens/reckoner/put-on-card.tsx';
import type { Act, Deed } from '../../src/store/deed.ts';
import { addUp } from '../../src/store/progress.ts';
import { MOST_FIGURES } from '../../src/store/reckoned.ts';
import { memoryLedger, outfit, rooms, stepIds } from './fixture.ts';

const held = vi.hoisted(() => ({ open: (): Promise<unknown> => Promise.reject(new Error('not yet')) }));
vi.mock('../../src/store/ledger.ts', () => ({ openLedger: () => held.open() }));
vi.mock('../../src/screens/rooms.ts', async () => (await import('./fixture.ts')).rooms);

const [marks, shoulders, press, bead, hem] = stepIds as [string, string, string, string, string];
let deeds: Deed[];
let full: Error | undefined;
let time = 0;

/** A ledger of this device, in memory, for several outfits. The workroom opens one for the whole file. */
held.open = async () => ({
  outfits: async () =>
    [...new Set(deeds.map((deed) => deed.outfit))].reverse().map((id) => ({ outfit: id, deeds: 1, last: 0 })),
  load: async (id: string) =>
    addUp(
      deeds.filter((deed) => deed.outfit === id),
      id,
    ),
  write: async (id: string, acts: readonly Act[]) => {
    if (full) throw full;
    return begin(id, ...acts);
  },
});

function begin(id: string, ...acts: Act[]): readonly Deed[] {
  const made = acts.map((one, i) => {
    const seq = deeds.length + i;
    return { id: `here-${seq}` as const, device: 'here', seq, at: ++time, outfit: id, act: one };
  });
  deeds.push(...made);
  return made;
}

const begun: Act = { kind: 'outfit-begun', description: {} };
const tucks = {
  title: 'Parallel tucks',
  reckoning: 'parallel-tucks',
  entries: { depth: '1/8' },
  figures: [
    { name: 'cloth to cut', figure: '15 1/4 in' },
    { name: 'first fold', figure: '2 1/8 in' },
  ],
};
const part = (name: string): HTMLElement | null => document.querySelector(`[data-part="${name}"]`);
const card = (step: string): HTMLElement => {
  const found = document.querySelector<HTMLElement>(`button[data-step="${step}"]`);
  if (!found) throw new Error(`No button puts the figures on ${step}.`);
  return found;
};
const steps = (name: string): (string | undefined)[] =>
  [...(part(name)?.querySelectorAll<HTMLElement>('button[data-step]') ?? [])].map((one) => one.dataset.step);
const put = () => addUp(deeds, deeds[0]?.outfit ?? '').reckoned;
const laidOut = (): Promise<void> => waitFor(() => expect(part('on-bench')).not.toBeNull());

beforeEach(() => {
  units.value = 'mm';
  deeds = [];
  full = undefined;
});
afterEach(cleanup);

describe('putting figures on a card', () => {
  test('the card on the bench comes first, then the ready ones, then all others by garment', async () => {
    begin(outfit.id, begun, { kind: 'step-done', step: marks }, { kind: 'step-opened', step: bead });
    render(<PutOnCard {...tucks} />);
    await laidOut();
    expect(screen.queryByLabelText('Outfit')).toBeNull();
    expect(steps('on-bench')).toEqual([bead]);
    expect(steps('ready')).toEqual([shoulders]);
    expect(steps('others')).toEqual([press, hem]);
    expect(part('others')?.querySelector('summary')?.textContent).toBe('Shirt, 2 cards');
  });

  test('one touch puts them, says so, leads to the bench, and another takes them off', async () => {
    begin(outfit.id, begun, { kind: 'step-opened', step: marks });
    render(<PutOnCard {...tucks} />);
    await laidOut();
    fireEvent.click(card(marks));
    await waitFor(() => expect(part('put')).not.toBeNull());
    expect(put()).toMatchObject([{ step: marks, unit: 'mm', ...tucks }]);
    expect(screen.getByRole('status').textContent).toBe(
      'On the card now: Mark the tuck folds on the left front, Shirt.',
    );
    const bench = screen.getByRole('link', { name: 'To the bench' });
    expect(bench.getAttribute('href')).toBe('#/bench/harbour');
    expect(document.activeElement).toBe(bench);
    expect(screen.queryByRole('button', { name: 'Work on that card' })).toBeNull();
    fireEvent.click(screen.getByRole('button', { name: 'Undo' }));
    await waitFor(() => expect(part('put')).toBeNull());
    expect(put()).toEqual([]);
    expect(screen.getByRole('status').textContent).toContain('Taken off again');
    expect(steps('on-bench')).toEqual([marks]);
  });

  test('two touches at once put them once', async () => {
    begin(outfit.id, begun, { kind: 'step-opened', step: marks });
    render(<PutOnCard {...tucks} />);
    await laidOut();
    const button = card(marks);
    fireEvent.click(button);
    fireEvent.click(button);
    await waitFor(() => expect(part('put')).not.toBeNull());
    expect(put()).toHaveLength(1);
  });

  test('a ready card can be opened with the same hand', async () => {
    begin(outfit.id, begun, { kind: 'step-done', step: marks }, { kind: 'step-opened', step: bead });
    render(<PutOnCard {...tucks} />);
    await laidOut();
    fireEvent.click(card(shoulders));
    await waitFor(() => expect(part('put')).not.toBeNull());
    expect(screen.getByRole('status').textContent).toContain('when that card is opened');
    fireEvent.click(screen.getByRole('button', { name: 'Work on that card' }));
    await waitFor(() => expect(deeds.at(-1)?.act).toEqual({ kind: 'step-opened', step: shoulders }));
    await waitFor(() => expect(location.hash).toBe('#/bench/harbour'));
  });

  test('a card is found by its words', async () => {
    begin(outfit.id, begun, { kind: 'step-opened', step: marks });
    render(<PutOnCard {...tucks} />);
    await laidOut();
    const field = screen.getByLabelText('Look for a card');
    fireEvent.input(field, { target: { value: 'shirt HEM' } });
    await waitFor(() => expect(steps('others')).toEqual([hem]));
    expect(part('others')?.querySelector('details')?.open).toBe(true);
    fireEvent.input(field, { target: { value: 'astrolabe' } });
    await waitFor(() => expect(part('others')).toBeNull());
    expect(part('put-on-card')?.textContent).toContain('No other card has these words');
    fireEvent.input(field, { target: { value: ' ' } });
    await waitFor(() => expect(steps('others')).toHaveLength(4));
  });

  test('of several outfits the one worked on last is chosen, and another can be', async () => {
    begin('older', begun, { kind: 'step-opened', step: hem });
    begin(outfit.id, begun, { kind: 'step-opened', step: marks });
    render(<PutOnCard {...tucks} />);
    await laidOut();
    const choice = screen.getByLabelText<HTMLSelectElement>('Outfit');
    expect(choice.value).toBe(outfit.id);
    fireEvent.change(choice, { target: { value: 'older' } });
    await waitFor(() => expect(steps('on-bench')).toEqual([hem]));
    fireEvent.click(card(hem));
    await waitFor(() => expect(part('put')).not.toBeNull());
    expect(deeds.at(-1)).toMatchObject({ outfit: 'older', act: { kind: 'reckoned', step: hem } });
  });

  test('with no outfit on the device it says what to do first', async () => {
    render(<PutOnCard {...tucks} />);
    await waitFor(() => expect(part('no-outfit')).not.toBeNull());
    const link = within(part('no-outfit') as HTMLElement).getByRole('link', { name: 'To the outfits' });
    expect(link.getAttribute('href')).toBe('#/');
  });

  test('an outfit that cannot be read leads to its order', async () => {
    begin(outfit.id, { kind: 'outfit-begun', description: 'broken' });
    render(<PutOnCard {...tucks} />);
    await waitFor(() => expect(part('put-on-card')?.textContent).toContain('no cards yet'));
    expect(screen.getByRole('link', { name: 'Its running order' }).getAttribute('href')).toBe(
      '#/order/harbour',
    );
  });

  test('an outfit that is finished has no card left, and says so', async () => {
    begin(outfit.id, begun, ...stepIds.map((step): Act => ({ kind: 'step-done', step })));
    render(<PutOnCard {...tucks} />);
    await waitFor(() =>
      expect(part('put-on-card')?.textContent).toContain('Every card of this outfit is done.'),
    );
  });

  test('the first sixty of many go on the card, and it says so', async () => {
    begin(outfit.id, begun, { kind: 'step-opened', step: marks });
    const many = Array.from({ length: 84 }, (_, i) => ({ name: `mark ${i + 1}`, figure: `${i} in` }));
    render(<PutOnCard {...tucks} figures={many} />);
    await laidOut();
    expect(part('put-on-card')?.textContent).toContain('The first 60 of 84 figures go on the card.');
    fireEvent.click(card(marks));
    await waitFor(() => expect(part('put')).not.toBeNull());
    expect(put()[0]?.figures).toEqual(many.slice(0, MOST_FIGURES));
  });

  test('a device that has no room says so, and the touch can be made again', async () => {
    begin(outfit.id, begun, { kind: 'step-opened', step: marks });
    render(<PutOnCard {...tucks} />);
    await laidOut();
    full = new Error('There is no room left on this device.');
    fireEvent.click(card(marks));
    await waitFor(() => expect(screen.getByRole('status').textContent).toContain('no room left'));
    full = undefined;
    fireEvent.click(card(marks));
    await waitFor(() => expect(part('put')).not.toBeNull());
    expect(put()).toHaveLength(1);
  });
});

describe('the cards to choose from', () => {
  const running = (done: readonly string[]) => {
    const found = rooms.runningOrder(outfit, { done, added: [], waived: new Set() });
    if (!found.ok) throw new Error('The order runs in a ring.');
    return found.value;
  };
  const names = new Map([['shirt', 'Shirt']]);
  const progress = (...acts: Act[]) => {
    const memory = memoryLedger(() => 1);
    memory.put(outfit.id, acts);
    return memory.progress();
  };

  test('leave out what is done, and each stands in one place', () => {
    const { onBench, ready, others } = cardsToChoose(
      running([marks, shoulders]),
      progress({ kind: 'step-opened', step: hem }),
      names,
      0,
    );
    expect(onBench).toMatchObject({ step: hem, state: 'on the bench', garment: 'Shirt' });
    expect(ready.map(({ step, state }) => [step, state])).toEqual([[press, 'ready']]);
    expect(others).toMatchObject([{ garment: 'Shirt', cards: [{ step: bead, state: 'waits' }] }]);
  });

  test('where none is open, the next one is on the bench; where all is done, none', () => {
    expect(cardsToChoose(running([]), progress(), names, 0).onBench?.step).toBe(marks);
    expect(
      cardsToChoose(running([]), progress({ kind: 'step-opened', step: 'gone' }), names, 0).onBench?.step,
    ).toBe(marks);
    const over = cardsToChoose(
      running(stepIds),
      progress(...stepIds.map((step): Act => ({ kind: 'step-done', step }))),
      names,
      0,
    );
    expect(over).toEqual({ onBench: undefined, ready: [], others: [] });
  });

  test('are found by every word that is asked', () => {
    const cards = [{ step: 'a', say: 'Sew the hem', garment: 'Shirt', state: 'ready' as const }];
    expect(matching(cards, '')).toBe(cards);
    expect(matching(cards, ' HEM shirt ')).toEqual(cards);
    expect(matching(cards, 'hem hat')).toEqual([]);
  });
});
