import { bend, type SketchLine, type SketchPen } from './sketch.ts';

const pairs = (numbers: readonly number[]): readonly (readonly [number, number])[] =>
  Array.from({ length: numbers.length >> 1 }, (_, i) => [numbers[2 * i] ?? 0, numbers[2 * i + 1] ?? 0]);

/** A line of a sketch from point to point, each given as x and y. */
export const line = (pen: SketchPen, ...xy: readonly number[]): SketchLine => ({ pen, points: pairs(xy) });

/** A curve of a sketch: where it begins, its two handles, and where it ends, each as x and y. */
export const curve = (
  pen: SketchPen,
  ...xy: readonly [number, number, number, number, number, number, number, number]
): SketchLine => {
  const [a, b, c, d, e, f, g, h] = xy;
  return { pen, points: bend([a, b], [c, d], [e, f], [g, h]) };
};
