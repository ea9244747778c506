import { type Cubic, cubicLength, type Spot } from './stretch-leg-curves.ts';
import { INNER_LEAN, WAIST_FRONT } from './stretch-leg-measures.ts';

/** From the least to the greatest. */
export type Bounds = readonly [least: number, greatest: number];

/** Finished sizes of the part above the crotch, in nanometres. */
export interface TopSizes {
  /** Half of the girths as cut. */
  readonly waist: number;
  readonly hip: number;
  /** Least and greatest reach of the points at the crotch past the rise, and the least of both together. */
  readonly reach: { readonly front: Bounds; readonly back: Bounds; readonly both: number };
  /** Where the waist should stand at the front and back, up from the side. */
  readonly stands: { readonly front: number; readonly back: number };
  /** The most that the side is lifted above its measure. */
  readonly mostLift: number;
  readonly crotchLevel: number;
  readonly hipLevel: number;
  readonly rise: { readonly front: number; readonly back: number };
}

/** Curves from the back of the waist round to its front, and each rise from the waist down. */
export interface Top {
  readonly waist: readonly [Cubic, Cubic];
  readonly front: readonly [Cubic, Cubic];
  readonly back: readonly [Cubic, Cubic];
  /** How far the waist stands above the side at the front and back. */
  readonly raised: { readonly front: number; readonly back: number };
  /** How far each point at the crotch reaches past its rise. */
  readonly reach: { readonly front: number; readonly back: number };
  /** How far the side was lifted: the crotch and the hip lie so much deeper below it. */
  readonly lift: number;
}

const ROUND = 0.55; // handles that make nearly a quarter of an ellipse
const CLOSE = 1000; // 1 micrometre

const down = (from: Spot, hip: Spot): Cubic => {
  const third = (hip.y - from.y) / 3;
  return [from, { x: from.x, y: from.y + third }, { x: hip.x, y: hip.y - third }, hip];
};
const under = (hip: Spot, crotch: Spot): Cubic => [
  hip,
  { x: hip.x, y: hip.y + ROUND * (crotch.y - hip.y) },
  {
    x: crotch.x - ROUND * (crotch.x - hip.x),
    y: crotch.y - INNER_LEAN.value * ROUND * Math.abs(crotch.x - hip.x),
  },
  crotch,
];
/** The waist in two curves that run smoothly through the side, level at both ends. */
function waistThrough(left: Spot, side: Spot, right: Spot): readonly [Cubic, Cubic] {
  const [before, after] = [(side.y - left.y) / (side.x - left.x), (right.y - side.y) / (right.x - side.x)];
  // As in a monotone cubic: no slope where the side is the lowest or the highest.
  const slope = before * after <= 0 ? 0 : (2 * before * after) / (before + after);
  const curve = (a: Spot, b: Spot, from: number, to: number): Cubic => {
    const third = (b.x - a.x) / 3;
    return [a, { x: a.x + third, y: a.y + from * third }, { x: b.x - third, y: b.y - to * third }, b];
  };
  return [curve(left, side, 0, slope), curve(side, right, slope, 0)];
}

/** Halves an interval until it is closer than a quarter of {@link CLOSE}. `tooMuch` is false below and true above. */
function halve([from, to]: Bounds, tooMuch: (at: number) => boolean): number {
  let [low, high] = [from, to];
  while (high - low > CLOSE / 4) {
    const middle = (low + high) / 2;
    if (tooMuch(middle)) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** The reach within bounds with which a rise is as long as measured when its end of the waist stands at `up`; heights are 0 at the waist. */
function reachFor(
  bounds: Bounds,
  across: number,
  up: number,
  hip: number,
  crotch: number,
  wanted: number,
): number {
  const at = (reach: number): number =>
    cubicLength(down({ x: across, y: -up }, { x: 0, y: hip })) +
    cubicLength(under({ x: 0, y: hip }, { x: reach, y: crotch })) -
    wanted;
  const [least, greatest] = bounds;
  if (at(least) >= 0) return least;
  return at(greatest) <= 0 ? greatest : halve(bounds, (reach) => at(reach) > 0);
}

/** How far to raise an end of the waist so that its rise has the wanted length, or nothing where no height does. */
function raise(x: number, hip: Spot, crotch: Spot, wanted: number): number | undefined {
  const length = cubicLength(under(hip, crotch));
  const at = (up: number): number => length + cubicLength(down({ x, y: -up }, hip)) - wanted;
  const bounds: Bounds = [-0.6 * hip.y, 2 * crotch.y];
  if (at(bounds[0]) > 0 || at(bounds[1]) < 0) return undefined;
  return halve(bounds, (up) => at(up) > 0);
}

/**
 * Finds the top. The points at the crotch reach so far that, with both rises as long as measured, the waist stands at
 * the front and back where it should: a little lower in front than at the side, a little higher behind. Where that would
 * take more or less than a believable reach, the ends of the waist go up or down instead; and where both would stand too
 * high, the side is lifted with them, so that the waist does not dip there. The ends are set apart until the waist is as long as measured.
 *
 * Gives the part that cannot be met where the measures contradict each other.
 */
export function legTop(sizes: TopSizes): Top | 'front' | 'back' | 'waist' {
  const { hipLevel, crotchLevel, rise, stands } = sizes;
  let apart = sizes.waist;
  for (let round = 0; round < 60; round++) {
    const narrower = sizes.hip - apart;
    const [inFront, behind] = [WAIST_FRONT.value * narrower, (1 - WAIST_FRONT.value) * narrower];
    const solve = (part: 'front' | 'back', across: number): number =>
      reachFor(sizes.reach[part], across, stands[part], hipLevel, crotchLevel, rise[part]);
    const reach = { front: solve('front', -inFront), back: solve('back', -behind) };
    const missing = Math.max(0, sizes.reach.both - reach.front - reach.back);
    reach.front += missing / 3;
    reach.back += (missing * 2) / 3;
    const half = (sizes.hip + reach.front + reach.back) / 2;
    const frontHip = { x: half - reach.front, y: hipLevel };
    const backHip = { x: -half + reach.back, y: hipLevel };
    const [frontCrotch, backCrotch] = [
      { x: half, y: crotchLevel },
      { x: -half, y: crotchLevel },
    ];
    const [xf, xb] = [frontHip.x - inFront, backHip.x + behind];
    const front = raise(xf, frontHip, frontCrotch, rise.front);
    if (front === undefined) return 'front';
    const back = raise(xb, backHip, backCrotch, rise.back);
    if (back === undefined) return 'back';
    if (Math.max(front, back) > crotchLevel) return front > back ? 'front' : 'back';
    // So far that the side is not the lowest place, that not both stand higher than they should, and that the waist is
    // nearly straight from back to front.
    const over = Math.max(
      Math.min(front, back),
      Math.min(front - stands.front, back - stands.back),
      (front + back) / 2 - stands.back,
    );
    const lift = Math.max(0, Math.min(over, sizes.mostLift));
    const [side, right, left] = [
      { x: (xf + xb) / 2, y: -lift },
      { x: xf, y: -front },
      { x: xb, y: -back },
    ];
    const waist = waistThrough(left, side, right);
    const miss = sizes.waist - cubicLength(waist[0]) - cubicLength(waist[1]);
    if (Math.abs(miss) < CLOSE) {
      return {
        waist,
        front: [down(right, frontHip), under(frontHip, frontCrotch)],
        back: [down(left, backHip), under(backHip, backCrotch)],
        raised: { front: front - lift, back: back - lift },
        reach,
        lift,
      };
    }
    apart += miss * 0.8;
    if (apart < sizes.waist / 4) return 'waist';
  }
  return 'waist';
}
