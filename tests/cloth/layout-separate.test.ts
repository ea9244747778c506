import { expect, test } from 'vitest';
import { type Lying, lay } from '../../src/cloth/laid-piece.ts';
import { layInOrder, type ToLay } from '../../src/cloth/layout.ts';
import { separate } from '../../src/cloth/layout-separate.ts';
import { mm, zero } from '../../src/length/index.ts';
import type { Point } from '../../src/shape/index.ts';
import { at, rectangle } from '../shape/shapes.ts';
import { overlap } from './layout-overlap.ts';

const strip = { left: 0, right: mm(400), gap: 0 };
const one = (shape: readonly Point[], turns: readonly (0 | 180)[] = [0]): ToLay => ({
  ways: turns.map((turn) => lay(shape, 0, turn, false, zero)),
  onFold: false,
});
const drawn = ({ way, x, y }: { way: Lying; x: number; y: number }): Point[] =>
  way.outline.map((p) => ({ x: (p.x + x) as Point['x'], y: (p.y + y) as Point['y'] }));
/** Numbers that go round and round. */
const inTurn = () => {
  let x = 7;
  return (limit: number): number => {
    x = (x * 73 + 41) % 8191;
    return x % limit;
  };
};

// Two with a notch between them and one with a point to go into it: laid in order the point stands on the corners.
const left = [at(0, 0), at(80, 0), at(160, 300), at(160, 500), at(0, 500)];
const right = [at(80, 0), at(160, 0), at(160, 500), at(0, 500), at(0, 300)];
const point = [at(100, 0), at(200, 300), at(0, 300)];
const things = [one(left), one(right), one(point, [0, 180])];

test('makes room for a point between two pieces that lie as near the beginning as they can', () => {
  const start = layInOrder(things, [0, 1, 2], strip);
  const closer = separate(things, strip, start, 0, 200_000, inTurn());
  expect(closer.length).toBeLessThan(start.length * 0.95);
  const outlines = closer.laid.map(drawn);
  for (const [i, a] of outlines.entries()) {
    for (const b of outlines.slice(0, i)) expect(overlap(a, b)).toBe(false);
    for (const { x, y } of a) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(strip.right);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(closer.length);
    }
  }
});

test('the same input gives the same layout, and no budget the layout it began with', () => {
  const start = layInOrder(things, [0, 1, 2], strip);
  expect(separate(things, strip, start, 0, 0, inTurn())).toBe(start);
  const run = () => separate(things, strip, start, 0, 50_000, inTurn());
  expect(run()).toEqual(run());
});

test('boxes that fill the cloth stay as they lie', () => {
  const boxes = [one(rectangle(400, 100)), one(rectangle(200, 100)), one(rectangle(200, 100))];
  const start = layInOrder(boxes, [0, 1, 2], strip);
  expect(separate(boxes, strip, start, 0, 50_000, inTurn()).length).toBe(start.length);
});
