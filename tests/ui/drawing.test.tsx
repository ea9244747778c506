import { cleanup, render } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { mm } from '../../src/length/length.ts';
import type { Outline, Point } from '../../src/shape/outline.ts';
import { Drawing } from '../../src/ui/drawing.tsx';
import { boxRound, drawEdges, halfWay, mirror, pathThrough } from '../../src/ui/drawing-lines.ts';

afterEach(cleanup);

const p = (x: number, y: number): Point => ({ x: mm(x), y: mm(y) });
const box: Outline = {
  start: p(0, 0),
  edges: [
    { name: 'top', segments: [{ kind: 'line', to: p(100, 0) }] },
    { name: 'side', segments: [{ kind: 'curve', first: p(120, 50), second: p(120, 100), to: p(100, 150) }] },
    { name: 'hem', segments: [{ kind: 'line', to: p(0, 150) }] },
    { name: 'fold', segments: [{ kind: 'line', to: p(0, 0) }] },
  ],
};

describe('the lines of a drawing', () => {
  test('every edge begins where the one before ended', () => {
    const edges = drawEdges(box);
    expect(edges.map((edge) => edge.name)).toEqual(['top', 'side', 'hem', 'fold']);
    edges.forEach((edge, i) => {
      expect(edge.spots[0]).toEqual(edges[(i + 3) % 4]!.spots.at(-1));
    });
    expect(edges[1]!.spots.length).toBeGreaterThan(2);
  });

  test('a mirrored piece lies on both sides of the fold', () => {
    const edges = drawEdges(box);
    const both = boxRound([...edges, ...mirror(edges)].flatMap((edge) => edge.spots));
    expect(both.left).toBe(-both.right);
    expect(both).toMatchObject({ top: 0, bottom: 150 });
    expect(both.right).toBeGreaterThan(100);
  });

  test('the letter stands half way along by length, also for nothing and for one spot', () => {
    expect(
      halfWay([
        { x: 0, y: 0 },
        { x: 10, y: 0 },
        { x: 10, y: 30 },
      ]),
    ).toEqual({ x: 10, y: 10 });
    expect(halfWay([])).toEqual({ x: 0, y: 0 });
    expect(halfWay([{ x: 3, y: 4 }])).toEqual({ x: 3, y: 4 });
    expect(
      pathThrough(
        [
          { x: 1, y: 2 },
          { x: 3.04, y: 4 },
        ],
        (s) => s,
      ),
    ).toBe('M1 2L3 4');
  });
});

test('picked edges are lettered and named, and the drawing says that it is not to scale', () => {
  const { container } = render(
    <Drawing pieces={[{ name: 'back', outline: box, mirrored: true, picked: ['side', 'hem'], lines: [] }]} />,
  );
  expect(container.querySelectorAll('.picked')).toHaveLength(2);
  expect([...container.querySelectorAll('.badge text')].map((t) => t.textContent?.trim())).toEqual([
    'A',
    'B',
  ]);
  expect([...container.querySelectorAll('.legend')].map((t) => t.textContent)).toEqual([
    'Aback: side',
    'Bback: hem',
  ]);
  expect(container.textContent).toContain('not to scale');
});

test('no pieces, no drawing', () => {
  const { container } = render(<Drawing pieces={[]} />);
  expect(container.innerHTML).toBe('');
});
