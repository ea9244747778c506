import type { Lying, Slices } from './laid-piece.ts';

/** Something to lay: the ways in which it may lie, one of which is chosen. */
export interface ToLay {
  readonly ways: readonly Lying[];
  /** True for a piece whose left side must lie on the fold, at x = 0. */
  readonly onFold: boolean;
}

/** The strip of cloth that pieces are laid on, in nanometres. Its length is open. */
export interface Strip {
  /** Where pieces may begin and must end across the cloth. Pieces on the fold begin at 0. */
  readonly left: number;
  readonly right: number;
  readonly gap: number;
}

/** Where something lies: its way, and the place of its box's corner. */
export interface Laid {
  readonly way: Lying;
  readonly x: number;
  readonly y: number;
}

/** A layout of things in a certain order. */
export interface Layout {
  /** As many as were to be laid, and numbered as they were. */
  readonly laid: readonly Laid[];
  readonly length: number;
  /** Smaller where pieces lie nearer the beginning; tells layouts of the same length apart. */
  readonly spread: number;
  /** The work it took, in slices compared; what a budget is counted in. */
  readonly steps: number;
}

/** Between which places of `b`, on the way down past `a`, the two overlap; `dx` is how far `b` lies to the right of `a`. */
export function clash(a: Slices, b: Slices, dx: number): readonly [from: number, to: number] {
  let from = Number.POSITIVE_INFINITY;
  let to = Number.NEGATIVE_INFINITY;
  let i = 0;
  let j = 0;
  while (i < a.to.length && j < b.to.length) {
    const endA = a.to[i] ?? 0;
    const endB = (b.to[j] ?? 0) + dx;
    if (endA > (b.from[j] ?? 0) + dx && endB > (a.from[i] ?? 0)) {
      from = Math.min(from, (a.top[i] ?? 0) - (b.bottom[j] ?? 0));
      to = Math.max(to, (a.bottom[i] ?? 0) - (b.top[j] ?? 0));
    }
    if (endA <= endB) i++;
    if (endB <= endA) j++;
  }
  return [from, to];
}

const PLACES = 8; // places across that are tried besides those that touch a neighbour

/** Places across the cloth where a way may begin: at the sides, touching or level with a piece or its hollow, and some between. */
function placesFor(way: Lying, placed: readonly Laid[], strip: Strip): number[] {
  const { left, right, gap } = strip;
  const most = right - way.width;
  const places = new Set([left, most]);
  for (const { way: other, x } of placed) {
    places.add(x + other.width + gap);
    places.add(x - gap - way.width);
    places.add(x);
    for (const leap of other.leaps) {
      places.add(x + leap + gap);
      places.add(x + leap - gap - way.width);
    }
  }
  if (way.slices.to.length > 1) {
    for (let k = 1; k < PLACES; k++) places.add(Math.round(left + ((most - left) * k) / PLACES));
  }
  return [...places].filter((x) => x >= left && x <= most).sort((a, b) => a - b);
}

/** First free place down the cloth at a place across, or nothing where it would end past `before`; and the work it took. */
function slide(placed: readonly Laid[], strip: Strip, way: Lying, x: number, before: number) {
  let y = 0;
  let steps = 0;
  for (let moved = true; moved; ) {
    moved = false;
    for (const other of placed) {
      const below = other.y + other.way.height + strip.gap;
      const above = other.y - strip.gap - way.height;
      if (y >= below || y <= above || x >= other.x + other.way.width + strip.gap) continue;
      if (x + way.width + strip.gap <= other.x) continue;
      const [from, to] = clash(other.way.wide, way.slices, x - other.x);
      steps += way.slices.to.length + 1;
      if (y <= other.y + from || y >= other.y + to) continue;
      y = other.y + to;
      if (y + way.height > before) return { y: undefined, steps };
      moved = true;
    }
  }
  return { y, steps };
}

/** Slides what lies apart as far towards the beginning as each will go at its place across, the nearest first. */
export function slideUp(lying: readonly Laid[], strip: Strip): Layout {
  const laid: Laid[] = [...lying];
  const placed: Laid[] = [];
  let [length, spread, steps] = [0, 0, 0];
  const order = [...lying.entries()].sort(([i, a], [j, b]) => a.y - b.y || i - j);
  for (const [n, { way, x }] of order) {
    const slid = slide(placed, strip, way, x, Number.POSITIVE_INFINITY);
    const y = slid.y ?? 0;
    steps += slid.steps;
    laid[n] = { way, x, y };
    placed.push({ way, x, y });
    length = Math.max(length, y + way.height);
    spread += ((y + way.height) / 1e6) * (way.width / 1e6);
  }
  return { laid, length, spread, steps };
}

/**
 * Lays things one after the other, each where it ends nearest the beginning of the cloth, and there furthest left. A
 * place between or behind pieces already laid is taken where the thing fits: it slides down past them along its own
 * outline. Two never overlap, and the gap is kept between them. All must be narrow enough for the strip.
 */
export function layInOrder(things: readonly ToLay[], order: readonly number[], strip: Strip): Layout {
  const laid: Laid[] = new Array(things.length);
  const placed: Laid[] = [];
  let length = 0;
  let spread = 0;
  let steps = 0;

  for (const n of order) {
    const thing = things[n];
    if (!thing) continue;
    let best: Laid | undefined;
    let end = Number.POSITIVE_INFINITY;
    for (const way of thing.ways) {
      for (const x of thing.onFold ? [0] : placesFor(way, placed, strip)) {
        const slid = slide(placed, strip, way, x, end);
        const { y } = slid;
        steps += slid.steps + 4 + placed.length; // about what looking past them costs, in slices
        if (y === undefined || y + way.height >= end) continue;
        best = { way, x, y };
        end = y + way.height;
      }
    }
    if (!best) continue;
    laid[n] = best;
    placed.push(best);
    length = Math.max(length, end);
    spread += (end / 1e6) * (best.way.width / 1e6);
  }
  return { laid, length, spread, steps };
}
