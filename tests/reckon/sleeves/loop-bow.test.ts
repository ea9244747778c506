import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { loopBow } from '../../../src/reckon/sleeves/loop-bow.ts';
import { extent, figure, marksOf, refusedAt, worked } from '../frills/worked.ts';

describe('bow with loops', () => {
  const small: Entries = {
    width: '120',
    height: '50',
    knot: '25',
    middle: '70',
    tail: '200',
    tailWidth: '40',
    allowance: '10',
  };

  test('loops, knot and tails in millimetres', () => {
    const made = worked(loopBow, small);
    expect(figure(made, 'Loops, cut length')).toBe(260);
    expect(figure(made, 'Loops, cut width')).toBe(120);
    expect(figure(made, 'Knot, cut length')).toBe(90);
    expect(figure(made, 'Tail, cut 2, cut width')).toBe(100);
    expect(marksOf(made, 0)).toEqual([70, 130, 190]);
    expect(made.sheets.map(({ name }) => name)).toEqual(['Loops', 'Knot', 'Tail']);
    expect(extent(made.sheets[0] ?? made.drawing)).toEqual({ wide: 260, high: 120 });
  });

  test('without tails, in inches', () => {
    const made = worked(loopBow, { tail: '', width: '6', allowance: '1/2' }, 'in');
    expect(figure(made, 'Loops, cut length', 'in')).toBe(13);
    expect(made.sheets).toHaveLength(2);
  });

  test('tails are as wide as the loops are high unless told', () => {
    expect(figure(worked(loopBow, { ...small, tailWidth: '' }), 'Tail, cut 2, cut width')).toBe(120);
  });

  test('the bow is drawn as wide as it is', () => {
    expect(extent(worked(loopBow, { ...small, tail: '' }).drawing)).toEqual({ wide: 120, high: 50 });
  });

  test.each<[Entries, string]>([
    [{ width: '0' }, 'width'],
    [{ height: '0' }, 'height'],
    [{ knot: '120' }, 'knot'],
    [{ middle: '101' }, 'middle'],
    [{ tail: '0' }, 'tail'],
    [{ tailWidth: '0' }, 'tailWidth'],
    [{ allowance: '-1' }, 'allowance'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(loopBow, { ...small, ...entries })).toEqual([field]);
  });
});
