import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { supportInside } from '../../../src/reckon/sleeves/support-inside.ts';
import { extent, figure, marksOf, refusedAt, worked } from '../frills/worked.ts';

describe('support inside a sleeve', () => {
  const sleeve: Entries = { top: '320', bottom: '520', length: '400', allowance: '10' };

  test('an inner sleeve and three rings, in millimetres', () => {
    const made = worked(supportInside, sleeve);
    expect(figure(made, 'Support inside')).toBe('needed');
    expect(figure(made, 'Net, cut width at the top')).toBe(340);
    expect(figure(made, 'Net, cut length')).toBe(420);
    expect(figure(made, 'Horsehair for ring 2')).toBe(445);
    expect(marksOf(made, 0)).toEqual([0, 200, 400]);
    // Half the pattern, on the fold.
    expect(extent(made.sheets[0] ?? made.drawing)).toEqual({ wide: 270, high: 420 });
    expect(extent(made.drawing)).toEqual({ wide: 540, high: 420 });
  });

  // Common practice, no source: detached sleeves laden with beads need support inside.
  test.each([
    ['both', 1],
    ['detached', 0],
    ['beaded', 0],
  ])('a sleeve that is %s brings %s pieces of advice', (kind, pieces) => {
    expect(worked(supportInside, { ...sleeve, sleeve: kind }).advice).toHaveLength(pieces);
  });

  test('in inches', () => {
    const made = worked(supportInside, { bottom: '20', allowance: '1/2' }, 'in');
    expect(figure(made, 'Net, cut width at the lower edge', 'in')).toBe(21);
  });

  test.each<[Entries, string]>([
    [{ top: '0' }, 'top'],
    [{ bottom: '0' }, 'bottom'],
    [{ length: '0' }, 'length'],
    [{ rings: '1' }, 'rings'],
    [{ allowance: '-1' }, 'allowance'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(supportInside, { ...sleeve, ...entries })).toEqual([field]);
  });
});
