import { areaD, FillRule, intersectD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lattice } from '../../src/cloth/lattice.ts';
import { mm, nm, toMm, zero } from '../../src/length/index.ts';
import { clipLine, directionOf, type Polygon } from '../../src/shape/index.ts';
import { at, ell, horseshoe, star } from '../shape/shapes.ts';

const THIN = 0.01;

/**
 * How much of a line lies in the shape, in millimetres: the library cuts a strip a hundredth of a millimetre wide along the line, and
 * its area is divided by its width. Its open lines are not asked, for it loses some of them.
 */
function theirs(polygon: Polygon, x: number, y: number, angle: number): number {
  const { x: dx, y: dy } = directionOf(angle);
  const corner = (along: number, off: number) => ({
    x: x + dx * along - dy * off * (THIN / 2),
    y: y + dy * along + dx * off * (THIN / 2),
  });
  const strip = [corner(-500, -1), corner(500, -1), corner(500, 1), corner(-500, 1)];
  const shape = polygon.map((p) => ({ x: toMm(p.x), y: toMm(p.y) }));
  const cut = intersectD([strip], [shape], FillRule.NonZero, 6);
  return Math.abs(cut.reduce((sum, path) => sum + areaD(path), 0)) / THIN;
}

/** Is no corner so near the line that the strip reaches it? Then its mean length is that of the line. */
function clear(polygon: Polygon, x: number, y: number, angle: number): boolean {
  const normal = directionOf(angle + 90);
  return polygon.every((p) => Math.abs((toMm(p.x) - x) * normal.x + (toMm(p.y) - y) * normal.y) > THIN);
}

const shapes: readonly (readonly [name: string, polygon: Polygon])[] = [
  ['an L', ell],
  ['a U', horseshoe],
];

// Reference library: clipper2-ts, a general library that clips lines and polygons.
describe('lines cut to an outline, against a clipping library', () => {
  const ours = (polygon: Polygon, x: number, y: number, angle: number): number =>
    toMm(nm(clipLine(polygon, { through: at(x, y), angle }).reduce((sum, s) => sum + s.to - s.from, 0)));
  const anywhere = fc.tuple(
    fc.double({ min: 1, max: 99, noNaN: true }),
    fc.double({ min: 1, max: 99, noNaN: true }),
    fc.double({ min: 1, max: 179, noNaN: true }),
  );

  test.each(shapes)('%s', (_, polygon) => {
    fc.assert(
      fc.property(anywhere, ([x, y, angle]) => {
        fc.pre(clear(polygon, x, y, angle));
        expect(Math.abs(ours(polygon, x, y, angle) - theirs(polygon, x, y, angle))).toBeLessThan(0.1);
      }),
    );
  });

  test('any star', () => {
    fc.assert(
      fc.property(star, anywhere, (polygon, [a, b, angle]) => {
        const [x, y] = [a + 150, b + 150];
        fc.pre(clear(polygon, x, y, angle));
        expect(Math.abs(ours(polygon, x, y, angle) - theirs(polygon, x, y, angle))).toBeLessThan(0.1);
      }),
    );
  });

  test('every line of a lattice over an L', () => {
    const families = [
      { angle: 33, spacing: mm(7), through: at(11, 3) },
      { angle: 121, spacing: mm(9), through: at(2, 17) },
    ] as const;
    const result = lattice({ outline: ell, clear: zero, families });
    if (!result.ok) throw new Error(result.error.wrong);
    for (const family of [0, 1] as const) {
      const { angle, spacing, through } = families[family];
      const normal = directionOf(angle + 90);
      let sum = 0;
      for (let k = -40; k <= 40; k++) {
        const shift = k * toMm(spacing);
        sum += theirs(ell, toMm(through.x) + shift * normal.x, toMm(through.y) + shift * normal.y, angle);
      }
      const own = result.value.lines.filter((line) => line.family === family);
      expect(Math.abs(own.reduce((all, line) => all + toMm(line.length), 0) - sum)).toBeLessThan(0.2);
    }
  });
});
