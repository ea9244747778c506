import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spaced } from '../../src/cloth/spacing.ts';
import { inches, mm, nm, subtract, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const input = fc
  .record({
    first: fc.integer({ min: 0, max: 100_000_000 }),
    reach: fc.integer({ min: 1000, max: 900_000_000 }),
    count: fc.integer({ min: 3, max: 40 }),
    part: fc.integer({ min: 1, max: 999 }),
  })
  .map(({ first, reach, count, part }) => ({
    first: nm(first),
    last: nm(first + reach),
    count,
    held: nm(first + (reach * part) / 1000),
  }));

describe('even spacing', () => {
  test('seven over eighteen inches stand three inches apart', () => {
    const { positions, above, below } = made(spaced({ first: inches(1), last: inches(19), count: 7 }));
    expect(positions).toEqual([1, 4, 7, 10, 13, 16, 19].map((n) => inches(n)));
    expect([above, below]).toEqual([inches(3), inches(3)]);
  });

  test('one held at eight inches: even above it, even below it', () => {
    const { positions, above, below, held } = made(
      spaced({ first: inches(1), last: inches(19), count: 7, held: inches(8) }),
    );
    expect(held).toBe(2);
    expect([above, below]).toEqual([inches(7, 2), inches(11, 4)]);
    expect(positions.map((p) => p / inches(1))).toEqual([1, 4.5, 8, 10.75, 13.5, 16.25, 19]);
  });

  test('a held level at the end is plain even spacing; a single one sits at its level', () => {
    expect(made(spaced({ first: zero, last: mm(100), count: 5, held: mm(100) }))).toMatchObject({
      held: 4,
      above: mm(25),
    });
    expect(made(spaced({ first: zero, last: mm(100), count: 1, held: mm(30) })).positions).toEqual([mm(30)]);
    expect(made(spaced({ first: mm(5), last: mm(5), count: 1 })).positions).toEqual([mm(5)]);
  });

  test.each([
    [{ count: 0 }, 'count'],
    [{ count: 2.5 }, 'count'],
    [{ last: zero }, 'last'],
    [{ held: mm(-1) }, 'held'],
    [{ held: mm(101) }, 'held'],
    [{ count: 2, held: mm(50) }, 'count'],
  ])('refuses %j', (change, field) => {
    expect(spaced({ first: zero, last: mm(100), count: 5, ...change })).toMatchObject({
      ok: false,
      error: { field },
    });
  });

  test('rounding never adds up: every place is within half a nanometre of the true one', () => {
    fc.assert(
      fc.property(input, ({ first, last, count }) => {
        made(spaced({ first, last, count })).positions.forEach((p, i) => {
          expect(Math.abs(p - (first + ((last - first) * i) / (count - 1)))).toBeLessThanOrEqual(0.51);
        });
      }),
    );
  });

  test('the held one is exactly at its level, and no other choice brings the two spacings closer', () => {
    fc.assert(
      fc.property(input, ({ first, last, count, held }) => {
        fc.pre(held > first && held < last);
        const result = made(spaced({ first, last, count, held }));
        expect(result.positions[result.held!]).toBe(held);
        expect([result.positions[0], result.positions.at(-1)]).toEqual([first, last]);
        expect(result.positions).toHaveLength(count);
        const apart = Math.abs(subtract(result.above, result.below));
        for (let k = 1; k < count - 1; k++) {
          const other = Math.abs((held - first) / k - (last - held) / (count - 1 - k));
          expect(apart).toBeLessThanOrEqual(other + 2);
        }
      }),
    );
  });
});
