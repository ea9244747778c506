import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { squareForStrip } from '../../../src/reckon/bias/continuous-square.ts';
import { continuousStrip } from '../../../src/reckon/bias/continuous-strip.ts';
import { figure, refusedAt, worked } from '../frills/worked.ts';

describe('square for a strip', () => {
  const want: Entries = { needed: '4000', strip: '40', join: '6' };

  test('its square gives the strip, and one a little smaller does not', () => {
    const side = Number(figure(worked(squareForStrip, want), 'Side of the square'));
    const gives = (at: number) =>
      Number(figure(worked(continuousStrip, { ...want, across: `${at}`, along: `${at}` }), 'Strip'));
    expect(gives(side + 0.001)).toBeGreaterThanOrEqual(4000);
    expect(gives(side - 0.1)).toBeLessThan(4000);
  });

  test('and in inches', () => {
    const made = worked(squareForStrip, { needed: '4 yd', strip: '1 1/2', join: '1/4' }, 'in');
    expect(Number(figure(made, 'Strip', 'in'))).toBeGreaterThanOrEqual(144);
  });

  test.each<[Entries, string]>([
    [{ needed: '0' }, 'needed'],
    [{ strip: '0' }, 'strip'],
    [{ strip: '0.001' }, 'strip'],
    [{ join: '-1' }, 'join'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(squareForStrip, { ...want, ...entries })).toEqual([field]);
  });
});
