import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flounce, joinsOf, ringParts } from '../../src/cloth/flounce.ts';
import { mm, toMm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const hem = { top: mm(600), bottom: mm(1500), depth: mm(100), allowance: mm(10), hem: mm(5) };

describe('a flounce from its two edges', () => {
  test('falls to the lower edge that was asked for', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 3000 }),
        fc.integer({ min: 1, max: 3000 }),
        fc.integer({ min: 10, max: 600 }),
        fc.integer({ min: 0, max: 15 }),
        (top, more, depth, slit) => {
          const bottom = mm(top + more);
          const edges = { top: mm(top), bottom, depth: mm(depth), allowance: zero, hem: zero };
          const result = flounce({ ...edges, slit: mm(slit) });
          // A ring of a kilometre's radius is a straight strip, and refused.
          if (((top + 2 * slit) * depth) / more > 1_000_000) {
            expect(result).toMatchObject({ ok: false, error: { field: 'bottom' } });
            return;
          }
          if (!result.ok) throw new Error(result.error.wrong);
          expect(toMm(result.value.outerEdge) / (top + more)).toBeCloseTo(1, 6);
          expect(result.value.parts.length).toBe(result.value.rings);
        },
      ),
      { numRuns: 500 },
    );
  });

  test('a closed flounce has one join more', () => {
    const open = made(flounce(hem));
    expect(open.rings).toBe(2);
    expect(open.joins).toBe(1);
    expect(made(flounce({ ...hem, closed: true })).joins).toBe(2);
    expect(joinsOf(1, false)).toBe(0);
  });

  test.each([
    [{ top: zero }, 'top'],
    [{ bottom: mm(600) }, 'bottom'],
    [{ bottom: mm(7500) }, 'bottom'],
    [{ bottom: mm(600.001) }, 'bottom'],
    [{ depth: zero }, 'depth'],
    [{ hem: mm(-1) }, 'hem'],
    [{ slit: mm(-1) }, 'slit'],
  ])('refuses %j', (change, field) => {
    expect(flounce({ ...hem, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});

describe('rectangles for rings', () => {
  test.each([
    [0.25, 100, 100],
    [0.5, 100, 200],
    [0.75, 200, 200],
    [1, 200, 200],
  ])('%s of a turn', (turn, across, along) => {
    const [part] = ringParts(turn, mm(40), mm(100));
    expect(toMm(part!.across)).toBeCloseTo(across, 5);
    expect(toMm(part!.along)).toBeCloseTo(along, 5);
  });

  test('every point of a ring lies in a rectangle no larger than the square', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1, noNaN: true }), (turn) => {
        const [part] = ringParts(turn, mm(40), mm(100));
        const angles = Array.from({ length: 200 }, (_, i) => (2 * Math.PI * turn * i) / 199);
        const points = angles.flatMap((a) => [40, 100].map((r) => [r * Math.cos(a), r * Math.sin(a)]));
        const reach = (k: number) =>
          Math.max(...points.map((p) => p[k]!)) - Math.min(...points.map((p) => p[k]!));
        expect(Math.abs(toMm(part!.along) - reach(0))).toBeLessThan(0.1);
        expect(Math.abs(toMm(part!.across) - reach(1))).toBeLessThan(0.1);
      }),
    );
  });

  test('one and a half circles are a whole ring and a half one', () => {
    expect(ringParts(1.5, mm(40), mm(100)).map(({ turn }) => turn)).toEqual([1, 0.5]);
  });
});
