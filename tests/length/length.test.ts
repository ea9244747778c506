import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  compare,
  inches,
  longer,
  longest,
  mm,
  nm,
  ratio,
  shorter,
  shortest,
  size,
  subtract,
  times,
  toInches,
  toMm,
  zero,
} from '../../src/length/index.ts';

const anyLength = fc.integer({ min: -1e12, max: 1e12 }).map(nm);

describe('lengths', () => {
  test('sums do not drift: a thousand sixty-fourths are exactly fifteen and five eighths inches', () => {
    let sum = zero;
    for (let i = 0; i < 1000; i++) sum = add(sum, inches(1, 64));
    expect(sum).toBe(inches(125, 8));
  });

  test('of none is zero, and zero has no sign', () => {
    expect(add()).toBe(zero);
    expect(Object.is(nm(-0.2), 0)).toBe(true);
    expect(Object.is(times(inches(-1), 0), 0)).toBe(true);
  });

  test('adding and taking away undo each other', () => {
    fc.assert(
      fc.property(anyLength, anyLength, (a, b) => {
        expect(subtract(add(a, b), b)).toBe(a);
      }),
    );
  });

  test('taking a length a whole number of times is the sum of as many', () => {
    fc.assert(
      fc.property(anyLength, fc.nat(40), (a, k) => {
        expect(times(a, k)).toBe(add(...Array.from({ length: k }, () => a)));
      }),
    );
  });

  test('are ordered', () => {
    expect(longer(inches(1), mm(25))).toBe(true);
    expect(shorter(inches(1), mm(25))).toBe(false);
    expect([inches(1), mm(1), inches(1, 2)].sort(compare)).toEqual([mm(1), inches(1, 2), inches(1)]);
    expect(longest(mm(1), mm(3), mm(2))).toBe(mm(3));
    expect(shortest(mm(2), mm(1), mm(3))).toBe(mm(1));
    expect(size(mm(-3))).toBe(mm(3));
    expect(ratio(inches(1), inches(1, 8))).toBe(8);
  });

  test('what is not a length is a slip in the program', () => {
    expect(() => nm(Number.NaN)).toThrow(RangeError);
    expect(() => inches(1, 0)).toThrow(RangeError);
    expect(() => nm(1e300)).toThrow(RangeError);
  });

  test('go out as plain numbers for a drawing', () => {
    expect(toMm(inches(1))).toBe(25.4);
    expect(toInches(mm(25.4))).toBe(1);
  });
});
