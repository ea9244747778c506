import { type Advice, advise } from '../../cloth/advice.ts';
import { type Refusal, refusal } from '../../cloth/refusal.ts';
import { geometry } from '../../cloth/source.ts';
import { add, type Length, subtract, times } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { flattenOutline } from '../../shape/flatten.ts';
import { boundingBox } from '../../shape/measure.ts';
import type { Outline } from '../../shape/outline.ts';
import { lower } from '../lower.ts';
import type { Chain, Cloth, Garment, Piece } from '../outfit.ts';
import { gateOf, joinOf, pieceOf, stepOf } from './parts.ts';
import { eachOf, mate, runOf } from './runs.ts';
import { edgeOf } from './sleeve-made.ts';
import { turnedUp } from './turned-up.ts';
import type { EdgesPlaced, Parts } from './unit.ts';

/** What a skirt is made of, once a quarter of it is drawn. */
export interface SkirtTold {
  readonly id: (part?: string) => string;
  readonly name: string;
  readonly garment: Garment;
  readonly cloth: Cloth;
  readonly to: EdgesPlaced | undefined;
  readonly waist: Length;
  readonly opens: 'back' | 'front' | 'closed';
  readonly opening: Length;
  readonly allowance: Length;
  readonly written: (length: Length) => string;
  /** A quarter, its edges called `waist`, `side`, `hem` and as its centre is to be called. */
  readonly quarter: (centre: string) => Outline;
}

const CHECKS: readonly string[] = [
  'It goes on over the hips',
  'The waist sits where it is worn and does not slide',
  'The side seams hang plumb',
  'It falls freely over the hips and the seat, standing and sitting',
  'It clears the floor and the shoes all round',
];

/** The pieces of a skirt, its seams, and the seam to what it hangs from. */
export function skirtOf(
  told: SkirtTold,
): Result<Omit<Parts, 'catches'> & { readonly advice: readonly Advice[] }, Refusal> {
  const { id, name, garment, to, opens, opening, allowance, cloth } = told;
  if (allowance <= 0)
    return bad(refusal('allowance', 'A seam needs cloth beyond it.', 'Write more than zero.'));
  if (opens === 'back' && opening <= 0)
    return bad(refusal('opening', 'The opening has no length.', 'Write one, or let it open nowhere.'));
  const panel = (side: 'front' | 'back'): Piece => {
    const open = opens === side;
    const centre = !open ? 'fold' : side === 'front' ? 'opening' : 'centre';
    return pieceOf({
      id: id(side),
      name: `${name} ${side}`,
      cloth: cloth.id,
      cut: open ? 'pair' : 'fold',
      allowance,
      outline: told.quarter(centre),
    });
  };
  const [front, back] = [panel('front'), panel('back')];
  const usual = { depth: allowance, finish: 'overlock' } as const;
  const closedBy = opens === 'back' ? id('centre-seam') : opens === 'closed' ? id('side-seam') : undefined;
  const alone = to === undefined;
  const joins = [
    joinOf({
      id: id('side-seam'),
      name: `Side seam of the ${lower(name)}`,
      this: [edgeOf(front.id, 'side')],
      to: [edgeOf(back.id, 'side')],
      closes: opens === 'closed',
      tacked: alone && opens === 'closed',
      ...usual,
    }),
  ];
  if (opens === 'back') {
    const centre = edgeOf(back.id, 'centre');
    joins.push(
      joinOf({
        id: id('centre-seam'),
        name: `Centre back seam of the ${lower(name)}`,
        this: [centre],
        to: [mate(centre)],
        closes: true,
        tacked: alone,
        stopsAt: `the opening, ${told.written(opening)} below the waist`,
        ...usual,
      }),
    );
  }
  if (to) {
    const run = runOf(garment, to.chain);
    const taken = turnedUp(garment, run.chain, 'to');
    if (taken) return bad(taken);
    if (run.ring !== (opens === 'closed'))
      return bad(
        refusal(
          'opens',
          run.ring ? 'What it hangs from is closed all round.' : 'What it hangs from is open.',
          run.ring ? 'Let the skirt open nowhere.' : 'Let the skirt open where that does.',
        ),
      );
    const [inner, outer] = opens === 'back' ? [back, front] : [front, back];
    const half: Chain = [edgeOf(inner.id, 'waist'), edgeOf(outer.id, 'waist')];
    joins.push(
      joinOf({
        id: id('waist-seam'),
        name: `Waist seam of the ${lower(name)}`,
        this: [...half, ...half.toReversed().map(mate)],
        to: run.chain,
        ring: run.ring,
        worked: 'round',
        ...usual,
      }),
    );
  }
  const box = boundingBox(flattenOutline(front.outline));
  const wide = add(times(subtract(box.right, box.left), opens === 'front' ? 1 : 2), times(allowance, 2));
  return good({
    pieces: [front, back],
    works:
      opens === 'back'
        ? [
            {
              kind: 'own',
              id: id('opening'),
              name: `Opening of the ${lower(name)}`,
              on: back.id,
              with: [],
              when: 'flat',
              steps: [
                stepOf(
                  `Turn the centre edge of ${eachOf('pair', back.name)} in twice for ${told.written(opening)} below the waist, within the seam allowance, and stitch it`,
                  'machine',
                  6,
                ),
                stepOf('Press the edges of the opening', 'iron', 2),
              ],
            },
          ]
        : [],
    joins,
    gates:
      alone && closedBy !== undefined
        ? [
            gateOf({
              id: id('try'),
              name: `The ${lower(name)}, basted`,
              after: [...new Set([id('side-seam'), closedBy])],
              checks: CHECKS,
            }),
          ]
        : [],
    advice: [
      ...(wide > cloth.width
        ? [
            advise(
              `A panel is ${told.written(wide)} wide with its allowances, wider than the ${lower(cloth.name)}: turn it, or join breadths before cutting.`,
              geometry,
            ),
          ]
        : []),
    ],
  });
}
