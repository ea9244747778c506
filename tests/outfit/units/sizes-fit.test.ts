import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { fullnessFits, sizesFit, tooLong } from '../../../src/outfit/units/sizes-fit.ts';

test('sizes are above zero, or zero where that may be, and no longer than anything that is worn', () => {
  const values = { deep: mm(50), ease: mm(0), kind: 'flat' };
  expect(sizesFit(values, ['deep', 'kind', 'missing'], ['ease'])).toBeUndefined();
  expect(sizesFit(values, ['deep', 'ease'])?.field).toBe('ease');
  expect(sizesFit({ ease: mm(-1) }, [], ['ease'])?.wrong).toContain('below zero');
  expect(sizesFit({ deep: mm(10_001) }, ['deep'])?.wrong).toContain('10000 mm');
});

test('a length of no form is longer than anything that is worn', () => {
  const length = { kind: 'length', label: 'Length', start: { in: '4', mm: '100' } } as const;
  const fields = {
    long: length,
    deep: length,
    times: { kind: 'number', label: 'Times', start: '2' },
  } as const;
  const faults = tooLong(fields, { long: mm(10_001), deep: mm(10_000), times: 1e12 });
  expect(faults).toMatchObject([{ field: 'long', say: expect.stringContaining('10000 mm') }]);
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
