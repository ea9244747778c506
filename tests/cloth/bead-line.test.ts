import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beadLine } from '../../src/cloth/bead-line.ts';
import { mm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const asked = { length: mm(100), bead: mm(6), gap: mm(1), pairs: false };

describe('beads along a line', () => {
  test('fourteen of seven in ninety-nine, the rest spread', () => {
    const line = made(beadLine(asked));
    expect(line.count).toBe(14);
    expect(line.gap).toBe(1_066_666); // 16 mm over 15 gaps, rounded down
    expect(line.thread).toBe(mm(184));
    expect(line.needlefuls).toBe(1);
    expect(made(beadLine({ ...asked, length: mm(102), pairs: true })).count % 2).toBe(0);
  });

  test('no gap wanted and none left: bead to bead', () => {
    const line = made(beadLine({ ...asked, length: mm(60), gap: zero }));
    expect(line).toMatchObject({ count: 10, gap: zero });
    expect(line.at.slice(0, 3)).toEqual([zero, mm(6), mm(12)]);
  });

  test.each([
    [{ length: zero }, 'length'],
    [{ bead: zero }, 'bead'],
    [{ gap: mm(-1) }, 'gap'],
    [{ bead: mm(99.5) }, 'bead'],
    [{ length: mm(5) }, 'bead'],
    [{ length: mm(0.5) }, 'bead'],
    [{ bead: mm(60), pairs: true }, 'pairs'],
    [{ bead: mm(0.001), gap: zero }, 'bead'],
  ])('refuses %j', (change, field) => {
    expect(beadLine({ ...asked, ...change })).toMatchObject({ ok: false, error: { field } });
  });

  test('the gap is never less than wanted, evenly kept, and one more bead would not fit', () => {
    const input = fc.record({
      length: fc.integer({ min: 20, max: 2000 }),
      bead: fc.integer({ min: 1, max: 18 }),
      gap: fc.integer({ min: 0, max: 10 }),
      pairs: fc.boolean(),
    });
    fc.assert(
      fc.property(input, ({ length, bead, gap, pairs }) => {
        const found = beadLine({ length: mm(length), bead: mm(bead), gap: mm(gap), pairs });
        if (!found.ok) return;
        const { count, at } = found.value;
        expect(found.value.gap).toBeGreaterThanOrEqual(mm(gap) - 1);
        const more = count + (pairs ? 2 : 1);
        expect(more * bead + (more + 1) * gap).toBeGreaterThan(length);
        if (pairs) expect(count % 2).toBe(0);
        const last = at.at(-1)!;
        expect(Math.abs(mm(length) - last - mm(bead) - at[0]!)).toBeLessThanOrEqual(2);
      }),
    );
  });
});
