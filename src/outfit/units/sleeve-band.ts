import { type Length, times } from '../../length/length.ts';
import { lower } from '../lower.ts';
import type { Join, Piece, Work } from '../outfit.ts';
import { joinOf, pieceOf, stepOf } from './parts.ts';
import { rectangle } from './rectangle.ts';
import { edgeOf, type SleeveMade } from './sleeve-made.ts';

/** A band that the lower edge is gathered to: sewn on flat, closed with the sleeve, folded and sewn down inside. */
export function sleeveBand(told: {
  readonly id: SleeveMade['id'];
  readonly name: string;
  readonly round: Length;
  /** Finished. */
  readonly deep: Length;
  readonly cloth: string;
  readonly allowance: Length;
}): { readonly piece: Piece; readonly works: readonly Work[]; readonly join: Join } {
  const { id, name, round, deep, cloth, allowance } = told;
  const called = `band of the ${lower(name)}`;
  const piece: Piece = pieceOf({
    id: id('band'),
    name: `${name} band`,
    cloth,
    cut: 'pair',
    allowance,
    outline: rectangle(round, times(deep, 2), ['upper', 'front-seam', 'lower', 'back-seam']),
  });
  const works: readonly Work[] = [
    {
      kind: 'own',
      id: id('band-inside'),
      name: `Inside of the ${called}`,
      on: piece.id,
      with: [id()],
      when: 'late',
      finishes: [edgeOf(piece.id, 'lower')],
      steps: [
        stepOf(
          `Fold each ${called} in half along its length and turn its free edge in to the seam`,
          'iron',
          6,
        ),
        stepOf(`Sew the ${called} down inside by hand, over the seam`, 'hand', 20),
      ],
    },
  ];
  const join = joinOf({
    id: id('band-seam'),
    name: `Band seam of the ${lower(name)}`,
    this: [edgeOf(id(), 'lower')],
    to: [edgeOf(piece.id, 'upper')],
    depth: allowance,
  });
  return { piece, works, join };
}
