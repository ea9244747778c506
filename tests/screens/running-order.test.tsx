import { act, cleanup, render } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import RunningOrder from '../../src/screens/running-order/running-order.tsx';
import { type Rooms, type Session, startSession } from '../../src/screens/session.ts';
import { now } from '../../src/ui/clock.ts';
import { memoryLedger, outfit, rooms, stepIds } from './fixture.ts';

let session: Session;
let memory: ReturnType<typeof memoryLedger>;

const PUT_RIGHT = 'Left front 5/8 in wider';
const UNPICK = 'shirt/shoulders/unpick-r1';

/** The rooms with one more step: the one that undoes. */
const reworking: Rooms = {
  ...rooms,
  runningOrder(of, standing) {
    const found = rooms.runningOrder(of, standing);
    const [like] = found.ok ? [...found.value.steps.values()] : [];
    if (!found.ok || !like) return found;
    const unpick = { ...like, id: UNPICK, action: 'unpick-r1', say: 'Unpick the shoulder seams' };
    return {
      ok: true,
      value: {
        ...found.value,
        steps: new Map([...found.value.steps, [UNPICK, unpick]]),
        sequence: [...standing.done, UNPICK, ...found.value.sequence.slice(standing.done.length)],
      },
    };
  },
};

beforeEach(() => {
  vi.useFakeTimers({ now: 1_800_000_000_000 });
  now.value = Date.now();
  memory = memoryLedger(Date.now);
  memory.put(outfit.id, [{ kind: 'outfit-begun', description: {} }]);
});
afterEach(() => {
  cleanup();
  session.close();
  vi.useRealTimers();
});

const line = (step: string): HTMLElement => document.querySelector<HTMLElement>(`li[data-step="${step}"]`)!;
const rework = (step: string): string | undefined =>
  line(step).querySelector('[data-part="rework"]')?.textContent ?? undefined;

test('says of each step whether it undoes something or does it again, and what that puts right', async () => {
  const [first, second, third] = stepIds as [string, string, string];
  memory.put(outfit.id, [
    { kind: 'step-done', step: first },
    { kind: 'step-done', step: second },
    {
      kind: 'reworked',
      say: PUT_RIGHT,
      changes: [],
      cures: [],
      rework: {
        id: 'r1',
        say: PUT_RIGHT,
        undo: [
          {
            garment: 'shirt',
            of: { kind: 'join', id: 'shoulders' },
            action: 'unpick',
            say: 'Unpick the shoulder seams',
            pieces: [],
            edges: [],
            times: 1,
            minutes: 5,
          },
        ],
        again: [{ step: second, minutes: 10 }],
      },
    },
  ]);
  session = startSession(memory.progress(), {
    ledger: memory.ledger,
    rooms: reworking,
    now: Date.now,
    seen: () => now.value,
    afterPaint: (work) => void setTimeout(work, 0),
  });
  await act(async () => {
    render(<RunningOrder session={session} />);
  });
  expect(line(first).dataset.state).toBe('done');
  expect(rework(UNPICK)).toBe(`Undo ${PUT_RIGHT}`);
  expect(rework(second)).toBe(`Again ${PUT_RIGHT}`);
  expect(rework(third)).toBeUndefined();
});
