import { inBothRules } from '../length/both-rules.ts';
import { type Length, nm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { pointOf } from '../shape/flatten.ts';
import type { Outline, OutlineEdge, Point, Segment } from '../shape/outline.ts';
import { type Refusal, refusal } from './refusal.ts';
import type { LegMade } from './stretch-leg-measures.ts';

/** A leg parted at a level, for two cloths: sewn together along `cut`, the two are the leg again. */
export interface LegParts {
  /** `waist`, `front-rise`, `inner-front`, `cut`, `inner-back`, `back-rise`. */
  readonly upper: Outline;
  /** `cut`, `inner-front`, the edges of ankle or toes, `inner-back`. */
  readonly lower: Outline;
  /** Length of the cut on both. */
  readonly cut: Length;
}

/** Where a level meets an inner seam, with the seam above and below it. */
interface Parted {
  readonly at: Point;
  readonly before: readonly Segment[];
  readonly after: readonly Segment[];
}

const mix = (a: Point, b: Point, t: number): Point => pointOf(a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t);

/** Parts an inner seam at a level. Its curves go evenly up or down, so the level gives the parameter at once. */
function part(start: Point, edge: OutlineEdge, y: number): Parted | undefined {
  const before: Segment[] = [];
  let from = start;
  for (const [i, segment] of edge.segments.entries()) {
    const { to } = segment;
    if ((from.y - y) * (to.y - y) > 0 || to.y === y) {
      before.push(segment);
      from = to;
      if (to.y === y) return { at: to, before, after: edge.segments.slice(i + 1) };
      continue;
    }
    const t = (y - from.y) / (to.y - from.y);
    const rest = edge.segments.slice(i + 1);
    if (segment.kind === 'line') {
      const at = mix(from, to, t);
      return { at, before: [...before, { kind: 'line', to: at }], after: [segment, ...rest] };
    }
    const { first, second } = segment;
    const [a, b, c] = [mix(from, first, t), mix(first, second, t), mix(second, to, t)];
    const [d, e] = [mix(a, b, t), mix(b, c, t)];
    const at = { x: mix(d, e, t).x, y: nm(y) };
    return {
      at,
      before: [...before, { kind: 'curve', first: a, second: d, to: at }],
      after: [{ kind: 'curve', first: e, second: c, to }, ...rest],
    };
  }
  return undefined;
}

/** Both inner seams parted at a level, with the edges above and below; nothing outside them. */
function seamsAt(leg: LegMade, y: Length) {
  const { edges, start } = leg.outline;
  const at = (name: string): number => edges.findIndex((edge) => edge.name === name);
  const [f, b] = [at('inner-front'), at('inner-back')];
  const [front, back] = [edges[f], edges[b]];
  const endOf = (i: number): Point => edges[i]?.segments.at(-1)?.to ?? start;
  const inside = y > leg.crotchLevel && y < endOf(f).y;
  const [right, left] = [
    inside && front && part(endOf(f - 1), front, y),
    inside && back && part(endOf(b - 1), back, y),
  ];
  if (!right || !left) return undefined;
  return { right, left, top: edges.slice(0, f), foot: edges.slice(f + 1, b), rise: edges.slice(b + 1) };
}

const outside = (leg: LegMade): Refusal => {
  const inner = leg.outline.edges.find((edge) => edge.name === 'inner-front');
  const end = inner?.segments.at(-1)?.to.y ?? leg.crotchLevel;
  const [from, to] = [inBothRules(nm(leg.crotchLevel), 'up'), inBothRules(nm(end), 'down')];
  return refusal(
    'level',
    'This level does not cross the leg between the crotch and the end of the inner seam.',
    `Give a level more than ${from} and less than ${to} below the waist at the side.`,
  );
};

/**
 * Parts a leg at a level, to be cut from two cloths that stretch alike: both parts were drafted for the same reductions.
 * For cloths that stretch differently there is `legOfTwoCloths`.
 *
 * Refused: a level not between the crotch and the end of the inner seam.
 * @param level how far down the draft, from the waist at the side
 */
export function partLeg(leg: LegMade, level: Length): Result<LegParts, Refusal> {
  const seams = seamsAt(leg, level);
  if (!seams) return bad(outside(leg));
  const { right, left, top, foot, rise } = seams;
  const across = (to: Point): OutlineEdge => ({ name: 'cut', segments: [{ kind: 'line', to }] });
  return good({
    cut: nm(right.at.x - left.at.x),
    upper: {
      start: leg.outline.start,
      edges: [
        ...top,
        { name: 'inner-front', segments: right.before },
        across(left.at),
        { name: 'inner-back', segments: left.after },
        ...rise,
      ],
    },
    lower: {
      start: left.at,
      edges: [
        across(right.at),
        { name: 'inner-front', segments: right.after },
        ...foot,
        { name: 'inner-back', segments: left.before },
      ],
    },
  });
}

/** A line across the leg on which a frill is set, with marks in quarters from the back of the inner seam to its front. */
export interface FrillLine {
  readonly level: Length;
  /** Length of the finished line, which is the place that the frill is gathered to. */
  readonly length: Length;
  /** Five points: inner seam at the back, middle of the back, outer side, middle of the front, inner seam at the front. */
  readonly quarters: readonly Point[];
}

/**
 * Lines for frills round the leg, each at its level from the waist at the side.
 *
 * Refused: a level not between the crotch and the end of the inner seam.
 */
export function frillLines(leg: LegMade, levels: readonly Length[]): Result<readonly FrillLine[], Refusal> {
  const lines: FrillLine[] = [];
  for (const level of levels) {
    const seams = seamsAt(leg, level);
    if (!seams) return bad(outside(leg));
    const [from, to] = [seams.left.at, seams.right.at];
    lines.push({
      level,
      length: nm(to.x - from.x),
      quarters: [0, 1, 2, 3, 4].map((k) => mix(from, to, k / 4)),
    });
  }
  return good(lines);
}

/** A place on the leg where a seam ends or two seams meet. */
export interface SeamFoot {
  readonly name: string;
  readonly at: Point;
}

/**
 * Where the seams of a leg end: the waist and the crotch at the front and back, the inner seam at its foot, and the feet
 * of seams down the outer side and the middles of front and back, which are only for trimming. On a leg with a foot
 * these three end at the toes.
 */
export function seamFeet(leg: LegMade): readonly SeamFoot[] {
  const ends = new Map<string, Point>();
  for (const edge of leg.outline.edges) ends.set(edge.name, edge.segments.at(-1)?.to ?? leg.outline.start);
  const at = (name: string): Point => ends.get(name) ?? leg.outline.start;
  const front = at('inner-front');
  const back = pointOf(-front.x, front.y);
  const toe = (name: string): Point | undefined =>
    leg.outline.edges.find((edge) => edge.name === name)?.segments[0]?.to;
  return [
    { name: 'waist, front', at: at('waist') },
    { name: 'waist, back', at: leg.outline.start },
    { name: 'crotch, front', at: at('front-rise') },
    { name: 'crotch, back', at: at('inner-back') },
    { name: 'foot of the inner seam, front', at: front },
    { name: 'foot of the inner seam, back', at: back },
    { name: 'foot of the front middle', at: toe('toe-front') ?? mix(back, front, 3 / 4) },
    { name: 'foot of the outer side', at: mix(back, front, 1 / 2) },
    { name: 'foot of the back middle', at: toe('toe-back') ?? mix(back, front, 1 / 4) },
  ];
}
