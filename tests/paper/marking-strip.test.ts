import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm, nm } from '../../src/length/length.ts';
import { boxOf, inkOf, wordsCorners } from '../../src/paper/ink.ts';
import { markingStrip, STRIP_WIDE } from '../../src/paper/marking-strip.ts';
import { strip } from './sheets.ts';

const marked = (at: readonly number[], unit: 'in' | 'mm' = 'mm') =>
  markingStrip(
    {
      name: 'front',
      from: 'the neck seam',
      span: mm(100),
      marks: at.map((one, i) => ({ at: mm(one), name: `fold ${i + 1}` })),
    },
    unit === 'mm' ? { unit, step: 0.5 } : { unit, per: 16 },
  );

describe('a marking strip', () => {
  it('has a line at every mark, at its distance from the datum', () => {
    const { drawn } = marked([10, 25.5, 70]);
    const at = drawn.flatMap((one) =>
      one.kind === 'path' && one.stroke === 'mark' ? [one.points[0]!.x] : [],
    );
    expect(at).toEqual([mm(10), mm(25.5), mm(70)]);
    const said = drawn.flatMap((one) => (one.kind === 'words' ? [one.words] : []));
    expect(said).toEqual(
      expect.arrayContaining(['0 = the neck seam', '1', '10 mm', '2', '25.5 mm', '3', '70 mm']),
    );
  });

  it('begins at a mark that lies before the datum', () => {
    const box = boxOf(inkOf(marked([-20, 10]).drawn));
    expect(box.left).toBeLessThanOrEqual(mm(-20));
    expect(box.right).toBeGreaterThanOrEqual(mm(100));
  });

  it('keeps words of marks clear of each other and on the strip, however close the marks lie', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 500, max: 60_000 }), (count, apart) => {
        const ink = inkOf(strip(count, nm(apart * 1000)).drawn);
        const boxes = ink.flatMap((one) => {
          if (one.kind !== 'words' || one.words.startsWith('0 =')) return [];
          const corners = wordsCorners(one);
          const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
          return [
            { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) },
          ];
        });
        expect(boxes.length).toBeGreaterThan(0);
        for (const [i, a] of boxes.entries()) {
          expect(a.top).toBeGreaterThanOrEqual(0);
          expect(a.bottom).toBeLessThanOrEqual(STRIP_WIDE);
          for (const b of boxes.slice(i + 1)) {
            const clear = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
            expect(clear).toBe(true);
          }
        }
      }),
    );
  });
});
