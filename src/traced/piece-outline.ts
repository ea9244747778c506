import { mm, nm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { flattenOutline, samePoint } from '../shape/flatten.ts';
import { boundingBox, signedArea } from '../shape/measure.ts';
import { sidesCross } from '../shape/offset-crossing.ts';
import type { Outline, OutlineEdge, Point, Segment } from '../shape/outline.ts';
import { edgesAt, type Place } from './corners.ts';
import type { Run } from './path-lines.ts';

/** How a closed line of a drawing becomes a piece. */
export interface Tracing {
  readonly run: Run;
  /** Its corners in order. */
  readonly corners: readonly Place[];
  /** The name of the edge that begins at a corner; each its own. */
  readonly named: (at: Place) => string;
  /** True size over the size in the drawing. */
  readonly scale: number;
  /** The corner at which the edge on the fold begins, where the piece is half of one. */
  readonly fold?: Place;
}

/** A piece taken out of a drawing: its outline, and where else on the drawing lies on it. */
export interface Traced {
  readonly outline: Outline;
  /** Where a place of the drawing is on the piece. */
  readonly at: (p: Point) => Point;
  /** A direction of the drawing on the piece, both in degrees clockwise from the upright, from -90 to 90. */
  readonly turned: (degrees: number) => number;
}

/** An edge on a fold may be bent by so much and still be meant straight. */
const STRAIGHT = mm(0.5);
/** As many stretches as a description takes for one edge. */
const MOST_STRETCHES = 2000;
/** Longer than any piece of cloth. */
const LARGEST = mm(30_000);
const SMALLEST = mm(5);

/** The same line through an angle, from -90 to 90 degrees. */
export const asLine = (degrees: number): number => {
  const half = ((degrees % 180) + 180) % 180;
  return half > 90 ? half - 180 : half;
};

const moved = (one: Segment, at: (p: Point) => Point): Segment =>
  one.kind === 'line'
    ? { kind: 'line', to: at(one.to) }
    : { kind: 'curve', first: at(one.first), second: at(one.second), to: at(one.to) };

/** An edge walked the other way. */
function backwards(start: Point, segments: readonly Segment[]): readonly Segment[] {
  return segments.map((_, k): Segment => {
    const i = segments.length - 1 - k;
    const one = segments[i];
    const to = segments[i - 1]?.to ?? start;
    return one?.kind === 'curve'
      ? { kind: 'curve', first: one.second, second: one.first, to }
      : { kind: 'line', to };
  });
}

/**
 * Makes the outline of a piece from a closed line of a drawing: at its true size, clockwise, its left upper corner at the
 * datum. Half of a piece is turned by the smallest angle that lays its fold upright, then moved on to x = 0; where it
 * would lie left of the fold it is mirrored, which makes no difference to the whole.
 *
 * Refused: fewer than three corners; a fold that is not straight or has the piece on both sides; an outline that crosses itself; one smaller than
 * 5 mm or larger than 30 m; an edge of more than 2000 stretches.
 */
export function traceOutline({ run, corners, named, scale, fold }: Tracing): Result<Traced, string> {
  if (!run.closed) return bad('This line does not close. Join its ends in the drawing program.');
  if (corners.length < 3)
    return bad('A piece needs at least three corners. Add some by touching the outline.');
  const box = boundingBox([run.start, ...run.segments.map(({ to }) => to)]);
  const size = Math.max(box.right - box.left, box.bottom - box.top) * scale;
  if (!(size >= SMALLEST && size <= LARGEST))
    return bad(
      'At this scale the piece is smaller than 5 mm or larger than 30 m. Give the true size of something in the drawing.',
    );
  const edges = edgesAt(run, corners).filter(({ segments }) => segments.length > 0);
  const folded = fold === undefined ? undefined : edges.find(({ at }) => at === fold);
  if (fold !== undefined && !folded) return bad('Touch the edge that lies on the fold.');

  let [turn, mirrored] = [0, false];
  if (folded) {
    const [a, b] = [folded.start, folded.segments.at(-1)?.to ?? folded.start];
    const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    const off = ({ x, y }: Point): number =>
      Math.abs((x - a.x) * (b.y - a.y) - (y - a.y) * (b.x - a.x)) / long;
    const bent = folded.segments.flatMap((one) =>
      one.kind === 'curve' ? [one.first, one.second, one.to] : [one.to],
    );
    if (bent.some((p) => off(p) * scale > STRAIGHT))
      return bad('The edge on the fold is not straight. Choose a straight one, or cut the piece out whole.');
    turn = (-asLine((Math.atan2(b.x - a.x, a.y - b.y) * 180) / Math.PI) * Math.PI) / 180;
  }
  const [cos, sin] = [Math.cos(turn) * scale, Math.sin(turn) * scale];
  const spun = ({ x, y }: Point) => ({ x: x * cos - y * sin, y: x * sin + y * cos });
  const flat = flattenOutline({ start: run.start, edges: [{ name: '', segments: run.segments }] });
  const corner = boundingBox(flat.map((p) => ({ x: nm(spun(p).x), y: nm(spun(p).y) })));
  let zeroX: number = corner.left;
  if (folded) {
    zeroX = (spun(folded.start).x + spun(folded.segments.at(-1)?.to ?? folded.start).x) / 2;
    mirrored = zeroX - corner.left > corner.right - zeroX;
    if (Math.min(zeroX - corner.left, corner.right - zeroX) > STRAIGHT)
      return bad('The piece lies on both sides of its fold. Choose an edge that all of it lies beside.');
  }
  const at = (p: Point): Point => {
    const { x, y } = spun(p);
    return { x: nm(mirrored ? zeroX - x : x - zeroX), y: nm(y - corner.top) };
  };
  const laid = edges.map((edge) => {
    // A hair off the fold is on it.
    const on = (p: Point): Point =>
      folded && [folded.start, folded.segments.at(-1)?.to].some((end) => end && samePoint(end, p))
        ? { ...at(p), x: nm(0) }
        : at(p);
    const segments = edge.segments.map((one) => {
      const made = moved(one, at);
      return { ...made, to: on(one.to) };
    });
    const [start, last] = [on(edge.start), segments.at(-1)];
    return {
      name: named(edge.at),
      start,
      segments: edge === folded && last ? [{ kind: 'line' as const, to: last.to }] : segments,
    };
  });
  const first = laid[0];
  if (!first) return bad('This line has no length.');
  const outline = clockwise(first.start, laid);
  const long = outline.edges.find(({ segments }) => segments.length > MOST_STRETCHES);
  if (long)
    return bad(
      `The edge ${long.name} has ${long.segments.length} stretches; at most ${MOST_STRETCHES} can be kept. Simplify the path in the drawing program.`,
    );
  if (sidesCross(flattenOutline(outline)))
    return bad('The outline crosses itself. Mend it in the drawing program, or choose another line.');
  return good({
    outline,
    at,
    turned: (degrees) => asLine((mirrored ? -1 : 1) * (degrees + (turn * 180) / Math.PI)),
  });
}

/** Edges round a shape as a screen shows it clockwise, whichever way they were drawn. */
function clockwise(start: Point, laid: readonly (OutlineEdge & { readonly start: Point })[]): Outline {
  const plain = { start, edges: laid.map(({ name, segments }) => ({ name, segments })) };
  if (signedArea(flattenOutline(plain)) >= 0) return plain;
  return {
    start,
    edges: laid
      .toReversed()
      .map((edge) => ({ name: edge.name, segments: backwards(edge.start, edge.segments) })),
  };
}

/** The lie of a line of a drawing from end to end, in degrees clockwise from the upright; nothing for a ring. */
export function lieOf({ start, segments }: Run): number | undefined {
  const end = segments.at(-1)?.to ?? start;
  return samePoint(start, end)
    ? undefined
    : asLine((Math.atan2(end.x - start.x, start.y - end.y) * 180) / Math.PI);
}
