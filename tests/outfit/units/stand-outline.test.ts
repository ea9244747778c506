import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, zero } from '../../../src/length/length.ts';
import { longOf } from '../../../src/outfit/units/neck-line.ts';
import { fallOutline, risingLine, standOutline } from '../../../src/outfit/units/stand-outline.ts';
import { flattenOutline } from '../../../src/shape/flatten.ts';
import { edgeLengths, signedArea } from '../../../src/shape/measure.ts';

const half = fc.integer({ min: 120, max: 320 });
const rise = fc.integer({ min: 0, max: 40 });

describe('a standing band', () => {
  test('is at its neck exactly as long as the neck and the lap, whatever it rises', () => {
    fc.assert(
      fc.property(half, rise, fc.integer({ min: 0, max: 30 }), (long, up, lap) => {
        const outline = standOutline({ half: mm(long), lap: mm(lap), height: mm(30), rise: mm(up) });
        expect(Math.abs(edgeLengths(outline).get('neck')! - mm(long + lap))).toBeLessThan(mm(0.01));
        expect(outline.edges.map(({ name }) => name)).toEqual(['upper', 'front-end', 'neck', 'fold']);
        expect(outline.edges.at(-1)?.segments.at(-1)?.to).toEqual(outline.start);
        expect(signedArea(flattenOutline(outline))).toBeGreaterThan(0);
      }),
      { seed: 3, numRuns: 60 },
    );
  });

  test('that curves up is shorter above than at the neck; a straight one is not', () => {
    const upper = (up: number) =>
      edgeLengths(standOutline({ half: mm(200), lap: zero, height: mm(30), rise: mm(up) })).get('upper')! /
      1e6;
    expect(upper(0)).toBeCloseTo(200, 3);
    expect(upper(12)).toBeLessThan(200);
    expect(upper(30)).toBeLessThan(upper(12));
  });

  test('is as high behind as it should be', () => {
    const outline = standOutline({ half: mm(200), lap: mm(13), height: mm(30), rise: mm(12) });
    expect(edgeLengths(outline).get('fold')! / 1e6).toBeCloseTo(30, 3);
  });
});

test('a line rises or drops to its end and is as long as wanted', () => {
  fc.assert(
    fc.property(half, fc.integer({ min: -40, max: 40 }), (long, up) => {
      const line = risingLine(mm(long), mm(up));
      expect(Math.abs(longOf(line) - mm(long))).toBeLessThan(mm(0.01));
      expect(line.segments.at(-1)!.to.y + 0).toBe(mm(-up) + 0);
    }),
    { seed: 5, numRuns: 40 },
  );
});

test('a fall has the neck edge, the width and the point that are wanted', () => {
  fc.assert(
    fc.property(half, rise, fc.integer({ min: 30, max: 90 }), (long, drop, point) => {
      const outline = fallOutline({ half: mm(long), width: mm(45), point: mm(point), drop: mm(drop) });
      const lengths = edgeLengths(outline);
      expect(Math.abs(lengths.get('neck')! - mm(long))).toBeLessThan(mm(0.01));
      expect(lengths.get('fold')! / 1e6).toBeCloseTo(45, 3);
      expect(lengths.get('front-end')! / 1e6).toBeCloseTo(point, 3);
      expect(signedArea(flattenOutline(outline))).toBeGreaterThan(0);
    }),
    { seed: 6, numRuns: 60 },
  );
});
