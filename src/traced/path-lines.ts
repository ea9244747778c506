import { SVGPathData, SVGPathDataTransformer } from 'svg-pathdata';
import { mm, NM_PER_MM } from '../length/length.ts';
import { samePoint } from '../shape/flatten.ts';
import { boundingBox } from '../shape/measure.ts';
import type { Point, Segment } from '../shape/outline.ts';
import type { Matrix } from './matrix.ts';

/** One line of a drawing: where it begins and how it runs on. A closed one ends where it began. */
export interface Run {
  readonly start: Point;
  readonly segments: readonly Segment[];
  readonly closed: boolean;
}

/** Nothing that is sewn lies further off than this from anything else, in mm. */
const FARTHEST = 1_000_000;

/** A gap smaller than this part of a line's size is a slip of the drawing program, and closed. */
const GAP = 1 / 10_000;

class Unreadable extends Error {}

function closedUp(start: Point, segments: Segment[], asked: boolean): Run {
  const last = segments.at(-1);
  if (!last) return { start, segments, closed: false };
  const box = boundingBox([start, ...segments.map(({ to }) => to)]);
  const near = Math.max(box.right - box.left, box.bottom - box.top) * GAP;
  const gap = Math.hypot(last.to.x - start.x, last.to.y - start.y);
  const closed = asked || (gap <= near && (segments.length > 1 || last.kind === 'curve'));
  if (closed && gap > 0) {
    if (gap <= near) segments[segments.length - 1] = { ...last, to: start };
    else segments.push({ kind: 'line', to: start });
  }
  return { start, segments, closed };
}

/**
 * Reads path data into lines of straight stretches and cubic curves, moved by a matrix into millimetres. Arcs and
 * quadratic curves become cubic ones. Nothing where it cannot be read, or lies further off than any cloth.
 * @param most how many stretches there may be
 */
export function pathLines(data: string, to: Matrix, most: number): readonly Run[] | undefined {
  const at = (x: number, y: number): Point => {
    if (!(Math.abs(x) <= FARTHEST && Math.abs(y) <= FARTHEST)) throw new Unreadable();
    return { x: mm(x), y: mm(y) };
  };
  const runs: Run[] = [];
  let [count, open]: [number, boolean] = [0, false];
  let start = at(0, 0);
  let segments: Segment[] = [];
  const end = (asked: boolean): void => {
    if (segments.length > 0) runs.push(closedUp(start, segments, asked));
    segments = [];
    open = false;
  };
  const add = (segment: Segment): void => {
    const from = segments.at(-1)?.to ?? start;
    const still =
      samePoint(from, segment.to) &&
      (segment.kind === 'line' || (samePoint(from, segment.first) && samePoint(from, segment.second)));
    if (!still) segments.push(segment);
    if (++count > most) throw new Unreadable();
  };
  try {
    const { commands } = new SVGPathData(data)
      .toAbs()
      .transform(SVGPathDataTransformer.NORMALIZE_HVZ(false, true, true, false))
      .normalizeST()
      .qtToC()
      .aToC()
      .matrix(...to);
    for (const command of commands) {
      if (command.type === SVGPathData.MOVE_TO) {
        end(false);
        start = at(command.x, command.y);
        open = true;
      } else if (command.type === SVGPathData.CLOSE_PATH) end(open || segments.length > 0);
      else if (command.type === SVGPathData.LINE_TO) add({ kind: 'line', to: at(command.x, command.y) });
      else if (command.type === SVGPathData.CURVE_TO) {
        add({
          kind: 'curve',
          first: at(command.x1, command.y1),
          second: at(command.x2, command.y2),
          to: at(command.x, command.y),
        });
      } else throw new Unreadable();
    }
    end(false);
  } catch {
    // The library's words are about letters of the path data, which no maker has seen.
    return undefined;
  }
  return runs.filter((run) => sizeOf(run) > NM_PER_MM / 100);
}

const sizeOf = ({ start, segments }: Run): number => {
  const { left, right, top, bottom } = boundingBox([
    start,
    ...segments.flatMap((one) => (one.kind === 'curve' ? [one.first, one.second, one.to] : [one.to])),
  ]);
  return Math.max(right - left, bottom - top);
};
