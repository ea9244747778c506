import { expect, test } from 'vitest';
import { toMm } from '../../../src/length/index.ts';
import { frillsOnALeg } from '../../../src/reckon/legs/frills-on-a-leg.ts';
import { faultsAt, figure, worked } from './reckoned.ts';

test('at the knee, the frill is gathered to the knee, a quarter at a time', () => {
  const made = worked(frillsOnALeg, { first: '0' });
  expect(figure(made, 'Frill 1, gathered to')).toBeCloseTo(292, 3);
  expect(figure(made, 'Frill 1, a quarter')).toBeCloseTo(73, 3);
  expect(made.strips[0]?.marks.map(({ at }) => toMm(at))).toEqual(
    [0, 73, 146, 219, 292].map((x) => expect.closeTo(x, 2)),
  );
});

test.each(['in', 'mm'] as const)('each line has its own strip, and all stand on one: %s', (unit) => {
  const made = worked(frillsOnALeg, { second: '0', third: unit === 'in' ? '-8' : '-200' }, unit);
  expect(made.strips).toHaveLength(4);
  const levels = made.strips[3]?.marks.map(({ at }) => toMm(at)) ?? [];
  expect(levels).toEqual([...levels].sort((a, b) => a - b));
  expect(made.strips[3]?.marks.map(({ name }) => name)).toEqual(['frill 1', 'frill 2', 'frill 3']);
  expect(made.sheets).toHaveLength(1);
});

test.each([
  [{ first: '500' }, 'first'],
  [{ second: '-500' }, 'second'],
  [{ third: '100' }, 'third'],
  [{ fourth: '2 m' }, 'fourth'],
  [{ ankle: '100' }, 'ankle'],
])('refuses %j at its own field', (entries, field) => {
  expect(faultsAt(frillsOnALeg, entries)).toEqual([field]);
});
