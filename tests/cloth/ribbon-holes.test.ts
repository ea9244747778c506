import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ribbonHoles } from '../../src/cloth/ribbon-holes.ts';
import { mm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const cuff = {
  round: mm(240),
  apart: mm(20),
  ribbon: mm(8),
  free: mm(8),
  levels: [mm(20), mm(45)],
  tie: mm(250),
};

describe('ribbon holes round a tube', () => {
  test('a cuff with two rows', () => {
    const made12 = made(ribbonHoles(cuff));
    expect(made12).toMatchObject({ count: 12, apart: mm(20), hole: mm(10), tieAt: mm(120), overSeam: true });
    expect(made12.at[0]).toBe(mm(10));
    expect(made12.rows).toEqual([
      { from: mm(15), to: mm(25) },
      { from: mm(40), to: mm(50) },
    ]);
    expect(made12.ribbonLength).toBe(mm(740));
  });

  test('always even, the seam and the tie always clear', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 900 }),
        fc.integer({ min: 5, max: 60 }),
        fc.integer({ min: 0, max: 14 }),
        (round, apart, free) => {
          const row = made(ribbonHoles({ ...cuff, round: mm(round), apart: mm(apart), free: mm(free) }));
          expect(row.count % 2).toBe(0);
          expect(row.at).toHaveLength(row.count);
          expect(row.at[0]).toBeGreaterThanOrEqual(mm(free));
          expect(mm(round) - row.at.at(-1)!).toBeGreaterThanOrEqual(mm(free));
          expect(row.at[row.count / 2 - 1]).toBeLessThan(row.tieAt);
          expect(row.at[row.count / 2]).toBeGreaterThan(row.tieAt);
        },
      ),
    );
  });

  test.each([
    [{ round: zero }, 'round'],
    [{ apart: zero }, 'apart'],
    [{ apart: mm(1), free: zero, round: mm(2000) }, 'apart'],
    [{ ribbon: zero }, 'ribbon'],
    [{ free: mm(-1) }, 'free'],
    [{ free: mm(61) }, 'free'],
    [{ tie: mm(-1) }, 'tie'],
    [{ levels: [] }, 'levels'],
    [{ levels: [mm(5)] }, 'levels'],
    [{ levels: [mm(20), mm(30)] }, 'levels'],
  ])('refuses %j', (change, field) => {
    expect(ribbonHoles({ ...cuff, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
