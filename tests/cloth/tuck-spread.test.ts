import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spreadTucks } from '../../src/cloth/tuck-spread.ts';
import { marksOf } from '../../src/cloth/tucks.ts';
import { mm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const asked = { over: mm(100), depth: mm(10), spacing: mm(30), pressed: 'away' as const };

describe('tucks in the middle of a stretch', () => {
  test('as many as it holds, or as many as asked', () => {
    expect(made(spreadTucks(asked)).map(({ at }) => at)).toEqual([mm(0), mm(30), mm(60), mm(90)]);
    expect(made(spreadTucks({ ...asked, count: 2 })).map(({ at }) => at)).toEqual([mm(30), mm(60)]);
    const toward = made(spreadTucks({ ...asked, count: 2, pressed: 'toward' }));
    expect(toward.map(({ at }) => at)).toEqual([mm(40), mm(70)]);
  });

  test.each([
    [{ depth: zero }, 'depth'],
    [{ depth: mm(31) }, 'depth'],
    [{ depth: mm(101), spacing: mm(200) }, 'depth'],
    [{ spacing: zero }, 'spacing'],
    [{ spacing: mm(0.02), depth: mm(0.01) }, 'spacing'],
    [{ count: 0 }, 'count'],
    [{ count: 1.5 }, 'count'],
    [{ count: 5 }, 'count'],
  ])('refuses %j', (change, field) => {
    expect(spreadTucks({ ...asked, ...change })).toMatchObject({ ok: false, error: { field } });
  });

  test('stitching lines and folds lie on the stretch, evenly from both ends', () => {
    const input = fc.record({
      over: fc.integer({ min: 20, max: 990 }),
      depth: fc.integer({ min: 1, max: 20 }),
      more: fc.integer({ min: 0, max: 50 }),
      pressed: fc.constantFrom('away' as const, 'toward' as const),
    });
    fc.assert(
      fc.property(input, ({ over, depth, more, pressed }) => {
        const tucks = made(
          spreadTucks({ over: mm(over), depth: mm(depth), spacing: mm(depth + more), pressed }),
        );
        const marks = made(marksOf(tucks, pressed));
        const places = marks.flatMap((m) => [m.finished, m.foldFinished]);
        const [low, high] = [Math.min(...places), Math.max(...places)];
        expect(low).toBeGreaterThanOrEqual(0);
        expect(Math.abs(low - (mm(over) - high))).toBeLessThanOrEqual(2);
        expect(low * 2).toBeLessThan(mm(depth + more));
      }),
    );
  });
});
