import { describe, expect, test } from 'vitest';
import { tuckCount } from '../../src/cloth/tuck-count.ts';
import { mm, subtract } from '../../src/length/index.ts';
import { made } from '../cloth/good.ts';

// Dress Making, Trade Practical (Craft Instructor Training Scheme), National Instructional Media Institute, about 2024,
// exercise 48, p. 209: two worked examples (seen as excerpts).
describe('the number of tucks against a published exercise', () => {
  // Example 1: finished width 39 cm, margins 1.5 cm on both sides, 1.2 cm from tuck to tuck: 36 / 1.2 = 30 gaps, 31
  // tucks. The book takes the tucks as having no width of their own there, so depth and showing make up its 1.2 cm.
  test.each([1, 2, 6, 12])('39 cm with 1.2 cm from tuck to tuck holds 31, tucks %s mm deep', (depth) => {
    const found = made(
      tuckCount({
        width: mm(390),
        margin: mm(15),
        depth: mm(depth),
        showing: mm(12 - depth),
        round: 'nearest',
      }),
    );
    expect(found).toMatchObject({ count: 31, spacing: mm(12), spacesWanted: 30 });
  });

  // Example 2: width 28 cm, margins 2 cm, tucks 2 mm deep, gap 1.5 cm: 24 / 1.7 = 14.1, which the book rounds up to 15
  // gaps; 16 tucks take 6.4 cm; pattern 34.4 cm; corrected pitch 24 / 15 = 1.6 cm, so 1.4 cm shows (derived).
  test('28 cm with 2 mm tucks and 1.5 cm showing, rounded up, holds 16', () => {
    const found = made(
      tuckCount({ width: mm(280), margin: mm(20), depth: mm(2), showing: mm(15), round: 'up' }),
    );
    expect(found.spacesWanted).toBeCloseTo(14.1, 1);
    expect(found).toMatchObject({ count: 16, spacing: mm(16), takeUp: mm(64), flat: mm(344) });
    expect(subtract(found.spacing, mm(2))).toBe(found.showing);
  });

  // Same page: a number that is not whole may go up or down, and the gap is worked out again.
  test('rounded down, the same width holds 15 at 24 / 14 cm', () => {
    const found = made(
      tuckCount({ width: mm(280), margin: mm(20), depth: mm(2), showing: mm(15), round: 'down' }),
    );
    expect(found.count).toBe(15);
    expect(found.spacing).toBe(mm(240 / 14));
  });
});
