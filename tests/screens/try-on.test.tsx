import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test, vi } from 'vitest';
import clockmakerFile from '../../demo-data/harbour-clockmaker.json' with { type: 'json' };
import { entriesFor } from '../../src/fitting/here.ts';
import { inches, mm } from '../../src/length/length.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { units } from '../../src/screens/choices.ts';
import { readHash } from '../../src/screens/route.ts';
import type { Session } from '../../src/screens/session.ts';
import { canBeReckoned, lookFor } from '../../src/screens/try-on/notes.ts';
import TryOn from '../../src/screens/try-on/try-on.tsx';
import type { Act } from '../../src/store/deed.ts';
import { clearDesks, desk, shirt } from './describe/desk.ts';

const readRight = (raw: unknown): Outfit => {
  const read = readOutfit(raw);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};
const clockmaker = readRight(clockmakerFile);
const blouse = clockmaker.garments.find(({ id }) => id === 'shirt')!;
const measured = entriesFor(blouse, 'upper side').find(({ asks }) => asks !== undefined)!;

/** The page at the address, as the app shows it. */
function Here({ session, at }: { readonly session: Session; readonly at: string }) {
  return <TryOn session={session} at={at === '' ? [] : at.split('/')} />;
}
const show = (session: Session, at = 'shirt') => render(<Here session={session} at={at} />);
const part = (name: string): HTMLElement => document.querySelector<HTMLElement>(`[data-part="${name}"]`)!;
const notes = (): HTMLElement[] => [...document.querySelectorAll<HTMLElement>('li[data-note]')];
const amount = (): HTMLInputElement => document.querySelector('[data-field="amount"] input')!;
const whereTo = (): string => {
  const route = readHash(location.hash);
  return route?.screen === 'try' ? route.at.join('/') : location.hash;
};
const press = (name: string | RegExp): void => void fireEvent.click(screen.getByRole('button', { name }));
const seen = (entry: string, more: Partial<Extract<Act, { kind: 'seen' }>> = {}): Act => ({
  kind: 'seen',
  garment: 'shirt',
  entry,
  side: 'both',
  ...more,
});

afterEach(() => {
  cleanup();
  units.value = 'outfit';
  vi.unstubAllGlobals();
  clearDesks();
});

describe('which garment', () => {
  test('is asked where there are several, with how much is open in each', () => {
    const { session } = desk(clockmaker, seen(measured.id));
    show(session, '');
    const links = [...part('try-garments').querySelectorAll('a[data-garment]')];
    expect(links.map((one) => one.getAttribute('data-garment'))).toEqual(
      clockmaker.garments.map(({ id }) => id),
    );
    expect(links[0]!.textContent).toContain('1 noted, still open');
    expect(notes().map((one) => one.dataset.note)).toEqual([measured.id]);
  });

  test('is not asked where there is one', () => {
    const { session } = desk(shirt);
    show(session, '');
    expect(part('try-on').querySelector('h1')?.textContent).toContain(shirt.garments[0]!.name);
  });

  test('one that is not there is said to be missing', () => {
    show(desk(clockmaker).session, 'cloak');
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('This garment is not in this outfit');
  });
});

describe('what is looked at first', () => {
  test('is ticked without a deed, folds once all is seen to, and is remembered', async () => {
    const { session, acts } = desk(clockmaker);
    const { unmount } = show(session);
    const boxes = () => within(part('checks')).getAllByRole<HTMLInputElement>('checkbox', { hidden: true });
    expect(part('checks').textContent).toContain('The crosswise grain lies level');
    expect(part('checks').textContent).toContain('The frills stand clear of the arms when they are raised');
    const count = boxes().length;
    for (let i = 0; i < count; i += 1) {
      expect(part('checks').textContent).toContain(`${i} of ${count}`);
      fireEvent.click(boxes()[i]!);
    }
    expect(part('checks').textContent).toContain('all seen to');
    expect(part('checks').hasAttribute('open')).toBe(false);
    unmount();
    show(session);
    expect(boxes().every(({ checked }) => checked)).toBe(true);
    await session.settled();
    expect(acts()).toEqual([]);
  });
});

describe('the body', () => {
  test('has a button for each place where this garment can show something, and no other', () => {
    show(desk(clockmaker).session);
    for (const view of ['Front', 'Back', 'Side']) {
      press(view);
      const named = [...document.querySelectorAll('[data-place]')].map((one) =>
        one.getAttribute('data-place'),
      );
      const there = entriesFor(blouse).filter(({ views }) => views.some((one) => one === view.toLowerCase()));
      expect(new Set(named)).toEqual(new Set(there.map(({ place }) => place)));
    }
  });

  test('leads to what can be seen at a place', () => {
    const { session } = desk(clockmaker);
    const { unmount } = show(session);
    press('Upper side');
    expect(whereTo()).toBe('shirt/at/front/upper side');
    unmount();
    show(session, whereTo());
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Upper side, front');
    const listed = [...document.querySelectorAll('a[data-entry]')].map((one) =>
      one.getAttribute('data-entry'),
    );
    expect(new Set(listed)).toEqual(new Set(entriesFor(blouse, 'upper side').map(({ id }) => id)));
  });

  test('says where something was noted', () => {
    show(desk(clockmaker, seen(measured.id), seen(measured.id)).session);
    expect(screen.getByRole('button', { name: /^Upper side ?2 noted/ })).toBeTruthy();
    expect(document.querySelectorAll('.body-noted')).toHaveLength(1);
  });
});

describe('the list of all', () => {
  test('is searched by words of what is seen, of the place and of the causes', () => {
    show(desk(clockmaker).session, 'shirt/all');
    const listed = () => [...document.querySelectorAll('a[data-entry]')].map((one) => one.textContent);
    expect(listed()).toHaveLength(entriesFor(blouse).length);
    fireEvent.input(part('search'), { target: { value: 'tucks straight' } });
    expect(listed()).toContain('The tucks do not hang straight');
    expect(listed().length).toBeLessThan(entriesFor(blouse).length);
    fireEvent.input(part('search'), { target: { value: 'umbrella' } });
    expect(listed()).toEqual([]);
    expect(screen.getByRole('status').textContent).toContain('umbrella');
    expect(lookFor(entriesFor(blouse), ' ')).toHaveLength(entriesFor(blouse).length);
  });
});

describe('a note', () => {
  const form = `shirt/see/${measured.id}`;

  test('has the amount as it was spoken, the side, what tests showed, and words', async () => {
    const { session, acts } = desk(clockmaker);
    show(session, form);
    fireEvent.input(amount(), { target: { value: 'five eighths' } });
    fireEvent.blur(amount());
    expect(amount().value).toBe('5/8');
    fireEvent.click(screen.getByRole('radio', { name: 'Left' }));
    const [first, second] = measured.causes;
    press(new RegExp(`^Not this ?: ${first.is}`));
    press(new RegExp(`^It is this ?: ${second!.is}`));
    fireEvent.input(document.querySelector('[data-field="words"] textarea')!, {
      target: { value: ' With the arm up. ' },
    });
    press('Note it');
    expect(whereTo()).toBe('shirt');
    await session.settled();
    expect(acts()).toEqual([
      {
        kind: 'seen',
        garment: 'shirt',
        entry: measured.id,
        side: 'left',
        amount: inches(5, 8),
        sure: second!.id,
        out: [first.id],
        words: 'With the arm up.',
      },
    ]);
  });

  test('needs no amount, and is touched or stepped in marks of the rule', async () => {
    const { session, acts } = desk({ ...clockmaker, units: 'mm' });
    show(session, form);
    fireEvent.click(document.querySelector('[data-amount="15"]')!);
    press('A mark more');
    expect(amount().value).toBe('16');
    for (let i = 0; i < 20; i += 1) press('A mark less');
    expect(amount().value).toBe('');
    press('A mark more');
    press('Note it');
    await session.settled();
    expect(acts()).toEqual([seen(measured.id, { amount: mm(1) })]);
  });

  test.each([
    ['rather much', /not a length/],
    ['0', /more than nothing/],
    ['400 in', /more than a garment has/],
  ])('is not taken with “%s”, and says so at the field', async (text, fault) => {
    const { session, acts } = desk(clockmaker);
    show(session, form);
    fireEvent.input(amount(), { target: { value: text } });
    press('Note it');
    expect(part('fault').textContent).toMatch(fault);
    expect(amount().getAttribute('aria-invalid')).toBe('true');
    expect(document.activeElement).toBe(amount());
    await session.settled();
    expect(acts()).toEqual([]);
  });

  test('is found again as it was typed, and in the other rule with its meaning', () => {
    const { session } = desk(clockmaker);
    const { unmount } = show(session, form);
    fireEvent.input(amount(), { target: { value: '5/' } });
    unmount();
    show(session, form);
    expect(amount().value).toBe('5/');
    fireEvent.input(amount(), { target: { value: '5/8' } });
    cleanup();
    units.value = 'mm';
    show(session, form);
    expect(amount().value).toBe('5/8 in');
  });

  test('takes what the browser heard, the first reading that is a length', async () => {
    const heard: { onresult?: (event: unknown) => void; onend?: () => void }[] = [];
    vi.stubGlobal(
      'SpeechRecognition',
      class {
        onresult?: (event: unknown) => void;
        onend?: () => void;
        constructor() {
          heard.push(this);
        }
        start() {}
        abort() {}
      },
    );
    show(desk(clockmaker).session, form);
    press('Say it');
    await vi.waitFor(() => expect(part('speak').getAttribute('aria-pressed')).toBe('true'));
    heard[0]!.onresult?.({
      results: [[{ transcript: 'five ates' }, { transcript: ' an inch and a half' }]],
    });
    heard[0]!.onend?.();
    await vi.waitFor(() => expect(amount().value).toBe('1 1/2'));
    expect(part('speak').getAttribute('aria-pressed')).toBe('false');
  });

  test('shows no such button where the browser cannot listen', () => {
    show(desk(clockmaker).session, form);
    expect(part('speak')).toBeNull();
  });

  test('can be looked at again: what is kept then takes the place of the old one', async () => {
    const { session, acts } = desk(clockmaker, seen(measured.id, { amount: inches(1, 2), words: 'here' }));
    const deed = session.progress.value.seen[0]!.deed;
    show(session, `shirt/kept/${deed}`);
    expect(amount().value).toBe('1/2');
    press('A mark more');
    press('Keep the changes');
    await session.settled();
    expect(acts()).toEqual([
      seen(measured.id, { amount: inches(5, 8), words: 'here' }),
      { kind: 'undone', deed },
    ]);
    const amounts = () => session.progress.value.seen.map((one) => [one.amount, one.words]);
    expect(amounts()).toEqual([[inches(5, 8), 'here']]);
    cleanup();
    show(session);
    press(/^Undo: last note/);
    await session.settled();
    expect(amounts()).toEqual([[inches(1, 2), 'here']]);
    await vi.waitFor(() => expect(notes()[0]!.textContent).toContain('1/2 in'));
    press(/^Undo: last note/);
    await session.settled();
    expect(amounts()).toEqual([]);
  });
});

describe('what was seen so far', () => {
  test('may stay as it is, and that can be taken back', async () => {
    const { session } = desk(clockmaker, seen(measured.id, { amount: inches(1) }));
    show(session);
    expect(notes()[0]!.textContent).toContain('1 in');
    press(/^Let it be/);
    await session.settled();
    await vi.waitFor(() => expect(notes()[0]!.dataset.state).toBe('let be'));
    expect(part('find-cure')).toBeNull();
    press(/^Undo: let it be/);
    await session.settled();
    await vi.waitFor(() => expect(notes()[0]!.dataset.state).toBe('open'));
  });

  test('is taken off, and what was typed in it stands in its form again', async () => {
    const { session } = desk(
      clockmaker,
      seen(measured.id, { amount: inches(1), words: 'only when sitting' }),
    );
    const { unmount } = show(session);
    press(/^Take off/);
    await session.settled();
    await vi.waitFor(() => expect(notes()).toHaveLength(0));
    unmount();
    show(session, `shirt/see/${measured.id}`);
    expect(amount().value).toBe('1');
    expect(document.querySelector('textarea')!.value).toBe('only when sitting');
  });

  test('is undone with one touch, the last first', async () => {
    const { session } = desk(clockmaker, seen(measured.id), seen(entriesFor(blouse, 'chest')[0]!.id));
    show(session);
    press(/^Undo: last note/);
    await session.settled();
    await vi.waitFor(() => expect(notes().map((one) => one.dataset.note)).toEqual([measured.id]));
  });

  test('leads to the cure once something of it can be reckoned', () => {
    const { session } = desk(clockmaker, seen(measured.id, { amount: inches(3, 4) }));
    show(session);
    expect(part('find-cure').getAttribute('href')).toBe('#/try/harbour-clockmaker/shirt/cure');
  });

  test('can be reckoned where a cause that is left asks for a change, and its amount is known', () => {
    const { session } = desk(clockmaker, seen(measured.id));
    const note = session.progress.value.seen[0]!;
    const all = measured.causes.map(({ id }) => id);
    const known = { ...note, amount: inches(1) };
    expect(canBeReckoned(known, measured)).toBe(true);
    expect(canBeReckoned({ ...known, out: all }, measured)).toBe(false);
    expect(canBeReckoned({ ...known, state: 'cured' }, measured)).toBe(false);
    expect(canBeReckoned(known, undefined)).toBe(false);
  });
});
