import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test, vi } from 'vitest';
import clockmakerFile from '../../demo-data/harbour-clockmaker.json' with { type: 'json' };
import { entriesFor } from '../../src/fitting/here.ts';
import { inches, mm } from '../../src/length/length.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { units } from '../../src/screens/choices.ts';
import { keepDraft } from '../../src/screens/describe/drafts.ts';
import { readHash } from '../../src/screens/route.ts';
import type { Session } from '../../src/screens/session.ts';
import { canBeReckoned, lookFor, noteKey } from '../../src/screens/try-on/notes.ts';
import { languageHeard } from '../../src/screens/try-on/speech.ts';
import TryOn from '../../src/screens/try-on/try-on.tsx';
import type { Act } from '../../src/store/deed.ts';
import { MOST_PHOTO, MOST_WORDS } from '../../src/store/read-fitting.ts';
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
  vi.useRealTimers();
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
  const boxes = () => within(part('checks')).getAllByRole<HTMLInputElement>('checkbox', { hidden: true });
  const ticked = (): number => boxes().filter(({ checked }) => checked).length;
  const so = (): void => void fireEvent.click(part('check-so'));

  test('comes one line at a time, is ticked without a deed, and is remembered', async () => {
    const { session, acts } = desk(clockmaker);
    const { unmount } = show(session);
    expect(part('checks').textContent).toContain('The frills stand clear of the arms when they are raised');
    const lines = boxes().map((box) => box.closest('label')!.textContent);
    for (let i = 0; i < lines.length; i += 1) {
      expect(part('checks').textContent).toContain(`${i} of ${lines.length}`);
      expect(part('check').textContent).toBe(lines[i]);
      so();
    }
    expect(part('checks').textContent).toContain('all seen to');
    expect(part('check')).toBeNull();
    expect(document.activeElement?.tagName).toBe('SUMMARY');
    unmount();
    show(session);
    expect(ticked()).toBe(lines.length);
    await session.settled();
    expect(acts()).toEqual([]);
    press('Begin the list again');
    expect(ticked()).toBe(0);
    expect(part('check').textContent).toBe(lines[0]);
  });

  test('what is not so is left for later and comes round again', () => {
    show(desk(clockmaker).session);
    const [first, second, third] = boxes().map((box) => box.closest('label')!.textContent);
    press('The next one');
    expect(part('check').textContent).toBe(second);
    so();
    expect(part('check').textContent).toBe(third);
    expect(ticked()).toBe(1);
    for (const box of boxes().slice(2)) fireEvent.click(box);
    expect(part('check').textContent).toBe(first);
    expect(screen.queryByRole('button', { name: 'The next one' })).toBeNull();
  });

  test('counts for one try-on and one day', async () => {
    vi.setSystemTime(new Date(2026, 4, 5, 20));
    const { session } = desk(clockmaker);
    show(session, 'sleeves');
    so();
    cleanup();
    // Past midnight the evening goes on.
    vi.setSystemTime(new Date(2026, 4, 6, 1));
    show(session, 'sleeves');
    await vi.waitFor(() => expect(ticked()).toBe(1));
    cleanup();
    vi.setSystemTime(new Date(2026, 4, 6, 9));
    show(session, 'sleeves');
    await vi.waitFor(() => expect(ticked()).toBe(0));
    so();
    expect(ticked()).toBe(1);
    const gate = clockmaker.garments.find(({ id }) => id === 'sleeves')!.gates[0]!;
    // Tacking for it is not the try-on yet.
    act(() => session.act({ kind: 'step-done', step: `sleeves/${gate.id}/tack` }));
    expect(ticked()).toBe(1);
    act(() => session.act({ kind: 'step-done', step: `sleeves/${gate.id}/fit` }));
    await vi.waitFor(() => expect(ticked()).toBe(0));
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

  /** A browser that listens; where, it is told. */
  const hearing = (available: (how: { langs: string[]; processLocally: boolean }) => string) => {
    const heard: Ears[] = [];
    class Ears {
      static available = async (how: { langs: string[]; processLocally: boolean }) => available(how);
      lang = '';
      onresult?: (event: unknown) => void;
      onend?: () => void;
      local = false;
      constructor() {
        heard.push(this);
      }
      get processLocally() {
        return this.local;
      }
      set processLocally(local: boolean) {
        this.local = local;
      }
      start() {}
      abort() {}
    }
    vi.stubGlobal('SpeechRecognition', Ears);
    return heard;
  };

  test('takes what the browser heard on the device, the first reading that is a length', async () => {
    document.documentElement.lang = 'en';
    const heard = hearing(({ langs, processLocally }) =>
      processLocally && langs.join() === 'en' ? 'available' : 'downloadable',
    );
    show(desk(clockmaker).session, form);
    fireEvent.click(await screen.findByRole('button', { name: 'Say it' }));
    await vi.waitFor(() => expect(part('speak').getAttribute('aria-pressed')).toBe('true'));
    expect(heard[0]).toMatchObject({ lang: 'en', local: true });
    heard[0]!.onresult?.({
      results: [[{ transcript: 'five ates' }, { transcript: ' an inch and a half' }]],
    });
    heard[0]!.onend?.();
    await vi.waitFor(() => expect(amount().value).toBe('1 1/2'));
    expect(part('speak').getAttribute('aria-pressed')).toBe('false');
  });

  test.each(['none', 'elsewhere', 'old'])(
    'is not listened to where the browser would send it: %s',
    async (kind) => {
      if (kind === 'elsewhere')
        hearing(({ processLocally }) => (processLocally ? 'unavailable' : 'available'));
      if (kind === 'old') vi.stubGlobal('webkitSpeechRecognition', class {});
      expect(await languageHeard()).toBeUndefined();
      show(desk(clockmaker).session, form);
      await new Promise((done) => setTimeout(done));
      expect(part('speak')).toBeNull();
    },
  );

  test('shows at once what it understood of words that a keyboard wrote', () => {
    show(desk(clockmaker).session, form);
    fireEvent.input(amount(), { target: { value: 'Five eighths' } });
    expect(part('reads').textContent).toBe('= 5/8 in');
  });

  test('says at the field where words are too many, and loses none of them', async () => {
    const { session, acts } = desk(clockmaker);
    show(session, form);
    const field = document.querySelector<HTMLTextAreaElement>('[data-field="words"] textarea')!;
    fireEvent.input(field, { target: { value: 'x'.repeat(MOST_WORDS + 7) } });
    expect(part('fault').textContent).toContain('these are 7 more');
    press('Note it');
    expect(document.activeElement).toBe(field);
    expect(field.value).toHaveLength(MOST_WORDS + 7);
    await session.settled();
    expect(acts()).toEqual([]);
    fireEvent.input(field, { target: { value: 'x'.repeat(MOST_WORDS) } });
    press('Note it');
    await session.settled();
    expect(acts()).toHaveLength(1);
  });

  test('says at the picture where it is too large to be kept', async () => {
    const { session, acts } = desk(clockmaker);
    const letters = 'A'.repeat(MOST_PHOTO);
    keepDraft(noteKey(session, 'shirt', measured.id), { photo: `data:image/jpeg;base64,${letters}` });
    show(session, form);
    expect(part('photo').textContent).toContain('too large');
    press('Note it');
    await session.settled();
    expect(acts()).toEqual([]);
    press('Take the photo off');
    expect(part('photo').textContent).not.toContain('too large');
    press('Note it');
    await session.settled();
    expect(acts()).toEqual([seen(measured.id)]);
  });

  test('leads back to the cure where it was looked at from there', async () => {
    const { session } = desk(clockmaker, seen(measured.id, { amount: inches(1, 2) }));
    show(session, `shirt/kept/${session.progress.value.seen[0]!.deed}/cure`);
    expect(screen.getByRole('link', { name: 'How to put it right' }).getAttribute('href')).toBe(
      '#/try/harbour-clockmaker/shirt/cure',
    );
    press('Keep the changes');
    expect(whereTo()).toBe('shirt/cure');
    await session.settled();
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
