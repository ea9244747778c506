import { type Refusal, refusal } from '../../cloth/refusal.ts';
import { inches, type Length, nm } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { pointOf } from '../../shape/flatten.ts';
import { edgeLength } from '../../shape/measure.ts';
import type { Point, Segment } from '../../shape/outline.ts';

/** Half a front or a back, measured on a paper pattern: finished, without allowances. */
export interface HalfBody {
  /** From the centre to the side seam, level with the bottom of the armhole. */
  readonly chest: Length;
  /** From the centre to the side seam at the waist; left out, the side runs straight. */
  readonly waist?: Length | undefined;
  /** From the centre to the side seam at the hem; left out, as at the chest. */
  readonly hem?: Length | undefined;
  readonly neckWide: Length;
  readonly neckDeep: Length;
  readonly shoulder: Length;
  /** How much lower the outer end of the shoulder lies than its neck end. */
  readonly slope: Length;
  /** From the neck end of the shoulder straight down to the level of the bottom of the armhole. */
  readonly armhole: Length;
  /** From the centre to the narrowest place of the armhole; left out, a little inside the end of the shoulder. */
  readonly across?: Length | undefined;
  /** Along the side seam. */
  readonly side: Length;
  /** How much of the side lies below the waist. */
  readonly below: Length;
  /** Of its seams. */
  readonly allowance: Length;
}

/** A half body drawn: its corners, and the segments of its curved edges from corner to corner, clockwise. */
export interface Drawn {
  readonly neckIn: Point;
  readonly neckOut: Point;
  readonly tip: Point;
  /** Where the armhole is narrowest, between its two segments. */
  readonly narrow: Point;
  readonly corner: Point;
  readonly hemOut: Point;
  readonly hemIn: Point;
  readonly waistLevel: Length;
  readonly neck: Segment;
  readonly armhole: readonly [upper: Segment, lower: Segment];
  readonly side: readonly Segment[];
}

const curve = (first: Point, second: Point, to: Point): Segment => ({ kind: 'curve', first, second, to });

/** How round a neck is drawn: handles of this share of its width and depth make a quarter of an oval. */
const ROUND = 0.55;
/** The narrowest place of an armhole lies this far down from the end of the shoulder. */
const NARROWEST = 0.55;
const INSIDE = inches(1, 2);

/** What is wrong with the figures of a half body, if anything. */
function wrongWith(body: HalfBody, across: number): Refusal | undefined {
  for (const field of [
    'chest',
    'neckWide',
    'neckDeep',
    'shoulder',
    'armhole',
    'side',
    'allowance',
  ] as const) {
    if (body[field] <= 0) return refusal(field, 'This has no length.', 'Write a length above zero.');
  }
  for (const field of ['waist', 'hem'] as const) {
    if ((body[field] ?? 1) <= 0)
      return refusal(field, 'This has no width.', 'Write a width above zero, or leave it empty.');
  }
  if (body.slope < 0 || body.slope >= body.shoulder)
    return refusal('slope', 'A shoulder cannot drop so.', 'Write less than the length of the shoulder.');
  if (body.armhole <= body.slope + INSIDE)
    return refusal(
      'armhole',
      'The armhole ends above the end of the shoulder.',
      'Measure from the neck end of the shoulder straight down to the chest line.',
    );
  if (body.neckDeep >= body.armhole + body.side)
    return refusal('neckDeep', 'The neck reaches down to the hem.', 'Write a shallower neck.');
  if (body.neckWide >= body.chest)
    return refusal('neckWide', 'The neck is as wide as the chest.', 'Write half the width of the neck.');
  if (body.across !== undefined && across <= 0)
    return refusal('across', 'This has no width.', 'Write a width above zero, or leave it empty.');
  if (across >= body.chest)
    return refusal(
      'across',
      'The armhole would not curve in from the side seam.',
      'Write less than the half width at the chest.',
    );
  if (body.below < 0 || (body.waist !== undefined && body.below >= body.side))
    return refusal(
      'below',
      'More lies below the waist than the side seam is long.',
      'Write less than the side seam.',
    );
  return undefined;
}

/** The side from the bottom of the armhole down, so much deep; curved where the waist is taken in. */
function sideOf(corner: Point, body: HalfBody, deep: number): readonly Segment[] {
  const { chest, waist, hem = chest } = body;
  const foot = pointOf(corner.x + hem - chest, corner.y + deep);
  if (waist === undefined) return [{ kind: 'line', to: foot }];
  const middle = pointOf(corner.x + waist - chest, corner.y + (deep * (body.side - body.below)) / body.side);
  const [dx, dy] = [middle.x - corner.x, middle.y - corner.y];
  const upper = curve(
    pointOf(corner.x + dx / 3, corner.y + dy / 3),
    pointOf(middle.x - (body.below > 0 ? 0 : dx / 3), middle.y - dy / 3),
    middle,
  );
  if (body.below === 0) return [upper];
  const [ex, ey] = [foot.x - middle.x, foot.y - middle.y];
  const lower = curve(pointOf(middle.x, middle.y + ey / 3), pointOf(foot.x - ex / 3, foot.y - ey / 3), foot);
  return [upper, lower];
}

const sideLength = (corner: Point, segments: readonly Segment[]): Length =>
  edgeLength(corner, { name: '', segments });

/**
 * Draws half a front or back from the figures that a maker measures; the curves follow. Its centre lies `lap` to the
 * right of the datum, its neck end of the shoulder level with it. The side seam comes out as long as it was asked.
 */
export function drawHalf(body: HalfBody, neck: 'front' | 'back', lap: Length): Result<Drawn, Refusal> {
  const run = Math.sqrt(Math.max(0, body.shoulder ** 2 - body.slope ** 2));
  const tipX = body.neckWide + run;
  const across = body.across ?? Math.min(tipX - INSIDE, body.chest - 2 * INSIDE);
  const wrong =
    lap < 0 ? refusal('lap', 'This is below zero.', 'Write zero or more.') : wrongWith(body, across);
  if (wrong) return bad(wrong);
  const at = (x: number, y: number): Point => pointOf(x + lap, y);
  const { neckWide: w, neckDeep: d, chest, slope } = body;
  const neckIn = at(0, d);
  const neckOut = at(w, 0);
  const tip = at(tipX, slope);
  const fall = body.armhole - slope;
  const narrow = at(across, slope + NARROWEST * fall);
  const corner = at(chest, body.armhole);
  const upper = curve(
    pointOf(tip.x - (slope * fall * 0.2) / body.shoulder, tip.y + (run * fall * 0.2) / body.shoulder),
    pointOf(narrow.x, narrow.y - fall * 0.2),
    narrow,
  );
  const lower = curve(
    pointOf(narrow.x, narrow.y + 0.6 * (corner.y - narrow.y)),
    pointOf(corner.x - 0.65 * (corner.x - narrow.x), corner.y),
    corner,
  );
  let deep: number = body.side;
  for (let round = 0; round < 40; round += 1) {
    const missing = body.side - sideLength(corner, sideOf(corner, body, deep));
    deep += missing;
    if (Math.abs(missing) < 2 || deep <= 0) break;
  }
  if (deep <= body.side / 2)
    return bad(
      refusal(
        'side',
        'The side seam is too short to reach from this chest to this hem.',
        'Write a longer side seam, or widths that are nearer to each other.',
      ),
    );
  const side = sideOf(corner, body, deep);
  const hemOut = side.at(-1)?.to ?? corner;
  if (d >= hemOut.y) return bad(refusal('neckDeep', 'The neck reaches down to the hem.', 'Write less.'));
  const curved =
    neck === 'front'
      ? curve(at(ROUND * w, d), at(w, (1 - ROUND) * d), neckOut)
      : curve(at(ROUND * w, d), at(0.92 * w, 0.67 * d), neckOut);
  return good({
    neckIn,
    neckOut,
    tip,
    narrow,
    corner,
    hemOut,
    hemIn: pointOf(neckIn.x, hemOut.y),
    waistLevel: nm(corner.y + (deep * (body.side - body.below)) / body.side),
    neck: curved,
    armhole: [upper, lower],
    side,
  });
}
