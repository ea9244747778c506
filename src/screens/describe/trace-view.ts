import { type Length, NM_PER_MM, nm } from '../../length/length.ts';
import { flattenEdge } from '../../shape/flatten.ts';
import type { Box } from '../../shape/measure.ts';
import type { Point, Segment } from '../../shape/outline.ts';
import { pointAt } from '../../traced/corners.ts';
import type { DrawnLine } from '../../traced/drawing.ts';

const round = (n: number): number => Math.round(n / (NM_PER_MM / 1000)) / 1000;

/** The points of a run as the path of our own drawing, in millimetres. */
export function pathOf(start: Point, segments: readonly Segment[], closed = false): string {
  const to = ({ x, y }: Point): string => `${round(x)} ${round(y)}`;
  const parts = segments.map((one) =>
    one.kind === 'line' ? `L${to(one.to)}` : `C${to(one.first)} ${to(one.second)} ${to(one.to)}`,
  );
  return `M${to(start)}${parts.join('')}${closed ? 'Z' : ''}`;
}

/** A window on a drawing, in millimetres, with room round it. */
export interface View {
  readonly box: string;
  /** About one pixel on a phone. */
  readonly pixel: number;
}

/** The window that shows a box. */
export function viewOf({ left, top, right, bottom }: Box): View {
  const [wide, high] = [(right - left) / NM_PER_MM, (bottom - top) / NM_PER_MM];
  const side = Math.max(wide, high, 0.01);
  const rim = side / 14;
  return {
    box: [left / NM_PER_MM - rim, top / NM_PER_MM - rim, wide + 2 * rim, high + 2 * rim]
      .map((n) => Math.round(n * 1000) / 1000)
      .join(' '),
    pixel: side / 330,
  };
}

/** Where a drawing was touched, and how long a pixel is there. */
export function touched(event: MouseEvent): { readonly at: Point; readonly pixel: Length } | undefined {
  const svg =
    event.currentTarget instanceof SVGElement
      ? (event.currentTarget.ownerSVGElement ?? event.currentTarget)
      : undefined;
  const matrix = svg instanceof SVGSVGElement ? svg.getScreenCTM() : null;
  if (!matrix) return undefined;
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return { at: { x: nm(x * NM_PER_MM), y: nm(y * NM_PER_MM) }, pixel: nm(NM_PER_MM / (matrix.a || 1)) };
}

/** The middle of a run of stretches, by its length. */
export function halfWay(start: Point, segments: readonly Segment[]): Point {
  const run = flattenEdge(start, { name: '', segments });
  const long = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);
  let left = run.reduce((sum, p, i) => sum + long(run[i - 1] ?? p, p), 0) / 2;
  for (const [i, b] of run.entries()) {
    const a = run[i - 1];
    if (!a) continue;
    const step = long(a, b);
    if (left <= step && step > 0)
      return { x: nm(a.x + ((b.x - a.x) * left) / step), y: nm(a.y + ((b.y - a.y) * left) / step) };
    left -= step;
  }
  return start;
}

/** The point that is meant by a touch: an end of a stretch near it, else the touch itself. */
export function snapped(lines: readonly DrawnLine[], at: Point, within: number): Point {
  let best = { point: at, away: within };
  for (const line of lines) {
    for (const i of [...line.segments.keys(), ...(line.closed ? [] : [-1])]) {
      const point =
        i < 0 ? line.start : line.closed ? pointAt(line, i) : (line.segments[i]?.to ?? line.start);
      const away = Math.hypot(point.x - at.x, point.y - at.y);
      if (away < best.away) best = { point, away };
    }
  }
  return best.point;
}

/** A point in millimetres for an attribute. */
export const mmOf = ({ x, y }: Point): { readonly x: number; readonly y: number } => ({
  x: round(x),
  y: round(y),
});

/** A small cross at a point, with arms of so many millimetres. */
export function crossAt(at: Point, arm: number): string {
  const { x, y } = mmOf(at);
  return `M${x - arm} ${y}h${2 * arm}M${x} ${y - arm}v${2 * arm}`;
}
