import { describe, expect, test } from 'vitest';
import { secondsLeft, writeClock, writeCountdown, writeDuration } from '../../src/ui/duration.ts';

describe('time left', () => {
  test('is computed from the start, so a sleep of any length is right afterwards', () => {
    const timer = { startedAt: 1_000_000, seconds: 600 };
    expect(secondsLeft(timer, 999_800)).toBe(600);
    expect(secondsLeft(timer, 1_000_000)).toBe(600);
    expect(secondsLeft(timer, 1_000_001)).toBe(600);
    expect(secondsLeft(timer, 1_001_000)).toBe(599);
    expect(secondsLeft(timer, 1_599_999)).toBe(1);
    expect(secondsLeft(timer, 1_600_000)).toBe(0);
    expect(secondsLeft(timer, 9_999_999)).toBe(0);
  });

  test.each([
    [0, '0:00'],
    [12, '0:12'],
    [600, '10:00'],
    [3599, '59:59'],
    [3600, '1:00:00'],
    [11105, '3:05:05'],
  ])('%i s counts down as %s', (seconds, text) => {
    expect(writeCountdown(seconds)).toBe(text);
  });

  test.each([
    [12, '12 s'],
    [60, '1 min'],
    [600, '10 min'],
    [7200, '2 h'],
    [7500, '2 h 5 min'],
    [3 * 86400, '3 days'],
  ])('%i s is %s', (seconds, text) => {
    expect(writeDuration(seconds)).toBe(text);
  });

  test('a time of another day says the day', () => {
    const noon = new Date(2026, 4, 4, 12, 0).getTime();
    expect(writeClock(noon + 3_600_000, noon, 'en-GB')).toBe('13:00');
    expect(writeClock(noon + 86_400_000, noon, 'en-GB')).toMatch(/^Tue.*12:00$/);
  });
});
