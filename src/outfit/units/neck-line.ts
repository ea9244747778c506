import { type Length, nm } from '../../length/length.ts';
import { edgeStarts, flattenEdge, pointOf } from '../../shape/flatten.ts';
import { pathLength } from '../../shape/measure.ts';
import type { Outline, OutlineEdge, Point, Segment } from '../../shape/outline.ts';
import { FOLD, type Looked, link, lookUp } from '../chains.ts';
import type { Chain, EdgeRef, Garment, Piece } from '../outfit.ts';
import { mate } from './runs.ts';

/** A line along curves: where it begins, and its stretches in turn. */
export interface Path {
  readonly start: Point;
  readonly segments: readonly Segment[];
}

/** As fine as an edge is measured. */
const FINE = nm(1000);

/** Points along a path. */
export const pointsOn = ({ start, segments }: Path): readonly Point[] =>
  flattenEdge(start, { name: '', segments }, FINE);

/** How long a path is. */
export const longOf = (path: Path): Length => pathLength(pointsOn(path));

/** The same path from its other end. */
export function backwards({ start, segments }: Path): Path {
  const corners = [start, ...segments.map((segment) => segment.to)];
  return {
    start: corners.at(-1) ?? start,
    segments: segments
      .map((segment, i): Segment => {
        const to = corners[i] ?? start;
        return segment.kind === 'line'
          ? { kind: 'line', to }
          : { kind: 'curve', first: segment.second, second: segment.first, to };
      })
      .toReversed(),
  };
}

/** A place along a path, so far from its start, and which way the path runs there. */
export interface OnPath {
  readonly at: Point;
  readonly way: { readonly x: number; readonly y: number };
}

/** Places along points, so far from the first. */
export function along(points: readonly Point[], far: number): OnPath {
  let gone = 0;
  let best: OnPath = { at: points[0] ?? pointOf(0, 0), way: { x: 1, y: 0 } };
  for (const [i, b] of points.entries()) {
    const a = points[i - 1];
    if (!a) continue;
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    if (long === 0) continue;
    const t = Math.min(1, Math.max(0, (far - gone) / long));
    const way = { x: (b.x - a.x) / long, y: (b.y - a.y) / long };
    best = { at: pointOf(a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t), way };
    if (gone + long >= far) break;
    gone += long;
  }
  return best;
}

/** A curve through points in turn, as smooth as they lie; `ahead` is a point that it would come from. */
export function through(points: readonly Point[], ahead?: Point): readonly Segment[] {
  return points.slice(1).map((to, i): Segment => {
    const from = points[i] ?? to;
    const before = points[i - 1] ?? ahead ?? from;
    const after = points[i + 2] ?? to;
    return {
      kind: 'curve',
      first: pointOf(from.x + (to.x - before.x) / 6, from.y + (to.y - before.y) / 6),
      second: pointOf(to.x - (after.x - from.x) / 6, to.y - (after.y - from.y) / 6),
      to,
    };
  });
}

/** A move of a piece on the table: turned, perhaps turned over, and laid somewhere. */
type Move = (point: Point) => Point;
interface Vector {
  readonly x: number;
  readonly y: number;
}

const cross = (a: Vector, b: Vector): number => a.x * b.y - a.y * b.x;
const less = (a: Point, b: Point): Vector => ({ x: a.x - b.x, y: a.y - b.y });

/** Lays `corner` on `on` and turns `way` into `toward`; `over` turns the piece over first. */
function laying(corner: Point, way: Vector, on: Point, toward: Vector, over: boolean): Move {
  const flip = over ? -1 : 1;
  const angle = Math.atan2(toward.y, toward.x) - Math.atan2(way.y, way.x * flip);
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return (point) => {
    const [x, y] = [(point.x - corner.x) * flip, point.y - corner.y];
    return pointOf(on.x + x * c - y * s, on.y + x * s + y * c);
  };
}

const moved = (path: Path, move: Move): Path => ({
  start: move(path.start),
  segments: path.segments.map((segment) =>
    segment.kind === 'line'
      ? { kind: 'line', to: move(segment.to) }
      : { kind: 'curve', first: move(segment.first), second: move(segment.second), to: move(segment.to) },
  ),
});

function edgePath(outline: Outline, name: string): Path | undefined {
  const edge: OutlineEdge | undefined = outline.edges.find((one) => one.name === name);
  const start = edgeStarts(outline).get(name);
  return edge && start ? { start, segments: edge.segments } : undefined;
}

/** One edge of the run with the edges of its piece that the pieces beside it are sewn to. */
interface Laid {
  readonly piece: Piece;
  /** Along the run, from the centre outwards. */
  readonly path: Path;
  /** Far end of the edge that it is sewn by on the side of the centre. */
  readonly inner: Point;
  /** The same at the end away from the centre; none at the front. */
  readonly outer: Point | undefined;
}

/** The edge of `ref`'s piece, beside it, at which it meets the next one of the run. */
function meetingEdge(looked: Looked, ref: EdgeRef, next: EdgeRef): string | undefined {
  const beside: readonly string[] = looked.beside.get(`${ref.piece}.${ref.edge}`) ?? [];
  const over = link(looked, ref, next, false);
  if (over === 'one') return ref.edge === next.edge && beside.includes(FOLD) ? FOLD : undefined;
  const [join] = over;
  return beside.find((edge) =>
    [...(join?.this ?? []), ...(join?.to ?? [])].some((one) => one.piece === ref.piece && one.edge === edge),
  );
}

function laid(looked: Looked, ref: EdgeRef, before: EdgeRef, after: EdgeRef | undefined): Laid | undefined {
  const piece = looked.pieces.get(ref.piece);
  const inner = meetingEdge(looked, ref, before);
  const outer = after && meetingEdge(looked, ref, after);
  const path = piece && edgePath(piece.outline, ref.edge);
  const innerPath = piece && inner !== undefined ? edgePath(piece.outline, inner) : undefined;
  const outerPath = piece && outer !== undefined ? edgePath(piece.outline, outer) : undefined;
  if (!piece || !path || !innerPath || (after && !outerPath)) return undefined;
  const last = path.segments.at(-1)?.to ?? path.start;
  const starts = (one: Path) => [one.start, one.segments.at(-1)?.to ?? one.start];
  const same = (a: Point, b: Point | undefined) => b !== undefined && Math.hypot(a.x - b.x, a.y - b.y) < 1000;
  const fromStart = starts(innerPath).some((point) => same(path.start, point));
  const turned = fromStart ? path : backwards(path);
  const [near, far] = fromStart ? [path.start, last] : [last, path.start];
  const away = (one: Path, corner: Point): Point => {
    const [a = corner, b = corner] = starts(one);
    return same(corner, a) ? b : a;
  };
  return { piece, path: turned, inner: away(innerPath, near), outer: outerPath && away(outerPath, far) };
}

/**
 * Half of a run that is alike on both sides, as it lies when the pieces are laid seam to seam on the table: from the
 * centre, which lies on the datum with the body above it, to the front on the right.
 *
 * @param overlap how far the pieces lie over each other at the far ends of the seams between them
 * @returns none where the run is not alike on both sides, or its edges do not follow each other round their pieces
 */
export function neckLine(garment: Garment, run: Chain, overlap: Length): Path | undefined {
  const looked = lookUp(garment);
  const n = run.length / 2;
  const half = run.slice(0, n).toReversed();
  const alike = run.every((ref, i) => {
    const other = run[run.length - 1 - i];
    return (
      other !== undefined && other.piece === ref.piece && other.edge === ref.edge && other.other !== ref.other
    );
  });
  const [centre] = half;
  if (!Number.isInteger(n) || !alike || !centre) return undefined;
  let line: Path | undefined;
  let last: { readonly laid: Laid; readonly move: Move } | undefined;
  for (const [i, ref] of half.entries()) {
    const now = laid(looked, ref, half[i - 1] ?? mate(ref), half[i + 1]);
    if (!now) return undefined;
    const corner = now.path.start;
    const end = now.path.segments.at(-1)?.to ?? corner;
    const way = less(now.inner, corner);
    const on = line ? (line.segments.at(-1)?.to ?? line.start) : pointOf(0, 0);
    let toward: Vector = { x: 0, y: -1 };
    let side = 1;
    if (last?.laid.outer) {
      const seam = less(last.move(last.laid.outer), on);
      const body = less(last.move(last.laid.path.start), on);
      // Beyond the seam from the piece before, and turned towards it by as much as the two overlap.
      side = -Math.sign(cross(seam, body));
      const turn = (-side * overlap) / (Math.hypot(seam.x, seam.y) || 1);
      toward = {
        x: seam.x * Math.cos(turn) - seam.y * Math.sin(turn),
        y: seam.x * Math.sin(turn) + seam.y * Math.cos(turn),
      };
    }
    const over = [false, true].find((one) => {
      const move = laying(corner, way, on, toward, one);
      return Math.sign(cross(toward, less(move(end), on))) === side;
    });
    const move = laying(corner, way, on, toward, over ?? false);
    const placed = moved(now.path, move);
    line = line ? { start: line.start, segments: [...line.segments, ...placed.segments] } : placed;
    last = { laid: now, move };
  }
  return line;
}
