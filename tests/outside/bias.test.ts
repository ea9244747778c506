import { describe, expect, test } from 'vitest';
import { bindingWidth, longestBias, selvageLength } from '../../src/cloth/bias.ts';
import { biasCloth } from '../../src/cloth/bias-strips.ts';
import { inches, mm, toInches, toMm, zero } from '../../src/length/index.ts';
import { made } from '../cloth/good.ts';

/** Width, then the measure along the selvage in whole inches and eighths, as printed. */
const TABLE: readonly (readonly [width: number, whole: number, eighths: number])[] = [
  [0.5, 0, 6],
  [1, 1, 3],
  [1.5, 2, 1],
  [2, 2, 6],
  [2.5, 3, 4],
  [3, 4, 2],
  [3.5, 5, 0],
  [4, 5, 5],
  [4.5, 6, 3],
  [5, 7, 1],
  [5.5, 7, 6],
  [6, 8, 4],
  [6.5, 9, 1],
  [7, 9, 7],
  [7.5, 10, 5],
  [8, 11, 2],
  [8.5, 12, 0],
  [9, 12, 6],
  [9.5, 13, 3],
  [10, 14, 1],
  [10.5, 14, 7],
  [11, 15, 4],
];

describe('bias against published figures', () => {
  // Clothing for Women, Laura I. Baldt, 1916, ch. XXII, table of measures (seen as an excerpt). Printed to an eighth.
  test.each(TABLE)('%s in wide: along the selvage %s and %s/8 in', (width, whole, eighths) => {
    const selvage = toInches(made(selvageLength(inches(width))));
    expect(Math.abs(selvage - (whole + eighths / 8))).toBeLessThan(0.08);
  });

  // NIMI Dress Making, Trade Practical, p. 220, ex. 1 (c. 2024, seen as an excerpt): 500 x 2.5 cm, shortest piece 10 cm,
  // cloth 86 cm wide: 15.12, cut as 15.5 cm. It takes 1/1.4 for the root of a half and counts area only; a layout of
  // whole strips cannot need less, and needs at most one strip's step more.
  test('500 cm of strip from cloth 86 cm wide', () => {
    const cloth = made(
      biasCloth({ across: mm(860), strip: mm(25), shortest: mm(100), join: zero, needed: mm(5000) }),
    );
    expect(toMm(cloth.along)).toBeGreaterThan(150);
    expect(toMm(cloth.along)).toBeLessThan(155 + 25 * Math.SQRT2);
  });

  // NIMI p. 220, single strip (seen as an excerpt): (65 - 2.14) x 1.4 = 88 cm, for a strip 3 cm wide (2.14 = 3/1.4, derived).
  test('a single strip 3 cm wide from a square of 65 cm', () => {
    const strip = toMm(made(longestBias({ across: mm(650), along: mm(650), strip: mm(30) })));
    expect(strip).toBeCloseTo(650 * Math.SQRT2 - 30, 4);
    expect(Math.abs(strip / 880 - 1)).toBeLessThan(0.015);
  });

  // Clothing for Women, Baldt, 1916, constructive processes 4 (seen as an excerpt): depth d, cut 2d + 1/2 in.
  test.each([1, 2, 3])('banding %s in deep', (depth) => {
    expect(made(bindingWidth({ kind: 'band', width: inches(depth) })).cut).toBe(inches(4 * depth + 1, 2));
  });
});
