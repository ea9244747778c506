import type { Chain, EdgeRef, Join, Piece, Work } from '../outfit.ts';
import { joinOf } from './parts.ts';
import { mate } from './runs.ts';
import { casingFor, edgeOf } from './sleeve-made.ts';

/** The casing round the waist, and the hem of a leg that ends at the ankle. */
export const legWorks = (
  id: (part?: string) => string,
  last: string,
  footed: boolean,
  { elastic, hem }: { readonly elastic: Piece['allowance']; readonly hem: Piece['allowance'] },
): readonly Work[] => [
  {
    kind: 'casing',
    id: id('casing'),
    name: 'Waist casing',
    on: id(),
    along: [edgeOf(id(), 'waist'), mate(edgeOf(id(), 'waist'))],
    ring: true,
    turn: casingFor(elastic),
    elastic,
  },
  ...(footed
    ? []
    : [
        {
          kind: 'hem',
          id: id('hem'),
          name: 'Ankle hem',
          on: last,
          along: [edgeOf(last, 'ankle')],
          ring: true,
          turn: hem,
          by: 'machine',
          hang: 0,
        } as const,
      ]),
];

/** The seams of both legs: where the cloths meet, the rises, and one inner seam from foot to foot that closes them. */
export function legJoins(
  id: (part?: string) => string,
  down: readonly string[],
  footed: boolean,
  depth: Piece['allowance'],
): readonly Join[] {
  const stretch = (part: string, name: string, these: Chain, to: Chain, more: Partial<Join> = {}): Join =>
    joinOf({ id: id(part), name, this: these, to, seam: 'stretch', depth, ...more });
  /** From the foot of one leg up to the crotch, and down the other. */
  const inner = (side: 'front' | 'back'): Chain => {
    const up: readonly EdgeRef[] = [
      ...(footed ? [edgeOf(down.at(-1) ?? '', `toe-${side}`)] : []),
      ...down.toReversed().map((piece) => edgeOf(piece, `inner-${side}`)),
    ];
    return [...up, ...up.toReversed().map(mate)];
  };
  const rise = (side: 'front' | 'back'): Join =>
    stretch(
      `${side}-rise`,
      side === 'front' ? 'Front rise seam' : 'Back rise seam',
      [edgeOf(id(), `${side}-rise`)],
      [mate(edgeOf(id(), `${side}-rise`))],
    );
  const [upper, lower] = down;
  return [
    ...(upper !== undefined && lower !== undefined
      ? [stretch('knee', 'Knee seam', [edgeOf(upper, 'knee')], [edgeOf(lower, 'knee')])]
      : []),
    rise('front'),
    rise('back'),
    stretch('inseam', 'Inseam', inner('front'), inner('back'), { closes: true, tacked: true }),
  ];
}
