import { describe, expect, test } from 'vitest';
import { easeNotches } from '../../src/cloth/ease-notches.ts';
import { flounce } from '../../src/cloth/flounce.ts';
import { inches, mm, toMm, zero } from '../../src/length/index.ts';
import { made } from '../cloth/good.ts';

describe('flounces against published figures', () => {
  // Clothing for Women, Laura I. Baldt, 1916, Draft of circular flounce, Fig. 56 (seen as an excerpt): r = T x D / (B - T).
  // The figures are ours, the rule is hers.
  test.each([
    [1200, 1800, 250],
    [500, 1100, 60],
    [300, 301, 40],
  ])('top %s, bottom %s, depth %s mm', (top, bottom, depth) => {
    const { radius } = made(
      flounce({ top: mm(top), bottom: mm(bottom), depth: mm(depth), allowance: zero, hem: zero }),
    );
    expect(toMm(radius) / ((top * depth) / (bottom - top))).toBeCloseTo(1, 6);
  });

  // Derived from the same: bottom - top = 2 pi depth is one whole circle of radius top / 2 pi.
  test('one whole circle', () => {
    const bottom = mm(400 + 2 * Math.PI * 90);
    const { circles, radius } = made(
      flounce({ top: mm(400), bottom, depth: mm(90), allowance: zero, hem: zero }),
    );
    expect(circles).toBeCloseTo(1, 6);
    expect(toMm(radius)).toBeCloseTo(400 / (2 * Math.PI), 4);
  });

  // Apparel: Design, Textiles & Construction, Goodheart-Willcox, 2012, p. 452 (seen as an excerpt): clip every 1/4 to 1/2 in,
  // a sharper curve closer. An older book (Watson, 1907) notches every 1 to 2 in; that rule is not followed here.
  test('notches within the published distances, closer on the sharper curve', () => {
    const apart = [1, 1.5, 2, 3, 10].map(
      (radius) =>
        made(
          easeNotches({
            seam: inches(20),
            radius: inches(radius),
            allowance: inches(5, 8),
            curve: 'inward',
          }),
        ).apart,
    );
    expect(apart).toEqual([...apart].sort((a, b) => a - b));
    expect(apart[0]).toBe(inches(1, 4));
    expect(apart.at(-1)).toBe(inches(1, 2));
  });
});
