import { act, cleanup, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { Bench } from '../../src/screens/bench/bench.tsx';
import { MoreSheet } from '../../src/screens/bench/sheets.tsx';
import { undoName } from '../../src/screens/bench/undo-name.ts';
import { cardInWords } from '../../src/screens/bench/words.ts';
import { reworkOf, undoSteps } from '../../src/screens/rework-steps.ts';
import { type Rooms, type Session, startSession } from '../../src/screens/session.ts';
import type { Act } from '../../src/store/deed.ts';
import { now } from '../../src/ui/clock.ts';
import { memoryLedger, outfit, rework, rooms, stepIds, undoIds } from './fixture.ts';

let session: Session;
let memory: ReturnType<typeof memoryLedger>;
const [marks, shoulders] = stepIds as [string, string];
const [first] = undoIds as [string];
const accepted: Act = { kind: 'reworked', say: rework.say, changes: [], rework, cures: [] };
const before: Act[] = [
  { kind: 'step-done', step: marks },
  { kind: 'step-done', step: shoulders },
];

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
async function begin(acts: readonly Act[], furnished: Rooms = rooms): Promise<void> {
  memory.put(outfit.id, acts);
  session = startSession(memory.progress(), {
    ledger: memory.ledger,
    rooms: furnished,
    now: Date.now,
    seen: () => now.value,
    afterPaint: (work) => void setTimeout(work, 0),
  });
  await rest();
}
const part = (name: string): HTMLElement | null => document.querySelector(`[data-part="${name}"]`);

describe('a card of a rework', () => {
  test('says what it puts right, on what is undone and what is done again, and on no other', async () => {
    await begin([...before, accepted]);
    render(<Bench session={session} />);
    await rest();
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Unpick the sleeve');
    expect(part('rework')?.textContent).toBe('So that it fits: Fronts 5/8 in wider');
    session.done();
    session.done();
    await rest();
    expect(part('card')?.dataset.step).toBe(shoulders);
    expect(part('rework')?.textContent).toBe('So that it fits: Fronts 5/8 in wider');
    session.act({ kind: 'step-done', step: shoulders });
    session.openStep(stepIds[2]!);
    await rest();
    expect(part('rework')).toBeNull();
  });

  test('says it aloud too, after what is to be done', async () => {
    await begin([...before, accepted]);
    const said = cardInWords(
      session.card.value!,
      session.stepProgress.value,
      { unit: 'in', per: 16 },
      now.value,
      [],
      rework,
    );
    expect(said.slice(0, 2)).toEqual(['Unpick the sleeve.', 'So that it fits: Fronts 5/8 in wider.']);
  });

  test('belongs to the last rework that asks for it', () => {
    const later = { ...rework, id: 'r-2', say: 'Sleeve longer' };
    const progress = { reworks: [rework, later], steps: new Map() };
    expect(reworkOf(progress, shoulders)).toBe(later);
    expect(reworkOf(progress, first)).toBe(rework);
    expect(reworkOf(progress, marks)).toBeUndefined();
    expect(undoSteps([rework, later]).size).toBe(4);
  });
});

describe('what does not fit', () => {
  const tryOn: Rooms = {
    ...rooms,
    cardFor: (...args) => {
      const card = rooms.cardFor(...args);
      return card && { ...card, station: card.step === marks ? 'try-on' : card.station };
    },
  };

  test('is noted from the card of a try-on, by a link to its garment', async () => {
    await begin([], tryOn);
    render(<Bench session={session} />);
    await rest();
    const link = screen.getByRole('link', { name: 'Something does not fit' });
    expect(link.getAttribute('href')).toBe('#/try/harbour/shirt');
    session.openStep(shoulders);
    await rest();
    expect(screen.queryByRole('link', { name: 'Something does not fit' })).toBeNull();
  });

  test('is noted from any card, by the sheet of what else there is', async () => {
    await begin([]);
    render(<MoreSheet session={session} onClose={() => {}} />);
    expect(part('does-not-fit')?.getAttribute('href')).toBe('#/try/harbour/shirt');
  });
});

describe('undo', () => {
  const name = (kind: string, say?: string): string | undefined =>
    undoName({ deed: 'a-1', kind, step: '', item: '', ...(say === undefined ? {} : { say }) }, undefined);

  test('names what was seen, what was let be, and the cure by how it begins', () => {
    expect(name('seen')).toBe('what was seen');
    expect(name('let-be')).toBe('letting it be');
    expect(name('reworked', 'Centre front 5/8 in wider')).toBe('the cure: centre front');
    expect(name('reworked', 'Front: wider')).toBe('the cure: front');
    expect(name('reworked', 'Extraordinarily wide')).toBe('the cure');
    expect(name('reworked')).toBe('the cure');
  });
});
