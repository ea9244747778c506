import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { inches, mm, NM_PER_INCH, nm, readLength, roundTo, writeLength } from '../../src/length/index.ts';

const read = (text: string) => {
  const result = readLength(text, 'in');
  if (!result.ok) throw new Error(result.error);
  return result.value;
};

describe('the inch', () => {
  // Guide for the Use of the International System of Units, NIST Special Publication 811, 2008, appendix B (from memory):
  // 1 in = 25.4 mm exactly, 1 yd = 0.9144 m exactly.
  test('is 25.4 mm exactly', () => {
    expect(inches(1)).toBe(mm(25.4));
    expect(NM_PER_INCH).toBe(25_400_000);
    expect(read('1 yd')).toBe(mm(914.4));
    expect(read('1 ft')).toBe(mm(304.8));
  });

  test('its sixty-fourth is 396 875 nm exactly', () => expect(inches(1, 64)).toBe(nm(396_875)));
});

// Reference library: fraction.js 5, exact rational arithmetic.
describe('agreement with exact rational numbers', () => {
  const perInch = new Fraction(25_400_000);
  const nearest = (f: Fraction) => Number(f.round(0).valueOf());

  test('mixed fractions of an inch', () => {
    fc.assert(
      fc.property(fc.nat(500), fc.integer({ min: 1, max: 97 }), fc.nat(96), (whole, bottom, some) => {
        const top = some % bottom;
        const exact = new Fraction(whole).add(new Fraction(top, bottom)).mul(perInch);
        expect(read(`${whole} ${top}/${bottom} in`)).toBe(nearest(exact));
      }),
    );
  });

  test('decimals in every unit', () => {
    const units = {
      mm: 1_000_000,
      cm: 10_000_000,
      m: 1_000_000_000,
      in: 25_400_000,
      ft: 304_800_000,
      yd: 914_400_000,
    };
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.entries(units)),
        fc.nat(900),
        fc.nat(9999),
        ([name, size], whole, part) => {
          const text = `${whole}.${String(part).padStart(4, '0')}`;
          expect(read(`${text} ${name}`)).toBe(nearest(new Fraction(text).mul(size)));
        },
      ),
    );
  });

  test('the nearest mark of a rule', () => {
    fc.assert(
      fc.property(
        fc.nat(10_000_000_000),
        fc.constantFrom(8 as const, 16 as const, 32 as const),
        (length, per) => {
          const marks = new Fraction(length).div(perInch).mul(per).round(0);
          const exact = marks.div(per).mul(perInch);
          expect(roundTo(nm(length), { unit: 'in', per })).toBe(Number(exact.valueOf()));
          const { whole, numerator, denominator } = writeLength(nm(length), { unit: 'in', per });
          const written = new Fraction(whole || 0).add(
            numerator ? new Fraction(`${numerator}/${denominator}`) : 0,
          );
          expect(written.equals(marks.div(per))).toBe(true);
        },
      ),
    );
  });
});
