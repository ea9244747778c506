import type { Sourced } from '../cloth/advice.ts';
import { practice } from '../cloth/source.ts';
import { mm } from '../length/length.ts';
import type { Piece } from '../outfit/outfit.ts';
import { ENDS_AT, WAIST_TO_HIP } from './body-levels.ts';
import type { Level } from './entry.ts';
import { hasEdge, isCalled } from './panels.ts';
import { bottomOf, endsOf, type Heights, heightsAlong, placed, sidesOf, topOf } from './sides.ts';

/**
 * The elbow lies this far down a sleeve from under the arm, and without a cap from its upper edge.
 * @unit parts of a hundred
 */
export const ELBOW_AT: Sourced<number> = { value: 50, source: practice };
/**
 * Without a cap, the upper arm lies this far down a sleeve.
 * @unit parts of a hundred
 */
export const UPPER_ARM_AT: Sourced<number> = { value: 17, source: practice };
/**
 * The hips lie this far down from the waist to the crotch.
 * @unit parts of a hundred
 */
export const HIP_AT: Sourced<number> = { value: 67, source: practice };
/**
 * The thigh is measured this far down from the crotch to the knee.
 * @unit parts of a hundred
 */
export const THIGH_AT: Sourced<number> = { value: 25, source: practice };
/**
 * The knee lies this far down from the crotch to the ankle, on a leg in one piece.
 * @unit parts of a hundred
 */
export const KNEE_AT: Sourced<number> = { value: 48, source: practice };
/**
 * The calf lies this far down from the knee to the ankle.
 * @unit parts of a hundred
 */
export const CALF_AT: Sourced<number> = { value: 33, source: practice };

/** How far down a piece goes along its sides. */
const depth = (piece: Piece): number => {
  const sides = sidesOf(piece.outline);
  return sides
    ? Math.min(bottomOf(sides.left), bottomOf(sides.right)) - Math.max(topOf(sides.left), topOf(sides.right))
    : 0;
};

/** The ends of a piece that both its sides reach. */
function reach(piece: Piece): { readonly top: number; readonly bottom: number } | undefined {
  const sides = sidesOf(piece.outline);
  return (
    sides && {
      top: Math.max(topOf(sides.left), topOf(sides.right)),
      bottom: Math.min(bottomOf(sides.left), bottomOf(sides.right)),
    }
  );
}

/** Sleeves, from the top part down: the upper arm at the foot of the cap, the elbow between there and the wrist. */
export function sleeveLevels(parts: readonly Piece[]): ReadonlyMap<string, Heights> {
  const found = new Map<string, Heights>();
  const whole = parts.reduce((sum, piece) => sum + depth(piece), 0);
  const [upper] = parts;
  const capped = upper !== undefined && hasEdge(upper, 'cap');
  // Without a cap there is a little sleeve above the widest place of the arm.
  const places: readonly (readonly [Level, number])[] = capped
    ? [
        ['upper-arm', 0],
        ['elbow', (whole * ELBOW_AT.value) / 100],
        ['wrist', whole],
      ]
    : [
        ['top', 0],
        ['upper-arm', (whole * UPPER_ARM_AT.value) / 100],
        ['elbow', (whole * ELBOW_AT.value) / 100],
        ['wrist', whole],
      ];
  let above = 0;
  for (const piece of parts) {
    const [ends, long] = [reach(piece), depth(piece)];
    const its: Heights = new Map();
    found.set(piece.id, its);
    if (!ends) continue;
    if (piece === upper && capped) {
      const ys = heightsAlong(piece.outline, 'cap');
      if (Math.min(...ys) < ends.top - mm(1)) its.set('top', Math.min(...ys));
    }
    for (const [level, at] of places) {
      const last = piece === parts.at(-1) ? at <= above + long : at < above + long;
      if (at >= above && last) its.set(level, ends.top + at - above);
    }
    above += long;
  }
  return found;
}

/** The height at which a leg's inner seam and rise meet. */
function crotchOf(piece: Piece): number | undefined {
  const rises = placed(piece.outline).filter(({ edge }) => isCalled(edge.name, 'rise'));
  return rises.length > 0 ? Math.max(...rises.flatMap(({ from, to }) => [from.y, to.y])) : undefined;
}

/** Legs, thigh and lower leg: from the crotch, the knee and the ankle that the drawing shows. */
export function legLevels(uppers: readonly Piece[], lowers: readonly Piece[]): ReadonlyMap<string, Heights> {
  const found = new Map<string, Heights>();
  const between = (from: number, to: number, share: Sourced<number>): number =>
    from + ((to - from) * share.value) / 100;
  for (const piece of uppers) {
    const [ends, crotch] = [reach(piece), crotchOf(piece)];
    const its: Heights = new Map();
    found.set(piece.id, its);
    if (!ends || crotch === undefined) continue;
    its
      .set('waist', ends.top)
      .set('hip', between(ends.top, crotch, HIP_AT))
      .set('crotch', crotch);
    const foot = endsOf(piece.outline, 'ankle');
    const down = hasEdge(piece, 'foot', 'heel', 'sole')
      ? footTop(piece, ends.bottom)
      : Math.min(ends.bottom, ...foot);
    const whole = lowers.length === 0;
    const knee = whole ? between(crotch, down, KNEE_AT) : ends.bottom;
    its.set('thigh', between(crotch, knee, THIGH_AT)).set('knee', knee);
    if (whole) its.set('calf', between(knee, down, CALF_AT)).set('ankle', down);
  }
  for (const piece of lowers) {
    const ends = reach(piece);
    const its: Heights = new Map();
    found.set(piece.id, its);
    if (!ends) continue;
    const down = footTop(piece, ends.bottom);
    its
      .set('knee', ends.top)
      .set('calf', between(ends.top, down, CALF_AT))
      .set('ankle', down);
  }
  return found;
}

/** Where the foot begins that is cut in one with a leg; the end of the leg where it has none. */
function footTop(piece: Piece, bottom: number): number {
  const foot = placed(piece.outline).flatMap(({ edge, from, to }) =>
    isCalled(edge.name, 'foot', 'heel', 'sole') ? [from.y, to.y] : [],
  );
  return Math.min(bottom, ...foot);
}

/** Skirts: the waist at the top, the hem at the bottom, the hips between where it is long enough. */
export function skirtLevels(piece: Piece): Heights {
  const ends = reach(piece);
  if (!ends) return new Map();
  const its: Heights = new Map<Level, number>([['waist', ends.top]]);
  const hip = ends.top + WAIST_TO_HIP.value;
  if (hip < ends.bottom - ENDS_AT.value) its.set('hip', hip);
  return its.set('hem', ends.bottom);
}
