import { advise } from '../../cloth/advice.ts';
import { refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { inches, longer, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { COLLAR_ALLOWANCE, layers, NECK_PLACE, proposeAllowance, turnedSeam } from './collar.ts';
import { NECK_BY_FIELD, neckSeam } from './collar-neck.ts';
import { besideNeck } from './flat-collar-outline.ts';
import { neckLine } from './neck-line.ts';
import { beyondReason } from './reason.ts';
import { isGathered, runOf } from './runs.ts';
import { bend } from './sketch.ts';
import { STIFFENING, stiffeningOf } from './stiffening.ts';
import { unit } from './unit.ts';

/** A collar seam is deeper than this. */
const LEAST_DEEP = inches(1, 8);

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
    ...NECK_BY_FIELD,
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
    const beyond = beyondReason({ width }, allowance);
    if (beyond) return bad(beyond);
    if (width <= 0) return bad(refusal('width', 'The collar has no width.', 'Give a width above zero.'));
    if (roll < 0 || longer(roll, inches(4))) {
      const cure = 'Give from 0 to 100 mm (4 in).';
      return bad(refusal('roll', 'The shoulders cannot overlap by this.', cure));
    }
    if (allowance <= LEAST_DEEP) {
      const cure = `Give more than ${inBothRules(LEAST_DEEP)}.`;
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
    const pieces = layers({
      ids: [upper, under],
      names: [`${name} upper layer`, `${name} under layer`],
      cloth: cloth.main.id,
      unit: id(),
      allowance,
      outline: besideNeck(line, width, corner),
    });
    const seam = neckSeam({
      id,
      name,
      run,
      line: plain,
      by: neckBy,
      upper,
      under,
      cloth: cloth.main.id,
      allowance,
    });
    if (!seam.ok) return seam;
    return good({
      pieces: [...pieces, ...seam.value.pieces],
      works: [...pieces.slice(1).flatMap((piece) => stiffeningOf(stiffening, piece)), ...seam.value.works],
      joins: [
        turnedSeam(id('layers'), `${name} outer seam`, [upper, under], ['front-end', 'outer'], allowance),
        ...seam.value.joins,
      ],
      advice: [
        advise(
          'Trim the under layer a thread smaller round its outer edge, so that the seam rolls under.',
          practice,
        ),
        ...(roll === 0 ? [advise('Without any roll the neck seam may show at the neck.', practice)] : []),
      ],
      assumed: seam.value.assumed,
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
