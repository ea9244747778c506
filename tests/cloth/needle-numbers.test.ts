import { expect, test } from 'vitest';
import { metricNumber } from '../../src/cloth/needle-numbers.ts';
import { otherNumber } from '../../src/cloth/needles.ts';
import { made } from './good.ts';

test('there and back again, for every number of the rule', () => {
  for (let metric = 60; metric <= 110; metric += 5) {
    expect(made(metricNumber(made(otherNumber(metric))))).toBe(metric);
  }
  expect(made(metricNumber(12))).toBe(80);
});

test.each([7, 19, 12.5, Number.NaN])('refuses %d', (other) => {
  expect(metricNumber(other)).toMatchObject({ ok: false, error: { field: 'other' } });
});
