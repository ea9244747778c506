import { describe, expect, test } from 'vitest';
import { mm } from '../../src/length/length.ts';
import type { Card, Readout } from '../../src/order/card-types.ts';
import { pace } from '../../src/screens/bench/count.tsx';
import { hairOff } from '../../src/screens/bench/marks.tsx';
import { nextAdd, padAct, untouched } from '../../src/screens/bench/pad-act.ts';
import { undoName } from '../../src/screens/bench/undo-name.ts';
import { readoutInWords } from '../../src/screens/bench/words.ts';
import type { StepProgress } from '../../src/store/progress-types.ts';
import { outfit, rooms } from './fixture.ts';

const order = rooms.runningOrder(outfit, { done: [], added: [], waived: new Set() });
const running = order.ok ? order.value : undefined;
const card = (step: string): Card => rooms.cardFor(outfit, running!, step)!;
const withReadout = (readout: Readout): Card => ({ ...card('shirt/hem/sew'), readout });
const marks = card('shirt/tucks/mark');
const count = card('shirt/sleeve/bead');
const timers = card('shirt/collar/press');
const ticks = card('shirt/shoulders/sew');
const so = (more: Partial<StepProgress>): StepProgress => ({ ...untouched, ...more });

describe('the pad', () => {
  test('is Done at once where nothing is asked', () => {
    expect(padAct(card('shirt/hem/sew'), untouched, 0)).toMatchObject({
      kind: 'done',
      label: 'Done',
      acts: [],
    });
  });

  test('goes on where the step is done already', () => {
    expect(padAct(marks, so({ doneAt: 5 }), 10)).toMatchObject({ kind: 'go-on', acts: [] });
  });

  test('sets marks one by one, says which is the last, then Done', () => {
    expect(padAct(marks, untouched, 0)).toMatchObject({
      kind: 'mark',
      label: 'Mark set, next',
      acts: [{ kind: 'item-done', step: marks.step, item: 'fold 1' }],
    });
    const six = new Set(['fold 1', 'fold 2', 'fold 3', 'fold 4', 'fold 5', 'fold 6']);
    expect(padAct(marks, so({ items: six }), 0).label).toBe('Last mark set');
    expect(padAct(marks, so({ items: new Set([...six, 'fold 7']) }), 0).kind).toBe('done');
  });

  test('a mark left out comes next, wherever it lies', () => {
    const items = new Set(['fold 1', 'fold 3']);
    expect(padAct(marks, so({ items }), 0).acts).toEqual([
      { kind: 'item-done', step: marks.step, item: 'fold 2' },
    ]);
  });

  test('ticks the next of a pair, then Done', () => {
    expect(padAct(ticks, untouched, 0)).toMatchObject({ kind: 'tick', detail: 'left shoulder' });
    expect(padAct(ticks, so({ items: new Set(['left']) }), 0).detail).toBe('right shoulder');
    expect(padAct(ticks, so({ items: new Set(['left', 'right']) }), 0).kind).toBe('done');
  });

  test('counts two at a time, one where only one is left, then closes the line with what was counted', () => {
    const at = (n: number) => padAct(count, so({ counts: new Map([['line 1', n]]) }), 0);
    expect(at(0)).toMatchObject({ label: 'Count 2', acts: [{ kind: 'tap', item: 'line 1', add: 2 }] });
    expect(at(6)).toMatchObject({ label: 'Count 1', acts: [{ kind: 'tap', item: 'line 1', add: 1 }] });
    expect(at(7)).toMatchObject({
      kind: 'close-line',
      label: 'Line done',
      detail: '',
      acts: [{ kind: 'line-closed', item: 'line 1', count: 7 }],
    });
    expect(at(9)).toMatchObject({
      detail: '2 over',
      acts: [{ kind: 'line-closed', item: 'line 1', count: 9 }],
    });
  });

  test('goes to the next line once a line is closed, and is Done after the last', () => {
    const one = so({ counts: new Map([['line 1', 7]]), closed: new Set(['line 1']) });
    expect(padAct(count, one, 0).acts).toMatchObject([{ item: 'line 2' }]);
    expect(padAct(count, so({ closed: new Set(['line 1', 'line 2']) }), 0).kind).toBe('done');
  });

  test('a line of nothing is closed at once', () => {
    const empty = withReadout({
      kind: 'count',
      of: 'beads',
      perTouch: 1,
      lines: [{ item: 'a', name: 'a', target: 0 }],
    });
    expect(padAct(empty, untouched, 0)).toMatchObject({ kind: 'close-line' });
  });

  test('starts timers one after the other, then is Done, early while one still runs', () => {
    expect(padAct(timers, untouched, 0)).toMatchObject({ label: 'Start 12 s', detail: 'press' });
    const one = new Map([['press', { startedAt: 0, seconds: 12 }]]);
    expect(padAct(timers, so({ timers: one }), 1_000)).toMatchObject({ label: 'Start 10 min' });
    const both = new Map([...one, ['cool', { startedAt: 0, seconds: 600 }] as const]);
    expect(padAct(timers, so({ timers: both }), 599_000)).toMatchObject({ kind: 'done', early: true });
    expect(padAct(timers, so({ timers: both }), 600_000)).toMatchObject({ kind: 'done', early: false });
  });

  test('past the target one touch counts one', () => {
    expect(nextAdd(2, 7, 7)).toBe(1);
    expect(nextAdd(2, 4, 7)).toBe(2);
  });
});

test('how far off a mark is, is said only where a hand could tell', () => {
  const sixteenths = { unit: 'in', per: 16 } as const;
  expect(hairOff(mm(0), sixteenths)).toBeUndefined();
  expect(hairOff(mm(0.3), sixteenths)).toBeUndefined();
  expect(hairOff(mm(0.5), sixteenths)).toBe('a hair less: 0.5 mm');
  expect(hairOff(mm(-0.5), sixteenths)).toBe('a hair more: 0.5 mm');
  expect(hairOff(mm(0.2), { unit: 'mm', step: 0.5 })).toBe('a hair less: 0.2 mm');
});

test('the pace is that of the time spent counting, once there is enough to go by', () => {
  expect(pace(untouched)).toBeUndefined();
  expect(pace(so({ countedMs: 14_000, countedThen: 4 }))).toBeUndefined();
  expect(pace(so({ countedMs: 120_000, countedThen: 24 }))).toBe(12);
});

test('undo names a change of the description in short, where it is short', () => {
  const redescribed = (say: string) =>
    undoName({ deed: 'a-1', kind: 'redescribed', step: '', item: '', say }, undefined);
  expect(redescribed('put on the collar')).toBe('put on collar');
  expect(redescribed('renamed it')).toBe('renamed it');
  expect(redescribed('changed the seam allowance of the side front')).toBe('the change');
  expect(undoName({ deed: 'a-1', kind: 'described', step: '', item: '' }, undefined)).toBe('the change');
});

test('undo says what it takes back', () => {
  const named = (kind: string, item = '', step = marks.step) =>
    undoName({ deed: 'a-1', kind, step, item }, marks);
  expect(undoName(undefined, marks)).toBeUndefined();
  expect(named('item-done', 'fold 3')).toBe('mark 3');
  expect(named('item-done', 'left', 'another/step')).toBe('a mark');
  expect(named('step-done', '', 'another/step')).toBe('last step');
  expect(undoName({ deed: 'a-1', kind: 'tap', step: count.step, item: 'line 1' }, count)).toBe('last count');
  expect(undoName({ deed: 'a-1', kind: 'timer-started', step: timers.step, item: 'cool' }, timers)).toBe(
    'start let it cool',
  );
});

test('the name of undo stays short, however long that of the tick is', () => {
  const named = (names: readonly string[], item: string) => {
    const items = names.map((name, i) => ({ item: `${i}`, name }));
    const card: Card = { ...ticks, readout: { kind: 'ticks', items } };
    return undoName({ deed: 'a-1', kind: 'item-done', step: card.step, item }, card);
  };
  const cut = [
    'Side front: cut 2, a left and a right',
    'Back: cut 1 on the fold',
    'Sleeve: cut 2',
    'Sleeve: 1',
  ];
  expect(named(cut, '0')).toBe('Side front');
  expect(named(cut, '1')).toBe('Back');
  expect(named(cut, '3')).toBe('tick 4');
  expect(named(['left, eyelet 1', 'left, eyelet 2'], '1')).toBe('tick 2');
  expect(named(['Interfacing-of-the-collar'], '0')).toBe('tick 1');
  expect(named(['Upper collar and its stand'], '0')).toBe('Upper collar');
});

test('the readout is put into words', () => {
  const say = (of: Card, progress: Partial<StepProgress> = {}, now = 0) =>
    readoutInWords(of, so(progress), { unit: 'in', per: 16 }, now);
  expect(say(marks)).toBe('Mark 1 of 7, fold 1: 4 and 3 eighths inches from the neck seam.');
  expect(say(count, { counts: new Map([['line 1', 4]]) })).toBe('4 of 7 beads, line 1 of 2.');
  expect(say(ticks, { items: new Set(['left', 'right']) })).toBe('All ticked.');
  expect(say(timers, { timers: new Map([['press', { startedAt: 0, seconds: 12 }]]) }, 12_000)).toBe(
    'press: time is up. let it cool, 10 min, not started.',
  );
  expect(say(card('shirt/hem/sew'))).toBe('');
});
