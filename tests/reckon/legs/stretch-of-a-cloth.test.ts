import { expect, test } from 'vitest';
import { stretchOfACloth } from '../../../src/reckon/legs/stretch-of-a-cloth.ts';
import { faultsAt, figure, worked } from './reckoned.ts';

test('4 in that go to 6 in stretch half, and a third of that makes a piece a seventh smaller', () => {
  const made = worked(stretchOfACloth, { round: '6', along: '5' }, 'in');
  expect(figure(made, 'Stretch round')).toBe('50 %');
  expect(figure(made, 'Stretch along')).toBe('25 %');
  expect(figure(made, 'Cut smaller, round')).toBe('14.3 %');
  expect(figure(made, 'That girth, cut')).toBeCloseTo((24 * 25.4 * 6) / 7, 4);
});

test('a share of one’s own is not held back', () => {
  const made = worked(stretchOfACloth, { share: '100', shareAlong: '0' });
  expect(figure(made, 'Cut smaller, round')).toBe('44.4 %');
  expect(figure(made, 'Cut smaller, along')).toBe('0 %');
  expect(figure(worked(stretchOfACloth), 'Cut smaller, round')).toBe('20 %');
});

test('a cloth that gives one way only is said to', () => {
  const made = worked(stretchOfACloth, { along: '100' });
  expect(figure(made, 'Stretch along')).toBe('0 %');
  expect(made.assumed).toContain('The cloth does not give along the body.');
});

test.each([
  [{ rest: '0' }, 'rest'],
  [{ rest: '4 m', round: '5 m', along: '4 m' }, 'rest'],
  [{ round: '110' }, 'round'],
  [{ round: '90' }, 'round'],
  [{ round: '900' }, 'round'],
  [{ along: '90' }, 'along'],
  [{ along: '9 m' }, 'along'],
  [{ girth: '0' }, 'girth'],
  [{ share: '120' }, 'share'],
  [{ shareAlong: '-1' }, 'shareAlong'],
])('refuses %j at its own field', (entries, field) => {
  expect(faultsAt(stretchOfACloth, entries)).toEqual([field]);
});
