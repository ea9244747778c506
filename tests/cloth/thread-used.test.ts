import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { STITCHES, type StitchType } from '../../src/cloth/stitches.ts';
import { threadUsed } from '../../src/cloth/thread-used.ts';
import { mm, toMm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const side = { name: 'Side', type: 301 as const, length: mm(400), count: 2 };

describe('thread for a list of seams', () => {
  test('ratio, tails and waste', () => {
    const { lines, sewn, needed, spools } = made(threadUsed({ seams: [side], spool: mm(1000) }));
    expect(toMm(lines[0]!.thread)).toBe(2 * (400 * 2.5 + 60));
    expect(toMm(sewn)).toBe(2120);
    expect(toMm(needed)).toBeCloseTo(2438, 5);
    expect(spools).toBe(3);
  });

  test('a list takes as much as its seams one by one', () => {
    const types = Object.keys(STITCHES).map(Number) as StitchType[];
    const seam = fc.record({
      name: fc.string(),
      type: fc.constantFrom(...types),
      length: fc.integer({ min: 1, max: 5000 }).map(mm),
      count: fc.integer({ min: 1, max: 20 }),
    });
    fc.assert(
      fc.property(fc.array(seam, { minLength: 1, maxLength: 20 }), (seams) => {
        const single = seams.map((one) => made(threadUsed({ seams: [one] })).sewn as number);
        const sum = single.reduce((a, b) => a + b, 0);
        expect(made(threadUsed({ seams })).sewn).toBe(sum);
      }),
    );
  });

  test.each([
    [{ seams: [] }, 'seams'],
    [{ seams: [{ ...side, length: zero }] }, 'seams'],
    [{ seams: [{ ...side, count: 1.5 }] }, 'seams'],
    [{ waste: 1.1 }, 'waste'],
    [{ waste: Number.NaN }, 'waste'],
    [{ tail: mm(-1) }, 'tail'],
    [{ spool: zero }, 'spool'],
  ])('refuses %j', (change, field) => {
    expect(threadUsed({ seams: [side], ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
