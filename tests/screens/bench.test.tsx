import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { Bench } from '../../src/screens/bench/bench.tsx';
import { taught, units } from '../../src/screens/choices.ts';
import { type Session, startSession } from '../../src/screens/session.ts';
import { now } from '../../src/ui/clock.ts';
import { memoryLedger, outfit, rooms, stepIds } from './fixture.ts';

let session: Session;
let memory: ReturnType<typeof memoryLedger>;

beforeEach(() => {
  vi.useFakeTimers({ now: 1_800_000_000_000 });
  now.value = Date.now();
  memory = memoryLedger(Date.now);
  memory.put(outfit.id, [{ kind: 'outfit-begun', description: {} }]);
});
afterEach(() => {
  cleanup();
  session.close();
  taught.value = {};
  units.value = 'outfit';
  vi.useRealTimers();
});

function show(open?: string): void {
  if (open !== undefined) memory.put(outfit.id, [{ kind: 'step-opened', step: open }]);
  session = startSession(memory.progress(), {
    ledger: memory.ledger,
    rooms,
    now: Date.now,
    seen: () => now.value,
    afterPaint: (work) => void setTimeout(work, 0),
  });
  render(<Bench session={session} />);
}

const part = (name: string): HTMLElement => document.querySelector<HTMLElement>(`[data-part="${name}"]`)!;
const pad = (): HTMLElement => part('pad');
/** Lets the ledger, the screen and the pad come to rest. */
const rest = async (ms = 300): Promise<void> =>
  act(async () => {
    await vi.advanceTimersByTimeAsync(ms);
  });
const press = async (): Promise<void> => {
  fireEvent.click(pad());
  await rest();
};
const key = async (name: string, more: object = {}): Promise<void> => {
  fireEvent.keyDown(document.body, { key: name, ...more });
  await rest();
};
const acts = (): string[] => memory.deeds.map((deed) => deed.act.kind);

describe('the bench', () => {
  test('shows where we are, what to do, one figure and the pad', async () => {
    show();
    await rest();
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe(
      'Mark the tuck folds on the left front',
    );
    expect(part('card').dataset).toMatchObject({ step: stepIds[0], readout: 'marks', station: 'mark' });
    expect(document.querySelector('.where')?.textContent).toContain('card 1 of 5');
    expect(part('figure').querySelector('.unseen')?.textContent).toBe('4 3/8 in');
    expect(pad().textContent).toBe('Mark set, next');
    expect(part('undo')).toHaveProperty('disabled', true);
    expect(acts()).toContain('step-opened');
  });

  test('the pad sets marks one by one, undo names and takes back the last', async () => {
    show();
    await rest();
    await press();
    await press();
    expect(part('figure').querySelector('.unseen')?.textContent).toBe('9 3/8 in');
    expect(part('undo').textContent?.replace(/\s+/g, ' ').trim()).toBe('Undo: mark 2');
    fireEvent.click(part('undo'));
    await rest();
    expect(part('figure').querySelector('.unseen')?.textContent).toBe('6 13/16 in');
    expect(part('undo').textContent).toContain('mark 1');
  });

  test('the rule the maker chose is the rule on the card', async () => {
    units.value = 'mm';
    show();
    await rest();
    expect(part('figure').querySelector('.unseen')?.textContent).toBe('111 mm');
  });

  test('keys do what the pad and the undo button do; a held key acts once', async () => {
    show();
    await rest();
    await key('PageDown');
    await key('PageDown', { repeat: true });
    await key(' ');
    expect(session.stepProgress.value.items.size).toBe(2);
    await key('Backspace');
    expect(session.stepProgress.value.items.size).toBe(1);
  });

  test('a taught pedal works the pad', async () => {
    taught.value = { pad: 'b' };
    show();
    await rest();
    await key('b');
    expect(session.stepProgress.value.items.size).toBe(1);
  });

  test('a count keeps every fast touch, and shows hollow until the ledger has it', async () => {
    show('shirt/sleeve/bead');
    await rest();
    const release = memory.hold();
    fireEvent.click(pad());
    fireEvent.click(pad());
    fireEvent.click(pad());
    await rest(20);
    expect(part('figure').textContent).toBe('6');
    expect(part('figure').dataset.inFlight).toBe('true');
    release();
    await rest();
    expect(part('figure').dataset.inFlight).toBe('false');
    expect(memory.deeds.filter((deed) => deed.act.kind === 'tap')).toHaveLength(3);
  });

  test('at the target the pad closes the line; a touch too soon is not taken for that; going over is said', async () => {
    show('shirt/sleeve/bead');
    await rest();
    for (let i = 0; i < 4; i++) {
      fireEvent.click(pad());
      await rest(10);
    }
    expect(part('figure').textContent).toBe('7');
    expect(pad().textContent).toBe('Line done');
    expect(pad().getAttribute('aria-disabled')).toBe('true');
    fireEvent.click(pad());
    await rest(10);
    expect(acts()).not.toContain('line-closed');
    await rest();
    fireEvent.click(screen.getByRole('button', { name: 'One more' }));
    await rest();
    expect(part('card').textContent).toContain('1 over the target');
    await press();
    expect(memory.deeds.at(-1)?.act).toMatchObject({ kind: 'line-closed', count: 8 });
    expect(document.querySelector('.mark-words')?.textContent).toContain('line 2 of 2');
  });

  test('a line can be ended short of its target', async () => {
    show('shirt/sleeve/bead');
    await rest();
    await press();
    fireEvent.click(screen.getByRole('button', { name: 'End line at 2' }));
    await rest();
    expect(memory.deeds.at(-1)?.act).toMatchObject({ kind: 'line-closed', item: 'line 1', count: 2 });
  });

  test('timers run side by side and are right after any sleep', async () => {
    show('shirt/collar/press');
    await rest();
    await press();
    await press();
    const state = (item: string): string | undefined =>
      document.querySelector<HTMLElement>(`[data-timer="${item}"]`)?.dataset.state;
    expect([state('press'), state('cool')]).toEqual(['running', 'running']);
    expect(pad().textContent).toContain('a timer is still running');
    vi.setSystemTime(Date.now() + 590_000);
    document.dispatchEvent(new Event('visibilitychange'));
    await rest(20);
    expect([state('press'), state('cool')]).toEqual(['over', 'running']);
    expect(document.querySelector('[data-timer="press"]')?.textContent).toContain('time is up');
    await rest(10_000);
    expect(state('cool')).toBe('over');
    expect(pad().textContent).toBe('Done');
  });

  test('a running timer is mentioned on the next card', async () => {
    show('shirt/collar/press');
    await rest();
    await press();
    await press();
    await press();
    expect(part('card').dataset.step).toBe(stepIds[0]);
    const lines = [...document.querySelectorAll('.other-timer')];
    expect(lines).toHaveLength(2);
    expect(lines[1]?.textContent).toContain('Fuse the interfacing');
  });

  test('ticks a pair and goes on to the next card', async () => {
    show('shirt/shoulders/sew');
    await rest();
    await press();
    expect(screen.getByRole('button', { name: 'left shoulder' }).getAttribute('aria-pressed')).toBe('true');
    await press();
    expect(pad().textContent).toBe('Done');
    await press();
    expect(part('card').dataset.step).toBe(stepIds[0]);
    expect(acts().slice(-2)).toEqual(['step-done', 'step-opened']);
  });

  test('cautions stand on the card with words, advice with its source', async () => {
    show('shirt/collar/press');
    await rest();
    expect(part('caution').textContent).toContain('Take care. Hot iron and steam.');
    cleanup();
    session.close();
    show('shirt/tucks/mark');
    await rest();
    expect(part('advice').textContent).toContain('common practice, no source');
  });

  test('trouble with the ledger is said and never hides the card', async () => {
    show();
    await rest();
    memory.fail(new Error('There is no room left on this device.'));
    await press();
    expect(screen.getByRole('alert').textContent).toContain('There is no room left on this device.');
    expect(screen.getByRole('heading', { level: 1 })).toBeTruthy();
    memory.fail(undefined);
    fireEvent.click(screen.getByRole('button', { name: 'Try again' }));
    await rest();
    expect(screen.queryByRole('alert')).toBeNull();
  });

  test('after the last card it says that the outfit is finished', async () => {
    memory.put(
      outfit.id,
      stepIds.slice(0, 4).map((step) => ({ kind: 'step-done', step })),
    );
    vi.setSystemTime(Date.now() + 4_000_000);
    now.value = Date.now();
    show(stepIds[4]);
    await rest();
    await press();
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('The harbour test is finished');
    expect(document.querySelector('[data-part="pad"]')).toBeNull();
  });
});
