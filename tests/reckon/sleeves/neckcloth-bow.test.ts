import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { neckclothBow } from '../../../src/reckon/sleeves/neckcloth-bow.ts';
import { extent, figure, marksOf, refusedAt, worked } from '../frills/worked.ts';

describe('neckcloth tied in a bow', () => {
  const small: Entries = { round: '400', bow: '160', tail: '200', width: '60', knot: '120', allowance: '10' };

  test('once round, two loops there and back, two tails and the knot', () => {
    const made = worked(neckclothBow, small);
    // 400 + 2 × 160 + 2 × 200 + 120 = 1240
    expect(figure(made, 'Finished, from end to end')).toBe(1240);
    expect(figure(made, 'Cut length')).toBe(1260);
    expect(figure(made, 'Cut width')).toBe(140);
    expect(figure(made, 'Fold, from one cut edge')).toBe(70);
    expect(marksOf(made, 0)).toEqual([280, 420, 620, 820, 960]);
    expect(extent(made.sheets[0] ?? made.drawing)).toEqual({ wide: 1260, high: 140 });
  });

  test('in halves where the cloth is short', () => {
    const made = worked(neckclothBow, { ...small, longest: '900' });
    expect(figure(made, 'Strips to cut')).toBe(2);
    expect(figure(made, 'Cut length of each half')).toBe(640);
    expect(made.assumed.join(' ')).toContain('centre back');
  });

  test('the knot takes twice the width unless told, in inches too', () => {
    const made = worked(neckclothBow, { round: '16', bow: '7', tail: '8', width: '3' }, 'in');
    expect(figure(made, 'Finished, from end to end', 'in')).toBe(16 + 14 + 16 + 6);
  });

  test.each<[Entries, string]>([
    [{ round: '0' }, 'round'],
    [{ bow: '0' }, 'bow'],
    [{ tail: '0' }, 'tail'],
    [{ width: '0' }, 'width'],
    [{ knot: '-1' }, 'knot'],
    [{ longest: '500' }, 'longest'],
    [{ allowance: '-1' }, 'allowance'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(neckclothBow, { ...small, ...entries })).toEqual([field]);
  });
});
