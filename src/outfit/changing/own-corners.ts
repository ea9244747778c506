import { nm } from '../../length/length.ts';
import { type ReadingUnit, readLength } from '../../length/reading.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { flattenOutline, samePoint } from '../../shape/flatten.ts';
import { outlineArea } from '../../shape/measure.ts';
import { sidesCross } from '../../shape/offset-crossing.ts';
import type { Outline, OutlineEdge, Point, Segment } from '../../shape/outline.ts';
import { FOLD } from '../chains.ts';
import { point, straight } from '../units/rectangle.ts';

/** Corners of a piece are not more than this: what is drawn finer comes from a drawing program. */
const MOST_CORNERS = 200;

/** An edge name as files spell it: `Front edge` gives `front-edge`. */
export const edgeSpelled = (name: string): string =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 64);

/** How far down, and the name of an edge after it: ` 4 1/2 in front seam`. */
const CORNER_DOWN = /^([-\d./\s⁄¼-¾⅐-⅞]+(?:(?:in|mm|cm|m)\b|["″])?)\s*([a-z][a-z0-9 -]*)?$/i;

/** Corners typed one a line: `0, 4 1/2 front`. An edge without a name is called `edge-1`, `edge-2`. */
export function readCorners(text: string, unit: ReadingUnit): Result<Outline, string> {
  const corners: { readonly at: Point; readonly name: string }[] = [];
  const lines = text
    .split('\n')
    .map((line) => line.trim())
    .filter(Boolean);
  if (lines.length < 3)
    return bad('A piece has at least three corners; write one a line, such as “0, 4 1/2”.');
  if (lines.length > MOST_CORNERS)
    return bad(`There are more than ${MOST_CORNERS} corners; bring in such a piece from a drawing program.`);
  for (const [i, line] of lines.entries()) {
    const [, across, rest] =
      /^([^,;]+)[,;](.+)$/.exec(line.includes(';') ? line.replaceAll(',', '.') : line) ?? [];
    const [, down, name = ''] = CORNER_DOWN.exec(rest ?? '') ?? [];
    const [x, y] = [readLength(across ?? '', unit), readLength(down ?? '', unit)];
    if (!x.ok || !y.ok)
      return bad(
        `“${line}” is not a corner; write how far across, a comma, how far down, such as “0, 4 1/2 front”.`,
      );
    corners.push({ at: point(x.value, y.value), name: edgeSpelled(name) || `edge-${i + 1}` });
  }
  const [first] = corners;
  if (!first) return bad('No corner is written.');
  const twice = corners.find(({ name }, i) => corners.findIndex((one) => one.name === name) !== i);
  if (twice) return bad(`Two edges are called “${twice.name}”; give one of them another name.`);
  const fold = corners.findIndex(({ name }) => name === FOLD);
  const ends = fold < 0 ? [] : [corners[fold], corners[(fold + 1) % corners.length]];
  if (ends.some((one) => one?.at.x !== 0))
    return bad('The edge “fold” lies where across is 0; move the piece sideways until it does.');
  return sound({
    start: first.at,
    edges: corners.map(({ name }, i) => straight(name, (corners[i + 1] ?? first).at)),
  });
}

/** Refuses an outline that encloses nothing, has an edge without length or crosses itself. */
function sound(outline: Outline): Result<Outline, string> {
  let from = outline.start;
  for (const edge of outline.edges) {
    const to = edge.segments.at(-1)?.to ?? from;
    if (edge.segments.length === 1 && edge.segments[0]?.kind === 'line' && samePoint(from, to))
      return bad(`The edge “${edge.name.replaceAll('-', ' ')}” has no length; move one of its ends.`);
    from = to;
  }
  if (sidesCross(flattenOutline(outline)))
    return bad('The outline crosses itself; put its corners in order round the piece.');
  // A square millimetre is less than any cloth that is cut.
  if (outlineArea(outline) < 1) return bad('These corners enclose nothing; they lie in one line.');
  return good(outline);
}

/** The corner at which each edge begins, in order round the piece. */
export function cornersOf(outline: Outline): readonly { readonly edge: string; readonly at: Point }[] {
  let from = outline.start;
  return outline.edges.map(({ name, segments }) => {
    const corner = { edge: name, at: from };
    from = segments.at(-1)?.to ?? from;
    return corner;
  });
}

/** What is wrong with moving a corner, and the edge that begins there. */
export interface CornerFault {
  readonly edge: string;
  readonly say: string;
}

/**
 * The outline with corners moved, each named by the edge that begins there; the curves that meet there keep their lean.
 * Refused where the outline would then cross itself, an edge would have no length, or a corner of the fold would leave it.
 */
export function moveCorners(
  outline: Outline,
  to: ReadonlyMap<string, Point>,
): Result<Outline, readonly CornerFault[]> {
  const corners = cornersOf(outline);
  const faults: CornerFault[] = [];
  for (const [edge, { x }] of to) {
    const i = corners.findIndex((one) => one.edge === edge);
    const corner = corners[i];
    if (!corner) faults.push({ edge, say: `There is no edge “${edge}” on this piece.` });
    else if ((edge === FOLD || corners.at(i - 1)?.edge === FOLD) && x !== corner.at.x)
      faults.push({
        edge,
        say: 'This corner lies on the fold, where across is 0; move it up or down only.',
      });
  }
  if (faults.length > 0) return bad(faults);
  const moved = corners.map(({ edge, at }) => to.get(edge) ?? at);
  const shift = (p: Point, i: number): Point => {
    const [was, now] = [corners[i]?.at ?? p, moved[i] ?? p];
    return point(nm(p.x + now.x - was.x), nm(p.y + now.y - was.y));
  };
  const edges = outline.edges.map((edge, i): OutlineEdge => {
    const [next, last] = [(i + 1) % corners.length, edge.segments.length - 1];
    const segments = edge.segments.map((segment, s): Segment => {
      const to = s === last ? shift(segment.to, next) : segment.to;
      return segment.kind === 'line'
        ? { kind: 'line', to }
        : {
            kind: 'curve',
            first: s === 0 ? shift(segment.first, i) : segment.first,
            second: s === last ? shift(segment.second, next) : segment.second,
            to,
          };
    });
    return { ...edge, segments };
  });
  const made = sound({ start: moved[0] ?? outline.start, edges });
  const [edge = ''] = to.keys();
  return made.ok ? made : bad([{ edge, say: made.error }]);
}
