import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { headOfASleeve } from '../../../src/reckon/sleeves/head-of-a-sleeve.ts';
import { figure, marksOf, refusedAt, worked } from '../frills/worked.ts';

describe('sleeve head', () => {
  const cap: Entries = { cap: '480', toShoulder: '230', depth: '40', allowance: '10' };

  test('of gathered net, in millimetres', () => {
    const made = worked(headOfASleeve, { ...cap, fullness: '2' });
    expect(figure(made, 'Cut length')).toBe(500);
    expect(figure(made, 'Cut width')).toBe(100);
    expect(figure(made, 'Fold')).toBe(50);
    expect(figure(made, 'Shoulder mark')).toBe(250);
    expect(marksOf(made, 0)).toEqual([110, 230, 350]);
    expect(made.advice).toHaveLength(1);
  });

  test('flat, in inches', () => {
    const made = worked(headOfASleeve, { cap: '20', toShoulder: '10', allowance: '1/2', part: '0.4' }, 'in');
    expect(figure(made, 'Cut length', 'in')).toBe(9);
    expect(figure(made, 'Begins', 'in')).toBe(6);
  });

  test.each<[Entries, string]>([
    [{ cap: '0' }, 'cap'],
    [{ toShoulder: '480' }, 'toShoulder'],
    [{ depth: '0' }, 'depth'],
    [{ fullness: '0.5' }, 'fullness'],
    [{ part: '1' }, 'part'],
    [{ allowance: '-1' }, 'allowance'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(headOfASleeve, { ...cap, ...entries })).toEqual([field]);
  });
});
