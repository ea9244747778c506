import { mm, toMm } from '../length/length.ts';
import { flattenEdge } from '../shape/flatten.ts';
import type { Outline } from '../shape/outline.ts';

/** A place on the drawing, in millimetres of cloth; x to the right, y downwards. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A box round something drawn. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** An edge as spots along it, close enough together to look smooth. */
export interface DrawnEdge {
  readonly name: string;
  readonly spots: readonly Spot[];
}

/** Straight enough for a drawing a few centimetres high. */
const tolerance = mm(1.5);

/** The edges of an outline as spots, in order round it. */
export function drawEdges(outline: Outline): DrawnEdge[] {
  let from = outline.start;
  return outline.edges.map((edge) => {
    const points = flattenEdge(from, edge, tolerance);
    from = points[points.length - 1] ?? from;
    return { name: edge.name, spots: points.map((p) => ({ x: toMm(p.x), y: toMm(p.y) })) };
  });
}

/** The same edges on the other side of the fold, where x is 0. */
export const mirror = (edges: readonly DrawnEdge[]): DrawnEdge[] =>
  edges.map((edge) => ({ name: edge.name, spots: edge.spots.map(({ x, y }) => ({ x: -x, y })) }));

/** The smallest box round all spots; an empty box at the origin where there are none. */
export function boxRound(spots: Iterable<Spot>): Box {
  let box: Box | undefined;
  for (const { x, y } of spots) {
    box = box
      ? {
          left: Math.min(box.left, x),
          top: Math.min(box.top, y),
          right: Math.max(box.right, x),
          bottom: Math.max(box.bottom, y),
        }
      : { left: x, top: y, right: x, bottom: y };
  }
  return box ?? { left: 0, top: 0, right: 0, bottom: 0 };
}

/** The spot half way along a run of spots, by length; the origin for an empty run. */
export function halfWay(spots: readonly Spot[]): Spot {
  const first = spots[0];
  if (first === undefined) return { x: 0, y: 0 };
  const legs = spots.slice(1).map((to, i) => {
    const from = spots[i] ?? first;
    return { from, to, size: Math.hypot(to.x - from.x, to.y - from.y) };
  });
  let left = legs.reduce((sum, leg) => sum + leg.size, 0) / 2;
  for (const leg of legs) {
    if (left <= leg.size && leg.size > 0) {
      const t = left / leg.size;
      return { x: leg.from.x + (leg.to.x - leg.from.x) * t, y: leg.from.y + (leg.to.y - leg.from.y) * t };
    }
    left -= leg.size;
  }
  return first;
}

const short = (n: number): string => String(Math.round(n * 10) / 10);

/** SVG path data through the spots after `put` has placed each on the page. */
export function pathThrough(spots: readonly Spot[], put: (s: Spot) => Spot): string {
  return spots
    .map((s, i) => {
      const { x, y } = put(s);
      return `${i === 0 ? 'M' : 'L'}${short(x)} ${short(y)}`;
    })
    .join('');
}
