import { type Length, nm } from '../length/length.ts';
import { type Polygon, pointOf } from '../shape/flatten.ts';
import { boundingBox } from '../shape/measure.ts';

/** How far a piece is turned on the cloth from lying along its grain, in degrees, clockwise as drawn. */
export type Turn = 0 | 90 | 180 | 270;

/** A shape cut into upright slices: in the slice from `from[i]` to `to[i]` all of it lies between `top[i]` and `bottom[i]`. */
export interface Slices {
  readonly from: readonly number[];
  readonly to: readonly number[];
  readonly top: readonly number[];
  readonly bottom: readonly number[];
}

/** One way in which a piece may lie: its outline moved so that its box begins at the datum. All in nanometres. */
export interface Lying {
  readonly outline: Polygon;
  readonly turn: Turn;
  readonly mirrored: boolean;
  /** How the outline was moved after mirroring and turning, so that its box begins at the datum. */
  readonly moved: { readonly x: Length; readonly y: Length };
  readonly width: number;
  readonly height: number;
  /** The piece itself, and the piece with the gap all round it; the second begins at minus the gap. */
  readonly slices: Slices;
  readonly wide: Slices;
  /** Where its upper or lower edge leaps, left to right: a hollow begins or ends there. */
  readonly leaps: readonly number[];
}

const FINEST = 1_000_000; // 1 mm: slices are no narrower, however many corners a curve has
const COARSEST = 10_000_000; // 10 mm: slices of a slope are no wider

/** Where to slice, left to right: at the corners, and between them where they are far apart. */
function cutsOf(outline: Polygon, width: number): number[] {
  const corners = outline.map((p) => p.x as number).sort((a, b) => a - b);
  const cuts = [0];
  let last = 0;
  for (const x of [...corners, width]) {
    const room = x - last;
    if (room <= 0 || (room < FINEST && x < width)) continue;
    const parts = Math.ceil(room / COARSEST);
    for (let k = 1; k < parts; k++) cuts.push(Math.round(last + (room * k) / parts));
    cuts.push(x);
    last = x;
  }
  return cuts;
}

/** The least and greatest y of an outline between two uprights. */
function extent(outline: Polygon, left: number, right: number): readonly [top: number, bottom: number] {
  let top = Number.POSITIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  let a = outline.at(-1);
  for (const b of outline) {
    if (a && Math.max(a.x, b.x) > left && Math.min(a.x, b.x) < right) {
      const [p, q] = a.x <= b.x ? [a, b] : [b, a];
      const yAt = (x: number): number => p.y + ((q.y - p.y) * (x - p.x)) / (q.x - p.x);
      const from = p.x < left ? yAt(left) : p.y;
      const to = q.x > right ? yAt(right) : q.y;
      top = Math.min(top, from, to);
      bottom = Math.max(bottom, from, to);
    }
    a = b;
  }
  return [Math.floor(top), Math.ceil(bottom)];
}

/**
 * The slices of an outline whose box begins at the datum, with a gap kept all round it. Whatever lies outside them is
 * outside the outline, and at least the gap away from it; across a slope a little more, since the gap is kept both
 * along and across. A hollow that opens sideways counts as filled.
 */
export function slicesOf(outline: Polygon, width: number, gap: number): Slices {
  const cuts = cutsOf(outline, width);
  const edges =
    gap === 0 ? cuts : [...new Set(cuts.flatMap((x) => [x - gap, x + gap]))].sort((a, b) => a - b);
  const [from, to, top, bottom]: [number[], number[], number[], number[]] = [[], [], [], []];
  for (let i = 0; i + 1 < edges.length; i++) {
    const [a, b] = [edges[i] ?? 0, edges[i + 1] ?? 0];
    const [high, low] = extent(outline, a - gap, b + gap);
    if (high > low) continue;
    const n = to.length - 1;
    if (top[n] === high - gap && bottom[n] === low + gap && to[n] === a) {
      to[n] = b;
      continue;
    }
    from.push(a);
    to.push(b);
    top.push(high - gap);
    bottom.push(low + gap);
  }
  return { from, to, top, bottom };
}

/** Where the upper or lower edge of slices leaps by more than a slope would, and how few of these places are kept. */
const LEAP = 30_000_000; // 30 mm
const MOST_LEAPS = 6;

function leapsOf({ from, top, bottom }: Slices): number[] {
  const leap = (edge: readonly number[], i: number): number => Math.abs((edge[i] ?? 0) - (edge[i - 1] ?? 0));
  return from.filter((_, i) => i > 0 && Math.max(leap(top, i), leap(bottom, i)) > LEAP).slice(0, MOST_LEAPS);
}

/** Cosine and sine; quarter turns exactly, so that a box stays a box. */
function turning(degrees: number): readonly [cos: number, sin: number] {
  const quarter = (((degrees / 90) % 4) + 4) % 4;
  if (Number.isInteger(quarter)) return [[1, 0, -1, 0][quarter] ?? 1, [0, 1, 0, -1][quarter] ?? 0];
  const angle = (degrees * Math.PI) / 180;
  return [Math.cos(angle), Math.sin(angle)];
}

/**
 * A piece as it lies on the cloth: mirrored or not about the upright of its drawing, then turned so that its grain runs
 * along the cloth, and on by the turn.
 * @param grain from the upright of its drawing, in degrees, clockwise
 */
export function lay(polygon: Polygon, grain: number, turn: Turn, mirrored: boolean, gap: Length): Lying {
  const [cos, sin] = turning(turn + (mirrored ? grain : -grain));
  const turned = polygon.map(({ x, y }) => {
    const across = mirrored ? -x : x;
    return pointOf(across * cos - y * sin, across * sin + y * cos);
  });
  const { left, top, right, bottom } = boundingBox(turned);
  const outline = turned.map(({ x, y }) => pointOf(x - left, y - top));
  const [width, height] = [right - left, bottom - top];
  const slices = slicesOf(outline, width, 0);
  return {
    outline,
    turn,
    mirrored,
    moved: { x: nm(-left), y: nm(-top) },
    width,
    height,
    slices,
    leaps: leapsOf(slices),
    wide: gap === 0 ? slices : slicesOf(outline, width, gap),
  };
}
