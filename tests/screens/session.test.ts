import { afterEach, describe, expect, test } from 'vitest';
import { constraintKey } from '../../src/order/step.ts';
import { nextStep, restUntil } from '../../src/screens/next-step.ts';
import { type Session, startSession } from '../../src/screens/session.ts';
import { keepWarm, warmCard } from '../../src/screens/warm-card.ts';
import { constraints, memoryLedger, outfit, rework, rooms, stepIds, undoIds } from './fixture.ts';

let session: Session | undefined;
afterEach(() => {
  session?.close();
  localStorage.clear();
});

function begin(more: Partial<Parameters<typeof startSession>[1]> = {}) {
  let time = 1_000;
  const now = (): number => time;
  const memory = memoryLedger(now);
  memory.put(outfit.id, [{ kind: 'outfit-begun', description: {} }]);
  const later: (() => void)[] = [];
  let derived = 0;
  session = startSession(memory.progress(), {
    ledger: memory.ledger,
    rooms: {
      ...rooms,
      runningOrder: (...args) => {
        derived++;
        return rooms.runningOrder(...args);
      },
    },
    now,
    seen: now,
    afterPaint: (work) => later.push(work),
    ...more,
  });
  return {
    session,
    memory,
    later,
    derived: () => derived,
    paint: () => {
      for (const work of later.splice(0)) work();
    },
    wait: (ms: number) => {
      time += ms;
    },
  };
}

const [marks, shoulders, press, bead, hem] = stepIds as [string, string, string, string, string];
const tap = { kind: 'tap', step: bead, item: 'line 1', add: 2 } as const;

describe('a session', () => {
  test('opens the first step and shows its card', () => {
    const { session } = begin();
    expect(session.step.value).toBe(marks);
    expect(session.card.value?.say).toBe('Mark the tuck folds on the left front');
    expect(session.finished.value).toBe(false);
  });

  test('shows a touch at once and rests when the ledger has it', async () => {
    const { session, memory } = begin();
    const release = memory.hold();
    session.act(tap);
    session.act(tap);
    expect(session.progress.value.steps.get(bead)?.counts.get('line 1')).toBe(4);
    expect(session.inFlight.value).toBe(2);
    release();
    await session.settled();
    expect(session.inFlight.value).toBe(0);
    expect(session.progress.value.steps.get(bead)?.counts.get('line 1')).toBe(4);
    expect(memory.deeds.filter((deed) => deed.act.kind === 'tap')).toHaveLength(2);
  });

  test('a touch does not derive the order again', async () => {
    const { session, derived, paint } = begin();
    expect(derived()).toBe(1);
    session.act(tap, { kind: 'item-done', step: marks, item: 'fold 1' });
    await session.settled();
    session.undo();
    await session.settled();
    paint();
    expect(derived()).toBe(1);
  });

  test('done shows the next card first and derives after the paint', async () => {
    const { session, derived, paint, memory } = begin();
    session.done();
    expect(session.step.value).toBe(shoulders);
    expect(derived()).toBe(1);
    await session.settled();
    paint();
    expect(derived()).toBe(2);
    expect(session.running.value?.doneCount).toBe(1);
    expect(memory.deeds.slice(-2).map((deed) => deed.act)).toEqual([
      { kind: 'step-done', step: marks },
      { kind: 'step-opened', step: shoulders },
    ]);
  });

  test('undo takes back the last deed, even before it has settled, and brings its card back', async () => {
    const { session, paint } = begin();
    session.done();
    session.undo();
    await session.settled();
    paint();
    expect(session.step.value).toBe(marks);
    expect(session.progress.value.done).toEqual([]);
    expect(session.running.value?.doneCount).toBe(0);
  });

  test('figures of another page are taken off at once, and stay off when the ledger has it', async () => {
    const { session, memory } = begin();
    const figures = [{ name: 'first fold', figure: '2 1/8 in' }];
    const put = {
      kind: 'reckoned',
      step: marks,
      reckoning: 'parallel-tucks',
      title: 'Tucks',
      unit: 'in',
    } as const;
    const [deed] = memory.put(outfit.id, [{ ...put, entries: {}, figures }], 'other');
    session.hear(memory.deeds);
    session.act(tap);
    expect(session.progress.value.reckoned).toHaveLength(1);
    const release = memory.hold();
    session.act({ kind: 'undone', deed: deed?.id ?? 'none-0' });
    expect(session.progress.value.reckoned).toEqual([]);
    release();
    await session.settled();
    expect(session.progress.value.reckoned).toEqual([]);
    expect(session.progress.value.steps.get(bead)?.counts.get('line 1')).toBe(2);
    expect(memory.progress().reckoned).toEqual([]);
  });

  test('what names a deed that the ledger has not taken yet names it as the ledger does', async () => {
    const { session, memory } = begin();
    const seen = { kind: 'seen', garment: 'shirt', entry: 'cuff-tight', side: 'both' } as const;
    const noted = (i: number) => session.progress.value.seen[i]?.deed ?? 'none-0';
    const release = memory.hold();
    session.act(seen);
    session.act(seen, seen);
    const [first, second, third] = [noted(0), noted(1), noted(2)];
    session.act({ kind: 'let-be', seen: second }, { kind: 'undone', deed: third });
    const cure = { kind: 'reworked', say: rework.say, changes: [], rework, cures: [first] } as const;
    session.act(cure);
    const states = () => session.progress.value.seen.map(({ state }) => state);
    expect(states()).toEqual(['cured', 'let be']);
    release();
    await session.settled();
    expect(states()).toEqual(['cured', 'let be']);
    expect(memory.progress().seen.map(({ state }) => state)).toEqual(['cured', 'let be']);
    expect(JSON.stringify(memory.deeds)).not.toContain('~');
    // A screen that was drawn before may still hold the name of then.
    session.act({ kind: 'undone', deed: second });
    await session.settled();
    expect(memory.progress().seen.map(({ state }) => state)).toEqual(['cured']);
  });

  test('a refused write keeps its touches in sight, says why, and goes with the next', async () => {
    const { session, memory } = begin();
    memory.fail(new Error('There is no room left.'));
    session.act(tap);
    await session.settled();
    expect(session.unkept.value).toBe('There is no room left.');
    expect(session.inFlight.value).toBe(1);
    expect(session.progress.value.steps.get(bead)?.counts.get('line 1')).toBe(2);
    expect(session.card.value).toBeDefined();
    memory.fail(undefined);
    session.act(tap);
    await session.settled();
    expect(session.unkept.value).toBeUndefined();
    expect(session.inFlight.value).toBe(0);
    expect(memory.progress().steps.get(bead)?.counts.get('line 1')).toBe(4);
  });

  test('deeds of another page appear, also while a write is under way', async () => {
    const { session, memory, wait } = begin();
    const release = memory.hold();
    session.act(tap);
    wait(5);
    session.hear(memory.put(outfit.id, [tap], 'other'));
    expect(session.progress.value.steps.get(bead)?.counts.get('line 1')).toBe(4);
    release();
    await session.settled();
    expect(session.progress.value.steps.get(bead)?.counts.get('line 1')).toBe(4);
    expect(session.progress.value).toMatchObject({ done: [] });
  });

  test('waiving a reason derives at once', () => {
    const { session, derived } = begin();
    session.act({ kind: 'reason-waived', key: constraintKey(constraints[0]!) });
    expect(derived()).toBe(2);
    expect(session.running.value?.ready.has(shoulders)).toBe(true);
  });

  test('a cure that is accepted derives at once and opens the first card that undoes', async () => {
    const { session, derived, paint, memory } = begin();
    session.done();
    session.done();
    paint();
    const before = derived();
    const [first, second] = undoIds;
    session.act({ kind: 'reworked', say: rework.say, changes: [], rework, cures: [] });
    expect(derived()).toBe(before + 1);
    expect(session.progress.value.done).toEqual([marks]);
    expect(session.step.value).toBe(first);
    expect(session.card.value?.say).toBe('Unpick the sleeve');
    session.done();
    expect(session.step.value).toBe(second);
    session.done();
    paint();
    expect(session.step.value).toBe(shoulders);
    session.done();
    expect(session.step.value).toBe(press);
    await session.settled();
    expect(memory.progress().done).toEqual([marks, first, second, shoulders]);
  });

  test('a cure that is taken back leaves the cards as they were', async () => {
    const { session, paint } = begin();
    session.done();
    session.done();
    await session.settled();
    paint();
    const [step, done] = [session.step.value, session.progress.value.done];
    session.act({ kind: 'reworked', say: rework.say, changes: [], rework, cures: [] });
    session.undo();
    await session.settled();
    expect(session.step.value).toBe(step);
    expect(session.progress.value.done).toEqual(done);
    expect([...(session.running.value?.steps.keys() ?? [])]).toEqual(stepIds);
  });

  test('a kept card is of no use any more once a cure was accepted', () => {
    const { session } = begin();
    session.openStep(press);
    const warm = { card: session.card.value!, units: 'in' as const };
    keepWarm(session.progress.value, warm);
    expect(warmCard(session.progress.value)).toEqual(warm);
    session.act(
      { kind: 'reworked', say: rework.say, changes: [], rework: { ...rework, again: [] }, cures: [] },
      { kind: 'step-opened', step: press },
    );
    expect(warmCard(session.progress.value)).toBeUndefined();
  });

  test('comes back to the card that was open', async () => {
    const first = begin();
    first.session.act({ kind: 'reason-waived', key: constraintKey(constraints[1]!) });
    first.session.openStep(press);
    await first.session.settled();
    const again = startSession(first.memory.progress(), {
      ledger: first.memory.ledger,
      rooms,
      now: () => 9_000,
      seen: () => 9_000,
      afterPaint: () => {},
    });
    expect(again.step.value).toBe(press);
    again.close();
  });

  test('says until when the open step rests, and is finished at the end', async () => {
    const { session, paint, wait } = begin();
    for (let i = 0; i < 4; i++) {
      session.done();
      paint();
    }
    await session.settled();
    expect(session.step.value).toBe(hem);
    expect(session.resting.value).toBe(1_000 + 3_600_000);
    wait(3_600_000);
    session.done();
    await session.settled();
    paint();
    expect(session.finished.value).toBe(true);
    expect(session.running.value?.doneCount).toBe(5);
  });

  test('a timer of another step is shown while it runs', () => {
    const { session, wait } = begin();
    session.act({ kind: 'timer-started', step: press, item: 'cool', seconds: 600 });
    expect(session.otherTimers.value).toMatchObject([
      { step: press, item: 'cool', seconds: 600, startedAt: 1_000 },
    ]);
    wait(10);
    session.act({ kind: 'timer-stopped', step: press, item: 'cool' });
    expect(session.otherTimers.value).toEqual([]);
  });

  test('a description that cannot be read gives its problems and no card', () => {
    const memory = memoryLedger(() => 1);
    memory.put(outfit.id, [{ kind: 'outfit-begun', description: 'broken' }]);
    const broken = startSession(memory.progress(), {
      ledger: memory.ledger,
      rooms,
      now: () => 1,
      seen: () => 1,
      afterPaint: () => {},
    });
    expect(broken.problems.value).toHaveLength(1);
    expect(broken.card.value).toBeUndefined();
    broken.close();
  });
});

describe('the next step', () => {
  const sequence = ['a', 'b', 'c'];
  const bond = (before: string, after: string, wait?: number) => ({
    ...constraints[0]!,
    before,
    after,
    ...(wait === undefined ? {} : { wait }),
  });
  const steps = (doneAt: Record<string, number>) =>
    new Map(
      Object.entries(doneAt).map(([id, at]) => [
        id,
        {
          items: new Set<string>(),
          counts: new Map(),
          closed: new Set<string>(),
          timers: new Map(),
          doneAt: at,
        },
      ]),
    );

  test('one that rests is passed over for one that need not', () => {
    const running = { sequence, constraints: [bond('a', 'b', 60)] };
    const progress = { done: ['a'], steps: steps({ a: 0 }) };
    expect(nextStep(running, progress, 1_000)).toBe('c');
    expect(nextStep(running, progress, 60_000)).toBe('b');
    expect(restUntil(running, progress, 'b', 1_000)).toBe(60_000);
    expect(restUntil(running, progress, 'b', 60_000)).toBeUndefined();
  });

  test('where all rest, the one that has rested soonest; where nothing is left, none', () => {
    const running = { sequence, constraints: [bond('a', 'b', 90), bond('a', 'c', 60)] };
    const progress = { done: ['a'], steps: steps({ a: 0 }) };
    expect(nextStep(running, progress, 0)).toBe('c');
    expect(nextStep(running, { ...progress, done: sequence }, 0)).toBeUndefined();
  });

  test('one that undoes goes before all others, where it is ready', () => {
    const [first, second] = undoIds as [string, string];
    const running = { sequence: ['a', 'b', first, second], constraints: [bond(first, second)] };
    const progress = { done: [] as string[], steps: steps({}), reworks: [rework] };
    expect(nextStep(running, progress, 0)).toBe(first);
    expect(nextStep(running, progress, 0, first)).toBe(second);
    expect(nextStep(running, { ...progress, done: [first, second] }, 0)).toBe('a');
    const held = { ...running, constraints: [bond('b', first), bond(first, second)] };
    expect(nextStep(held, progress, 0)).toBe('a');
  });

  test('the step just done counts as done, and its rest begins now', () => {
    const running = { sequence, constraints: [bond('a', 'b', 60), bond('b', 'c')] };
    expect(nextStep(running, { done: [], steps: steps({}) }, 0, 'a')).toBe('b');
  });
});
