import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { clothForStrips } from '../../../src/reckon/bias/bias-cloth.ts';
import { stripsFromCloth } from '../../../src/reckon/bias/bias-strips.ts';
import { figure, refusedAt, worked } from '../frills/worked.ts';

describe('cloth for bias strips', () => {
  const want: Entries = { needed: '3000', strip: '40', across: '1150', shortest: '100', join: '6' };

  test('what it tells is enough, and a little less is not', () => {
    const along = Number(figure(worked(clothForStrips, want), 'Length of cloth'));
    const cloth = (length: number) => refusedAt(stripsFromCloth, { ...want, along: `${length}` });
    expect(cloth(along + 0.01)).toEqual([]);
    expect(cloth(along - 0.1)).toEqual(['needed']);
  });

  test('never less than the area of the strip, in inches', () => {
    const made = worked(
      clothForStrips,
      { needed: '100', strip: '1', across: '45', shortest: '4', join: '0' },
      'in',
    );
    expect(Number(figure(made, 'Length of cloth', 'in'))).toBeGreaterThan(100 / 45);
    expect(Number(figure(made, 'Joined strip', 'in'))).toBeGreaterThanOrEqual(100);
  });

  test.each<[Entries, string]>([
    [{ needed: '0' }, 'needed'],
    [{ needed: '900 m' }, 'needed'],
    [{ strip: '0' }, 'strip'],
    [{ across: '0' }, 'across'],
    [{ across: '60' }, 'shortest'],
    [{ join: '-1' }, 'join'],
    [{ shortest: '10' }, 'shortest'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(clothForStrips, { ...want, ...entries })).toEqual([field]);
  });
});
