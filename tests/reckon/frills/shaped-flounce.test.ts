import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { shapedFlounce } from '../../../src/reckon/frills/shaped-flounce.ts';
import { figure, refusedAt, worked } from './worked.ts';

describe('flounce from its edges', () => {
  const cape: Entries = { top: '600', bottom: '1200', depth: '150', allowance: '10', hem: '5', slit: '0' };

  test('radius = top x depth / (bottom - top), in millimetres', () => {
    const made = worked(shapedFlounce, cape);
    expect(figure(made, 'Radius of the seam line')).toBe(150);
    expect(figure(made, 'Radius to cut inside')).toBe(140);
    expect(figure(made, 'Radius to cut outside')).toBe(305);
    expect(figure(made, 'Rings and joins')).toBe('1 part of 229 degrees, 1 join');
    expect(figure(made, 'All together')).toBe('0.64 times a full circle');
  });

  test('and in inches', () => {
    const made = worked(shapedFlounce, { top: '24', bottom: '48', depth: '6', slit: '0' }, 'in');
    expect(figure(made, 'Radius of the seam line', 'in')).toBe(6);
  });

  test('allowances at the slits leave both finished edges as they were', () => {
    const made = worked(shapedFlounce, { ...cape, slit: '10' });
    expect(figure(made, 'Finished lower edge')).toBeCloseTo(1200, 2);
    expect(made.strips[0]?.marks.at(-1)?.at).toBe(600e6);
  });

  test.each<[Entries, string]>([
    [{ top: '0' }, 'top'],
    [{ bottom: '600' }, 'bottom'],
    [{ bottom: '600.001' }, 'bottom'],
    [{ bottom: '20 m' }, 'bottom'],
    [{ depth: '0' }, 'depth'],
    [{ allowance: '-1' }, 'allowance'],
    [{ hem: '-1' }, 'hem'],
    [{ slit: '-1' }, 'slit'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(shapedFlounce, { ...cape, ...entries })).toEqual([field]);
  });
});
