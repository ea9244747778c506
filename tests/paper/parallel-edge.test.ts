import { describe, expect, it } from 'vitest';
import { mm } from '../../src/length/length.ts';
import { place } from '../../src/paper/drawing.ts';
import { beside, insideOf, placeAt, pointAcross } from '../../src/paper/parallel-edge.ts';

const p = (x: number, y: number) => place(mm(x), mm(y));
const clockwise = [p(0, 0), p(100, 0), p(100, 50), p(0, 50)];

describe('places beside an edge', () => {
  it('knows the inside, whichever way round the shape runs', () => {
    expect(insideOf(clockwise)).toBe(1);
    expect(insideOf(clockwise.toReversed())).toBe(-1);
  });

  it('finds a share of the way along a bent edge, and the way in', () => {
    const run = [p(0, 0), p(60, 0), p(60, 40)];
    expect(placeAt(run, 0.5, 1)).toEqual({ at: p(50, 0), way: { x: 1, y: 0 }, inward: { x: -0, y: 1 } });
    expect(placeAt(run, 0.8, 1)?.at).toEqual(p(60, 20));
    expect(placeAt(run, 0.8, 1)?.inward).toEqual({ x: -1, y: 0 });
    expect(placeAt(run, 0, 1)?.at).toEqual(p(0, 0));
    expect(placeAt(run, 1, 1)?.at).toEqual(p(60, 40));
    expect(placeAt([p(1, 1), p(1, 1)], 0.5, 1)).toBeUndefined();
  });

  it('draws a line inside or outside an edge', () => {
    expect(beside([p(0, 0), p(100, 0)], mm(12), 1)).toEqual([p(0, 12), p(100, 12)]);
    expect(beside([p(0, 0), p(100, 0)], mm(-12), 1)).toEqual([p(0, -12), p(100, -12)]);
    expect(beside([p(100, 0), p(0, 0)], mm(12), -1)).toEqual([p(100, 12), p(0, 12)]);
  });

  it('moves a point in a direction', () => {
    expect(pointAcross(p(10, 10), 90, mm(5))).toEqual(p(10, 15));
  });
});
