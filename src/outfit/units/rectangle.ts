import { type Length, zero } from '../../length/length.ts';
import type { Outline, OutlineEdge, Point } from '../../shape/outline.ts';

/** A place on the cloth. */
export const point = (x: Length, y: Length): Point => ({ x, y });

/** An edge that goes straight to a point. */
export const straight = (name: string, to: Point): OutlineEdge => ({
  name,
  segments: [{ kind: 'line', to }],
});

/** An edge that curves to a point, drawn by its two handles. */
export const curved = (name: string, first: Point, second: Point, to: Point): OutlineEdge => ({
  name,
  segments: [{ kind: 'curve', first, second, to }],
});

/** A rectangle, its corner at the datum, its edges named in order: the top, the right side, the bottom, the left side. */
export const rectangle = (
  wide: Length,
  high: Length,
  names: readonly [top: string, right: string, bottom: string, left: string],
): Outline => {
  const [top, right, bottom, left] = names;
  return {
    start: point(zero, zero),
    edges: [
      straight(top, point(wide, zero)),
      straight(right, point(wide, high)),
      straight(bottom, point(zero, high)),
      straight(left, point(zero, zero)),
    ],
  };
};

/** A strip of cloth, lying along: its edges are called `upper`, `right-end`, `lower` and `left-end`. */
export const strip = (long: Length, deep: Length): Outline =>
  rectangle(long, deep, ['upper', 'right-end', 'lower', 'left-end']);

/** Half of a strip that is cut on the fold: its free end is called by the name given. */
export const foldedStrip = (
  half: Length,
  deep: Length,
  names: readonly [upper: string, end: string, lower: string] = ['upper', 'front-end', 'lower'],
): Outline => rectangle(half, deep, [...names, 'fold']);
