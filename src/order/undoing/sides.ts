import { type Looked, standsForBoth } from '../../outfit/chains.ts';
import type { Chain, EdgeRef } from '../../outfit/outfit.ts';
import type { Alteration } from './undoing-types.ts';

/** Sides of the body as bits, so that they can be put together quickly. */
export type Sides = 0 | 1 | 2 | 3;

/** Left, right, and both. */
export const [LEFT, RIGHT, BOTH] = [1, 2, 3] as const;

/** Two sets of sides in one. */
export const and = (a: Sides, b: Sides): Sides => (a | b) as Sides;

/** What two sets of sides have in common. */
export const shared = (a: Sides, b: Sides): Sides => (a & b) as Sides;

/** How many sides these are. */
export const countOf = (sides: Sides): number => (sides === BOTH ? 2 : sides === 0 ? 0 : 1);

/** The sides that an alteration names. */
export const sidesNamed = (side: Alteration['side']): Sides =>
  side === 'both' ? BOTH : side === 'left' ? LEFT : RIGHT;

/** ` on the left`, or nothing where it is both. */
export const onOneSide = (sides: Sides): string =>
  sides === LEFT ? ' on the left' : sides === RIGHT ? ' on the right' : '';

/** The sides of the body on which an edge lies, in what is done on `side` or once for all. */
export function sidesOfRef(looked: Looked, chain: Chain, ref: EdgeRef, side: Sides): Sides {
  const cut = looked.pieces.get(ref.piece)?.cut;
  if (cut === undefined || cut === 'one' || standsForBoth(looked, chain, ref)) return BOTH;
  return (side === RIGHT) === ref.other ? LEFT : RIGHT;
}
