import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { buttonedCuff } from '../../../src/reckon/sleeves/buttoned-cuff.ts';
import { extent, figure, marksOf, refusedAt, worked } from '../frills/worked.ts';

describe('cuff with buttons', () => {
  const cuff: Entries = {
    wrist: '160',
    ease: '40',
    depth: '60',
    sleeve: '400',
    overlap: '20',
    diameter: '11',
    thickness: '3',
    allowance: '10',
  };

  test('in one piece, in millimetres', () => {
    const made = worked(buttonedCuff, cuff);
    expect(figure(made, 'Cut length')).toBe(240);
    expect(figure(made, 'Cut width')).toBe(140);
    expect(figure(made, 'Fold')).toBe(70);
    expect(figure(made, 'Sleeve gathered')).toBe('2 times');
    expect(figure(made, 'Buttonhole')).toBe(14);
    expect(marksOf(made, 0)).toEqual([20, 70, 120, 170, 220]);
    expect(marksOf(made, 1)).toEqual([0, 100, 200, 300, 400]);
    // The hole begins 1/8 in past the middle of the overlap.
    expect(marksOf(made, 2)).toEqual([6.825, 20.825]);
    expect(marksOf(made, 3)).toEqual([10]);
    expect(marksOf(made, 4)).toEqual([30]);
  });

  test('printed at true size', () => {
    const made = worked(buttonedCuff, cuff);
    expect(extent(made.sheets[0] ?? made.drawing)).toEqual({ wide: 240, high: 140 });
  });

  test('as two pieces with two buttons, in inches', () => {
    const made = worked(buttonedCuff, { pieces: '2', buttons: '2', depth: '3', allowance: '1/2' }, 'in');
    expect(figure(made, 'Cut width', 'in')).toBe(4);
    expect(figure(made, 'Pieces')).toBe(2);
    expect(made.figures.some(({ name }) => name.startsWith('Fold'))).toBe(false);
    expect(made.strips.at(-1)?.marks.map(({ at }) => at / 25.4e6)).toEqual([0.75, 2.25]);
  });

  test.each<[Entries, string]>([
    [{ wrist: '0' }, 'wrist'],
    [{ ease: '-1' }, 'ease'],
    [{ depth: '0' }, 'depth'],
    [{ sleeve: '150' }, 'sleeve'],
    [{ overlap: '80' }, 'overlap'],
    [{ overlap: '5' }, 'overlap'],
    [{ buttons: '0' }, 'buttons'],
    [{ buttons: '9' }, 'buttons'],
    [{ diameter: '0' }, 'diameter'],
    [{ thickness: '50' }, 'thickness'],
    [{ allowance: '-1' }, 'allowance'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(buttonedCuff, { ...cuff, ...entries })).toEqual([field]);
  });
});
