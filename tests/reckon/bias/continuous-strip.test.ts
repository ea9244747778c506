import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { continuousStrip } from '../../../src/reckon/bias/continuous-strip.ts';
import { figure, marksOf, refusedAt, worked } from '../frills/worked.ts';

describe('continuous strip', () => {
  const cloth: Entries = { across: '500', along: '300', strip: '40', join: '6' };

  test('eight rounds in millimetres', () => {
    const made = worked(continuousStrip, cloth);
    // Straight edge 488, step 56.569: 8 rounds; each round (300 - 12) x root 2.
    expect(figure(made, 'Rounds')).toBe(8);
    expect(figure(made, 'Strip')).toBeCloseTo(8 * 288 * Math.SQRT2, 2);
    expect(figure(made, 'Triangle')).toBe(300);
    expect(figure(made, 'Trim off')).toBeCloseTo(488 - 8 * 40 * Math.SQRT2, 2);
    expect(marksOf(made, 1)).toHaveLength(8);
  });

  test('never longer than the area allows, in inches', () => {
    const made = worked(continuousStrip, { across: '20', along: '20', strip: '2', join: '1/4' }, 'in');
    expect(Number(figure(made, 'Strip', 'in'))).toBeLessThan(200);
    expect(Number(figure(made, 'Strip', 'in'))).toBeGreaterThan(160);
  });

  test.each<[Entries, string]>([
    [{ across: '0' }, 'across'],
    [{ along: '0' }, 'along'],
    [{ strip: '0' }, 'strip'],
    [{ strip: '0.1' }, 'strip'],
    [{ strip: '200' }, 'strip'],
    [{ join: '-1' }, 'join'],
    [{ join: '150' }, 'join'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(continuousStrip, { ...cloth, ...entries })).toEqual([field]);
  });
});
