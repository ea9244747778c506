import { type Refusal, refusal } from '../../cloth/refusal.ts';
import { sleeveHead } from '../../cloth/sleeve-head.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { type Length, nm, subtract, times } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { edgeLengths } from '../../shape/measure.ts';
import { nearestOn } from '../../shape/nearest.ts';
import { lower } from '../lower.ts';
import type { Garment, Piece } from '../outfit.ts';
import { pieceOf, stepOf } from './parts.ts';
import { rectangle } from './rectangle.ts';
import { eachOf } from './runs.ts';
import { edgeOf } from './sleeve-made.ts';
import type { Built } from './unit.ts';

/** What a sleeve measures once its gathers are drawn up; what it does not have is left out. */
export function sizesOf(garment: Garment, sleeve: Piece) {
  const lengths = edgeLengths(sleeve.outline);
  const drawnUp = (edge: string): Length | undefined => {
    const long = lengths.get(edge);
    const gather = garment.works.find(
      (work) => work.kind === 'gather' && work.on === sleeve.id && work.edge === edge,
    );
    return long && times(long, 1 / (gather?.kind === 'gather' ? gather.fullness : 1));
  };
  return {
    cap: drawnUp('cap'),
    top: drawnUp('cap') ?? drawnUp('upper'),
    bottom: drawnUp('lower'),
    side: lengths.get('front-seam'),
    capLong: lengths.get('cap'),
  };
}

/** What a support inside a sleeve is told, whichever it is. */
export interface SupportTold {
  readonly id: (part?: string) => string;
  readonly name: string;
  readonly garment: Garment;
  readonly sleeve: Piece;
  readonly cloth: string;
  readonly allowance: Length;
  readonly marker: string;
}

/** What is the same for every support: how it is cut, and that it is put in late. */
export const supportCommon = ({ id, sleeve, cloth, allowance }: SupportTold) =>
  ({
    cut: { id: id(), cloth, cut: sleeve.cut === 'pair' ? 'pair' : 'one', allowance },
    late: { kind: 'own', id: id('put-in'), on: id(), with: [sleeve.id], when: 'late' },
  }) as const;

/** A folded strip in the upper half of the cap, its middle at the shoulder. */
export function supportStrip(
  told: SupportTold & { readonly depth: Length; readonly fullness: number },
): Result<Pick<Built, 'pieces' | 'works' | 'advice' | 'assumed'>, Refusal> {
  const { id, name, garment, sleeve, depth, fullness, allowance, marker } = told;
  const common = supportCommon(told);
  const each = eachOf(sleeve.cut, sleeve.name);
  const called = lower(name);
  const { cap, capLong } = sizesOf(garment, sleeve);
  if (!cap || !capLong) {
    const cure = 'Choose a set-in sleeve, or an inner sleeve.';
    return bad(refusal('at.sleeve', `${sleeve.name} has no cap.`, cure));
  }
  const mark = sleeve.marks.find((one) => one.name === 'shoulder');
  const along = mark ? nearestOn(sleeve.outline, mark.at)?.along : undefined;
  const toShoulder = nm(cap * (1 - (along ?? capLong / 2) / capLong));
  const made = sleeveHead({ cap, toShoulder, depth, allowance, fullness });
  if (!made.ok) return made;
  const { cut, from, to, advice, assumed } = made.value;
  return good({
    pieces: [
      pieceOf({
        ...common.cut,
        name,
        outline: rectangle(subtract(cut.length, times(allowance, 2)), times(depth, 2), [
          'seam',
          'front-end',
          'inner',
          'back-end',
        ]),
      }),
    ],
    works: [
      {
        kind: 'own',
        id: id('fold'),
        name: `Fold of the ${called}`,
        on: id(),
        with: [],
        when: 'flat',
        finishes: ['seam', 'front-end', 'inner', 'back-end'].map((edge) => edgeOf(id(), edge)),
        steps: [
          stepOf(`Turn both ends of each ${called} in and fold it in half along its length`, 'iron', 4),
          stepOf(`Baste the long edges of each ${called} together, its ends with them`, 'hand', 6),
        ],
      },
      ...(fullness > 1
        ? [
            {
              kind: 'gather',
              id: id('gathers'),
              name: `Gathers of the ${called}`,
              on: id(),
              edge: 'seam',
              fullness,
              divide: 4,
              marker,
            } as const,
          ]
        : []),
      {
        ...common.late,
        name: `Putting in the ${called}`,
        steps: [
          stepOf(
            `Draw the ${called} up to ${inBothRules(nm(to - from))} and baste it inside the cap of ${each}, its middle at the shoulder seam`,
            'hand',
            12,
          ),
          stepOf(
            'Look at the sleeve on the body, and move the strip until the cap stands well',
            'try-on',
            10,
          ),
          stepOf(`Sew the ${called} by hand to the allowance of the armhole seam`, 'hand', 20),
        ],
      },
    ],
    advice,
    assumed,
  });
}
