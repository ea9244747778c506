import { type Cubic, cubicLength, type Spot } from './stretch-leg-curves.ts';
import { WAIST_FRONT } from './stretch-leg-measures.ts';

/** Finished sizes of the part above the crotch, in nanometres. */
export interface TopSizes {
  /** Half of the girths as cut. */
  readonly waist: number;
  readonly hip: number;
  /** Right and left ends of the crotch line. */
  readonly crotch: number;
  readonly reach: { readonly front: number; readonly back: number };
  readonly crotchLevel: number;
  readonly hipLevel: number;
  readonly rise: { readonly front: number; readonly back: number };
}

/** Curves from the back of the waist round to its front, and each rise from the waist down. */
export interface Top {
  readonly waist: readonly [Cubic, Cubic];
  readonly front: readonly [Cubic, Cubic];
  readonly back: readonly [Cubic, Cubic];
  readonly raised: { readonly front: number; readonly back: number };
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
  { x: crotch.x - ROUND * (crotch.x - hip.x), y: crotch.y },
  crotch,
];
const level = (a: Spot, b: Spot): Cubic => {
  const third = (b.x - a.x) / 3;
  return [a, { x: a.x + third, y: a.y }, { x: b.x - third, y: b.y }, b];
};

/** How far to raise an end of the waist so that its rise has the wanted length, or nothing where no height does. */
function raise(x: number, hip: Spot, crotch: Spot, wanted: number): number | undefined {
  const length = cubicLength(under(hip, crotch));
  const at = (up: number): number => length + cubicLength(down({ x, y: -up }, hip)) - wanted;
  let [low, high] = [-0.6 * hip.y, 2 * crotch.y];
  if (at(low) > 0 || at(high) < 0) return undefined;
  while (high - low > CLOSE / 4) {
    const middle = (low + high) / 2;
    if (at(middle) > 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/**
 * Finds the top: both ends of the waist are raised until the rises are as long as measured, and set apart until the waist
 * is. Gives the part that cannot be met where the measures contradict each other.
 */
export function legTop(sizes: TopSizes): Top | 'front' | 'back' | 'waist' {
  const { reach, hipLevel, crotchLevel, rise } = sizes;
  const half = sizes.crotch / 2;
  const frontHip = { x: half - reach.front, y: hipLevel };
  const backHip = { x: -half + reach.back, y: hipLevel };
  const [frontCrotch, backCrotch] = [
    { x: half, y: crotchLevel },
    { x: -half, y: crotchLevel },
  ];
  let apart = sizes.waist;
  for (let round = 0; round < 60; round++) {
    const narrower = sizes.hip - apart;
    const [xf, xb] = [
      frontHip.x - WAIST_FRONT.value * narrower,
      backHip.x + (1 - WAIST_FRONT.value) * narrower,
    ];
    const front = raise(xf, frontHip, frontCrotch, rise.front);
    if (front === undefined) return 'front';
    const back = raise(xb, backHip, backCrotch, rise.back);
    if (back === undefined) return 'back';
    const [side, right, left] = [
      { x: (xf + xb) / 2, y: 0 },
      { x: xf, y: -front },
      { x: xb, y: -back },
    ];
    const waist = [level(left, side), level(side, right)] as const;
    const miss = sizes.waist - cubicLength(waist[0]) - cubicLength(waist[1]);
    if (Math.abs(miss) < CLOSE) {
      return {
        waist,
        front: [down(right, frontHip), under(frontHip, frontCrotch)],
        back: [down(left, backHip), under(backHip, backCrotch)],
        raised: { front, back },
      };
    }
    apart += miss * 0.8;
    if (apart < sizes.waist / 4) return 'waist';
  }
  return 'waist';
}
