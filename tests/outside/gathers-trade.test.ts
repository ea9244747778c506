import { describe, expect, test } from 'vitest';
import { easeNotches } from '../../src/cloth/ease-notches.ts';
import { frillCut } from '../../src/cloth/frill-cut.ts';
import { FULLNESS_FOR, fullnessFor, type Gathered, gathers, ROWS_APART } from '../../src/cloth/gathers.ts';
import { inches, mm, zero } from '../../src/length/index.ts';
import { made } from '../cloth/good.ts';

const plain = { place: mm(800), clothWidth: mm(1400), join: mm(10), allowance: inches(5, 8) };

describe('fullness, by the book that each is from', () => {
  // Clothing for Women, Laura I. Baldt, 1916, constructive processes 4 and 5; The New Dressmaker, Butterick, 1921, p. 137; Dress
  // Making, NIMI, about 2024, p. 210 (all seen as excerpts).
  test.each<[Gathered, number, number]>([
    ['straight ruffle', 4 / 3, 3 / 2],
    ['bias ruffle', 5 / 4, 4 / 3],
    ['sheer ruche', 3, 3],
    ['ruche with body', 2, 2],
    ['full gathers', 2, 3],
  ])('%s: %s to %s times', (gathered, least, most) => {
    expect(FULLNESS_FOR[gathered].value).toEqual([least, most]);
    expect(fullnessFor(gathered).value).toBeCloseTo((least + most) / 2, 12);
  });

  // The same two of Baldt, 1916 (seen as excerpts): a bias ruffle takes less than a straight one.
  test('a bias ruffle takes less cloth than a straight one', () => {
    expect(fullnessFor('bias ruffle').value).toBeLessThan(fullnessFor('straight ruffle').value);
  });

  // Common practice, no source: 2 1/2 times is a usual fullness.
  test('2 1/2 times without other wishes', () => {
    expect(made(gathers(plain)).strip).toBe(mm(2000));
  });

  // Sewing Technique: Straight Ruffle, handout, after 2010 (seen as an excerpt): twice to three times the length.
  test('the usual fullness is within the handout’s 2 to 3', () => {
    const { fullness } = made(gathers(plain));
    expect(fullness).toBeGreaterThanOrEqual(2);
    expect(fullness).toBeLessThanOrEqual(3);
  });

  // Dress Making, Trade Theory, NIMI, about 2024, p. 250 (seen as an excerpt): each tier 1 1/2 to 2 times the one above.
  test.each([1.5, 2])('three tiers, each %s times the one above', (fullness) => {
    let place = mm(900);
    for (let tier = 1; tier <= 3; tier++) {
      const { strip, advice } = made(gathers({ ...plain, place, fullness }));
      expect(advice).toEqual([]);
      expect(strip).toBe(mm(900 * fullness ** tier));
      place = strip;
    }
  });
});

describe('rows, marks and grain', () => {
  // Textiles and Clothing, Kate Heintz Watson, 1907: the second row 1/8 in below on ruffles, 1/8 to 1/4 in on bands. Dillmont (undated,
  // fig. 20) puts it 1 to 2 cm below; that rule is not followed.
  test('our rows lie no further apart than on Watson’s bands', () => {
    expect(ROWS_APART.value).toBeGreaterThanOrEqual(inches(1, 8));
    expect(ROWS_APART.value).toBeLessThanOrEqual(inches(1, 4));
    expect(ROWS_APART.value).toBeLessThan(mm(10));
  });

  // Sewing and Handicraft for Girls, Gathering B, undated (seen as an excerpt): both edges divided in quarters or eighths by length.
  test.each([4, 8] as const)('both edges in %s equal parts', (parts) => {
    const { marks, strip } = made(gathers({ ...plain, parts }));
    expect(marks).toHaveLength(parts + 1);
    for (const [k, mark] of marks.entries()) {
      expect(mark.place * parts).toBe(plain.place * k);
      expect(mark.strip * parts).toBe(strip * k);
    }
  });

  // Common practice, no source: a strip cut along the grain gathers cleaner.
  test.each([
    ['along', false],
    ['across', true],
  ] as const)('a frill cut %s: advice to cut it along the grain is %s', (grain, advised) => {
    const { advice } = made(
      frillCut({
        place: mm(600),
        depth: mm(60),
        kind: 'usual',
        grain,
        clothWidth: mm(1400),
        allowance: inches(5, 8),
        hem: mm(10),
        ring: false,
        parts: 4,
      }),
    );
    expect(advice.some(({ say }) => say.includes('along the grain gathers cleaner'))).toBe(advised);
  });

  // Apparel: Design, Textiles and Construction, Goodheart-Willcox, 2012, p. 452 (seen as an excerpt): inward curves are clipped, outward
  // curves notched.
  test.each([
    ['inward', 'clip'],
    ['outward', 'wedge'],
  ] as const)('an %s curve: %s', (curve, cut) => {
    const notches = easeNotches({ seam: inches(10), radius: inches(5), allowance: inches(5, 8), curve });
    expect(made(notches).cut).toBe(cut);
  });

  // Textiles and Clothing, Kate Heintz Watson, 1907: an older curved seam is notched every 1 to 2 in. The modern rule is followed, so ours
  // come closer.
  test('notches closer than the older rule', () => {
    const { apart } = made(
      easeNotches({ seam: inches(20), radius: inches(30), allowance: inches(5, 8), curve: 'outward' }),
    );
    expect(apart).toBeLessThan(inches(1));
  });

  // Dress Making, Trade Practical, NIMI, about 2024, p. 203 (seen as an excerpt): three strips of 15 cm are 45 cm of cloth. The other
  // figure of that page, 2.34 m, is a slip that leaves the count as it is.
  test.each([2360, 2340])('%s mm from cloth of 90 cm: three strips', (strip) => {
    const { strips } = made(
      gathers({ ...plain, place: mm(strip / 2), fullness: 2, clothWidth: mm(900), join: mm(10) }),
    );
    expect(strips * 150).toBe(450);
  });

  // Geometry of a plain strip (derived): with no allowance the strips together are as long as the whole.
  test('strips without allowances add up to the strip', () => {
    const { strips, cutLength, strip } = made(gathers({ ...plain, join: zero }));
    expect(Math.abs(strips * cutLength - strip)).toBeLessThanOrEqual(strips);
  });
});
