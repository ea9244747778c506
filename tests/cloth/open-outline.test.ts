import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acrossOf, finishedPoint, openMap, type TuckFamily } from '../../src/cloth/fold-map.ts';
import { openOutline } from '../../src/cloth/open-outline.ts';
import { mm, nm } from '../../src/length/index.ts';
import { holds, type Point, type Polygon, signedArea } from '../../src/shape/index.ts';
import { at, convex, rectangle, toNearestSide } from '../shape/shapes.ts';
import { anyFamily } from './families.ts';

const opened = (polygon: Polygon, families: readonly TuckFamily[]) => {
  const result = openOutline(polygon, families);
  if (!result.ok) throw new Error(result.error.wrong);
  return result.value;
};
const one: TuckFamily = {
  datum: at(0, 0),
  across: 0,
  tucks: [{ at: mm(50), depth: mm(10) }],
  pressed: 'away',
};
const wedge = [at(0, 0), at(100, 50), at(100, 100), at(0, 100)];

describe('opening a finished outline', () => {
  test('a rectangle grows by the take-up', () => {
    const flat = opened(rectangle(100, 40), [one]);
    expect(signedArea(flat)).toBe(120 * 40);
    expect(flat).toContainEqual(at(120, 0));
  });

  test('a slanted edge gets the point that lies inside the tuck', () => {
    const flat = opened(wedge, [one]);
    expect(flat.slice(0, 4)).toEqual([at(0, 0), at(50, 25), at(60, 30), at(70, 25)]);
    expect(flat).toContainEqual(at(120, 50));
    const toward = opened(wedge, [{ ...one, pressed: 'toward' }]);
    for (const p of [at(40, 20), at(50, 25), at(60, 20), at(70, 25)]) expect(toward).toContainEqual(p);
  });

  test('a corner that ends up under a tuck is cut into all its layers', () => {
    const kinked = [at(0, 0), at(55, 20), at(100, 0), at(100, 60), at(0, 60)];
    const flat = opened(kinked, [one]);
    for (const p of [at(55, 20), at(65, 20), at(75, 20)]) expect(flat).toContainEqual(p);
  });

  test('an edge along a stitching line or just at a fold opens too', () => {
    const atFold = opened(rectangle(60, 40), [one]);
    expect(signedArea(atFold)).toBe(80 * 40);
    const step = [at(0, 0), at(50, 0), at(50, 20), at(100, 20), at(100, 40), at(0, 40)];
    expect(signedArea(opened(step, [one]))).toBe(50 * 40 + 70 * 20);
  });

  test('tucks outside the piece leave it alone', () => {
    expect(opened(rectangle(30, 40), [one])).toEqual(rectangle(30, 40));
    expect(opened(rectangle(50, 40), [one])).toEqual(rectangle(50, 40));
  });

  test('an edge that cuts off a fold is refused by the number of the tuck', () => {
    expect(openOutline(rectangle(55, 40), [one])).toMatchObject({
      ok: false,
      error: { field: 'tucks', wrong: expect.stringContaining('tuck 1') },
    });
    expect(openOutline(rectangle(45, 40), [{ ...one, pressed: 'toward' }])).toMatchObject({ ok: false });
    const two = {
      ...one,
      tucks: [
        { at: mm(20), depth: mm(5) },
        { at: mm(50), depth: mm(10) },
      ],
    };
    expect(openOutline(rectangle(55, 40), [two])).toMatchObject({
      error: { wrong: expect.stringContaining('tuck 2') },
    });
  });

  test('nothing, a point and a line are refused', () => {
    for (const shape of [[], [at(0, 0)], [at(0, 0), at(9, 0)]])
      expect(openOutline(shape, [one])).toMatchObject({ ok: false });
  });

  test('crossed tucks of a rectangle use cloth both ways', () => {
    const down: TuckFamily = {
      ...one,
      across: 90,
      tucks: [
        { at: mm(10), depth: mm(5) },
        { at: mm(25), depth: mm(5) },
      ],
    };
    expect(Math.abs(signedArea(opened(rectangle(100, 40), [one, down])))).toBe(120 * 60);
  });

  const shape = fc
    .array(fc.integer({ min: 350, max: 900 }), { minLength: 3, maxLength: 12 })
    .map((radii) =>
      radii.map((r, i) =>
        at(
          r * Math.cos((2 * Math.PI * i) / radii.length + 0.01),
          r * Math.sin((2 * Math.PI * i) / radii.length + 0.01),
        ),
      ),
    );

  test('what is cut folds to the finished shape: every corner lies on its edge, and inside stays inside', () => {
    let worked = 0;
    fc.assert(
      fc.property(shape, anyFamily, (polygon, family) => {
        const result = openOutline(polygon, [family]);
        const map = openMap(family);
        if (!result.ok || !map.ok) return;
        worked++;
        const folded = (p: Point) => finishedPoint(map.value, p);
        for (const p of result.value) expect(toNearestSide(polygon, folded(p))).toBeLessThan(20);
        for (let x = -950; x < 1400; x += 95) {
          for (let y = -950; y < 1400; y += 95) {
            const p = at(x + 0.31, y + 0.17);
            if (toNearestSide(polygon, folded(p)) > 100)
              expect(holds(result.value, p)).toBe(holds(polygon, folded(p)));
          }
        }
      }),
      { numRuns: 60 },
    );
    expect(worked).toBeGreaterThan(10);
  });

  /** The part of a convex shape between two distances across the tucks. */
  const between = (polygon: Polygon, family: TuckFamily, low: number, high: number): Point[] => {
    let kept = [...polygon];
    for (const [limit, keep] of [
      [low, 1],
      [high, -1],
    ] as const) {
      const depth = (p: Point) => (acrossOf(family, p) - limit) * keep;
      kept = kept.flatMap((a, i) => {
        const b = kept[(i + 1) % kept.length]!;
        const [da, db] = [depth(a), depth(b)];
        const t = da / (da - db);
        const cross = () => ({ x: nm(a.x + (b.x - a.x) * t), y: nm(a.y + (b.y - a.y) * t) });
        return [...(da >= 0 ? [a] : []), ...(da * db < 0 ? [cross()] : [])];
      });
    }
    return kept;
  };

  test('a convex piece that holds its tucks opens, and grows by twice what each tuck covers', () => {
    let worked = 0;
    fc.assert(
      fc.property(convex, anyFamily, (polygon, family) => {
        fc.pre(Math.abs(signedArea(polygon)) > 100);
        const shifted = { ...family, datum: at(100, 150) };
        const us = polygon.map((p) => acrossOf(shifted, p));
        const [low, high] = [Math.min(...us), Math.max(...us)];
        const strips = shifted.tucks.map(({ at: s, depth }) =>
          shifted.pressed === 'away' ? [s, s + depth] : [s - depth, s],
        ) as [number, number][];
        fc.pre(strips.every(([a, b]) => (a > low + 10 && b < high - 10) || b < low - 10 || a > high + 10));
        const covered = strips.map(([a, b]) => Math.abs(signedArea(between(polygon, shifted, a, b))));
        const wanted = Math.abs(signedArea(polygon)) + 2 * covered.reduce((sum, a) => sum + a, 0);
        expect(Math.abs(signedArea(opened(polygon, [shifted]))) / wanted).toBeCloseTo(1, 6);
        if (covered.some((a) => a > 0)) worked++;
      }),
    );
    expect(worked).toBeGreaterThan(10);
  });
});
