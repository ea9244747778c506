import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, nm, toMm, zero } from '../../src/length/index.ts';
import {
  distance,
  flattenOutline,
  holds,
  type Outline,
  type Point,
  type Polygon,
  signedArea,
} from '../../src/shape/index.ts';
import { addAllowance } from '../../src/shape/offset.ts';
import { sidesCross } from '../../src/shape/offset-crossing.ts';
import { at, convex, ell, horseshoe, rectangle, star, toNearestSide } from './shapes.ts';

/** An outline with one edge a side, called 0, 1, 2 and so on. */
const edged = (corners: readonly Point[]): Outline => ({
  start: corners[0]!,
  edges: corners.map((_, i) => ({
    name: String(i),
    segments: [{ kind: 'line', to: corners[(i + 1) % corners.length]! }],
  })),
});
const cut = (outline: Outline, by: Record<string, number>, usual = 0) => {
  const result = addAllowance(
    outline,
    new Map(Object.entries(by).map(([name, value]) => [name, mm(value)])),
    mm(usual),
  );
  if (!result.ok) throw new Error(result.error);
  return result.value;
};
const path = (polygon: Polygon) => polygon.map(({ x, y }) => ({ x: toMm(x), y: toMm(y) }));
const area = (polygon: Polygon) => Math.abs(signedArea(polygon));

describe('seam allowance', () => {
  test('a rectangle with another allowance on every edge, drawn either way round', () => {
    const wanted = [at(-4, -1), at(102, -1), at(102, 53), at(-4, 53)];
    expect(cut(edged(rectangle(100, 50)), { 0: 1, 1: 2, 2: 3, 3: 4 })).toEqual(wanted);
    const back = cut(edged(rectangle(100, 50).reverse()), { 0: 3, 1: 2, 2: 1, 3: 4 });
    expect(back.toReversed()).toEqual(wanted);
    expect(cut(edged(rectangle(100, 50)), {})).toEqual(rectangle(100, 50));
  });

  test('a hollow corner is mitred into the hollow', () => {
    expect(cut(edged(ell), {}, 10)).toContainEqual(at(50, 50));
  });

  test('edges in one line with different allowances step', () => {
    const line = [at(0, 0), at(50, 0), at(100, 0), at(100, 50), at(0, 50)];
    const result = cut(edged(line), { 0: 5, 1: 15 });
    expect(result).toContainEqual(at(50, -5));
    expect(result).toContainEqual(at(50, -15));
    expect(area(result)).toBeCloseTo(5000 + 50 * 5 + 50 * 15, 6);
  });

  test('a sharp point is cut off', () => {
    const needle = [at(0, 0), at(200, 10), at(0, 20)];
    const right = Math.max(...cut(edged(needle), {}, 10).map((p) => toMm(p.x)));
    expect(right).toBeGreaterThan(209);
    expect(right).toBeLessThan(212);
  });

  test('a hollow narrower than its allowances, no area, and below zero are refused', () => {
    expect(addAllowance(edged(horseshoe), new Map(), mm(21))).toMatchObject({
      error: expect.stringContaining('hollow'),
    });
    expect(addAllowance(edged(horseshoe), new Map(), mm(19)).ok).toBe(true);
    expect(addAllowance(edged([at(0, 0), at(9, 9)]), new Map(), mm(1))).toMatchObject({ ok: false });
    expect(addAllowance(edged(ell), new Map([['0', mm(-1)]]), zero)).toMatchObject({ ok: false });
  });

  test('chords of a hollow curve close in, and every place is as far out as asked', () => {
    const neck: Outline = {
      start: at(0, 0),
      edges: [
        {
          name: 'neck',
          segments: [{ kind: 'curve', first: at(10, 60), second: at(90, 60), to: at(100, 0) }],
        },
        {
          name: 'rest',
          segments: [at(150, 0), at(150, 150), at(-50, 150), at(-50, 0), at(0, 0)].map((to) => ({
            kind: 'line' as const,
            to,
          })),
        },
      ],
    };
    const line = cut(neck, {}, 15);
    for (const p of line) expect(toNearestSide(flattenOutline(neck), p)).toBeGreaterThanOrEqual(mm(15) - 10);
    expect(sidesCross(line)).toBe(false);
  });

  // clipper2-ts, a general polygon library: mitred offset of the same corners. Its limit of mitres is far off here.
  test('agrees with a polygon library where every mitre is short', () => {
    let compared = 0;
    fc.assert(
      fc.property(fc.oneof(convex, star), fc.integer({ min: 1, max: 20 }), (shape, by) => {
        const result = addAllowance(edged(shape), new Map(), mm(by));
        if (!result.ok) return;
        const sharp = shape.some((b, i) => {
          const [a, c] = [shape.at(i - 1)!, shape[(i + 1) % shape.length]!];
          const turn = Math.atan2(b.y - a.y, b.x - a.x) - Math.atan2(c.y - b.y, c.x - b.x);
          return Math.cos(turn) < -0.45;
        });
        if (sharp) return;
        compared++;
        const [theirs = []] = inflatePathsD([path(shape)], by, JoinType.Miter, EndType.Polygon, 10, 4);
        const there = theirs.map(({ x, y }) => at(x, y));
        for (const p of there) expect(toMm(nm(toNearestSide(result.value, p)))).toBeLessThan(0.01);
        for (const p of result.value) expect(toMm(nm(toNearestSide(there, p)))).toBeLessThan(0.01);
        expect(Math.abs(area(there) - area(result.value))).toBeLessThan(0.5);
      }),
    );
    expect(compared).toBeGreaterThan(10);
  });

  test('holds the whole piece', () => {
    fc.assert(
      fc.property(
        convex,
        fc.array(fc.integer({ min: 5, max: 20 }), { minLength: 20, maxLength: 20 }),
        (shape, by) => {
          const sides = shape.map((p, i) => distance(p, shape[(i + 1) % shape.length]!));
          fc.pre(area(shape) > 1000 && sides.every((side) => side > mm(60)));
          const result = cut(edged(shape), Object.fromEntries(by.entries()));
          for (const p of shape) expect(holds(result, p)).toBe(true);
        },
      ),
    );
  });
});
