import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { stuffedRoll } from '../../../src/reckon/sleeves/stuffed-roll.ts';
import { figure, refusedAt, worked } from '../frills/worked.ts';

describe('stuffed roll', () => {
  const ball: Entries = { length: '100', thick: '100', allowance: '0' };

  test('as short as it is thick it is a ball, in millimetres', () => {
    const made = worked(stuffedRoll, { ...ball, gramsPerLitre: '50' });
    expect(figure(made, 'Cut length')).toBeCloseTo(50 * Math.PI, 2);
    expect(figure(made, 'Cut width')).toBeCloseTo(100 * Math.PI, 2);
    // 4/3 pi r³ with r = 0.5 dm.
    expect(figure(made, 'Stuffing')).toBe(0.524);
    expect(figure(made, 'Weight')).toBe(26.2);
  });

  test('in inches, without a weight', () => {
    const made = worked(stuffedRoll, { length: '12', thick: '2', allowance: '1/2' }, 'in');
    expect(figure(made, 'Cut width', 'in')).toBeCloseTo(2 * Math.PI + 1, 3);
    expect(made.figures.some(({ name }) => name.startsWith('Weight'))).toBe(false);
  });

  test('what is too long to print is not', () => {
    expect(worked(stuffedRoll, { length: '5 m' }).sheets).toEqual([]);
  });

  test.each<[Entries, string]>([
    [{ thick: '0' }, 'thick'],
    [{ length: '90' }, 'length'],
    [{ allowance: '-1' }, 'allowance'],
    [{ gramsPerLitre: '0' }, 'gramsPerLitre'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(stuffedRoll, { ...ball, ...entries })).toEqual([field]);
  });
});
