import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm } from '../../src/length/index.ts';
import { clipLine, clipToPieces, holds, pointAlong } from '../../src/shape/index.ts';
import { at, ell, horseshoe, rectangle, star } from './shapes.ts';

const level = (y: number) => ({ through: at(0, y), angle: 0 });

describe('clipping a line to a shape', () => {
  test('nothing, one point, two points and points in a row have no inside', () => {
    expect(clipLine([], level(0))).toEqual([]);
    expect(clipLine([at(0, 0)], level(0))).toEqual([]);
    expect(clipLine([at(0, 0), at(10, 0)], level(0))).toEqual([]);
    expect(clipLine([at(0, 0), at(10, 0), at(20, 0)], level(0))).toEqual([]);
    expect(clipLine([at(0, 0), at(10, 10), at(20, 20)], level(5))).toEqual([]);
    expect(clipLine([at(5, 5), at(5, 5), at(5, 5), at(5, 5)], level(5))).toEqual([]);
  });

  test('a corner that is there twice changes nothing', () => {
    const doubled = rectangle(100, 50).flatMap((p) => [p, p]);
    expect(clipLine(doubled, level(20))).toEqual(clipLine(rectangle(100, 50), level(20)));
  });

  test('crosses a rectangle, at any height and not outside it', () => {
    expect(clipLine(rectangle(100, 50), level(20))).toEqual([{ from: 0, to: mm(100) }]);
    expect(clipLine(rectangle(100, 50), level(51))).toEqual([]);
  });

  test('along an edge is inside, on either side of the shape', () => {
    expect(clipLine(rectangle(100, 50), level(0))).toEqual([{ from: 0, to: mm(100) }]);
    expect(clipLine(rectangle(100, 50), level(50))).toEqual([{ from: 0, to: mm(100) }]);
  });

  test('a touched corner is not inside', () => {
    expect(clipLine([at(50, 0), at(100, 50), at(50, 100), at(0, 50)], level(0))).toEqual([]);
  });

  test('goes in and out of a hollow shape', () => {
    expect(clipToPieces(horseshoe, level(30)).map((p) => [p.from.x, p.to.x])).toEqual([
      [0, mm(30)],
      [mm(70), mm(100)],
    ]);
    expect(clipToPieces(horseshoe, level(60))).toHaveLength(1);
    expect(clipToPieces(ell, level(40)).map((p) => p.length)).toEqual([mm(100)]);
  });

  test('slanting lines give their slanted length', () => {
    const [piece] = clipToPieces(rectangle(30, 40), {
      through: at(0, 0),
      angle: (Math.atan2(40, 30) * 180) / Math.PI,
    });
    expect(piece?.length).toBe(mm(50));
  });

  test('agrees with asking at every step of the way whether the point is inside', () => {
    fc.assert(
      fc.property(
        star,
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: -80, max: 80 }),
        (shape, angle, off) => {
          const line = { through: at(200 + off, 200), angle: angle + 0.123 };
          const stretches = clipLine(shape, line);
          for (let t = -300.5; t < 300; t += 7) {
            const inside = stretches.some((s) => s.from < mm(t) && mm(t) < s.to);
            const near = stretches.some(
              (s) => Math.min(Math.abs(s.from - mm(t)), Math.abs(s.to - mm(t))) < 10,
            );
            if (!near) expect(inside).toBe(holds(shape, pointAlong(line, mm(t))));
          }
        },
      ),
    );
  });
});
