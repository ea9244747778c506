import { describe, expect, it } from 'vitest';
import {
  clock,
  type Doings,
  NOTHING,
  SLOW,
  secondsAtScreen,
  secondsOf,
  sumOf,
  tableOf,
  USUAL,
} from './hand-time.ts';
import { keysFor } from './person.ts';

const some: Doings = { ...NOTHING, touches: 2, figures: 5, thoughts: 1, words: 238, measured: 3 };

describe('the time of a hand', () => {
  it('is the sum of what was done, each by its own time', () => {
    expect(secondsOf(NOTHING, USUAL)).toBe(0);
    expect(secondsOf(some, USUAL)).toBeCloseTo(2 * 1.1 + 5 * 0.4 + 1.35 + 60 + 3 * 10, 9);
    expect(secondsOf(sumOf(some, some), USUAL)).toBeCloseTo(2 * secondsOf(some, USUAL), 9);
  });

  it('leaves out what is done at the paper where only the screen is meant', () => {
    expect(secondsOf(some, USUAL) - secondsAtScreen(some, USUAL)).toBeCloseTo(30, 9);
  });

  it('is never less for a slow hand', () => {
    for (const name of Object.keys(NOTHING) as (keyof Doings)[])
      expect(SLOW[name], name).toBeGreaterThanOrEqual(USUAL[name]);
  });

  it('is said in minutes and seconds', () => {
    expect([0, 59.4, 59.6, 307].map(clock)).toEqual(['0:00', '0:59', '1:00', '5:07']);
  });

  it('is told part by part and all together', () => {
    const lines = tableOf(
      [
        ['one', some],
        ['other', some],
      ],
      [USUAL],
    ).split('\n');
    expect(lines).toHaveLength(5);
    expect(new Set(lines.map((line) => line.length)).size).toBe(1);
    expect(lines[3]).toMatch(new RegExp(`^all together +4 .* ${clock(2 * secondsOf(some, USUAL))}$`));
  });
});

describe('keys of a telephone', () => {
  it('count the way to the page of figures, which a space leaves', () => {
    expect(keysFor('Blouse')).toEqual({ letters: 6, figures: 0 });
    expect(keysFor('14')).toEqual({ letters: 0, figures: 3 });
    expect(keysFor('14 1/2')).toEqual({ letters: 1, figures: 7 });
  });
});
