import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, toMm } from '../../src/length/index.ts';
import { distance, flattenOutline, type Outline } from '../../src/shape/index.ts';
import { nearestOn } from '../../src/shape/nearest.ts';
import { at, toNearestSide } from './shapes.ts';

const piece: Outline = {
  start: at(0, 0),
  edges: [
    {
      name: 'top',
      segments: [
        { kind: 'line', to: at(40, 0) },
        { kind: 'line', to: at(100, 0) },
      ],
    },
    { name: 'side', segments: [{ kind: 'curve', first: at(140, 30), second: at(60, 60), to: at(100, 100) }] },
    {
      name: 'rest',
      segments: [
        { kind: 'line', to: at(0, 100) },
        { kind: 'line', to: at(0, 0) },
      ],
    },
  ],
};

describe('nearest place on an outline', () => {
  test('beside an edge, at a corner, on the edge', () => {
    expect(nearestOn(piece, at(70, -5))).toEqual({
      edge: 'top',
      point: at(70, 0),
      along: mm(70),
      away: mm(5),
    });
    expect(nearestOn(piece, at(-3, -4))).toMatchObject({ edge: 'top', along: 0, away: mm(5) });
    expect(nearestOn(piece, at(0, 30))).toMatchObject({ edge: 'rest', along: mm(170), away: 0 });
  });

  test('nothing without edges', () => {
    expect(nearestOn({ start: at(0, 0), edges: [] }, at(1, 1))).toBeUndefined();
  });

  test('is as near as the nearest side of the flattened shape', () => {
    const polygon = flattenOutline(piece);
    fc.assert(
      fc.property(fc.integer({ min: -50, max: 200 }), fc.integer({ min: -50, max: 200 }), (x, y) => {
        const found = nearestOn(piece, at(x, y))!;
        expect(toMm(found.away)).toBeCloseTo(toNearestSide(polygon, at(x, y)) / 1e6, 5);
        expect(toMm(distance(found.point, at(x, y)))).toBeCloseTo(toMm(found.away), 5);
      }),
    );
  });
});
