import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, nm, toMm } from '../../src/length/index.ts';
import {
  boundingBox,
  distance,
  edgeLength,
  edgeLengths,
  edgeStarts,
  flattenEdge,
  flattenOutline,
  type Outline,
  type OutlineEdge,
  outlineArea,
  pathLength,
  signedArea,
} from '../../src/shape/index.ts';
import { at, ell, rectangle, star } from './shapes.ts';

const K = (4 / 3) * Math.tan(Math.PI / 8); // the usual cubic for a quarter circle; 0.03 % off in radius

const quarter: OutlineEdge = {
  name: 'armhole',
  segments: [{ kind: 'curve', first: at(100, 100 * K), second: at(100 * K, 100), to: at(0, 100) }],
};
const pie: Outline = {
  start: at(0, 0),
  edges: [
    { name: 'top', segments: [{ kind: 'line', to: at(100, 0) }] },
    quarter,
    { name: 'side', segments: [{ kind: 'line', to: at(0, 0) }] },
  ],
};

describe('straightening curves', () => {
  test('keeps both ends, and every true point within the tolerance of the chords', () => {
    for (const tolerance of [mm(5), mm(0.5), mm(0.05)]) {
      const points = flattenEdge(at(100, 0), quarter, tolerance);
      expect(points[0]).toEqual(at(100, 0));
      expect(points.at(-1)).toEqual(at(0, 100));
      for (let i = 0; i + 1 < points.length; i++) {
        const [a, b] = [points[i]!, points[i + 1]!];
        const middle = Math.hypot((a.x + b.x) / 2, (a.y + b.y) / 2);
        expect(mm(100.03) - middle).toBeLessThanOrEqual(tolerance + mm(0.03));
      }
    }
  });

  test('an edge without segments is its start', () => {
    expect(flattenEdge(at(1, 2), { name: 'none', segments: [] })).toEqual([at(1, 2)]);
  });

  test('a curve with all its handles on one spot is that spot', () => {
    const spot = at(3, 3);
    const dot: OutlineEdge = {
      name: 'dot',
      segments: [{ kind: 'curve', first: spot, second: spot, to: spot }],
    };
    expect(flattenEdge(spot, dot)).toEqual([spot, spot]);
    expect(edgeLength(spot, dot)).toBe(0);
    expect(flattenOutline({ start: spot, edges: [dot] })).toEqual([spot]);
  });

  test('an outline does not repeat its first corner', () => {
    const points = flattenOutline(pie);
    expect(points[0]).toEqual(at(0, 0));
    expect(points.at(-1)).not.toEqual(at(0, 0));
    expect(flattenOutline({ start: at(0, 0), edges: [] })).toEqual([]);
  });

  test('edges know where they start', () => {
    expect(edgeStarts(pie).get('side')).toEqual(at(0, 100));
  });
});

describe('measuring', () => {
  test('a quarter circle of 100 mm, to the accuracy of its cubic', () => {
    expect(toMm(edgeLength(at(100, 0), quarter))).toBeCloseTo((100 * Math.PI) / 2, 1);
    expect(outlineArea(pie) / ((10_000 * Math.PI) / 4)).toBeCloseTo(1, 3);
    expect(edgeLengths(pie).get('top')).toBe(mm(100));
  });

  test('nothing, a point and points in a row have no area', () => {
    expect(signedArea([])).toBe(0);
    expect(signedArea([at(5, 5)])).toBe(0);
    expect(signedArea([at(5, 5), at(9, 9)])).toBe(0);
    expect(signedArea([at(0, 0), at(5, 5), at(9, 9)])).toBe(0);
    expect(pathLength([])).toBe(0);
    expect(pathLength([at(1, 1)])).toBe(0);
    expect(distance(at(1, 1), at(1, 1))).toBe(0);
  });

  test('area by sides', () => {
    expect(signedArea(rectangle(30, 20))).toBe(600);
    expect(signedArea(rectangle(30, 20).reverse())).toBe(-600);
    expect(signedArea(ell)).toBe(6400);
  });

  test('area does not depend on where the shape lies', () => {
    fc.assert(
      fc.property(star, fc.integer({ min: -9000, max: 9000 }), (shape, far) => {
        const moved = shape.map((p) => ({ x: nm(p.x + mm(far)), y: nm(p.y - mm(far)) }));
        expect(signedArea(moved)).toBeCloseTo(signedArea(shape), 6);
      }),
    );
  });

  test('the box of an L, and of nothing', () => {
    expect(boundingBox(ell)).toEqual({ left: 0, top: 0, right: mm(100), bottom: mm(100) });
    expect(boundingBox([])).toEqual({ left: 0, top: 0, right: 0, bottom: 0 });
  });
});
