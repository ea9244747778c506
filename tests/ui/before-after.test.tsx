import { cleanup, render, screen } from '@testing-library/preact';
import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { mm } from '../../src/length/length.ts';
import type { Outline, Point } from '../../src/shape/outline.ts';
import { BeforeAfter } from '../../src/ui/before-after.tsx';
import { beforeAfterLines, reachAt, spotsRound, spread } from '../../src/ui/before-after-lines.ts';

afterEach(cleanup);

const p = (x: number, y: number): Point => ({ x: mm(x), y: mm(y) });
const box = (wide: number, high: number): Outline => ({
  start: p(0, 0),
  edges: [
    { name: 'neck', segments: [{ kind: 'line', to: p(wide, 0) }] },
    { name: 'side-seam', segments: [{ kind: 'line', to: p(wide, high) }] },
    { name: 'hem', segments: [{ kind: 'line', to: p(0, high) }] },
    { name: 'fold', segments: [{ kind: 'line', to: p(0, 0) }] },
  ],
});

const numbers = (d: string): number[] => [...d.matchAll(/-?[\d.]+/g)].map(([n]) => Number(n));

describe('how far a piece reaches', () => {
  test('at a height, from left to right', () => {
    expect(reachAt(spotsRound(box(200, 400)), 150)).toEqual([0, 200]);
    expect(reachAt(spotsRound(box(200, 400)), 0)).toEqual([0, 200]);
    expect(reachAt(spotsRound(box(200, 400)), 401)).toBeUndefined();
  });

  test('between slanting edges', () => {
    const wedge = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 0, y: 200 },
    ];
    expect(reachAt(wedge, 100)).toEqual([0, 50]);
  });
});

describe('heights that are spread', () => {
  test('keep their order and their distance, and stay in bounds where there is room', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 400, noNaN: true }), { maxLength: 9 }), (heights) => {
        const sorted = heights.toSorted((a, b) => a - b);
        const put = spread(sorted, 40, 10, 390);
        expect(put).toHaveLength(sorted.length);
        put.forEach((y, i) => {
          expect(y).toBeGreaterThanOrEqual(10 - 1e-6);
          expect(y).toBeLessThanOrEqual(390 + 1e-6);
          if (i > 0) expect(y - put[i - 1]!).toBeGreaterThanOrEqual(40 - 1e-6);
        });
      }),
      { seed: 5 },
    );
  });

  test('that lie far apart stay where they are', () => {
    expect(spread([50, 120, 300], 40, 10, 390)).toEqual([50, 120, 300]);
  });
});

describe('an old and a new outline', () => {
  const changes = [{ size: '16 mm', way: 'wider', where: 'chest', y: mm(150) }];

  test('lie on each other at one scale', () => {
    const drawn = beforeAfterLines(box(200, 400), box(216, 400), changes);
    const [was, is] = [numbers(drawn.before), numbers(drawn.after)];
    const reach = (list: number[]) => {
      const xs = list.filter((_, i) => i % 2 === 0);
      return Math.max(...xs) - Math.min(...xs);
    };
    expect(reach(is) - reach(was)).toBeCloseTo(16 * drawn.scale, 0);
    expect(Math.max(...is.filter((_, i) => i % 2 === 0))).toBeLessThan(drawn.labels[0]!.x);
    expect(drawn.labels[0]!.across[0].y).toBeCloseTo(drawn.labels[0]!.across[1].y, 6);
    expect(drawn.labels[0]!.across[0].y - numbers(drawn.after)[1]!).toBeCloseTo(150 * drawn.scale, 0);
  });

  test('stay within the drawing, whatever their shape', () => {
    const size = fc.integer({ min: 5, max: 3000 });
    fc.assert(
      fc.property(
        size,
        size,
        fc.integer({ min: -4, max: 60 }),
        fc.integer({ min: 0, max: 6 }),
        (w, h, by, n) => {
          const many = Array.from({ length: n }, (_, i) => ({
            size: '1 1/16 in',
            way: 'narrower',
            where: 'upper arm',
            y: mm((h * i) / 6),
          }));
          const drawn = beforeAfterLines(box(w, h), box(w + by, h), many);
          const all = [...numbers(drawn.before), ...numbers(drawn.after)];
          all.forEach((n, i) => {
            expect(n).toBeGreaterThanOrEqual(0);
            expect(n).toBeLessThanOrEqual((i % 2 === 0 ? drawn.wide : drawn.high) + 0.1);
          });
          for (const { x, y, size, way } of drawn.labels) {
            expect(x + (size.length * 28 + (way.length + 1) * 18) * 0.54).toBeLessThanOrEqual(drawn.wide);
            expect(y).toBeLessThan(drawn.foot.y);
          }
        },
      ),
      { seed: 6 },
    );
  });

  test('a length is marked beside the piece, from where to where it changes', () => {
    const [label] = beforeAfterLines(box(200, 400), box(200, 420), [
      { size: '20 mm', way: 'longer', where: 'below the waist', y: mm(100), to: mm(300) },
    ]).labels;
    const [a, b] = label!.across;
    expect(a.x).toBe(b.x);
    expect(label!.y).toBeCloseTo((a.y + b.y) / 2, 6);
  });

  test('an edge too short for its name is numbered and named below', () => {
    const { edges, numbered } = beforeAfterLines(box(20, 400), box(22, 400), changes);
    expect(edges.map(({ words }) => words)).toEqual(['1', 'side seam', '3', 'fold']);
    expect(numbered).toEqual([
      { number: 1, name: 'neck' },
      { number: 3, name: 'hem' },
    ]);
  });

  test('are said as well: what changes, which line is which, and the scale', () => {
    render(
      <BeforeAfter
        name="Centre front"
        before={box(200, 400)}
        after={box(216, 400)}
        changes={changes}
        said={['Centre front: 16 mm wider at the chest.']}
        marking={{ unit: 'mm', step: 0.5 }}
      />,
    );
    const picture = screen.getByRole('img', { name: 'Centre front before and after, drawn to scale' });
    expect(picture.querySelectorAll('path.was, path.will-be')).toHaveLength(2);
    expect(picture.querySelector('.amount')?.textContent).toBe('16 mm wider');
    expect(screen.getByText('Centre front: 16 mm wider at the chest.')).toBeTruthy();
    expect(
      screen.getByText(/Dashed: as it is now\. Solid: as it will be\. To scale.* \d+ mm long\./),
    ).toBeTruthy();
  });
});
