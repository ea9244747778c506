import { advise } from '../../cloth/advice.ts';
import { bindingWidth } from '../../cloth/bias.ts';
import { refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { inches, longer, times, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import type { Join, Piece, Work } from '../outfit.ts';
import {
  bothHalves,
  COLLAR_ALLOWANCE,
  edgeOn,
  layers,
  NECK_PLACE,
  proposeAllowance,
  turnedSeam,
} from './collar.ts';
import { besideNeck } from './flat-collar-outline.ts';
import { neckLine } from './neck-line.ts';
import { joinOf, pieceOf, stepOf } from './parts.ts';
import { isGathered, runOf } from './runs.ts';
import { bend } from './sketch.ts';
import { STIFFENING, stiffeningOf } from './stiffening.ts';
import { unit } from './unit.ts';

/** A neck facing reaches so far down. */
const FACING_DEEP = inches(2);
/** The bias strip over a neck seam, finished. */
const STRIP_WIDE = inches(1, 2);
/** A trim is basted so much less deep than its seam. */
const LESS_DEEP = inches(1, 8);

/** A collar that lies flat round the neck. */
export const flatCollar = unit({
  id: 'flat-collar',
  name: 'Flat collar',
  tells: 'Lies flat on the shoulders; drafted from the neck edge itself.',
  group: 'Neck and collar',
  places: { neck: NECK_PLACE },
  fields: {
    width: {
      kind: 'length',
      label: 'Width',
      means: 'From the neck seam to the outer edge, all round.',
      start: { in: '2 1/2', mm: '65' },
    },
    corner: {
      kind: 'choice',
      label: 'Front corners',
      options: [
        { value: 'round', label: 'rounded' },
        { value: 'square', label: 'square' },
        { value: 'point', label: 'pointed' },
      ],
      start: 'round',
    },
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
    roll: {
      kind: 'length',
      usual: true,
      label: 'Roll',
      means: 'How far the shoulders of the pattern overlap at the armhole: more lets it roll at the neck.',
      start: { in: '1/2', mm: '12' },
    },
    ...COLLAR_ALLOWANCE,
    ...STIFFENING,
  },
  propose: ({ at }) => proposeAllowance(at.neck),
  build: ({ values, at, cloth, garment, id, name }) => {
    const { width, corner, neckBy, roll, allowance, stiffening } = values;
    const run = runOf(garment, at.neck.chain);
    if (width <= 0) return bad(refusal('width', 'The collar has no width.', 'Give a width above zero.'));
    if (roll < 0 || longer(roll, inches(4))) {
      const cure = 'Give from 0 to 100 mm (4 in).';
      return bad(refusal('roll', 'The shoulders cannot overlap by this.', cure));
    }
    if (allowance <= LESS_DEEP) {
      const cure = `Give more than ${inBothRules(LESS_DEEP)}.`;
      return bad(refusal('allowance', 'So narrow a seam does not hold.', cure));
    }
    const line = neckLine(garment, run.chain, roll);
    const plain = neckLine(garment, run.chain, zero);
    if (isGathered(garment, run.chain)) {
      const cure = 'Choose a neck edge without gathers, or a standing band.';
      return bad(
        refusal('at.neck', 'This edge is gathered, so a flat collar cannot be drafted from its shape.', cure),
      );
    }
    if (!line || !plain) {
      const cure =
        'Choose the neck edges from one front edge round the back to the other, of pieces that are sewn together.';
      return bad(
        refusal(
          'at.neck',
          'This edge is not alike on both sides, so half a collar cannot be drafted from it.',
          cure,
        ),
      );
    }
    const [upper, under] = [id('upper'), id('under')];
    const pieces: Piece[] = [
      ...layers({
        ids: [upper, under],
        names: [`${name} upper layer`, `${name} under layer`],
        cloth: cloth.main.id,
        unit: id(),
        allowance,
        outline: besideNeck(line, width, corner),
      }),
    ];
    const works: Work[] = pieces.slice(1).flatMap((piece) => stiffeningOf(stiffening, piece));
    const joins: Join[] = [
      turnedSeam(id('layers'), `${name} outer seam`, [upper, under], ['front-end', 'outer'], allowance),
    ];
    const seam = {
      id: id('neck'),
      name: `${name} neck seam`,
      this: run.chain,
      depth: allowance,
      worked: run.worked,
    };
    const assumed: string[] = [];
    if (neckBy === 'faced') {
      const facing = id('facing');
      pieces.push(
        pieceOf({
          id: facing,
          name: `${name} facing`,
          cloth: cloth.main.id,
          cut: 'fold',
          allowance,
          outline: besideNeck(plain, FACING_DEEP, 'square'),
        }),
      );
      works.push(
        {
          kind: 'own',
          id: id('facing-edge'),
          name: `Edge of the ${name.toLowerCase()} facing`,
          on: facing,
          with: [],
          when: 'flat',
          steps: [stepOf('Overlock the outer edge of the neck facing', 'overlocker', 4)],
        },
        {
          kind: 'own',
          id: id('facing-tack'),
          name: `Tacking of the ${name.toLowerCase()} facing`,
          on: facing,
          with: [],
          when: 'late',
          steps: [stepOf('Tack the neck facing to the seam allowances of the shoulders by hand', 'hand', 6)],
        },
      );
      const caught = {
        trim: edgeOn(under, 'neck'),
        basteTo: 'this',
        depth: times(allowance, 2 / 3),
      } as const;
      joins.push(joinOf({ ...seam, to: bothHalves(facing, 'neck'), seam: 'turned', catches: [caught] }));
      assumed.push(`The facing is ${inBothRules(FACING_DEEP)} deep.`);
    } else if (neckBy === 'bound') {
      const strip = bindingWidth({ kind: 'facing', width: STRIP_WIDE });
      if (!strip.ok) return strip;
      joins.push(joinOf({ ...seam, to: bothHalves(under, 'neck'), seam: 'bound' }));
      assumed.push(`A bias strip ${inBothRules(strip.value.cut)} wide covers the neck seam inside.`);
    } else {
      works.push({
        kind: 'press-edge',
        id: id('turning'),
        name: `Turned-in neck edge of the ${name.toLowerCase()}`,
        on: upper,
        edge: 'neck',
        turn: allowance,
      });
      joins.push(
        joinOf({ ...seam, to: bothHalves(under, 'neck'), seam: 'covered', cover: edgeOn(upper, 'neck') }),
      );
    }
    return good({
      pieces,
      works,
      joins,
      advice: [
        advise(
          'Trim the under layer a thread smaller round its outer edge, so that the seam rolls under.',
          practice,
        ),
        ...(roll === 0 ? [advise('Without any roll the neck seam may show at the neck.', practice)] : []),
      ],
      assumed,
    });
  },
  sketch: [
    { pen: 'shape', points: bend([34, 14], [40, 30], [60, 30], [66, 14]) },
    {
      pen: 'faint',
      points: [
        [34, 14],
        [4, 28],
      ],
    },
    {
      pen: 'faint',
      points: [
        [66, 14],
        [96, 28],
      ],
    },
    { pen: 'shape', points: bend([34, 14], [34, 34], [42, 46], [49, 50]) },
    { pen: 'shape', points: bend([66, 14], [66, 34], [58, 46], [51, 50]) },
    { pen: 'shape', points: bend([30, 12], [2, 30], [10, 82], [36, 80]) },
    { pen: 'shape', points: bend([36, 80], [46, 78], [49, 64], [49, 50]) },
    { pen: 'shape', points: bend([70, 12], [98, 30], [90, 82], [64, 80]) },
    { pen: 'shape', points: bend([64, 80], [54, 78], [51, 64], [51, 50]) },
    { pen: 'stitch', points: bend([28, 18], [8, 34], [14, 77], [36, 75]) },
    { pen: 'stitch', points: bend([72, 18], [92, 34], [86, 77], [64, 75]) },
    {
      pen: 'faint',
      points: [
        [50, 52],
        [50, 98],
      ],
    },
  ],
});
