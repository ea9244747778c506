import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { diamonds, lattice } from '../../src/cloth/lattice.ts';
import { mm, toMm, zero } from '../../src/length/index.ts';
import { at, convex, rectangle } from '../shape/shapes.ts';

function made<T>(result: { ok: true; value: T } | { ok: false; error: unknown }): T {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

describe('lattices against geometry', () => {
  // Cauchy-Crofton formula of integral geometry (textbook result, from memory): parallel lines a distance s apart cross a region of
  // area A with a total length that is A / s on average over their position; so with many lines it comes close to A / s.
  test('all lines together are area over spacing', () => {
    const area = 400 * 300;
    const { lines } = made(
      lattice({
        outline: rectangle(400, 300),
        clear: zero,
        families: diamonds(mm(6), mm(8), at(0.123, 0.456)),
      }),
    );
    for (const family of [0, 1]) {
      const sum = lines.filter((l) => l.family === family).reduce((n, l) => n + toMm(l.length), 0);
      expect(sum / (area / 4.8)).toBeCloseTo(1, 2);
    }
  });

  // The crossings of a lattice are themselves a lattice with one point for each rhombus of area w h / 2 (Gauss's counting of
  // lattice points, textbook result, from memory).
  test('crossings are as many as diamonds fit in the area', () => {
    const { crossings } = made(
      lattice({
        outline: rectangle(400, 300),
        clear: zero,
        families: diamonds(mm(6), mm(8), at(0.123, 0.456)),
      }),
    );
    expect(crossings / ((400 * 300) / 24)).toBeCloseTo(1, 2);
  });

  // Half-plane test of a convex shape (textbook result): a place is inside when it lies on the same hand of every side.
  test('a grid over a convex shape agrees with asking at every place of the grid', () => {
    fc.assert(
      fc.property(convex, (outline) => {
        const families = [
          { angle: 0, spacing: mm(10), through: at(0.5, 0.7317) },
          { angle: 90, spacing: mm(10), through: at(0.5, 0.7317) },
        ] as const;
        const result = lattice({ outline, clear: zero, families });
        if (!result.ok) return;
        let counted = 0;
        for (let x = 0.5; x < 400; x += 10) {
          for (let y = 0.7317; y < 400; y += 10) {
            const turn = (i: number) => {
              const [p, q] = [outline[i]!, outline[(i + 1) % outline.length]!];
              return (q.x - p.x) * (mm(y) - p.y) - (q.y - p.y) * (mm(x) - p.x);
            };
            if (outline.every((_, i) => turn(i) > 0)) counted++;
          }
        }
        expect(result.value.crossings).toBe(counted);
      }),
    );
  });
});
