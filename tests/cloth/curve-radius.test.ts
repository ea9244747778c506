import fc from 'fast-check';
import { expect, test } from 'vitest';
import { curveRadius } from '../../src/cloth/curve-radius.ts';
import { mm, nm, toMm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

test('finds the circle that was measured', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 10, max: 2000 }),
      fc.double({ min: 0.1, max: 1.57, noNaN: true }),
      (r, half) => {
        const [across, bow] = [nm(2e6 * r * Math.sin(half)), nm(1e6 * r * (1 - Math.cos(half)))];
        expect(toMm(made(curveRadius(across, bow))) / r).toBeCloseTo(1, 4);
      },
    ),
  );
});

test.each([
  [zero, mm(10), 'across'],
  [mm(100), zero, 'bow'],
  [mm(100), mm(51), 'bow'],
  [mm(1_000_000), mm(1), 'bow'],
])('refuses %d and %d', (across, bow, field) => {
  expect(curveRadius(across, bow)).toMatchObject({ ok: false, error: { field } });
});
