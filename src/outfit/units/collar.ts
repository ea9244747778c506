import { practice } from '../../cloth/source.ts';
import type { Length } from '../../length/length.ts';
import type { Outline } from '../../shape/outline.ts';
import type { Chain, EdgeRef, Join, Piece } from '../outfit.ts';
import { joinOf, pieceOf } from './parts.ts';
import type { EdgesPlaced, PlaceAsked, Proposal } from './unit.ts';

/** The neck edge that a collar is sewn to. */
export const NECK_PLACE = {
  kind: 'edges',
  round: true,
  label: 'the neck edge',
  means: 'From one front edge round the back to the other.',
  like: ['neck'],
} as const satisfies PlaceAsked;

/** Fields that every collar has. */
export const COLLAR_ALLOWANCE = {
  allowance: {
    kind: 'length',
    usual: true,
    label: 'Seam allowance',
    means: 'Of the collar, and of the neck seam.',
    start: { in: '3/8', mm: '10' },
  },
} as const;

/** Seam allowance as the neck has it. */
export function proposeAllowance(at: EdgesPlaced | undefined): Readonly<{ allowance?: Proposal }> {
  const piece = at?.pieces[0];
  return piece && piece.allowance > 0
    ? {
        allowance: {
          value: piece.allowance,
          because: `As the ${piece.name.toLowerCase()} has it`,
          source: practice,
        },
      }
    : {};
}

/** An edge on one side of a piece. */
export const edgeOn = (piece: string, edge: string, other = false): EdgeRef => ({ piece, edge, other });

/** Edges of a piece on the fold, from its one end over the fold to the other. */
export const bothHalves = (piece: string, ...edges: readonly string[]): Chain => [
  ...edges.map((edge) => edgeOn(piece, edge)),
  ...edges.toReversed().map((edge) => edgeOn(piece, edge, true)),
];

/** Two layers of the same shape, cut on the fold. */
export const layers = (told: {
  readonly ids: readonly [string, string];
  readonly names: readonly [string, string];
  readonly cloth: string;
  /** By itself made up first; none where it meets others before it is whole. */
  readonly unit?: string;
  readonly allowance: Length;
  readonly outline: Outline;
}): readonly Piece[] =>
  told.ids.map((id, i) =>
    pieceOf({
      id,
      name: told.names[i] ?? '',
      cloth: told.cloth,
      cut: 'fold',
      ...(told.unit === undefined ? {} : { unit: told.unit }),
      allowance: told.allowance,
      outline: told.outline,
    }),
  );

/** The seam round two layers, sewn right sides together and turned. */
export const turnedSeam = (
  id: string,
  name: string,
  [one, other]: readonly [string, string],
  edges: readonly string[],
  depth: Length,
): Join =>
  joinOf({
    id,
    name,
    this: bothHalves(one, ...edges),
    to: bothHalves(other, ...edges),
    seam: 'turned',
    depth,
  });
