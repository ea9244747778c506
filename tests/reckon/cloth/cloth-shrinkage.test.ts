import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clothShrinkage } from '../../../src/reckon/cloth/cloth-shrinkage.ts';
import { faultsAt, figure, worked } from '../legs/reckoned.ts';

test('N / (1 - s), from a sample and from a percentage', () => {
  expect(figure(worked(clothShrinkage), 'Cut or buy')).toBeCloseTo(2000 / 0.96, 4);
  const yard = worked(clothShrinkage, { needed: '1 yd', percent: '10' }, 'in');
  expect(figure(yard, 'Cut or buy')).toBeCloseTo(914.4 / 0.9, 4);
  expect(figure(yard, 'It shrinks by')).toBe('10 %');
});

test('a percentage goes before the sample', () => {
  expect(figure(worked(clothShrinkage, { percent: '0' }), 'Cut or buy')).toBe(2000);
  expect(figure(worked(clothShrinkage, { percent: '0' }), 'It shrinks by')).toBe('0 %');
});

test('what is left of it is what was wanted', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 100_000 }), fc.integer({ min: 0, max: 500 }), (needed, tenths) => {
      const made = worked(clothShrinkage, {
        needed: String(needed),
        percent: String(tenths / 10),
      });
      const cut = figure(made, 'Cut or buy') as number;
      expect(cut * (1 - tenths / 1000)).toBeCloseTo(needed, 3);
      expect(cut - (figure(made, 'It loses') as number)).toBeCloseTo(needed, 5);
    }),
  );
});

test.each([
  [{ needed: '0' }, 'needed'],
  [{ needed: '1001 m' }, 'needed'],
  [{ before: '0' }, 'before'],
  [{ before: '' }, 'before'],
  [{ after: '' }, 'after'],
  [{ after: '260' }, 'after'],
  [{ after: '100' }, 'after'],
  [{ percent: '51' }, 'percent'],
  [{ percent: '-1' }, 'percent'],
])('refuses %j at its own field', (entries, field) => {
  expect(faultsAt(clothShrinkage, entries)).toEqual([field]);
});
