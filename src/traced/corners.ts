import { nm } from '../length/length.ts';
import { flattenEdge, samePoint } from '../shape/flatten.ts';
import { pathLength } from '../shape/measure.ts';
import type { Point, Segment } from '../shape/outline.ts';
import type { Run } from './path-lines.ts';

/**
 * A place on a closed line: the number of a stretch and how far along its curve's parameter, from 0 up to 1. Whole
 * numbers are where stretches meet.
 */
export type Place = number;

/** Turns of fewer degrees than this are a curve that runs on. Common practice, no source. */
const CORNER = 25;

/** Where a stretch begins. */
export const startOf = ({ start, segments }: Run, index: number): Point =>
  segments[(index + segments.length - 1) % segments.length]?.to ?? start;

const points = (from: Point, one: Segment): readonly Point[] =>
  one.kind === 'curve' ? [from, one.first, one.second, one.to] : [from, one.to];

/** The direction of the first, or last, part of a stretch that has a length; handles may lie on their ends. */
function heading(from: Point, one: Segment, end: 'first' | 'last'): number | undefined {
  const all = points(from, one);
  const [base, rest] = end === 'first' ? [all[0], all.slice(1)] : [all.at(-1), all.slice(0, -1).reverse()];
  const other = rest.find((p) => base && !samePoint(p, base));
  if (!base || !other) return undefined;
  return end === 'first'
    ? Math.atan2(other.y - base.y, other.x - base.x)
    : Math.atan2(base.y - other.y, base.x - other.x);
}

const turn = (a: number, b: number): number => Math.abs(Math.atan2(Math.sin(b - a), Math.cos(b - a)));

/** The place on a closed line at a share of its length; to a stretch's own evenness. */
function placeAt(run: Run, share: number): Place {
  const lengths = run.segments.map((one, i) =>
    pathLength(flattenEdge(startOf(run, i), { name: '', segments: [one] })),
  );
  let left = lengths.reduce((sum, one) => sum + one, 0) * share;
  for (const [i, long] of lengths.entries()) {
    if (left < long) return i + (long === 0 ? 0 : left / long);
    left -= long;
  }
  return 0;
}

/**
 * The corners of a closed line, in order: where it turns by more than an angle. A line with fewer than three of them is
 * cut in the middle of its bends or at its quarters too, since an outline needs edges to be sewn by.
 */
export function cornersOf(run: Run, degrees = CORNER): readonly Place[] {
  const found: Place[] = [];
  for (const [i, one] of run.segments.entries()) {
    const before = run.segments.at(i - 1);
    const came = before && heading(startOf(run, i + run.segments.length - 1), before, 'last');
    const goes = heading(startOf(run, i), one, 'first');
    if (came !== undefined && goes !== undefined && turn(came, goes) > (degrees * Math.PI) / 180)
      found.push(i);
  }
  if (found.length >= 3) return found;
  // Rounded off: the middles of its bends are what was meant.
  const bends = run.segments.flatMap((one, i) => {
    const from = startOf(run, i);
    const [came, goes] = [heading(from, one, 'first'), heading(from, one, 'last')];
    return came !== undefined && goes !== undefined && turn(came, goes) > Math.PI / 4 ? [i + 1 / 2] : [];
  });
  const enough = found.length + bends.length >= 3 && bends.length <= 8;
  const more = enough ? bends : [0, 1 / 4, 1 / 2, 3 / 4].map((share) => placeAt(run, share));
  const apart = (p: Place): boolean => found.every((q) => Math.abs(p - q) > 0.1);
  return [...found, ...more.filter(apart)].sort((a, b) => a - b);
}

const between = (a: Point, b: Point, t: number): Point => ({
  x: nm(a.x + (b.x - a.x) * t),
  y: nm(a.y + (b.y - a.y) * t),
});

/** A stretch cut in two, each part lying exactly where the whole did. */
export function halves(from: Point, one: Segment, t: number): readonly [Segment, Segment] {
  if (one.kind === 'line') return [{ kind: 'line', to: between(from, one.to, t) }, one];
  const [a, b, c] = [
    between(from, one.first, t),
    between(one.first, one.second, t),
    between(one.second, one.to, t),
  ];
  const [d, e] = [between(a, b, t), between(b, c, t)];
  return [
    { kind: 'curve', first: a, second: d, to: between(d, e, t) },
    { kind: 'curve', first: e, second: c, to: one.to },
  ];
}

/** The point at a place. */
export function pointAt(run: Run, place: Place): Point {
  const i = Math.floor(place);
  const [one, from] = [run.segments[i], startOf(run, i)];
  return one && place > i ? halves(from, one, place - i)[0].to : from;
}

/** The stretches from one place on to another round a closed line; all the way round where they are the same. */
function stretch(run: Run, from: Place, to: Place): readonly Segment[] {
  const n = run.segments.length;
  const made: Segment[] = [];
  const last = to > from ? to : to + n;
  for (let i = Math.floor(from); i < last; i++) {
    let one = run.segments[i % n];
    if (!one) continue;
    let begins = startOf(run, i % n);
    const [low, high] = [Math.max(0, from - i), Math.min(1, last - i)];
    if (high < 1) one = halves(begins, one, high)[0];
    if (low > 0) {
      const [gone, rest] = halves(begins, one, low / high);
      begins = gone.to;
      one = rest;
    }
    if (!samePoint(begins, one.to) || one.kind === 'curve') made.push(one);
  }
  return made;
}

/** An edge between two corners. */
export interface CutEdge {
  /** The corner that it begins at. */
  readonly at: Place;
  readonly start: Point;
  readonly segments: readonly Segment[];
}

/** A closed line cut into edges at its corners, in order. */
export const edgesAt = (run: Run, corners: readonly Place[]): readonly CutEdge[] =>
  corners.map((at, i) => ({
    at,
    start: pointAt(run, at),
    segments: stretch(run, at, corners[(i + 1) % corners.length] ?? at),
  }));

/** The place on a closed line that is nearest to a point: a meeting of stretches where one is within `snap`. */
export function nearestPlace(
  run: Run,
  to: Point,
  snap: number,
): { readonly place: Place; readonly away: number } {
  let best = { place: 0, away: Number.POSITIVE_INFINITY };
  let node = best;
  for (const [i, one] of run.segments.entries()) {
    const from = startOf(run, i);
    const away = Math.hypot(from.x - to.x, from.y - to.y);
    if (away < node.away) node = { place: i, away };
    const steps = one.kind === 'line' ? 1 : 32;
    for (let k = 0; k < steps; k++) {
      const [t0, t1] = [k / steps, (k + 1) / steps];
      const a = k === 0 ? from : halves(from, one, t0)[0].to;
      const b = k === steps - 1 ? one.to : halves(from, one, t1)[0].to;
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const share = Math.min(
        1,
        Math.max(0, ((to.x - a.x) * dx + (to.y - a.y) * dy) / (dx * dx + dy * dy || 1)),
      );
      const off = Math.hypot(a.x + dx * share - to.x, a.y + dy * share - to.y);
      const t = t0 + (t1 - t0) * share;
      if (off < best.away) best = { place: t >= 1 ? (i + 1) % run.segments.length : i + t, away: off };
    }
  }
  return node.away <= snap ? node : best;
}
