import { type Length, nm, times } from '../../length/length.ts';
import { box, line } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import type { Point } from '../../shape/outline.ts';

/** A buttonhole: the slit to cut, and the stitching round it. It lies level or upright, from one end to the other. */
export function slot(from: Point, to: Point, wide: Length): Drawn[] {
  const half = times(wide, 1 / 2);
  const [left, right] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
  const [top, bottom] = [Math.min(from.y, to.y), Math.max(from.y, to.y)];
  return [
    box('stitch', nm(left - half), nm(top - half), nm(right - left + wide), nm(bottom - top + wide)),
    line('cut', from, to),
  ];
}
