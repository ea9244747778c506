import type { Refusal } from '../../cloth/refusal.ts';
import { type CapMade, sleeveCap } from '../../cloth/sleeve-cap.ts';
import { add, type Length, nm, times, zero } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import type { Outline } from '../../shape/outline.ts';
import type { Garment, PieceMark } from '../outfit.ts';
import { chainLength } from './place.ts';
import { point, straight } from './rectangle.ts';
import type { EdgesPlaced } from './unit.ts';

/** The runs of an armhole before and behind the shoulder: pieces of the back are known by their names. */
export function armholeRuns(
  garment: Garment,
  { chain, length }: EdgesPlaced,
): { front: Length; back: Length } {
  const behind = chain.filter(({ piece }) => /(^|-)back(-|$)/.test(piece));
  if (behind.length === 0 || behind.length === chain.length) {
    const half = times(length, 1 / 2);
    return { front: nm(length - half), back: half };
  }
  const back = chainLength(garment, behind);
  return { front: nm(length - back), back };
}

/** The cap of a sleeve for the armhole that it was put on. */
export const capFor = (
  garment: Garment,
  at: EdgesPlaced,
  told: { readonly wide: Length; readonly ease: Length; readonly fullness: number },
): Result<CapMade, Refusal> => sleeveCap({ ...armholeRuns(garment, at), ...told });

/** Where the shoulder seam meets a cap, as a mark on its piece. */
export const shoulderMark = (cap: CapMade | undefined): readonly PieceMark[] =>
  cap ? [{ name: 'shoulder', at: cap.crown }] : [];

/**
 * A sleeve: its cap or a straight top, its two long edges as long as each other, and its lower edge in the middle
 * below. Edges `cap` or `upper`, `front-seam`, `lower`, `back-seam`.
 */
export function sleeveOutline(wide: Length, lower: Length, under: Length, cap: CapMade | undefined): Outline {
  const high = cap?.height ?? zero;
  const inset = times(nm(wide - lower), 1 / 2);
  const foot = add(high, under);
  const start = point(zero, high);
  return {
    start,
    edges: [
      cap ? { name: 'cap', segments: cap.curve } : straight('upper', point(wide, high)),
      straight('front-seam', point(add(inset, lower), foot)),
      straight('lower', point(inset, foot)),
      straight('back-seam', start),
    ],
  };
}

/** Nothing is left of a sleeve under the arm. */
export const tooShort = (field: string): Result<never, Refusal> =>
  bad({
    field,
    wrong: 'Nothing of the sleeve is left below its cap.',
    cure: 'Give a longer sleeve, or less fullness in the cap.',
  });

/** What is left under the arm of a sleeve of a length from the shoulder; refused where it is less than a seam. */
export const underArm = (
  whole: Length,
  cap: CapMade | undefined,
  field = 'length',
): Result<Length, Refusal> => {
  const under = nm(whole - (cap?.height ?? 0));
  return under < 10_000_000 ? tooShort(field) : good(under);
};

/** The armhole of a sleeve that is set in, nothing for one worn detached; refused where it was not chosen. */
export const setInto = (
  held: 'armhole' | 'elastic' | 'head',
  armhole: EdgesPlaced | undefined,
): Result<EdgesPlaced | undefined, Refusal> => {
  if (held !== 'armhole') return good(undefined);
  return armhole
    ? good(armhole)
    : bad({
        field: 'at.armhole',
        wrong: 'A set-in sleeve needs an armhole.',
        cure: 'Choose it, or wear the sleeve detached.',
      });
};
