import { flatPoint, openMap, type TuckFamily } from '../cloth/fold-map.ts';
import { type Length, mm, nm, times } from '../length/length.ts';
import type { Garment, Piece, Work } from '../outfit/outfit.ts';
import { holesOf } from '../outfit/piece-holes.ts';
import { latticeOf } from '../outfit/piece-lattice.ts';
import { clipLine, type Line, pointAlong } from '../shape/clip.ts';
import { flattenEdge, type Polygon } from '../shape/flatten.ts';
import { boundingBox } from '../shape/measure.ts';
import type { Outline, Point } from '../shape/outline.ts';
import { FLAT, line, middleWords, words } from './drawing.ts';
import type { EdgeUse } from './edge-allowances.ts';
import { beside, type EdgePlace, placeAt } from './parallel-edge.ts';
import type { Drawn } from './pattern-sheet.ts';

/** A work of one kind. */
type WorkOf<K extends Work['kind']> = Extract<Work, { kind: K }>;

/** The points of every edge of an outline, by its name. */
export function edgeRuns(outline: Outline): ReadonlyMap<string, readonly Point[]> {
  const runs = new Map<string, readonly Point[]>();
  let from = outline.start;
  for (const edge of outline.edges) {
    runs.set(edge.name, flattenEdge(from, edge, FLAT));
    from = edge.segments.at(-1)?.to ?? from;
  }
  return runs;
}

/** A place on the finished piece as it lies on the flat cloth, through all its tucks. */
export function flatThrough(families: readonly TuckFamily[], p: Point): Point {
  let at = p;
  for (const family of families.toReversed()) {
    const map = openMap(family);
    if (map.ok) at = flatPoint(map.value, at);
  }
  return at;
}

const off = (p: Point, way: { readonly x: number; readonly y: number }, by: number): Point => ({
  x: nm(p.x + way.x * by),
  y: nm(p.y + way.y * by),
});

const EDGE_WORDS: Length = mm(3);

/**
 * The name of each edge, just inside it and along it, so that it reads from the left or from below.
 * @param flat where a place of the finished piece lies on the sheet
 * @param said other words for some edges
 */
export function edgeWords(
  runs: ReadonlyMap<string, readonly Point[]>,
  inside: 1 | -1,
  flat: (p: Point) => Point,
  said: ReadonlyMap<string, string>,
): readonly Drawn[] {
  return [...runs].flatMap(([name, run]): Drawn[] => {
    const place = placeAt(run, 0.5, inside);
    if (!place) return [];
    const turn = (Math.atan2(place.way.y, place.way.x) * 180) / Math.PI;
    const upright = turn > 90 ? turn - 180 : turn <= -90 ? turn + 180 : turn;
    // Words stand above their line: where that is outside, they are moved in by their own height.
    const up = { x: Math.sin((upright * Math.PI) / 180), y: -Math.cos((upright * Math.PI) / 180) };
    const above = up.x * place.inward.x + up.y * place.inward.y > 0;
    const at = off(place.at, place.inward, above ? mm(2) : mm(2) + EDGE_WORDS * 0.8);
    return [middleWords(said.get(name) ?? name.replaceAll('-', ' '), flat(at), EDGE_WORDS, upright)];
  });
}

/**
 * A grain line with arrow heads, as long as there is room for, at most 250 mm; and its middle.
 * @param degrees how it lies: clockwise from the upright of the piece
 */
export function grainLine(
  outline: Polygon,
  degrees = 0,
): { readonly drawn: Drawn; readonly middle: Point } | undefined {
  const box = boundingBox(outline);
  let best: { readonly line: Line; readonly from: number; readonly to: number } | undefined;
  for (const share of [0.5, 0.4, 0.6, 0.3, 0.7]) {
    // A grain that lies more level than upright is looked for from above to below.
    const level = Math.abs(Math.sin((degrees * Math.PI) / 180)) > Math.SQRT1_2;
    const [x, y] = [
      level ? (box.left + box.right) / 2 : box.left + (box.right - box.left) * share,
      level ? box.top + (box.bottom - box.top) * share : (box.top + box.bottom) / 2,
    ];
    const line = { through: { x: nm(x), y: nm(y) }, angle: 90 + degrees };
    for (const { from, to } of clipLine(outline, line)) {
      if (!best || to - from > (best.to - best.from) * 1.1) best = { line, from, to };
    }
  }
  if (!best) return undefined;
  const middle = (best.from + best.to) / 2;
  const half = Math.min(mm(250), (best.to - best.from) * 0.6) / 2;
  const { line: along } = best;
  return {
    drawn: line('grain', pointAlong(along, middle - half), pointAlong(along, middle + half)),
    middle: pointAlong(along, middle),
  };
}

const ARM: Length = mm(3);

/**
 * The places marked on a piece: a small cross, and its name beside it.
 * @param flat where a place of the finished piece lies on the sheet
 */
export const placesMarked = (piece: Piece, flat: (p: Point) => Point): readonly Drawn[] =>
  piece.marks.flatMap(({ name, at }): Drawn[] => {
    const { x, y } = flat(at);
    const to = (dx: number, dy: number): Point => ({ x: nm(x + dx), y: nm(y + dy) });
    return [
      line('mark', to(-ARM, 0), to(ARM, 0)),
      line('mark', to(0, -ARM), to(0, ARM)),
      words(name, to(ARM * 1.4, -ARM / 2), EDGE_WORDS),
    ];
  });

/** A notch at a place of an edge: a short line square to it, from the cut edge to the seam line and a little on. */
const notch = ({ at, inward }: EdgePlace, allowance: number): Drawn =>
  line('mark', off(at, inward, -allowance), off(at, inward, mm(3)));

/** Marks at the quarters or eighths of an edge that is gathered. */
export function gatherNotches(
  work: WorkOf<'gather'>,
  run: readonly Point[],
  allowance: Length,
  inside: 1 | -1,
): readonly Drawn[] {
  return Array.from({ length: work.divide - 1 }, (_, i) =>
    placeAt(run, (i + 1) / work.divide, inside),
  ).flatMap((place) => (place ? [notch(place, allowance)] : []));
}

/** What holes could be drawn: at their true places, or only their levels where nothing says how wide the lap is. */
export interface HolesDrawn {
  readonly drawn: readonly Drawn[];
  readonly note: string;
}

/** Buttonholes along an edge, counted from its upper end. */
export function holesDrawn(
  garment: Garment,
  work: WorkOf<'buttonholes'>,
  run: readonly Point[],
  inside: 1 | -1,
): HolesDrawn {
  const found = holesOf(garment, work);
  const [start, end] = [run[0], run.at(-1)];
  if (!found.ok) return { drawn: [], note: `Buttonholes are not drawn: ${found.error.wrong}` };
  const long = run.reduce(
    (sum, p, i) => sum + Math.hypot(p.x - (run[i - 1] ?? p).x, p.y - (run[i - 1] ?? p).y),
    0,
  );
  if (!start || !end || long === 0) return { drawn: [], note: '' };
  // An edge that lies level has no upper end; its left one is taken.
  const down = end.y === start.y ? end.x >= start.x : end.y > start.y;
  const placeOf = (along: number): EdgePlace | undefined =>
    placeAt(run, Math.min(1, Math.max(0, down ? along / long : 1 - along / long)), inside);
  const band = garment.works.find(
    (w): w is WorkOf<'folded-band'> => w.kind === 'folded-band' && w.on === work.on && w.edge === work.along,
  );
  const drawn: Drawn[] = [];
  for (const [i, { hole, button }] of found.value.made.fastenings.entries()) {
    const [from, to, level] = [placeOf(hole.from.along), placeOf(hole.to.along), placeOf(button.along)];
    if (!from || !to || !level) continue;
    if (band) {
      const centre = times(band.secondTurn, 1 / 2);
      const a = off(from.at, from.inward, centre - hole.from.across);
      const b = off(to.at, to.inward, centre - hole.to.across);
      drawn.push(line('mark', a, b), words(String(i + 1), off(a, from.inward, mm(3)), mm(2.8)));
    } else {
      drawn.push(
        line('mark', level.at, off(level.at, level.inward, mm(12))),
        words(String(i + 1), off(level.at, level.inward, mm(14)), mm(2.8)),
      );
    }
  }
  const note = band
    ? 'Buttonholes are marked on the middle of the band.'
    : 'Only the levels of the buttonholes are marked; how far in they begin is for you to choose.';
  return { drawn, note };
}

/** The lattice of a work on the finished piece. */
export function latticeDrawn(piece: Piece, work: WorkOf<'lattice-beads'>): HolesDrawn {
  const made = latticeOf(piece, work);
  if (!made.ok) return { drawn: [], note: `The lattice is not drawn: ${made.error.wrong}` };
  return {
    drawn: made.value.lines.map(({ from, to }) => line('mark', from, to)),
    note: `Lattice for ${work.line.name.toLowerCase()}; the lines stop short of the seam so that the foot can pass.`,
  };
}

/** Lines beside an edge: where a tape lies, and the fold that is made before the one on the edge. */
export function edgeLines(
  piece: Piece,
  garment: Garment,
  use: EdgeUse,
  run: readonly Point[],
  inside: 1 | -1,
): readonly Drawn[] {
  const drawn: Drawn[] = [];
  if (use.firstFold !== undefined) drawn.push(line('fold', ...beside(run, nm(-use.firstFold), inside)));
  for (const work of garment.works) {
    if (work.kind === 'applied-tape' && work.on === piece.id && work.edge === use.edge)
      drawn.push(line('mark', ...beside(run, work.inset, inside)));
  }
  return drawn;
}
