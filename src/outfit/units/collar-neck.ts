import { bindingWidth } from '../../cloth/bias.ts';
import type { Refusal } from '../../cloth/refusal.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { inches, type Length, times } from '../../length/length.ts';
import { good, type Result } from '../../length/result.ts';
import { bothHalves, edgeOn } from './collar.ts';
import { besideNeck } from './flat-collar-outline.ts';
import type { Path } from './neck-line.ts';
import { joinOf, pieceOf, stepOf } from './parts.ts';
import type { Run } from './runs.ts';
import type { Built } from './unit.ts';

/** A neck facing reaches so far down. */
const FACING_DEEP = inches(2);
/** The bias strip over a neck seam, finished. */
const STRIP_WIDE = inches(1, 2);

/** Ways to cover the neck seam of a collar. */
export const NECK_BY_FIELD = {
  neckBy: {
    kind: 'choice',
    label: 'Neck seam',
    options: [
      { value: 'bound', label: 'covered by a bias strip inside' },
      { value: 'faced', label: 'covered by a facing' },
      { value: 'inside', label: 'covered by the collar’s own upper layer' },
    ],
    start: 'bound',
  },
} as const;

/** The neck seam of a collar of two layers, and what covers it. Refused as the width of a binding is. */
export function neckSeam(told: {
  readonly id: (part: string) => string;
  readonly name: string;
  readonly run: Run;
  /** The neck edge as it lies, for a facing. */
  readonly line: Path;
  readonly by: 'bound' | 'faced' | 'inside';
  readonly upper: string;
  readonly under: string;
  readonly cloth: string;
  readonly allowance: Length;
}): Result<Pick<Built, 'pieces' | 'works' | 'joins' | 'assumed'>, Refusal> {
  const { id, name, run, line, by, upper, under, cloth, allowance } = told;
  const seam = {
    id: id('neck'),
    name: `${name} neck seam`,
    this: run.chain,
    depth: allowance,
    worked: run.worked,
  };
  const low = name.toLowerCase();
  const to = bothHalves(under, 'neck');
  const nothing = { pieces: [], works: [], assumed: [] };
  if (by === 'bound') {
    const strip = bindingWidth({ kind: 'facing', width: STRIP_WIDE });
    if (!strip.ok) return strip;
    return good({
      ...nothing,
      joins: [joinOf({ ...seam, to, seam: 'bound' })],
      assumed: [`A bias strip ${inBothRules(strip.value.cut)} wide covers the neck seam inside.`],
    });
  }
  if (by === 'inside') {
    return good({
      ...nothing,
      works: [
        {
          kind: 'press-edge',
          id: id('turning'),
          name: `Turned-in neck edge of the ${low}`,
          on: upper,
          edge: 'neck',
          turn: allowance,
        },
      ],
      joins: [joinOf({ ...seam, to, seam: 'covered', cover: edgeOn(upper, 'neck') })],
    });
  }
  const on = id('facing');
  const own = { kind: 'own', on, with: [] } as const;
  // The collar lies between body and facing, basted first and less deep.
  const caught = { trim: edgeOn(under, 'neck'), basteTo: 'this', depth: times(allowance, 2 / 3) } as const;
  return good({
    pieces: [
      pieceOf({
        id: on,
        name: `${name} facing`,
        cloth,
        cut: 'fold',
        allowance,
        outline: besideNeck(line, FACING_DEEP, 'square'),
      }),
    ],
    works: [
      {
        ...own,
        id: id('facing-edge'),
        name: `Edge of the ${low} facing`,
        when: 'flat',
        finishes: [edgeOn(on, 'outer'), edgeOn(on, 'front-end')],
        steps: [stepOf(`Overlock the outer edge and the ends of the ${low} facing`, 'overlocker', 4)],
      },
      {
        ...own,
        id: id('facing-tack'),
        name: `Tacking of the ${low} facing`,
        when: 'late',
        steps: [
          stepOf(
            `Tack the ${low} facing to the seam allowances of the shoulders by hand, and its ends to the front`,
            'hand',
            8,
          ),
        ],
      },
    ],
    joins: [joinOf({ ...seam, to: bothHalves(on, 'neck'), seam: 'turned', catches: [caught] })],
    assumed: [`The facing is ${inBothRules(FACING_DEEP)} deep.`],
  });
}
