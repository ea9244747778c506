import type { Length } from '../../length/length.ts';
import { crossings, FOLD, type Looked, lookUp, timesOf } from '../chains.ts';
import { lower } from '../lower.ts';
import type { Chain, EdgeRef, Garment } from '../outfit.ts';
import { sewnLength } from './sewn-length.ts';

/** A run of edges that something is sewn along. */
export interface Run {
  /** All of it: where it was named as far as a fold, its mirror image too. */
  readonly chain: Chain;
  /** Where it is gathered, drawn up. */
  readonly length: Length;
  /** How what is sewn to it is cut: once, or a left and a right. */
  readonly cut: 'one' | 'pair';
  /** True where seams close it into a ring. */
  readonly ring: boolean;
  /** `round` where it runs over a seam that closes the garment, so that it is sewn along only after that. */
  readonly worked: 'flat' | 'round';
}

/** The same edge on the other side of the body. */
export const mate = (ref: EdgeRef): EdgeRef => ({ ...ref, other: !ref.other });

/** A run as it is sewn along. */
export function runOf(garment: Garment, named: Chain): Run {
  const looked = lookUp(garment);
  const chain = wholeRun(looked, named);
  const over = crossings(looked, chain, true);
  return {
    chain,
    length: sewnLength(garment, chain),
    cut: timesOf(looked, chain) === 2 ? 'pair' : 'one',
    // With no seam at all to cross it closes nowhere: half a piece and its mirror image have two loose ends.
    ring: over.length > 0 && over.every((crossing) => crossing.over.length > 0),
    worked: over.some((crossing) => crossing.over.some((join) => join.closes)) ? 'round' : 'flat',
  };
}

/** A run that was named as far as a fold goes on over it: the mirror image of what was named. */
function wholeRun({ pieces, beside }: Looked, chain: Chain): Chain {
  const named = (ref: EdgeRef) =>
    chain.some((c) => c.piece === ref.piece && c.edge === ref.edge && c.other === ref.other);
  const single = chain.some((ref) => pieces.get(ref.piece)?.cut === 'one');
  const folds = (ref: EdgeRef | undefined): boolean =>
    ref !== undefined &&
    pieces.get(ref.piece)?.cut === 'fold' &&
    beside.get(`${ref.piece}.${ref.edge}`)?.includes(FOLD) === true &&
    !named(mate(ref));
  if (single) return chain;
  const mirrored = chain.toReversed().map(mate);
  if (folds(chain.at(-1))) return [...chain, ...mirrored];
  return folds(chain[0]) ? [...mirrored, ...chain] : chain;
}

/** True where something is gathered along an edge of a run. */
export const isGathered = (garment: Garment, chain: Chain): boolean =>
  garment.works.some(
    (work) => work.kind === 'gather' && chain.some((ref) => ref.piece === work.on && ref.edge === work.edge),
  );

/** `each sleeve frill` for a left and a right, `the hem frill` for one. */
export const eachOf = (cut: 'one' | 'pair' | 'fold', name: string): string =>
  `${cut === 'pair' ? 'each' : 'the'} ${lower(name)}`;
