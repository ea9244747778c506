import { expect, test } from 'vitest';
import { bend } from '../../../src/outfit/units/sketch.ts';
import { curve, line } from '../../../src/outfit/units/sketch-lines.ts';

test('lines and curves of a sketch are told by x and y in turn', () => {
  expect(line('fold', 1, 2, 3, 4)).toEqual({
    pen: 'fold',
    points: [
      [1, 2],
      [3, 4],
    ],
  });
  expect(curve('shape', 0, 0, 0, 9, 9, 9, 9, 0)).toEqual({
    pen: 'shape',
    points: bend([0, 0], [0, 9], [9, 9], [9, 0]),
  });
});
