import { advise } from '../../cloth/advice.ts';
import { refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { add, inches, longer } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { COLLAR_ALLOWANCE, layers, NECK_PLACE, proposeAllowance, turnedSeam } from './collar.ts';
import { beyondReason } from './reason.ts';
import { runOf } from './runs.ts';
import { bend } from './sketch.ts';
import { fallOnStand, proposeClosing, standFor } from './stand.ts';
import { STAND_FIELDS } from './stand-fields.ts';
import { fallOutline } from './stand-outline.ts';
import { STIFFENING, stiffeningOf } from './stiffening.ts';
import { unit } from './unit.ts';

/** A fall is wider than its stand by at least this, so that it covers the neck seam. */
const COVERS = inches(1, 4);

/** A collar in two parts: a band that stands, and a fall that turns down over it. */
export const standAndCollar = unit({
  id: 'stand-and-collar',
  name: 'Shirt collar',
  tells: 'In two parts: a stand, and a fall that turns down over it.',
  group: 'Neck and collar',
  places: { neck: NECK_PLACE },
  fields: {
    height: {
      kind: 'length',
      label: 'Height of the stand',
      means: 'Finished, at the centre back.',
      start: { in: '1 1/4', mm: '30' },
    },
    width: {
      kind: 'length',
      label: 'Width of the fall',
      means: 'Finished, at the centre back.',
      start: { in: '1 3/4', mm: '45' },
    },
    point: {
      kind: 'length',
      label: 'Length of the point',
      means: 'Finished, along the front end of the fall.',
      start: { in: '2 3/4', mm: '70' },
    },
    ...STAND_FIELDS,
    ...COLLAR_ALLOWANCE,
    ...STIFFENING,
  },
  blame: { hole: 'diameter', button: 'diameter' },
  propose: ({ at, garment }) => ({ ...proposeClosing(garment, at.neck), ...proposeAllowance(at.neck) }),
  build: ({ values, at, cloth, garment, marker, id, name }) => {
    const { height, width, point, allowance, rise } = values;
    const run = runOf(garment, at.neck.chain);
    const beyond = beyondReason({ width }, allowance);
    if (beyond) return bad(beyond);
    const stand = standFor({
      id: (part) => id(`stand-${part}`),
      name: `${name} stand`,
      garment,
      run,
      cloth: cloth.main.id,
      allowance,
      height,
      values,
      marker,
    });
    if (!stand.ok) return stand;
    if (longer(add(height, COVERS), width)) {
      const cure = `Give at least ${inBothRules(add(height, COVERS), 'up')}.`;
      return bad(refusal('width', 'So narrow a fall does not cover the neck seam behind.', cure));
    }
    if (point <= 0 || longer(point, run.length)) {
      const cure = 'Give the length of the front end, above zero and less than the neck.';
      return bad(refusal('point', 'The fall cannot have such a point.', cure));
    }
    const { outer, inner, upper: along } = stand.value;
    const [upper, under] = [id('upper'), id('under')];
    const fall = layers({
      ids: [upper, under],
      names: [`${name} upper layer`, `${name} under layer`],
      cloth: cloth.main.id,
      unit: id('fall'),
      allowance,
      outline: fallOutline({ half: along, width, point, drop: rise }),
    });
    return good({
      pieces: [...stand.value.pieces, ...fall],
      works: [
        ...stand.value.works,
        {
          kind: 'press-edge',
          id: id('stand-upper-turning'),
          name: `Turned-in upper edge of the ${name.toLowerCase()} stand`,
          on: inner,
          edge: 'upper',
          turn: allowance,
        },
        ...fall.slice(1).flatMap((piece) => stiffeningOf(values.stiffening, piece)),
      ],
      joins: [
        turnedSeam(id('layers'), `${name} outer seam`, [upper, under], ['front-end', 'outer'], allowance),
        ...fallOnStand({ id, name, under, outer, inner, allowance }),
        stand.value.neck,
      ],
      advice: [
        advise(
          'Trim the under layer a thread smaller round its outer edge, so that the seam rolls under.',
          practice,
        ),
      ],
      assumed: [
        'The fall ends at the centre front. Both its layers are sewn to the stand together, and the inner layer of the stand covers the seam.',
      ],
    });
  },
  sketch: [
    { pen: 'shape', points: bend([26, 26], [34, 12], [66, 12], [74, 26]) },
    { pen: 'shape', points: bend([26, 26], [30, 44], [42, 54], [50, 56]) },
    { pen: 'shape', points: bend([74, 26], [70, 44], [58, 54], [50, 56]) },
    {
      pen: 'shape',
      points: [
        [26, 26],
        [14, 46],
        [22, 84],
        [50, 56],
      ],
    },
    {
      pen: 'shape',
      points: [
        [74, 26],
        [86, 46],
        [78, 84],
        [50, 56],
      ],
    },
    {
      pen: 'stitch',
      points: [
        [18, 46],
        [25, 77],
        [45, 57],
      ],
    },
    {
      pen: 'stitch',
      points: [
        [82, 46],
        [75, 77],
        [55, 57],
      ],
    },
    { pen: 'fold', points: bend([30, 30], [36, 40], [64, 40], [70, 30]) },
    {
      pen: 'shape',
      points: [
        [44, 62],
        [44, 98],
      ],
    },
    {
      pen: 'shape',
      points: [
        [56, 62],
        [56, 98],
      ],
    },
    {
      pen: 'shape',
      closed: true,
      points: Array.from(
        { length: 8 },
        (_, i) => [50 + 3 * Math.cos((i * Math.PI) / 4), 74 + 3 * Math.sin((i * Math.PI) / 4)] as const,
      ),
    },
    {
      pen: 'faint',
      points: [
        [14, 48],
        [2, 54],
      ],
    },
    {
      pen: 'faint',
      points: [
        [86, 48],
        [98, 54],
      ],
    },
  ],
});
