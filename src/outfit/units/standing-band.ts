import { bad, good } from '../../length/result.ts';
import { COLLAR_ALLOWANCE, NECK_PLACE, proposeAllowance, turnedSeam } from './collar.ts';
import { beyondReason } from './reason.ts';
import { runOf } from './runs.ts';
import { bend } from './sketch.ts';
import { proposeClosing, standFor } from './stand.ts';
import { STAND_FIELDS } from './stand-fields.ts';
import { STIFFENING } from './stiffening.ts';
import { unit } from './unit.ts';

/** A band that stands up round the neck. */
export const standingBand = unit({
  id: 'standing-band',
  name: 'Standing band',
  tells: 'Stands up round the neck; meets in front, or is buttoned.',
  group: 'Neck and collar',
  places: { neck: NECK_PLACE },
  fields: {
    height: {
      kind: 'length',
      label: 'Height',
      means: 'Finished, at the centre back.',
      start: { in: '1 1/4', mm: '30' },
    },
    ...STAND_FIELDS,
    ...COLLAR_ALLOWANCE,
    ...STIFFENING,
  },
  blame: { hole: 'diameter', button: 'diameter' },
  propose: ({ at, garment }) => ({ ...proposeClosing(garment, at.neck), ...proposeAllowance(at.neck) }),
  build: ({ values, at, cloth, garment, marker, id, name }) => {
    const { height, allowance } = values;
    const beyond = beyondReason({ height }, allowance);
    if (beyond) return bad(beyond);
    const run = runOf(garment, at.neck.chain);
    const made = standFor({
      id,
      unit: id(),
      name,
      garment,
      run,
      cloth: cloth.main.id,
      allowance,
      height,
      values,
      marker,
    });
    if (!made.ok) return made;
    const { outer, inner, pieces, works, neck } = made.value;
    const seam = turnedSeam(
      id('layers'),
      `${name} upper seam`,
      [outer, inner],
      ['front-end', 'upper'],
      allowance,
    );
    return good({
      pieces,
      works,
      joins: [seam, neck],
    });
  },
  sketch: [
    { pen: 'shape', points: bend([22, 34], [30, 20], [70, 20], [78, 34]) },
    { pen: 'shape', points: bend([22, 34], [30, 50], [44, 58], [50, 58]) },
    { pen: 'shape', points: bend([78, 34], [70, 50], [56, 58], [50, 58]) },
    { pen: 'shape', points: bend([18, 54], [26, 72], [42, 80], [50, 80]) },
    { pen: 'shape', points: bend([82, 54], [74, 72], [58, 80], [50, 80]) },
    {
      pen: 'shape',
      points: [
        [22, 34],
        [18, 54],
      ],
    },
    {
      pen: 'shape',
      points: [
        [78, 34],
        [82, 54],
      ],
    },
    {
      pen: 'shape',
      points: [
        [50, 58],
        [50, 98],
      ],
    },
    { pen: 'stitch', points: bend([20, 51], [28, 68], [43, 76], [50, 76]) },
    { pen: 'stitch', points: bend([80, 51], [72, 68], [57, 76], [50, 76]) },
    {
      pen: 'faint',
      points: [
        [18, 54],
        [2, 62],
      ],
    },
    {
      pen: 'faint',
      points: [
        [82, 54],
        [98, 62],
      ],
    },
  ],
});
