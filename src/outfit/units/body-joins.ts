import { type Refusal, refusal } from '../../cloth/refusal.ts';
import type { Length } from '../../length/length.ts';
import { piecesOf } from '../chains.ts';
import { lower } from '../lower.ts';
import type { Chain, Garment, Gate, Join, Piece, Work } from '../outfit.ts';
import { fromNeck } from './body-sheet.ts';
import { gateOf, joinOf } from './parts.ts';
import type { EdgesPlaced, PlaceAsked } from './unit.ts';

/** The curved neck of a piece is stayed before it is handled. */
export const neckStay = (piece: Pick<Piece, 'id' | 'name'>): Work => ({
  kind: 'stay-stitch',
  id: `${piece.id}-neck-stay`,
  name: `Neck stay of the ${lower(piece.name)}`,
  on: piece.id,
  edge: 'neck',
});

/** Where a back meets a front. */
export const FRONT_PLACES = {
  shoulder: {
    kind: 'edges',
    label: 'the front shoulder',
    means: 'All edges of one shoulder, from the neck to the armhole.',
    like: ['front.shoulder', 'shoulder'],
  },
  side: { kind: 'edges', label: 'the front side', like: ['front.side', 'side'] },
} as const satisfies Readonly<Record<string, PlaceAsked>>;

/** What is wrong with a front that a back is to be sewn to: a facing or a lining of it, which is made up by itself. */
export function notTheFront(at: {
  readonly shoulder: EdgesPlaced;
  readonly side: EdgesPlaced;
}): Refusal | undefined {
  for (const place of ['shoulder', 'side'] as const) {
    const apart = at[place].pieces.find((piece) => piece.unit !== undefined);
    if (apart)
      return refusal(
        `at.${place}`,
        `The ${lower(apart.name)} is made up by itself, so the back is not sewn to it.`,
        'Choose the front alone.',
      );
  }
  return undefined;
}

/** What is looked at when a body is tried on, the most basic first. */
export const BODY_CHECKS: readonly string[] = [
  'It goes on and off without straining a seam',
  'It hangs straight from the shoulders, front and back',
  'The shoulder seams lie on top of the shoulders and end at the bones',
  'The chest has room to breathe deep and to reach forward',
  'The armholes do not cut in',
  'The side seams hang plumb',
  'The neck lies close without gaping',
];

/** The seams that put a back to a front, and the try-on that comes while the sides are only basted. */
export function joinedToFront(told: {
  readonly id: (part?: string) => string;
  readonly garment: Garment;
  readonly at: { readonly shoulder: EdgesPlaced; readonly side: EdgesPlaced };
  readonly shoulder: Chain;
  readonly side: Chain;
  readonly depth: Length;
  /** Seams of the back itself. */
  readonly within?: readonly string[];
}): { joins: readonly Join[]; gates: readonly Gate[] } {
  const { id, garment, at, depth, within = [] } = told;
  const front = new Set([...at.shoulder.pieces, ...at.side.pieces].map((piece) => piece.id));
  const inFront = garment.joins.filter(
    (join) => join.seam === 'plain' && piecesOf(join).every((piece) => front.has(piece)),
  );
  const usual = { depth, finish: 'overlock' } as const;
  return {
    joins: [
      joinOf({
        id: id('shoulder-seam'),
        name: 'Shoulder seam',
        this: fromNeck(garment, at.shoulder.chain),
        to: told.shoulder,
        ...usual,
      }),
      joinOf({
        id: id('side-seam'),
        name: 'Side seam',
        this: at.side.chain,
        to: told.side,
        closes: true,
        tacked: true,
        ...usual,
      }),
    ],
    gates: [
      gateOf({
        id: id('try'),
        name: `The ${lower(garment.name)}, basted at the sides`,
        after: [...inFront.map((join) => join.id), ...within, id('shoulder-seam'), id('side-seam')],
        checks: BODY_CHECKS,
      }),
    ],
  };
}
