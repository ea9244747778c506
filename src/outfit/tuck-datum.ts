import { directionOf } from '../shape/clip.ts';
import { edgeStarts, flattenOutline } from '../shape/flatten.ts';
import { boundingBox } from '../shape/measure.ts';
import type { Point } from '../shape/outline.ts';
import type { Piece } from './outfit.ts';

/** Where tucks are measured from, and which way they follow each other. */
export interface TuckDatum {
  readonly corner: Point;
  /** Unit vector across the tucks, into the piece. */
  readonly across: { readonly x: number; readonly y: number };
  /** The same way in degrees from rightwards, turning downwards. */
  readonly degrees: number;
  /** In words: `the opening edge`, or the end of an edge where the tucks run aslant to it. */
  readonly say: string;
}

/** The end of the edge `from` that most of the piece lies beyond, measured square to the tucks. */
export function tuckDatum(piece: Piece, angle: number, from: string): TuckDatum {
  const box = boundingBox(flattenOutline(piece.outline));
  const middle = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  const start = edgeStarts(piece.outline).get(from) ?? piece.outline.start;
  const end = piece.outline.edges.find((edge) => edge.name === from)?.segments.at(-1)?.to ?? start;
  const square = directionOf(angle);
  const beyond = (corner: Point, way: number): number =>
    way * ((middle.x - corner.x) * square.x + (middle.y - corner.y) * square.y);
  let best = { corner: start, way: 1 };
  for (const corner of [start, end]) {
    for (const way of [1, -1])
      if (beyond(corner, way) > beyond(best.corner, best.way) + 1) best = { corner, way };
  }
  const long = Math.hypot(end.x - start.x, end.y - start.y) || 1;
  const lean = Math.abs(((end.x - start.x) * square.x + (end.y - start.y) * square.y) / long);
  const edge = `the ${from.replaceAll('-', ' ')} edge`;
  const upright = Math.abs(end.y - start.y) > Math.abs(end.x - start.x);
  const other = best.corner === start ? end : start;
  const which = upright
    ? best.corner.y < other.y
      ? 'upper'
      : 'lower'
    : best.corner.x < other.x
      ? 'left'
      : 'right';
  return {
    corner: best.corner,
    across: { x: best.way * square.x, y: best.way * square.y },
    degrees: best.way === 1 ? angle : angle + 180,
    say: lean < 0.3 ? edge : `the ${which} end of ${edge}, square to the tucks`,
  };
}
