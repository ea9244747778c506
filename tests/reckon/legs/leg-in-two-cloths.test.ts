import { expect, test } from 'vitest';
import { toMm } from '../../../src/length/index.ts';
import { legInTwoCloths } from '../../../src/reckon/legs/leg-in-two-cloths.ts';
import { stretchLeg } from '../../../src/reckon/legs/stretch-leg.ts';
import { faultsAt, figure, worked } from './reckoned.ts';

/** The lower cloth as the upper stands at first. */
const ALIKE = { stretchRoundBelow: '80', stretchAlongBelow: '40' };
const EDGES = ['upper', 'lower'].map((part) => `Where they meet, ${part} edge`);

test('meeting at the knee, each edge is as long as the knee made smaller for its own cloth', () => {
  const made = worked(legInTwoCloths, { up: '0', stretchRoundBelow: '30', opening: 'ankle' });
  // 80 % allows the most, a fifth; a third of 30 % is used: 365 x 30/3 / (100 + 30/3) less.
  expect(figure(made, EDGES[0]!)).toBeCloseTo(365 * 0.8, 3);
  expect(figure(made, EDGES[1]!)).toBeCloseTo(365 / 1.1, 3);
  expect(figure(made, 'A quarter, lower edge')).toBeCloseTo(365 / 1.1 / 4, 3);
  // 365 / 1.1 : 365 x 0.8 = 1.136.
  expect(figure(made, 'Joined')).toBe('the upper edge stretched by 13.6 % to the lower, quarter to quarter');
  expect(made.advice.map(({ say }) => say).join(' ')).toContain('pin the quarters together');
});

test.each(['in', 'mm'] as const)('of two cloths alike it is the whole leg cut in two: %s', (unit) => {
  const made = worked(legInTwoCloths, ALIKE, unit);
  const whole = worked(stretchLeg, {}, unit);
  expect(figure(made, EDGES[0]!)).toBe(figure(made, EDGES[1]!));
  expect(figure(made, 'Joined')).toBe('both edges are as long');
  expect(made.sheets.map(({ name }) => name)).toEqual(['Leg, upper part', 'Leg, lower part']);
  const parts = ['upper', 'lower'].map((part) => figure(made, `Inner seam, ${part} part`) as number);
  expect(parts[0]! + parts[1]!).toBeCloseTo(figure(whole, 'Inner seam, front') as number, 1);
  for (const level of ['Waist', 'Hip', 'Thigh', 'Knee', 'Calf', 'Ankle'])
    expect(figure(made, `${level}, finished`)).toBe(figure(whole, `${level}, finished`));
});

test('the girths below are those of the lower cloth', () => {
  const made = worked(legInTwoCloths, { stretchRoundBelow: '30', opening: 'ankle' });
  expect(figure(made, 'Thigh, finished')).toBeCloseTo(610 * 0.8, 3);
  expect(figure(made, 'Calf, finished')).toBeCloseTo(370 / 1.1, 3);
});

test('further up on the body, the cut lies higher by what the upper cloth leaves of it', () => {
  const below = (up: string) =>
    figure(worked(legInTwoCloths, { up, stretchAlong: '0' }), 'Cloths meet, below the waist') as number;
  expect(below('50') - below('120')).toBeCloseTo(70, 6);
  expect(below('-100') - below('0')).toBeCloseTo(100, 6);
});

test('each part has its quarters, evenly along its edge', () => {
  const made = worked(legInTwoCloths);
  for (const [i, part] of ['upper', 'lower'].entries()) {
    const strip = made.strips.find(({ name }) => name === `Quarters where the cloths meet, ${part} part`)!;
    const long = figure(made, EDGES[i]!) as number;
    expect(strip.marks.map(({ at }) => toMm(at) / long)).toEqual(
      [0, 0.25, 0.5, 0.75, 1].map((share) => expect.closeTo(share, 5)),
    );
  }
});

test.each([
  [{ up: '400' }, 'up'],
  [{ up: '-500' }, 'up'],
  [{ thigh: '400' }, 'thigh'],
  [{ seam: '-2' }, 'seam'],
  [{ stretchRound: '10' }, 'stretchRound'],
  [{ stretchRoundBelow: '10' }, 'stretchRoundBelow'],
  [{ stretchRoundBelow: '-1' }, 'stretchRoundBelow'],
  [{ stretchAlongBelow: '900' }, 'stretchAlongBelow'],
])('refuses %j at its own field', (entries, field) => {
  expect(faultsAt(legInTwoCloths, entries)).toEqual([field]);
});

test('the two parts are drawn apart', () => {
  const rings = worked(legInTwoCloths).drawing.drawn.flatMap((one) =>
    one.kind === 'path' && one.stroke === 'cut' ? [one.points.map(({ y }) => toMm(y))] : [],
  );
  expect(Math.max(...rings[0]!)).toBeLessThan(Math.min(...rings[1]!));
});
