import { nm } from '../length/length.ts';
import type { Box } from '../shape/measure.ts';
import type { Point } from '../shape/outline.ts';
import { type Ink, reachOf } from './ink.ts';
import { phaseAfter } from './pens.ts';

/** The part of a straight line from `a` to `b` that lies in a box, as shares of the way; nothing where it misses. */
export function shareInBox(a: Point, b: Point, box: Box): readonly [number, number] | undefined {
  let [from, to] = [0, 1];
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  for (const [step, low, high] of [
    [dx, box.left - a.x, box.right - a.x],
    [dy, box.top - a.y, box.bottom - a.y],
  ] as const) {
    if (step === 0) {
      if (low > 0 || high < 0) return undefined;
      continue;
    }
    from = Math.max(from, Math.min(low / step, high / step));
    to = Math.min(to, Math.max(low / step, high / step));
  }
  return from <= to ? [from, to] : undefined;
}

/** A run of a clipped line, and how far along the whole line it begins, in nanometres. */
export interface Run {
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly after: number;
}

/**
 * A line of straight parts clipped to a box. The edge belongs to the box. A closed line that lies wholly inside
 * stays closed; a run that only touches the box in one spot is left out.
 */
export function clipToBox(points: readonly Point[], closed: boolean, box: Box): readonly Run[] {
  const inside = (p: Point): boolean =>
    p.x >= box.left && p.x <= box.right && p.y >= box.top && p.y <= box.bottom;
  if (points.every(inside)) return points.length < 2 ? [] : [{ points, closed, after: 0 }];
  const runs: { points: Point[]; closed: false; after: number }[] = [];
  let open: Point[] | undefined;
  let gone = 0;
  const [start] = points;
  const walked = closed && start ? [...points, start] : points;
  for (const [i, b] of walked.entries()) {
    const a = walked[i - 1];
    if (!a) continue;
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    const share = shareInBox(a, b, box);
    if (share) {
      const at = (t: number): Point =>
        t === 0 ? a : t === 1 ? b : { x: nm(a.x + (b.x - a.x) * t), y: nm(a.y + (b.y - a.y) * t) };
      const [from, to] = share;
      if (!open || from > 0) {
        open = [at(from)];
        runs.push({ points: open, closed: false, after: gone + long * from });
      }
      if (to > from) open.push(at(to));
      if (to < 1) open = undefined;
    } else open = undefined;
    gone += long;
  }
  return runs.filter((run) => run.points.length > 1);
}

const apart = (ink: Ink, box: Box): boolean => {
  const points = reachOf(ink);
  return (
    points.every((p) => p.x < box.left) ||
    points.every((p) => p.x > box.right) ||
    points.every((p) => p.y < box.top) ||
    points.every((p) => p.y > box.bottom)
  );
};

/**
 * Ink as far as it stands in a box: lines are clipped and keep their dashes; words and filled shapes are kept whole
 * where they reach into it, and the window's own edge hides the rest.
 */
export const inkInBox = (ink: readonly Ink[], box: Box): readonly Ink[] =>
  ink.flatMap((one): readonly Ink[] => {
    if (apart(one, box)) return [];
    if (one.kind !== 'line') return [one];
    return clipToBox(one.points, one.closed, box).map((run) => ({
      ...one,
      points: run.points,
      closed: run.closed,
      phase: phaseAfter(one.pen, nm(one.phase + run.after)),
    }));
  });
