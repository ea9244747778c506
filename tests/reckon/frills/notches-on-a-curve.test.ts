import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { notchesOnACurve } from '../../../src/reckon/frills/notches-on-a-curve.ts';
import { figure, marksOf, refusedAt, worked } from './worked.ts';

describe('notches on a curve', () => {
  // A half circle: ruler 200, bow 100, radius 100.
  const half: Entries = { seam: '200', across: '200', bow: '100', allowance: '12' };

  test('half a circle in millimetres', () => {
    const neck = worked(notchesOnACurve, half);
    expect(figure(neck, 'Radius')).toBe(100);
    // 200 mm in spaces of at most 12.7 mm.
    expect(figure(neck, 'Clip every')).toBe(12.5);
    expect(figure(neck, 'Clips')).toBe(15);
    expect(figure(neck, 'Each opens')).toBe(1.5);
    expect(marksOf(neck, 0).slice(0, 3)).toEqual([12.5, 25, 37.5]);
  });

  test('outside the curve wedges are taken out, in inches', () => {
    const collar = worked(
      notchesOnACurve,
      { seam: '4', across: '4', bow: '2', allowance: '1/2', curve: 'outward' },
      'in',
    );
    expect(figure(collar, 'Take out a wedge every', 'in')).toBe(0.5);
    expect(figure(collar, 'Width of a wedge', 'in')).toBe(0.125);
    expect(figure(collar, 'How deep', 'in')).toBe(0.438);
  });

  test('a short seam has no notch and no strip', () => {
    expect(worked(notchesOnACurve, { ...half, seam: '10' }).strips).toEqual([]);
  });

  test.each<[Entries, string]>([
    [{ seam: '0' }, 'seam'],
    [{ seam: '50 m' }, 'seam'],
    [{ across: '0' }, 'across'],
    [{ bow: '0' }, 'bow'],
    [{ bow: '110' }, 'bow'],
    [{ allowance: '1' }, 'allowance'],
    [{ allowance: '100' }, 'allowance'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(notchesOnACurve, { ...half, ...entries })).toEqual([field]);
  });
});
