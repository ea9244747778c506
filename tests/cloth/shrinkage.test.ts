import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beforeShrinking, shrunk } from '../../src/cloth/shrinkage.ts';
import { mm, nm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

describe('shrinkage', () => {
  test('2.85 m of a cloth that shrinks by 5 in the hundred are bought as 3 m', () => {
    expect(made(beforeShrinking(mm(2850), 0.05))).toBe(mm(3000));
    expect(made(shrunk(mm(200), mm(190)))).toBeCloseTo(0.05, 12);
  });

  test('what is bought is enough after shrinking, and not a hair more', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20_000 }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (n, s) => {
          const left = made(beforeShrinking(mm(n), s)) * (1 - s);
          expect(left - mm(n)).toBeGreaterThan(-0.001);
          expect(left - mm(n)).toBeLessThan(1.001);
        },
      ),
    );
  });

  test.each([
    [zero, 0.05, 'needed'],
    [mm(1000), -0.01, 'shrinks'],
    [mm(1000), 0.51, 'shrinks'],
    [mm(1000), Number.NaN, 'shrinks'],
  ])('refuses %s shrinking by %s', (needed, shrinks, field) => {
    expect(beforeShrinking(needed, shrinks)).toMatchObject({ ok: false, error: { field } });
  });

  test.each([
    [zero, mm(10), 'before'],
    [mm(200), mm(201), 'after'],
    [mm(200), nm(mm(100) - 1), 'after'],
  ])('refuses a sample of %s that becomes %s', (before, after, field) => {
    expect(shrunk(before, after)).toMatchObject({ ok: false, error: { field } });
  });
});
