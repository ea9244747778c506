import { describe, expect, test } from 'vitest';
import { secondsAtBench } from '../../src/screens/bench/finished.tsx';
import { untouched } from '../../src/screens/bench/pad-act.ts';
import { copyWords, dayWords, readSaved } from '../../src/screens/outfits/outfit-list.ts';
import { readHash, writeHash } from '../../src/screens/route.ts';
import { sittings, writeSetUp } from '../../src/screens/running-order/sittings.ts';
import { outfit, rooms, stepIds } from './fixture.ts';

describe('the address', () => {
  test.each([
    { screen: 'outfits' },
    { screen: 'bench', outfit: 'harbour' },
    { screen: 'order', outfit: 'a/b c%é' },
    { screen: 'paper', outfit: 'harbour' },
    { screen: 'outfit', outfit: 'harbour', at: ['garment', 'shirt'] },
    { screen: 'try', outfit: 'harbour', at: [] },
    { screen: 'try', outfit: 'a/b', at: ['shirt é', 'cure'] },
    { screen: 'reckoner' },
    { screen: 'reckoner', reckoning: 'parallel-tucks' },
    { screen: 'sources' },
  ] as const)('%j is read as it was written', (route) => {
    expect(readHash(writeHash(route))).toEqual(route);
  });

  test('a try-on is spelled with its garment', () => {
    expect(writeHash({ screen: 'try', outfit: 'harbour', at: ['shirt', 'cure'] })).toBe(
      '#/try/harbour/shirt/cure',
    );
  });

  test('anything else names no place', () => {
    for (const hash of [
      '',
      '#',
      '#/elsewhere/x',
      '#/bench',
      '#/bench/',
      '#/bench/%E0%A4%A',
      '#/try',
      '#/try/',
    ]) {
      expect(readHash(hash)).toBeUndefined();
    }
  });
});

describe('sittings', () => {
  const found = rooms.runningOrder(outfit, { done: [], added: [], waived: new Set() });
  const running = found.ok ? found.value : undefined;

  test('steps in a row with one set-up are one sitting, and minutes add up', () => {
    const steps = new Map(running!.steps);
    const first = steps.get(stepIds[0]!)!;
    steps.set(stepIds[1]!, { ...steps.get(stepIds[1]!)!, setUp: first.setUp });
    const groups = sittings({ steps }, [...stepIds, 'nowhere']);
    expect(groups.map((group) => group.steps.length)).toEqual([2, 1, 1, 1]);
    expect(groups[0]!.minutes).toBe(20);
    expect(sittings({ steps }, [])).toEqual([]);
  });

  test('a set-up is written without what it lacks', () => {
    expect(writeSetUp({ station: 'machine', thread: 'white', tool: 'zip foot' })).toBe(
      'Machine, white thread, zip foot',
    );
    expect(writeSetUp({ station: 'iron', thread: '', tool: '' })).toBe('Iron');
  });
});

describe('the list of outfits', () => {
  const day = 86_400_000;

  test('a copy is asked for when there is work that no copy has', () => {
    expect(copyWords({ saved: undefined, deeds: 3, last: 0 }, 0).nudge).toBe(false);
    expect(copyWords({ saved: undefined, deeds: 30, last: 0 }, 0).nudge).toBe(true);
    const saved = { at: 0, deeds: 100 };
    expect(copyWords({ saved, deeds: 100, last: 0 }, 30 * day)).toEqual({
      words: 'Last copy saved 30 days ago.',
      nudge: false,
    });
    expect(copyWords({ saved, deeds: 110, last: 0 }, day)).toEqual({
      words: 'Last copy saved yesterday, 10 deeds ago.',
      nudge: false,
    });
    expect(copyWords({ saved, deeds: 110, last: 0 }, 7 * day).nudge).toBe(true);
    expect(copyWords({ saved, deeds: 151, last: 0 }, 1).nudge).toBe(true);
  });

  test('what was kept about a copy is read with care', () => {
    expect(readSaved('1000:5')).toEqual({ at: 1000, deeds: 5 });
    for (const kept of [undefined, '', 'x', '1000', '1000:x', '0:0']) expect(readSaved(kept)).toBeUndefined();
  });

  test('the day is told from today', () => {
    expect(dayWords('2027-04-17', '2027-04-17')).toMatch(/, today$/);
    expect(dayWords('2027-04-18', '2027-04-17')).toMatch(/, tomorrow$/);
    expect(dayWords('2027-05-01', '2027-04-17')).toMatch(/, in 14 days$/);
    expect(dayWords('2027-04-01', '2027-04-17')).not.toMatch(/,? (in|today)/);
    expect(dayWords('soon', '2027-04-17')).toBe('soon');
  });
});

test('a card left open counts as two hours at the most', () => {
  const step = (openedAt: number, doneAt: number) => ({ ...untouched, openedAt, doneAt });
  expect(secondsAtBench([step(0, 60_000), step(0, 86_400_000), untouched])).toBe(60 + 7200);
  expect(secondsAtBench([{ ...step(0, 60_000), tookMs: 30_000 }])).toBe(90);
});
