import { describe, expect, test } from 'vitest';
import { horsehairHem } from '../../../src/reckon/sleeves/horsehair-hem.ts';
import { figure, marksOf, refusedAt, worked } from '../frills/worked.ts';

describe('horsehair in a hem', () => {
  test('three rows in millimetres', () => {
    const made = worked(horsehairHem, { hem: '1000', rows: '3' });
    expect(figure(made, 'Cut length')).toBe(1025);
    expect(figure(made, 'All rows')).toBe(3075);
    expect(marksOf(made, 0)).toEqual([1000]);
  });

  test('and one in inches', () => {
    expect(figure(worked(horsehairHem, { hem: '40' }, 'in'), 'Cut length', 'in')).toBe(40.984);
  });

  test('refuses no hem and no rows, each at its own field', () => {
    expect(refusedAt(horsehairHem, { hem: '0' })).toEqual(['hem']);
    expect(refusedAt(horsehairHem, { rows: '51' })).toEqual(['rows']);
  });
});
