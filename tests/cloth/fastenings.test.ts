import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buttonholeLength } from '../../src/cloth/buttonhole.ts';
import { fastenings } from '../../src/cloth/fastenings.ts';
import { inches, mm, nm, subtract, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const front = {
  direction: 'vertical' as const,
  first: inches(1),
  last: inches(19),
  count: 7,
  hole: inches(3, 4),
  diameter: inches(5, 8),
  outer: inches(5, 8),
  inner: inches(1, 2),
};

describe('length of a buttonhole', () => {
  test('a domed button needs a longer hole than a flat one of the same diameter', () => {
    const flat = made(buttonholeLength({ rule: 'flat', diameter: inches(5, 8), thickness: inches(1, 16) }));
    const domed = made(buttonholeLength({ rule: 'tape', round: inches(13, 8) }));
    expect(domed.length).toBeGreaterThan(flat.length);
  });

  test.each([
    [{ rule: 'flat' as const, diameter: zero, thickness: zero }, 'diameter'],
    [{ rule: 'flat' as const, diameter: mm(10), thickness: mm(-1) }, 'thickness'],
    [{ rule: 'bulky' as const, diameter: mm(10), thickness: mm(21) }, 'thickness'],
    [{ rule: 'tape' as const, round: zero }, 'round'],
    [{ rule: 'ball' as const, diameter: mm(-3) }, 'diameter'],
  ])('refuses %j', (button, field) => {
    expect(buttonholeLength(button)).toMatchObject({ ok: false, error: { field } });
  });
});

describe('holes and buttons on a band', () => {
  test('a vertical hole lies on the centre line, the button an eighth below its top', () => {
    const { fastenings: all } = made(fastenings(front));
    expect(all[1]).toEqual({
      hole: { from: { along: inches(31, 8), across: 0 }, to: { along: inches(37, 8), across: 0 } },
      button: { along: inches(4), across: 0 },
    });
  });

  test('a horizontal hole begins an eighth past the centre line and runs inwards', () => {
    const { fastenings: all } = made(fastenings({ ...front, direction: 'horizontal', inner: inches(1) }));
    expect(all[0]?.hole).toEqual({
      from: { along: inches(1), across: inches(1, 8) },
      to: { along: inches(1), across: inches(-5, 8) },
    });
  });

  test.each([
    [{ diameter: zero }, 'diameter'],
    [{ hole: inches(1, 2) }, 'hole'],
    [{ direction: 'horizontal' as const }, 'inner'],
    [{ direction: 'horizontal' as const, inner: inches(1), outer: inches(1, 8) }, 'outer'],
    [{ inner: zero }, 'inner'],
    [{ count: 30 }, 'count'],
    [{ direction: 'horizontal' as const, inner: inches(1), count: 40 }, 'count'],
    [{ opening: inches(19) }, 'opening'],
    [{ first: inches(1, 16), opening: inches(30) }, 'opening'],
    [{ held: inches(30) }, 'held'],
  ])('refuses %j', (change, field) => {
    expect(fastenings({ ...front, ...change })).toMatchObject({ ok: false, error: { field } });
  });

  test('holes or buttons that just touch are refused', () => {
    const close = { ...front, first: inches(1), last: inches(7, 4), count: 2 };
    expect(fastenings(close)).toMatchObject({ ok: false, error: { field: 'count' } });
    expect(fastenings({ ...close, last: nm(inches(7, 4) + 1) })).toMatchObject({ ok: true });
  });

  test('advises where the lap is narrow for the button', () => {
    expect(made(fastenings(front)).advice).toEqual([]);
    expect(made(fastenings({ ...front, outer: inches(1, 2) })).advice).toHaveLength(1);
  });

  test('no two holes touch, and every hole is as long as asked', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 40 }),
        fc.integer({ min: 5, max: 30 }),
        fc.boolean(),
        (count, d, level) => {
          const diameter = mm(d);
          const hole = mm(d + 3);
          const direction = level ? ('horizontal' as const) : ('vertical' as const);
          const result = fastenings({
            ...front,
            direction,
            count,
            diameter,
            hole,
            inner: mm(40),
            outer: mm(20),
          });
          if (!result.ok) {
            expect(inches(18) / (count - 1)).toBeLessThanOrEqual(hole);
            return;
          }
          const all = result.value.fastenings;
          all.forEach(({ hole: h }, i) => {
            expect(
              Math.abs(subtract(h.to.along, h.from.along)) + Math.abs(subtract(h.to.across, h.from.across)),
            ).toBe(hole);
            const next = all[i + 1];
            if (next) expect(next.hole.from.along).toBeGreaterThan(nm(h.to.along));
          });
        },
      ),
    );
  });
});
