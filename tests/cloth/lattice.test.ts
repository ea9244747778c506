import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crossingPlaces, diamonds, type LatticeMade, lattice } from '../../src/cloth/lattice.ts';
import { add, mm, zero } from '../../src/length/index.ts';
import type { Point } from '../../src/shape/index.ts';
import { at, horseshoe, rectangle, star, toNearestSide } from '../shape/shapes.ts';
import { made } from './good.ts';

const grid = (spacing: number, through: Point = at(0, 0)) =>
  [
    { angle: 0, spacing: mm(spacing), through },
    { angle: 90, spacing: mm(spacing), through },
  ] as const;

/** Every pair of lines, one of each family, tried against each other. */
function byPairs({ lines }: LatticeMade): { sure: number; near: number } {
  let [sure, near] = [0, 0];
  for (const p of lines.filter((l) => l.family === 0)) {
    for (const q of lines.filter((l) => l.family === 1)) {
      const [ax, ay] = [p.to.x - p.from.x, p.to.y - p.from.y];
      const [bx, by] = [q.to.x - q.from.x, q.to.y - q.from.y];
      const cross = ax * by - ay * bx;
      const [dx, dy] = [q.from.x - p.from.x, q.from.y - p.from.y];
      const t = ((dx * by - dy * bx) / cross) * p.length;
      const s = ((dx * ay - dy * ax) / cross) * q.length;
      const out = Math.max(-t, t - p.length, -s, s - q.length);
      if (out < -50) sure++;
      else if (out < 50) near++;
    }
  }
  return { sure, near };
}

describe('a lattice over a piece', () => {
  test('a grid of 20 over 100 by 60, kept 10 inside the edge', () => {
    const { lines, crossings, total } = made(
      lattice({ outline: rectangle(100, 60), clear: mm(10), families: grid(20, at(20, 20)) }),
    );
    expect(lines.map((l) => [l.family, l.length])).toEqual([
      [0, mm(80)],
      [0, mm(80)],
      ...Array.from({ length: 4 }, () => [1, mm(40)]),
    ]);
    expect(crossings).toBe(8);
    expect(total).toBe(mm(320));
    expect(lines[0]?.crossings).toEqual([mm(10), mm(30), mm(50), mm(70)]);
    expect(lines[0]?.segments).toEqual([mm(10), mm(20), mm(20), mm(20), mm(10)]);
  });

  test('a line is in two parts where the piece is hollow', () => {
    const { lines } = made(lattice({ outline: horseshoe, clear: zero, families: grid(20, at(10, 10)) }));
    expect(lines.filter((l) => l.family === 0).map((l) => l.length / mm(1))).toEqual([
      30, 30, 30, 30, 30, 30, 100, 100,
    ]);
  });

  test('diamonds of a width and a height have these as their diagonals', () => {
    const families = diamonds(mm(30), mm(40), at(100, 100));
    expect(families[0].spacing).toBe(mm(24));
    const crossed = crossingPlaces(made(lattice({ outline: rectangle(200, 200), clear: zero, families })));
    const places = new Set(crossed.map((p) => `${Math.round(p.x / 100)} ${Math.round(p.y / 100)}`));
    for (const [x, y] of [
      [100, 100],
      [130, 100],
      [100, 140],
      [115, 120],
    ] as const) {
      expect(places).toContain(`${x * 10_000} ${y * 10_000}`);
    }
  });

  test.each([
    [{ families: grid(0) }, 'spacing'],
    [{ families: grid(0.001) }, 'spacing'],
    [{ families: [grid(10)[0], { ...grid(10)[0], angle: 178 }] as const }, 'families'],
    [{ clear: mm(40) }, 'clear'],
    [{ clear: mm(-1) }, 'clear'],
    [{ outline: [at(0, 0), at(1, 1)] }, 'clear'],
    [{ families: grid(500, at(250, 250)) }, 'spacing'],
  ])('refuses %j', (change, field) => {
    const input = { outline: rectangle(100, 60), clear: mm(5), families: grid(10), ...change };
    expect(lattice(input)).toMatchObject({ ok: false, error: { field } });
  });

  test('segments make up their line, and every crossing lies on both its lines and inside the piece', () => {
    fc.assert(
      fc.property(
        star,
        fc.integer({ min: 0, max: 179 }),
        fc.integer({ min: 20, max: 160 }).chain((turn) => fc.constantFrom(turn, -turn)),
        fc.integer({ min: 8, max: 40 }),
        (outline, angle, turn, spacing) => {
          const families = [
            { angle, spacing: mm(spacing), through: at(200, 200) },
            { angle: angle + turn, spacing: mm(spacing + 3), through: at(190, 205) },
          ] as const;
          const result = lattice({ outline, clear: zero, families });
          if (!result.ok) return;
          const { lines, crossings } = result.value;
          for (const l of lines) {
            expect(add(...l.segments)).toBe(l.length);
            expect(l.crossings).toEqual(l.crossings.toSorted((p, q) => p - q));
          }
          const places = crossingPlaces(result.value);
          expect(places).toHaveLength(crossings);
          for (const family of [0, 1]) {
            const own = lines.filter((l) => l.family === family);
            expect(own.reduce((sum, l) => sum + l.crossings.length, 0)).toBe(crossings);
            for (const p of places) {
              const away = Math.min(...own.map((l) => toNearestSide([l.from, l.to], p)));
              expect(away).toBeLessThan(5);
            }
          }
          const pairs = byPairs(result.value);
          expect(crossings).toBeGreaterThanOrEqual(pairs.sure);
          expect(crossings).toBeLessThanOrEqual(pairs.sure + pairs.near);
        },
      ),
    );
  });
});
