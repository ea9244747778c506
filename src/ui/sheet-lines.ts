import { NM_PER_MM } from '../length/length.ts';
import type { Drawn, PatternSheet, Stroke } from '../paper/pattern-sheet.ts';
import type { Point } from '../shape/outline.ts';

/** What a sheet takes up, in millimetres. */
export interface Extent {
  readonly left: number;
  readonly top: number;
  readonly wide: number;
  readonly high: number;
}

type Words = Extract<Drawn, { kind: 'words' }>;

/** All lines of one kind as one path; `piece` where they enclose cloth or paper. */
export interface SheetPath {
  readonly stroke: Stroke;
  readonly piece: boolean;
  readonly d: string;
}

/** A sheet taken apart for drawing. */
export interface SheetLines {
  readonly extent: Extent;
  /** In the order in which they are painted: cloth lowest, marks on top. */
  readonly paths: readonly SheetPath[];
  readonly words: readonly Words[];
}

const ORDER: readonly Stroke[] = ['body', 'cut', 'seam', 'thin', 'grain', 'stitch', 'fold', 'mark'];

/** What encloses a piece, where it comes back to its beginning. */
const PIECES: ReadonlySet<Stroke> = new Set(['body', 'cut']);

/** How wide a letter is for its height, on the whole; only room is left by it, nothing is placed. */
const LETTER = 0.55;

/** The corners that words need, near enough to leave room for them. */
function wordsCorners({ words, at, from, high, turn = 0 }: Words): Point[] {
  const long = words.length * high * LETTER;
  const begin = from === 'middle' ? -long / 2 : 0;
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  return [
    [begin, -high],
    [begin + long, -high],
    [begin, high * 0.3],
    [begin + long, high * 0.3],
  ].map(([x = 0, y = 0]) => ({ x: at.x + x * cos - y * sin, y: at.y + x * sin + y * cos }) as Point);
}

function extentOf(drawn: readonly Drawn[]): Extent {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const one of drawn) {
    for (const { x, y } of one.kind === 'path' ? one.points : wordsCorners(one)) {
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }
  }
  if (!(right >= left)) return { left: 0, top: 0, wide: 1, high: 1 };
  const [wide, high] = [(right - left) / NM_PER_MM, (bottom - top) / NM_PER_MM];
  return { left: left / NM_PER_MM, top: top / NM_PER_MM, wide, high };
}

const inMm = (nanometres: number): string => String(Math.round(nanometres / (NM_PER_MM / 100)) / 100);

/** A path through points; those that lie within `fine` of the last one kept are left out, the last one never. */
function pathOf(points: readonly Point[], closed: boolean, fine: number): string {
  let d = '';
  let kept: Point | undefined;
  for (const [i, point] of points.entries()) {
    const last = i === points.length - 1;
    if (kept && !last && Math.abs(point.x - kept.x) < fine && Math.abs(point.y - kept.y) < fine) continue;
    d += `${kept ? 'L' : 'M'}${inMm(point.x)} ${inMm(point.y)}`;
    kept = point;
  }
  return closed ? `${d}Z` : d;
}

/** Two heads of an arrow on a grain line, `size` nanometres long. */
function heads(points: readonly Point[], size: number): string {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return '';
  const long = Math.hypot(last.x - first.x, last.y - first.y) || 1;
  const [ux, uy] = [((last.x - first.x) / long) * size, ((last.y - first.y) / long) * size];
  const head = (at: Point, way: 1 | -1): string =>
    `M${inMm(at.x + way * ux - uy / 2)} ${inMm(at.y + way * uy + ux / 2)}` +
    `L${inMm(at.x)} ${inMm(at.y)}L${inMm(at.x + way * ux + uy / 2)} ${inMm(at.y + way * uy - ux / 2)}`;
  return head(first, 1) + head(last, -1);
}

/**
 * A sheet ready for the screen, `across` pixels along its larger side: lines of a kind gathered into one path, points
 * that no eye could tell apart at that size left out.
 */
export function sheetLines(sheet: PatternSheet, across: number, withWords: boolean): SheetLines {
  const drawn = withWords ? sheet.drawn : sheet.drawn.filter((one) => one.kind === 'path');
  const extent = extentOf(drawn);
  const side = Math.max(extent.wide, extent.high, 0.01) * NM_PER_MM;
  const fine = side / across / 4;
  const [pieces, lines] = [new Map<Stroke, string[]>(), new Map<Stroke, string[]>()];
  for (const one of drawn) {
    if (one.kind !== 'path') continue;
    const kind = one.closed && PIECES.has(one.stroke) ? pieces : lines;
    const found = kind.get(one.stroke) ?? [];
    kind.set(one.stroke, found);
    found.push(pathOf(one.points, one.closed, fine));
    if (one.stroke === 'grain' && !one.closed) found.push(heads(one.points, side / 32));
  }
  return {
    extent,
    paths: [pieces, lines].flatMap((kind) =>
      ORDER.flatMap((stroke) => {
        const found = kind.get(stroke);
        return found ? [{ stroke, piece: kind === pieces, d: found.join('') }] : [];
      }),
    ),
    words: drawn.filter((one) => one.kind === 'words'),
  };
}
