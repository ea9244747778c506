import { act, cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { Bench } from '../../src/screens/bench/bench.tsx';
import { putOn } from '../../src/screens/bench/from-reckoner.tsx';
import { PutElsewhere } from '../../src/screens/bench/put-elsewhere.tsx';
import { cardInWords } from '../../src/screens/bench/words.ts';
import { keepEntries, recallEntries, takenBack } from '../../src/screens/reckoner/entries.ts';
import { type Session, startSession } from '../../src/screens/session.ts';
import type { Act } from '../../src/store/deed.ts';
import { now } from '../../src/ui/clock.ts';
import { memoryLedger, outfit, rooms, stepIds } from './fixture.ts';

let session: Session;
let memory: ReturnType<typeof memoryLedger>;
const [marks, shoulders] = stepIds as [string, string];

const figures = (n: number) =>
  Array.from({ length: n }, (_, i) => ({ name: `fold ${i + 1}`, figure: `${i + 1} 1/8 in` }));
const put = (n: number, more: Partial<Extract<Act, { kind: 'reckoned' }>> = {}): Act => ({
  kind: 'reckoned',
  step: marks,
  reckoning: 'parallel-tucks',
  title: 'Parallel tucks',
  unit: 'in',
  entries: { depth: '1/8', count: '9' },
  figures: figures(n),
  ...more,
});

beforeEach(() => {
  vi.useFakeTimers({ now: 1_800_000_000_000 });
  now.value = Date.now();
  memory = memoryLedger(Date.now);
  memory.put(outfit.id, [{ kind: 'outfit-begun', description: {} }]);
});
afterEach(() => {
  cleanup();
  session.close();
  localStorage.clear();
  vi.useRealTimers();
});

const rest = (): Promise<void> =>
  act(async () => {
    await vi.advanceTimersByTimeAsync(300);
  });
async function show(...acts: Act[]): Promise<void> {
  memory.put(outfit.id, acts);
  session = startSession(memory.progress(), {
    ledger: memory.ledger,
    rooms,
    now: Date.now,
    seen: () => now.value,
    afterPaint: (work) => void setTimeout(work, 0),
  });
  render(<Bench session={session} />);
  await rest();
}
const part = (name: string): HTMLElement | null => document.querySelector(`[data-part="${name}"]`);
const shown = (): (string | null)[] =>
  [...document.querySelectorAll('[data-reckoned] dl > div')].map((row) => row.textContent);

describe('figures on a card', () => {
  test('stand after the readout, with their title, and only on their own card', async () => {
    await show(put(2), put(1, { step: shoulders, title: 'Ease' }));
    expect(shown()).toEqual(['fold 11 1/8 in', 'fold 22 1/8 in']);
    expect(screen.getByRole('heading', { level: 2 }).textContent).toBe('Parallel tucks');
    const readout = document.querySelector('.readout');
    const after = readout?.compareDocumentPosition(part('reckoned') ?? document.body) ?? 0;
    expect(after & Node.DOCUMENT_POSITION_FOLLOWING).toBeTruthy();
    expect(part('more-figures')).toBeNull();
  });

  test('a card without any says nothing of the reckoner', async () => {
    await show(put(1, { step: shoulders }));
    expect(part('reckoned')).toBeNull();
  });

  test('more than three are one touch away, and fold again', async () => {
    await show(put(7));
    expect(shown()).toHaveLength(3);
    const more = screen.getByRole('button', { name: '4 more figures' });
    expect(more.getAttribute('aria-expanded')).toBe('false');
    fireEvent.click(more);
    await rest();
    expect(shown()).toHaveLength(7);
    fireEvent.click(screen.getByRole('button', { name: 'Only the first three' }));
    await rest();
    expect(shown()).toHaveLength(3);
  });

  test('the last put stands first, and each is taken off by itself', async () => {
    await show(put(1), put(2, { title: 'Spaced tucks' }));
    const titles = () => screen.getAllByRole('heading', { level: 2 }).map((one) => one.textContent);
    expect(titles()).toEqual(['Spaced tucks', 'Parallel tucks']);
    fireEvent.click(screen.getByRole('button', { name: /^Take off the card ?: Parallel tucks$/ }));
    await rest();
    expect(titles()).toEqual(['Spaced tucks']);
    expect(memory.deeds.at(-1)?.act).toEqual({ kind: 'undone', deed: 'here-1' });
    expect(memory.progress().reckoned).toHaveLength(1);
  });

  test('one touch of undo takes the last off, and says so', async () => {
    await show(put(1));
    expect(part('undo')?.textContent?.replace(/\s+/g, ' ').trim()).toBe('Undo: the figures');
    fireEvent.click(part('undo') as HTMLElement);
    await rest();
    expect(part('reckoned')).toBeNull();
    expect(part('undo')).toHaveProperty('disabled', true);
  });

  test('the reckoning opens again with what stood in its fields', async () => {
    await show(put(1));
    const link = within(part('reckoned') as HTMLElement).getByRole('link', {
      name: /^Reckon again ?: Parallel tucks$/,
    });
    expect(link.getAttribute('href')).toBe('#/reckoner/parallel-tucks');
    keepEntries('parallel-tucks', { unit: 'mm', entries: { depth: '6' } });
    fireEvent.click(link);
    const kept = recallEntries('parallel-tucks', 'mm');
    expect(kept).toMatchObject({ unit: 'in', entries: { depth: '1/8', count: '9' } });
    expect(takenBack(kept)).toMatchObject({ unit: 'mm', entries: { depth: '6' } });
    localStorage.setItem('slipbaste.reckoner.parallel-tucks', 'torn');
    fireEvent.click(link);
    expect(recallEntries('parallel-tucks', 'mm').entries).toEqual({ depth: '1/8', count: '9' });
  });

  test('the pad does what it did before, and figures put by another page appear', async () => {
    await show();
    await act(async () => session.hear(memory.put(outfit.id, [put(1)], 'other')));
    expect(shown()).toHaveLength(1);
    fireEvent.click(part('pad') as HTMLElement);
    await rest();
    expect(session.stepProgress.value.items.size).toBe(1);
    expect(shown()).toHaveLength(1);
  });

  test('those on other cards are listed, also where the card has left the order, and taken off there', async () => {
    await show(put(1), put(1, { step: shoulders, title: 'Ease' }), put(1, { step: 'gone', title: 'Old' }));
    render(<PutElsewhere session={session} />);
    const listed = () => part('put-elsewhere')?.textContent ?? '';
    expect(listed()).not.toContain('Parallel tucks');
    expect(listed()).toContain('Sew the shoulder seams, fronts to back');
    expect(listed()).toContain('Its card is no longer in the order.');
    fireEvent.click(screen.getByRole('button', { name: 'Take off Old' }));
    await rest();
    expect(listed()).not.toContain('no longer in the order');
    expect(memory.progress().reckoned.map(({ title }) => title)).toEqual(['Parallel tucks', 'Ease']);
  });

  test('those that stand open are read aloud before the cautions', async () => {
    await show(put(5));
    const card = session.card.value;
    if (!card) throw new Error('No card is open.');
    const words = cardInWords(
      { ...card, cautions: ['Hot iron.'] },
      session.stepProgress.value,
      { unit: 'in', per: 16 },
      0,
      putOn(session.progress.value, marks),
    );
    expect(words.slice(-2)).toEqual([
      'Parallel tucks: fold 1, 1 1/8 in; fold 2, 2 1/8 in; fold 3, 3 1/8 in.',
      'Hot iron.',
    ]);
  });
});

describe('marks on paper', () => {
  test('are offered on a card with marks only, one strip from every datum', async () => {
    await show();
    expect(part('print-strip')?.textContent).toBe('Print a marking strip');
    fireEvent.click(part('print-strip') as HTMLElement);
    vi.useRealTimers();
    await waitFor(() => expect(part('page-count')?.textContent).toMatch(/page/));
    expect(document.querySelector('dialog')?.textContent).toContain('left front, tuck folds');
    cleanup();
    session.close();
    vi.useFakeTimers({ now: 1_800_000_000_000 });
    await show({ kind: 'step-opened', step: shoulders });
    expect(part('print-strip')).toBeNull();
  });
});
