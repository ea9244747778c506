import { describe, expect, test } from 'vitest';
import { EASY_TUCK, tucks } from '../../src/cloth/tucks.ts';
import { inches, type Length, mm, subtract, times, zero } from '../../src/length/index.ts';
import { made } from '../cloth/good.ts';

const group = (count: number, depth: Length, spacing: Length) =>
  made(tucks({ count, depth, spacing, first: zero, pressed: 'away' }));

describe('tucks and pleats as the trade makes them', () => {
  // Common practice, no source: a tuck of depth d takes 2d.
  test.each([mm(1), inches(1, 8), mm(5), inches(1, 2), inches(2)])(
    'a tuck %s nm deep takes twice as much',
    (depth) => {
      const one = group(1, depth, times(depth, 2));
      expect(one.takeUp).toBe(times(depth, 2));
      const [marks] = one.tucks;
      expect(subtract(marks!.secondStitching, marks!.firstStitching)).toBe(times(depth, 2));
    },
  );

  // Home and School Sewing, chapter XXI Tucking, undated (author and year not in the excerpt): the space is half the depth.
  test.each([inches(1, 4), inches(1, 2), inches(1)])('tucks of %s nm with half of it showing', (depth) => {
    const [first] = group(3, depth, times(depth, 3 / 2)).tucks;
    expect(first!.showing).toBe(times(depth, 1 / 2));
  });

  // The same chapter, undated, and The New Dressmaker, Butterick, 1921, ch. 20, p. 97 (seen as excerpts): the second notch of the gauge
  // lies the space and the next depth past the first.
  test('from fold to fold it is the space and a depth', () => {
    const [depth, space] = [inches(3, 8), inches(1, 4)];
    const [first, second] = group(2, depth, inches(5, 8)).tucks;
    expect(first!.showing).toBe(space);
    expect(subtract(second!.foldFinished, first!.foldFinished)).toBe(depth + space);
  });

  // Textiles and Garment Construction, Form Three, undated, p. 26 (seen as an excerpt): a pin tuck is 1 to 3 mm wide.
  test.each([1, 2, 3])('a tuck of %s mm counts as a pin tuck', (deep) => {
    expect(mm(deep)).toBeLessThan(EASY_TUCK.value);
    expect(group(2, mm(deep), mm(10)).advice).toHaveLength(1);
  });

  // The New Dressmaker, Butterick, 1921, p. 97 (seen as an excerpt): a wide tuck is 2 in or more.
  test('a wide tuck of 2 in is made without a warning and takes 4 in', () => {
    const { advice, takeUp } = group(1, inches(2), inches(6));
    expect(advice).toEqual([]);
    expect(takeUp).toBe(inches(4));
  });

  // The New Dressmaker, Butterick, 1921, p. 98 (seen as an excerpt): crossed pin tucks about 1 in from one stitching to the next
  // fold. Flat, that is one depth more from stitching to stitching (derived).
  test('pin tucks 1 in from one stitching to the next fold', () => {
    const depth = mm(2);
    const [first, second] = group(2, depth, inches(1)).tucks;
    expect(subtract(second!.fold, first!.secondStitching)).toBe(inches(1) + depth);
  });

  // Dress Making, Trade Practical, NIMI, about 2024, p. 204 (seen as an excerpt): pleats edge to edge take three times the width; 50
  // cm in pleats of 2.5 cm: 20 pleats, 150 cm, 152 with seams.
  test('twenty pleats edge to edge: 50 cm from 150', () => {
    const { takeUp, tucks: marks } = group(20, mm(25), mm(25));
    expect(takeUp + mm(500)).toBe(mm(1500));
    expect(takeUp + mm(500) + mm(20)).toBe(mm(1520));
    expect(marks.slice(0, -1).every(({ meets }) => meets === 'blind')).toBe(true);
  });

  // The same, p. 204, about 2024 (seen as an excerpt): a box pleat 12 cm deep in 60 cm: 12 x 2 x 2 + 60 = 108 cm.
  test('a box pleat is two folds: 60 cm from 108', () => {
    expect(group(2, mm(120), mm(120)).takeUp + mm(600)).toBe(mm(1080));
  });

  // The same, p. 203, about 2024 (seen as an excerpt): 2 x 4 x 18 = 144 cm for the pleats.
  test('eighteen folds of 4 cm take 144 cm', () => {
    expect(group(18, mm(40), mm(51)).takeUp).toBe(mm(1440));
  });

  // The New Dressmaker, Butterick, 1921, p. 142 (seen as an excerpt): quilling, side plaits edge to edge, takes three lengths.
  test('quilling takes three lengths', () => {
    const width = mm(240);
    expect((group(24, mm(10), mm(10)).takeUp + width) / width).toBe(3);
  });

  // Clothing for Women, Laura I. Baldt, 1916, p. 401 (seen as an excerpt): side plaitings take 1 1/2 to 2 1/2 lengths, by depth and
  // space. A quarter and three quarters of the spacing are derived.
  test.each([
    [1 / 4, 1.5],
    [1 / 2, 2],
    [3 / 4, 2.5],
  ])('plaits as deep as %s of their spacing take %s lengths', (part, lengths) => {
    const width = mm(800);
    expect((group(20, times(mm(40), part), mm(40)).takeUp + width) / width).toBe(lengths);
  });
});
