import { type Refusal, refusal } from '../../cloth/refusal.ts';
import type { Length } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { edgeStarts, flattenEdge, flattenOutline, pointOf } from '../../shape/flatten.ts';
import { edgeLength } from '../../shape/measure.ts';
import { sidesCross } from '../../shape/offset-crossing.ts';
import type { Outline, OutlineEdge, Point, Segment } from '../../shape/outline.ts';

const MM = 1_000_000;

const endOf = (edge: OutlineEdge | undefined, otherwise: Point): Point =>
  edge?.segments.at(-1)?.to ?? otherwise;

/** The points of a path up to so far along it. */
function upTo(points: readonly Point[], far: number): readonly Point[] {
  const found: Point[] = [];
  let left = far;
  for (const [i, point] of points.entries()) {
    const last = points[i - 1];
    const step = last ? Math.hypot(point.x - last.x, point.y - last.y) : 0;
    if (last && step >= left) {
      const t = left / step;
      found.push(pointOf(last.x + t * (point.x - last.x), last.y + t * (point.y - last.y)));
      return found;
    }
    left -= step;
    found.push(point);
  }
  return found;
}

/** The direction into the piece, square to an edge at one of its ends. */
function inward(start: Point, { segments }: OutlineEdge, end: 'start' | 'end'): readonly [number, number] {
  const one = end === 'start' ? segments[0] : segments.at(-1);
  const from = end === 'start' ? start : (segments.at(-2)?.to ?? start);
  if (!one) return [0, 1];
  const [a, b] =
    one.kind === 'line' ? [from, one.to] : end === 'start' ? [from, one.first] : [one.second, one.to];
  const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  return [-(b.y - a.y) / long, (b.x - a.x) / long];
}

/** The same segments, drawn from `to` to `toEnd` instead of from `from` to their own end: wider and deeper, else alike. */
function redrawn(from: Point, segments: readonly Segment[], to: Point, toEnd: Point): readonly Segment[] {
  const end = segments.at(-1)?.to ?? from;
  const [dx, dy] = [end.x - from.x, end.y - from.y];
  const move = (p: Point): Point => {
    const [u, v] = [
      Math.abs(dx) < MM ? undefined : (p.x - from.x) / dx,
      Math.abs(dy) < MM ? undefined : (p.y - from.y) / dy,
    ];
    return pointOf(to.x + (u ?? v ?? 0) * (toEnd.x - to.x), to.y + (v ?? u ?? 0) * (toEnd.y - to.y));
  };
  return segments.map(
    (one): Segment =>
      one.kind === 'line'
        ? { kind: 'line', to: move(one.to) }
        : { kind: 'curve', first: move(one.first), second: move(one.second), to: move(one.to) },
  );
}

/** The same segments the other way. */
export function turnedRound(from: Point, segments: readonly Segment[]): readonly Segment[] {
  const starts = [from, ...segments.map((one) => one.to)];
  return segments
    .map((one, i): Segment => {
      const to = starts[i] ?? from;
      return one.kind === 'line'
        ? { kind: 'line', to }
        : { kind: 'curve', first: one.second, second: one.first, to };
    })
    .toReversed();
}

const lines = (points: readonly Point[]): readonly Segment[] =>
  points.slice(1).map((to) => ({ kind: 'line', to }));

/**
 * The outline of a facing: it follows some edges of a piece exactly, is so wide everywhere, and keeps the names of the
 * piece's edges where it meets the same seams; its free edge is `outer`, an end that meets none is `end`. Refused where
 * the edges do not lie end to end, or the facing is so wide that it would cross itself.
 */
export function facingOutline(
  outline: Outline,
  names: ReadonlySet<string>,
  wide: Length,
): Result<Outline, Refusal> {
  const { edges } = outline;
  const starts = edgeStarts(outline);
  const startOf = (edge: OutlineEdge | undefined): Point => starts.get(edge?.name ?? '') ?? outline.start;
  const first = edges.findIndex((edge, i) => names.has(edge.name) && !names.has(edges.at(i - 1)?.name ?? ''));
  const round = edges.map((_, i) => edges[(first + i) % edges.length]).flatMap((one) => one ?? []);
  const covered = round.slice(0, names.size);
  if (first < 0 || !covered.every((edge) => names.has(edge.name)))
    return bad(
      refusal('at.edges', 'These edges do not lie end to end on one piece.', 'Choose one run of edges.'),
    );
  const before = edges.at(first - 1);
  const after = round[names.size];
  const [from, to] = [startOf(covered[0]), endOf(covered.at(-1), outline.start)];
  if (!before || !after) return bad(refusal('at.edges', 'Nothing is left beside it.', 'Choose fewer edges.'));
  const tooWide = refusal('width', 'So wide a facing would cross itself here.', 'Write a narrower facing.');
  if (before === after && edgeLength(startOf(before), before) <= 2 * wide) return bad(tooWide);

  const path = (edge: OutlineEdge): readonly Point[] => flattenEdge(startOf(edge), edge);
  /** From an end of the run into the piece: along the next edge, or straight in where that one is too short. */
  const into = (beside: OutlineEdge, way: 'start' | 'end') => {
    const along = way === 'end' ? path(beside) : path(beside).toReversed();
    if (edgeLength(startOf(beside), beside) + 1000 >= wide)
      return { name: beside.name, points: upTo(along, wide) };
    const [own] = way === 'end' ? covered.slice(-1) : covered;
    const [nx, ny] = own ? inward(startOf(own), own, way) : [0, 1];
    const corner = way === 'end' ? to : from;
    return { name: 'end', points: [corner, pointOf(corner.x + wide * nx, corner.y + wide * ny)] };
  };
  const begins = into(before, 'start');
  const ends = into(after, 'end');

  // Edges with a corner between them are drawn inside it each for itself; one shorter than the facing is wide goes with its neighbour.
  const groups: { readonly from: Point; readonly segments: Segment[]; corner?: Point }[] = [];
  for (const [i, edge] of covered.entries()) {
    const here = startOf(edge);
    const last = covered[i - 1];
    const [n, m] = [last && inward(startOf(last), last, 'end'), inward(here, edge, 'start')];
    const flat = n ? n[0] * m[0] + n[1] * m[1] : 1;
    const open = groups.at(-1);
    if (open && flat > 0.85) {
      open.segments.push(...edge.segments);
      continue;
    }
    const k = wide / Math.max(0.2, 1 + flat);
    const corner = n && pointOf(here.x + k * (n[0] + m[0]), here.y + k * (n[1] + m[1]));
    groups.push({ from: here, segments: [...edge.segments], ...(corner ? { corner } : {}) });
  }
  const start = begins.points.at(-1) ?? from;
  const finish = ends.points.at(-1) ?? to;
  const inner = groups.flatMap((group, i) => [
    ...redrawn(group.from, group.segments, group.corner ?? start, groups[i + 1]?.corner ?? finish),
  ]);
  const made: Outline = {
    start: from,
    edges: [
      ...covered,
      { name: ends.name, segments: lines(ends.points) },
      { name: 'outer', segments: turnedRound(start, inner) },
      {
        name: begins.name === ends.name ? 'other-end' : begins.name,
        segments: lines(begins.points.toReversed()),
      },
    ],
  };
  return sidesCross(flattenOutline(made)) ? bad(tooWide) : good(made);
}
