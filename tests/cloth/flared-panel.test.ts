import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flaredPanel } from '../../src/cloth/flared-panel.ts';
import { mm, toMm, zero } from '../../src/length/index.ts';
import { distance, edgeLength } from '../../src/shape/measure.ts';
import { made as good } from './good.ts';

const told = fc
  .record({
    narrow: fc.integer({ min: 150, max: 500 }),
    more: fc.integer({ min: 10, max: 600 }),
    side: fc.integer({ min: 150, max: 600 }),
    straight: fc.boolean(),
  })
  .map(({ narrow, more, side, straight }) => ({
    narrow: mm(narrow),
    wide: mm(narrow + more),
    side: mm(side),
    straight,
  }));

describe('a panel that flares', () => {
  it('has edges and sides as long as asked', () => {
    fc.assert(
      fc.property(told, (input) => {
        const made = good(flaredPanel(input));
        const datum = { x: zero, y: zero };
        const narrow = edgeLength(datum, { name: 'narrow', segments: made.narrow });
        const wide = edgeLength(made.lowerRight, { name: 'wide', segments: made.wide });
        expect(toMm(narrow)).toBeCloseTo(toMm(input.narrow), 1);
        expect(toMm(wide)).toBeCloseTo(toMm(input.wide), 1);
        expect(toMm(distance(made.upperRight, made.lowerRight))).toBeCloseTo(toMm(input.side), 3);
        expect(toMm(distance(datum, made.lowerLeft))).toBeCloseTo(toMm(input.side), 3);
        expect(distance(made.wide.at(-1)!.to, made.lowerLeft)).toBeLessThanOrEqual(2);
        expect(toMm(made.upperRight.y)).toBeCloseTo(0, 5);
      }),
      { seed: 11 },
    );
  });

  it('meets its sides squarely', () => {
    const { upperRight, lowerRight, wide } = good(
      flaredPanel({ narrow: mm(300), wide: mm(700), side: mm(300) }),
    );
    const [first] = wide;
    if (first?.kind !== 'curve') throw new Error('the wide edge is not round');
    const side = [lowerRight.x - upperRight.x, lowerRight.y - upperRight.y] as const;
    const along = [first.first.x - lowerRight.x, first.first.y - lowerRight.y] as const;
    const cosine = (side[0] * along[0] + side[1] * along[1]) / Math.hypot(...side) / Math.hypot(...along);
    expect(Math.abs(cosine)).toBeLessThan(1e-3);
  });

  it('is refused where nothing flares, or too much', () => {
    const field = (made: ReturnType<typeof flaredPanel>) => (made.ok ? 'none' : made.error.field);
    expect(field(flaredPanel({ narrow: mm(300), wide: mm(300), side: mm(300) }))).toBe('wide');
    expect(field(flaredPanel({ narrow: mm(300), wide: mm(2500), side: mm(300) }))).toBe('wide');
    expect(field(flaredPanel({ narrow: mm(0), wide: mm(300), side: mm(300) }))).toBe('narrow');
    expect(field(flaredPanel({ narrow: mm(200), wide: mm(300), side: mm(0) }))).toBe('side');
  });
});
