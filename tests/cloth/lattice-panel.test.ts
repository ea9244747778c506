import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crossingPlaces } from '../../src/cloth/lattice.ts';
import { latticePanel } from '../../src/cloth/lattice-panel.ts';
import { mm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const asked = { top: mm(200), bottom: mm(140), height: mm(250), spacing: mm(25), angle: 60, clear: mm(6) };

describe('a lattice over a panel', () => {
  test('a square on its point: lines and crossings that can be counted by hand', () => {
    // On a square of 40 mm, lines at 45 degrees that meet its top every 20 mm: three each way, 5 crossings inside.
    const square = { top: mm(40), bottom: mm(40), height: mm(40), angle: 45, clear: mm(1) };
    const { lattice } = made(latticePanel({ ...square, spacing: mm(20 / Math.SQRT2) }));
    expect(lattice.lines.filter((l) => l.family === 0)).toHaveLength(3);
    expect(lattice.lines.filter((l) => l.family === 1)).toHaveLength(3);
    expect(lattice.crossings).toBe(5);
  });

  test('is the same on both sides', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 300 }),
        fc.integer({ min: 60, max: 300 }),
        fc.integer({ min: 12, max: 40 }),
        fc.integer({ min: 10, max: 80 }),
        (top, bottom, spacing, angle) => {
          const { lattice } = made(
            latticePanel({ ...asked, top: mm(top), bottom: mm(bottom), spacing: mm(spacing), angle }),
          );
          const wide = mm(Math.max(top, bottom));
          const lengths = (family: 0 | 1) =>
            lattice.lines
              .filter((l) => l.family === family)
              .map((l) => l.length)
              .sort((a, b) => a - b);
          const [falls, rises] = [lengths(0), lengths(1)];
          expect(falls.length).toBe(rises.length);
          falls.forEach((l, i) => {
            expect(Math.abs(l - (rises[i] ?? 0))).toBeLessThan(50);
          });
          const sum = crossingPlaces(lattice).reduce((s, at) => s + at.x - wide / 2, 0);
          expect(Math.abs(sum)).toBeLessThan(100 * (lattice.crossings + 1));
        },
      ),
      { numRuns: 50 },
    );
  });

  test.each([
    [{ angle: 4 }, 'angle'],
    [{ angle: 86 }, 'angle'],
    [{ angle: Number.NaN }, 'angle'],
    [{ spacing: zero }, 'spacing'],
    [{ spacing: mm(0.1) }, 'spacing'],
    [{ height: mm(0.5), spacing: mm(0.05), clear: zero }, 'spacing'],
    [{ clear: mm(-1) }, 'clear'],
    [{ clear: mm(90) }, 'clear'],
    [{ top: zero }, 'top'],
  ])('refuses %j', (change, field) => {
    expect(latticePanel({ ...asked, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
