import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm } from '../../src/length/index.ts';
import { flattenOutline, holds, insetPolygon, signedArea } from '../../src/shape/index.ts';
import { at, convex, ell, horseshoe, rectangle, star, toNearestSide } from './shapes.ts';

const inset = (polygon: Parameters<typeof insetPolygon>[0], by: number) => {
  const result = insetPolygon(polygon, mm(by));
  if (!result.ok) throw new Error(result.error);
  return result.value;
};

describe('moving the sides of a shape inwards', () => {
  test('what has no area is refused', () => {
    for (const shape of [
      [],
      [at(0, 0)],
      [at(0, 0), at(1, 0)],
      [at(0, 0), at(1, 1), at(2, 2)],
      [at(1, 1), at(1, 1), at(1, 1)],
    ]) {
      expect(insetPolygon(shape, mm(1))).toMatchObject({
        ok: false,
        error: expect.stringContaining('no area'),
      });
    }
    expect(insetPolygon(rectangle(10, 10), mm(-1))).toMatchObject({ ok: false });
  });

  test('a rectangle, drawn either way round', () => {
    const wanted = [at(10, 10), at(90, 10), at(90, 40), at(10, 40)];
    expect(inset(rectangle(100, 50), 10)).toEqual(wanted);
    expect(inset(rectangle(100, 50).reverse(), 10).toReversed()).toEqual(wanted);
    expect(inset(rectangle(100, 50), 0)).toEqual(rectangle(100, 50));
  });

  test('a hollow corner moves away from the hollow', () => {
    expect(inset(ell, 10)).toContainEqual(at(30, 30));
    expect(Math.abs(signedArea(inset(ell, 10)))).toBeCloseTo(80 * 20 + 20 * 60, 6);
  });

  test('a corner in the middle of a side and a doubled corner change nothing', () => {
    const more = [at(0, 0), at(50, 0), at(100, 0), at(100, 0), at(100, 50), at(0, 50)];
    expect(inset(more, 10)).toEqual([at(10, 10), at(50, 10), at(90, 10), at(90, 40), at(10, 40)]);
  });

  test('too narrow, or falling in two, is refused', () => {
    expect(insetPolygon(rectangle(100, 50), mm(25))).toMatchObject({
      error: expect.stringContaining('too narrow'),
    });
    expect(insetPolygon(rectangle(100, 50), mm(60))).toMatchObject({
      error: expect.stringContaining('too narrow'),
    });
    const waisted = [at(0, 0), at(50, 20), at(100, 0), at(100, 50), at(50, 30), at(0, 50)];
    expect(insetPolygon(waisted, mm(8))).toMatchObject({
      ok: false,
      error: expect.stringContaining('smaller'),
    });
  });

  test('arms too narrow for the distance go, and the rest stays', () => {
    const left = inset(horseshoe, 16);
    expect(left).toHaveLength(4);
    expect(left).toEqual(expect.arrayContaining([at(16, 76), at(84, 76), at(84, 84), at(16, 84)]));
  });

  test('small chords of a curve beside a sharp corner close up', () => {
    const drop = flattenOutline({
      start: at(0, 0),
      edges: [
        {
          name: 'round',
          segments: [{ kind: 'curve', first: at(60, 20), second: at(60, 80), to: at(0, 100) }],
        },
        { name: 'straight', segments: [{ kind: 'line', to: at(0, 0) }] },
      ],
    });
    const moved = inset(drop, 8);
    expect(moved.length).toBeLessThan(drop.length);
    for (const p of moved) {
      expect(holds(drop, p)).toBe(true);
      expect(toNearestSide(drop, p)).toBeGreaterThan(mm(8) - 10);
    }
  });

  test('every corner of the result is inside and as far from every side as asked', () => {
    fc.assert(
      fc.property(fc.oneof(convex, star), fc.integer({ min: 1, max: 25 }), (shape, by) => {
        const result = insetPolygon(shape, mm(by));
        if (!result.ok) return;
        for (const p of result.value) {
          expect(holds(shape, p)).toBe(true);
          expect(toNearestSide(shape, p)).toBeGreaterThanOrEqual(mm(by) - 10);
        }
      }),
    );
  });

  test('a convex shape is refused only when no place in it is far enough from all sides', () => {
    fc.assert(
      fc.property(convex, fc.integer({ min: 1, max: 60 }), (shape, by) => {
        fc.pre(Math.abs(signedArea(shape)) > 1);
        if (insetPolygon(shape, mm(by)).ok) return;
        for (let x = 100; x <= 300; x += 4) {
          for (let y = 100; y <= 300; y += 4) {
            const p = at(x, y);
            if (holds(shape, p)) expect(toNearestSide(shape, p)).toBeLessThanOrEqual(mm(by) + 10);
          }
        }
      }),
      { numRuns: 50 },
    );
  });

  test('twice by a little is once by both', () => {
    fc.assert(
      fc.property(convex, fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }), (shape, a, b) => {
        const [once, first] = [insetPolygon(shape, mm(a + b)), insetPolygon(shape, mm(a))];
        fc.pre(once.ok && first.ok && Math.abs(signedArea(once.value)) > 1);
        if (!once.ok || !first.ok) return;
        const second = insetPolygon(first.value, mm(b));
        expect(second.ok && Math.abs(signedArea(second.value))).toBeCloseTo(
          Math.abs(signedArea(once.value)),
          1,
        );
      }),
    );
  });
});
