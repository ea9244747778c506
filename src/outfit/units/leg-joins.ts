import { elasticCut } from '../../cloth/elastic.ts';
import type { Length } from '../../length/length.ts';
import { lower } from '../lower.ts';
import type { Chain, EdgeRef, Join, Piece, Work } from '../outfit.ts';
import { joinOf } from './parts.ts';
import { mate } from './runs.ts';
import { aboveOpening, casingFor, edgeOf, openingWork } from './sleeve-made.ts';

/** How a leg ends, above and below. */
export interface LegEnds {
  readonly footed: 'ankle' | 'slit' | 'foot';
  readonly elastic: Length;
  /** On the body. */
  readonly waist: Length;
  readonly hem: Length;
  readonly slit: Length;
  readonly allowance: Length;
}

/** The casing round the waist, and the hem of a leg that ends at the ankle. */
export const legWorks = (
  id: (part?: string) => string,
  last: Pick<Piece, 'id' | 'name'>,
  { footed, elastic, waist, hem, slit }: LegEnds,
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
    cut: elasticCut(waist),
  },
  ...(footed === 'slit'
    ? [
        openingWork({
          id,
          on: last.id,
          of: lower(last.name),
          edges: 'inner',
          long: slit,
          turned: 'once and stitch them with a narrow zigzag',
        }),
      ]
    : []),
  ...(footed === 'foot'
    ? []
    : [
        {
          kind: 'hem',
          id: id('hem'),
          name: 'Ankle hem',
          on: last.id,
          along: [edgeOf(last.id, 'ankle')],
          ring: footed === 'ankle',
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
  { footed, slit, allowance: depth }: LegEnds,
): readonly Join[] {
  const stretch = (part: string, name: string, these: Chain, to: Chain, more: Partial<Join> = {}): Join =>
    joinOf({ id: id(part), name, this: these, to, seam: 'stretch', depth, ...more });
  /** From the foot of one leg up to the crotch, and down the other. */
  const inner = (side: 'front' | 'back'): Chain => {
    const up: readonly EdgeRef[] = [
      ...(footed === 'foot' ? [edgeOf(down.at(-1) ?? '', `toe-${side}`)] : []),
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
    stretch('inseam', 'Inseam', inner('front'), inner('back'), {
      closes: true,
      tacked: true,
      ...(footed === 'slit' && { stopsAt: aboveOpening(slit) }),
    }),
  ];
}
