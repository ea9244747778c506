import { expect, test } from 'vitest';
import { needleFor, otherNumber, type Weight } from '../../src/cloth/needles.ts';
import { made } from '../cloth/good.ts';

// Needle Number System, trade technical article, undated (seen as an excerpt): metric = (other - 8) x 5 + 60 below 19;
// 80/12 is printed, the rest derived.
test.each([
  [60, 8],
  [65, 9],
  [70, 10],
  [75, 11],
  [80, 12],
  [90, 14],
  [100, 16],
  [110, 18],
])('needle %s is also %s', (metric, other) => {
  expect(made(otherNumber(metric))).toBe(other);
});

// The same article, undated, pairing list (seen as an excerpt of a page that reproduces it): 80/12 cotton, rayon, light wool; 90/14 drill, linen;
// 100/16 canvas. Which of our weights each is, is our reading.
test.each<[Weight, number, number]>([
  ['medium', 80, 12],
  ['heavy', 90, 14],
  ['very heavy', 100, 16],
])('%s cloth: %s/%s', (weight, metric, other) => {
  expect(made(needleFor([{ weight, knit: false, stretches: false }]))).toMatchObject({ metric, other });
});
