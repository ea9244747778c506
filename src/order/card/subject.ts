import { type Looked, lookUp } from '../../outfit/chains.ts';
import { lower } from '../../outfit/lower.ts';
import type { Cloth, Garment, Join, Outfit, Piece, Work } from '../../outfit/outfit.ts';
import type { Step } from '../step.ts';

/** A step together with what it is about, looked up for its card. */
export interface CardSubject {
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly looked: Looked;
  readonly step: Step;
  readonly work: Work | undefined;
  readonly join: Join | undefined;
  /** The piece a work is done to, or the first piece in hand. */
  readonly piece: Piece | undefined;
  readonly cloth: Cloth | undefined;
}

/** Looks up what a step is about; nothing where the outfit no longer has its garment. */
export function subjectOf(outfit: Outfit, step: Step): CardSubject | undefined {
  const garment = outfit.garments.find((g) => g.id === step.garment);
  if (!garment) return undefined;
  const looked = lookUp(garment);
  const work = step.of.kind === 'work' ? garment.works.find((w) => w.id === step.of.id) : undefined;
  const join = step.of.kind === 'join' ? garment.joins.find((j) => j.id === step.of.id) : undefined;
  const piece = looked.pieces.get(work?.on ?? step.pieces[0] ?? '');
  const cloth = outfit.cloths.find((c) => c.id === piece?.cloth);
  return { outfit, garment, looked, step, work, join, piece, cloth };
}

/** The sides on which a step is done: left and right, or the one on which it is done again, or one without a name. */
export const sidesOf = ({ times, again }: Step): readonly string[] =>
  times === 1 ? [''] : again?.side === undefined ? ['left', 'right'] : [again.side];

/** `left front, ` before a name, or nothing. */
export const onSide = (side: string, piece: Piece | undefined, name: string): string =>
  side === '' ? name : `${side} ${lower(piece?.name ?? '')}, ${name}`;

/** Item name for the ledger: `left/3`, or `3`. */
export const item = (side: string, name: string | number): string =>
  side === '' ? `${name}` : `${side}/${name}`;
