import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { circleFrill } from '../../src/cloth/circles.ts';
import { gathers } from '../../src/cloth/gathers.ts';
import { inches, mm, toMm, zero } from '../../src/length/index.ts';

function made<T>(result: { ok: true; value: T } | { ok: false; error: unknown }): T {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}
const plain = { clothWidth: mm(900), join: mm(10), allowance: inches(5, 8) };

describe('gathers against published figures', () => {
  // NIMI Dress Making, Trade Practical, p. 203 (c. 2024, seen as an excerpt): 2.36 m from cloth 0.90 m wide less 0.02 m
  // for seams: 2.68, so three strips.
  test('2.36 m from 90 cm cloth is three strips', () => {
    expect(made(gathers({ ...plain, place: mm(1180), fullness: 2 }))).toMatchObject({
      strip: mm(2360),
      strips: 3,
    });
  });

  // Published fullness, each seen as an excerpt: Baldt, Clothing for Women, 1916 (bias ruffle 1 1/4 to 1 1/3, straight ruffle
  // 1 1/3 to 1 1/2); Butterick, The New Dressmaker, 1921, p. 137 (ruche of taffeta 2, of chiffon 3); NIMI p. 210 (2 to 3).
  test.each([5 / 4, 4 / 3, 3 / 2, 2, 3])('fullness %s is used without a warning', (fullness) => {
    const { strip, advice } = made(gathers({ ...plain, place: inches(36), fullness }));
    expect(strip).toBe(inches(36 * fullness));
    expect(advice).toEqual([]);
  });

  // Sewing Technique: Straight Ruffle (handout, after 2010; seen as an excerpt): two rows 1/4 in apart in the allowance.
  test('two rows a quarter inch apart, inside the allowance', () => {
    const [near, far] = made(gathers({ ...plain, place: inches(36) })).rows;
    expect(far - near).toBe(inches(1, 4));
    expect(far).toBeLessThan(plain.allowance);
  });

  // Textiles and Clothing, Watson, 1907: a fresh thread for each half; threads longer than the space.
  test('a thread for each half of each row, longer than the half', () => {
    const { threads, strip } = made(gathers({ ...plain, place: inches(36) }));
    expect(threads.count).toBe(4);
    expect(threads.each).toBeGreaterThan(strip / 2);
  });
});

describe('circular frills against published figures', () => {
  // Clothing for Women, Baldt, 1916, Draft of circular flounce (Fig. 56; seen as an excerpt): radius = top x depth /
  // (bottom - top).
  test('the radius agrees with the draft from top, bottom and depth', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 50, max: 3000 }),
        fc.integer({ min: 10, max: 600 }),
        fc.constantFrom(0.25, 0.5, 1, 1.5, 2),
        (top, depth, circles) => {
          const frill = made(
            circleFrill({ seam: mm(top), depth: mm(depth), circles, allowance: zero, hem: zero }),
          );
          const bottom = toMm(frill.outerEdge);
          expect(Math.abs(toMm(frill.radius) / ((top * depth) / (bottom - top)) - 1)).toBeLessThan(1e-5);
        },
      ),
    );
  });

  // Derived from the same: a full circle has radius T / 2 pi.
  test('a full circle round 251.327 mm has a radius of 40 mm', () => {
    const frill = made(
      circleFrill({ seam: mm(251.327412), depth: mm(50), circles: 1, allowance: zero, hem: zero }),
    );
    expect(toMm(frill.radius)).toBeCloseTo(40, 5);
  });
});
