import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { bindingStrip } from '../../../src/reckon/bias/binding-width.ts';
import { extent, figure, marksOf, refusedAt, worked } from '../frills/worked.ts';

describe('width of a binding', () => {
  test('a single binding in millimetres: four times its width', () => {
    const made = worked(bindingStrip, { kind: 'single', width: '10' });
    expect(figure(made, 'Width to cut')).toBe(40);
    expect(figure(made, 'Along the selvage')).toBe(56.569);
    expect(marksOf(made, 0)).toEqual([10, 20, 30]);
    expect(extent(made.sheets[0] ?? made.drawing)).toEqual({ wide: 150, high: 40 });
  });

  test('a band in inches: twice its depth and two turns', () => {
    const made = worked(bindingStrip, { kind: 'band', width: '1', turn: '' }, 'in');
    expect(figure(made, 'Width to cut', 'in')).toBe(2.5);
    expect(made.sources.some((source) => source.kind === 'published')).toBe(true);
  });

  test('a double binding has one fold', () => {
    expect(marksOf(worked(bindingStrip, { kind: 'double', width: '8', turn: '6' }), 0)).toEqual([22]);
  });

  test('a wide facing has no card', () => {
    expect(worked(bindingStrip, { kind: 'facing', width: '300' }).sheets).toEqual([]);
  });

  test.each<[Entries, string]>([
    [{ width: '0' }, 'width'],
    [{ turn: '0' }, 'turn'],
    [{ turn: '11' }, 'turn'],
    [{ kind: 'facing', turn: '6' }, 'turn'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(bindingStrip, { width: '10', ...entries })).toEqual([field]);
  });
});
