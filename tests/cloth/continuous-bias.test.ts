import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { continuousBias, continuousSquare } from '../../src/cloth/continuous-bias.ts';
import { mm, nm, toMm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const square = { across: mm(500), along: mm(500), strip: mm(50), join: mm(6) };

describe('a continuous bias strip', () => {
  test('from a square', () => {
    const strip = made(continuousBias(square));
    expect(strip.rounds).toBe(6);
    expect(toMm(strip.total)).toBeCloseTo(6 * 488 * Math.SQRT2, 3);
    expect(strip.triangle).toBe(mm(500));
    expect(strip.joins).toBe(6 + 5);
  });

  test('the strip, its trimmed end and the seams make up the whole cloth', () => {
    const side = fc.integer({ min: 200, max: 1500 });
    fc.assert(
      fc.property(
        side,
        side,
        fc.integer({ min: 10, max: 60 }),
        fc.integer({ min: 0, max: 15 }),
        (w, h, s, j) => {
          const [short, long] = [Math.min(w, h), Math.max(w, h)];
          const { total, trim, step } = made(
            continuousBias({ across: mm(w), along: mm(h), strip: mm(s), join: mm(j) }),
          );
          const used = toMm(total) * s + toMm(trim) * (short - 2 * j);
          expect(used / ((short - 2 * j) * (long - 2 * j))).toBeCloseTo(1, 5);
          expect(trim).toBeLessThan(step);
        },
      ),
    );
  });

  test('a square found for a length gives it, and a smaller one does not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 500, max: 20_000 }),
        fc.integer({ min: 10, max: 80 }),
        fc.integer({ min: 0, max: 15 }),
        (n, s, j) => {
          const { side, total } = made(continuousSquare({ strip: mm(s), join: mm(j), needed: mm(n) }));
          expect(total).toBeGreaterThanOrEqual(mm(n));
          const less = nm(side - mm(0.1));
          const smaller = continuousBias({ across: less, along: less, strip: mm(s), join: mm(j) });
          expect(smaller.ok && smaller.value.total >= mm(n)).toBe(false);
        },
      ),
    );
  });

  test.each([
    [{ across: zero }, 'across'],
    [{ along: zero }, 'along'],
    [{ strip: zero }, 'strip'],
    [{ join: mm(-1) }, 'join'],
    [{ join: mm(250) }, 'join'],
    [{ strip: mm(180) }, 'strip'],
  ])('refuses %j', (change, field) => {
    expect(continuousBias({ ...square, ...change })).toMatchObject({ ok: false, error: { field } });
  });

  test('refuses a square for no strip', () => {
    expect(continuousSquare({ strip: mm(40), join: mm(6), needed: zero })).toMatchObject({
      ok: false,
      error: { field: 'needed' },
    });
  });
});
