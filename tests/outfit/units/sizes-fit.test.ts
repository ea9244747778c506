import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { fullnessFits, sizesFit } from '../../../src/outfit/units/sizes-fit.ts';

test('sizes are above zero, or zero where that may be, and no longer than anything that is worn', () => {
  const values = { deep: mm(50), ease: mm(0), kind: 'flat' };
  expect(sizesFit(values, ['deep', 'kind', 'missing'], ['ease'])).toBeUndefined();
  expect(sizesFit(values, ['deep', 'ease'])?.field).toBe('ease');
  expect(sizesFit({ ease: mm(-1) }, [], ['ease'])?.wrong).toContain('below zero');
  expect(sizesFit({ deep: mm(10_001) }, ['deep'])?.wrong).toContain('10000 mm');
});

test('cloth is gathered from once to six times its place', () => {
  expect([0.9, 1, 6, 6.1, Number.NaN].map((n) => fullnessFits(n)?.field)).toEqual([
    'fullness',
    undefined,
    undefined,
    'fullness',
    'fullness',
  ]);
  expect(fullnessFits(0, 'lowerFullness')?.field).toBe('lowerFullness');
});
