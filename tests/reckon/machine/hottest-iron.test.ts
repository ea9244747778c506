import { expect, test } from 'vitest';
import { hottestIron } from '../../../src/reckon/machine/hottest-iron.ts';
import { faultsAt, figure, worked } from '../legs/reckoned.ts';

test('the cloth that bears least decides', () => {
  for (const unit of ['in', 'mm'] as const)
    expect(figure(worked(hottestIron, {}, unit), 'At most')).toBe(150);
  const four = worked(hottestIron, { first: '2', second: '1', third: '3', fourth: '1' });
  expect(figure(four, 'At most')).toBe(110);
  expect(figure(four, 'On the dial')).toBe('one dot');
  expect(figure(four, 'Decided by cloth')).toBe('2, 4');
});

test('one dot brings the word about steam, and a scrap is always tried first', () => {
  const says = (first: string) =>
    worked(hottestIron, { first })
      .advice.map(({ say }) => say)
      .join(' ');
  expect(says('1')).toContain('without steam');
  expect(says('3')).not.toContain('steam');
  expect(says('3')).toContain('scrap');
});

test('one cloth alone is enough', () => {
  expect(figure(worked(hottestIron, { second: 'none' }), 'At most')).toBe(200);
});

test.each([
  [{ first: '0' }, 'first'],
  [{ second: '0' }, 'second'],
  [{ fourth: '0' }, 'fourth'],
])('refuses %j at the cloth that must not be ironed', (entries, field) => {
  expect(faultsAt(hottestIron, entries)).toEqual([field]);
});
