import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { stripsFromCloth } from '../../../src/reckon/bias/bias-strips.ts';
import { figure, marksOf, refusedAt, worked } from '../frills/worked.ts';

describe('bias strips from cloth', () => {
  const scrap: Entries = { across: '900', along: '300', strip: '40', shortest: '100', join: '6' };

  test('three full strips, in millimetres', () => {
    const made = worked(stripsFromCloth, { ...scrap, needed: '1200' });
    // Three strips of 300 x root 2, less two joins of two allowances x root 2.
    expect(figure(made, 'Joined strip')).toBeCloseTo(3 * 424.264 - 2 * 16.971, 2);
    expect(figure(made, 'Strips and joins')).toBe('3 strips, 2 joins');
    expect(figure(made, 'From line to line')).toBe(56.569);
    expect(figure(made, 'Longest without a join')).toBe(384.264);
  });

  test('and all of a small square, in inches', () => {
    const square = { across: '12', along: '12', strip: '2', shortest: '3', join: '1/4', needed: '' };
    const made = worked(stripsFromCloth, square, 'in');
    expect(figure(made, 'Longest without a join', 'in')).toBe(14.971);
    expect(Number(figure(made, 'Joined strip', 'in'))).toBeLessThan(144 / 2);
  });

  test('a line has the same number at both its ends, and runs at 45 degrees', () => {
    fc.assert(
      fc.property(fc.integer({ min: 200, max: 900 }), fc.integer({ min: 200, max: 900 }), (w, h) => {
        const { strips } = worked(stripsFromCloth, { ...scrap, across: `${w}`, along: `${h}` });
        const from = new Map<string, number[]>();
        for (const strip of strips) {
          const corner = strip.name === 'Right edge' ? w : strip.name === 'Bottom edge' ? h : 0;
          for (const { name, at } of strip.marks)
            from.set(name, [...(from.get(name) ?? []), at + corner * 1e6]);
        }
        for (const ends of from.values()) {
          expect(ends).toHaveLength(2);
          expect(Math.abs((ends[0] ?? 0) - (ends[1] ?? 0))).toBeLessThan(3);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('the first line stands where it is marked', () => {
    const made = worked(stripsFromCloth, scrap);
    expect(figure(made, 'First line')).toBe(marksOf(made, 0)[0]);
  });

  test.each<[Entries, string]>([
    [{ across: '0' }, 'across'],
    [{ along: '0' }, 'along'],
    [{ strip: '0' }, 'strip'],
    [{ strip: '0.1' }, 'strip'],
    [{ join: '-1' }, 'join'],
    [{ shortest: '16' }, 'shortest'],
    [{ shortest: '600' }, 'shortest'],
    [{ needed: '100 m' }, 'needed'],
    [{ needed: '0' }, 'needed'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(stripsFromCloth, { ...scrap, ...entries })).toEqual([field]);
  });
});
