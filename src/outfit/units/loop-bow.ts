import { bow } from '../../cloth/bows.ts';
import { subtract, times } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import type { Join, OwnStep, Piece, Work } from '../outfit.ts';
import { edgeOn } from './collar.ts';
import { joinOf, pieceOf, stepOf } from './parts.ts';
import { beyondReason } from './reason.ts';
import { strip } from './rectangle.ts';
import { bend } from './sketch.ts';
import { unit } from './unit.ts';

/** A bow made up of folded strips and sewn on. */
export const loopBow = unit({
  id: 'loop-bow',
  name: 'Made-up bow',
  tells: 'Loops drawn in by a knot, with tails if wanted, sewn on.',
  group: 'Neck and collar',
  places: {
    on: {
      kind: 'piece',
      optional: true,
      label: 'the piece it is sewn to',
      like: ['collar-upper', 'neckband', 'belt', 'waistband', 'centre-front', 'front'],
    },
  },
  fields: {
    width: {
      kind: 'length',
      label: 'Width of the bow',
      means: 'From the end of one loop to the end of the other.',
      start: { in: '6', mm: '150' },
    },
    height: { kind: 'length', label: 'Height of a loop', start: { in: '3', mm: '75' } },
    knot: {
      kind: 'length',
      label: 'Width of the knot',
      means: 'Across the bow.',
      start: { in: '1', mm: '25' },
    },
    middle: {
      kind: 'length',
      label: 'Round the middle',
      means: 'Of the loops drawn together; wrap a tape round a sample.',
      start: { in: '3', mm: '75' },
    },
    tail: {
      kind: 'length',
      optional: true,
      label: 'Length of a tail',
      means: 'Empty: no tails.',
      start: { in: '', mm: '' },
    },
    tailWidth: { kind: 'length', usual: true, label: 'Width of a tail', start: { in: '2', mm: '50' } },
    allowance: { kind: 'length', usual: true, label: 'Seam allowance', start: { in: '3/8', mm: '10' } },
  },
  blame: { tails: 'tail' },
  build: ({ values, at, cloth, id, name }) => {
    const { tail, tailWidth, allowance, ...sizes } = values;
    const beyond = beyondReason({ ...sizes, tail, tailWidth }, allowance);
    if (beyond) return bad(beyond);
    const made = bow({
      ...sizes,
      allowance,
      ...(tail === undefined ? {} : { tails: { length: tail, width: tailWidth } }),
    });
    if (!made.ok) return made;
    const seams = times(allowance, 2);
    const pieces: Piece[] = [];
    const joins: Join[] = [];
    for (const { part, count, length, width, marks } of made.value.strips) {
      const on = part === 'loops' ? id() : id(part);
      const called = part === 'loops' ? name : `${name} ${part}`;
      const high = subtract(width, seams);
      pieces.push(
        pieceOf({
          id: on,
          name: called,
          cloth: cloth.main.id,
          cut: count === 2 ? 'pair' : 'one',
          allowance,
          outline: strip(subtract(length, seams), high),
          marks: marks.map((far, i) => ({
            name: part === 'loops' && i !== 1 ? 'Loop turns' : 'Middle',
            at: { x: subtract(far, allowance), y: times(high, 1 / 2) },
          })),
        }),
      );
      joins.push(
        joinOf({
          id: `${on}-seam`,
          name: part === 'tail' ? `Long seam and one end of the ${called.toLowerCase()}` : `${called} seam`,
          this: [edgeOn(on, 'upper')],
          to: [edgeOn(on, 'lower')],
          seam: 'turned',
          depth: allowance,
        }),
      );
    }
    const [loops = id(), ...rest] = pieces.map((piece) => piece.id);
    const low = name.toLowerCase();
    const host = at.on?.piece;
    const steps: OwnStep[] = [
      stepOf(`Sew the two ends of the ${low} together, so that the seam comes behind the middle`, 'hand', 6),
      stepOf(`Lay the middle of the ${low} in even pleats and wind thread round them`, 'hand', 8),
      ...(tail === undefined ? [] : [stepOf(`Sew the tails behind the middle of the ${low}`, 'hand', 6)]),
      stepOf(`Wrap the knot round the middle of the ${low} and sew it together behind`, 'hand', 8),
      ...(host
        ? [
            stepOf(
              `Pin the ${low} to the ${host.name.toLowerCase()}, look at it worn, and sew it on through its knot`,
              'hand',
              8,
            ),
          ]
        : []),
    ];
    const works: Work[] = [
      {
        kind: 'own',
        id: id('making'),
        name: `Making up the ${low}`,
        on: loops,
        with: [...rest, ...(host ? [host.id] : [])],
        when: 'late',
        finishes: pieces.flatMap((piece) => [edgeOn(piece.id, 'right-end'), edgeOn(piece.id, 'left-end')]),
        steps,
      },
    ];
    return good({ pieces, joins, works, assumed: made.value.assumed });
  },
  sketch: [
    { pen: 'shape', points: bend([44, 46], [30, 14], [2, 18], [4, 50]) },
    { pen: 'shape', points: bend([4, 50], [2, 82], [30, 86], [44, 54]) },
    { pen: 'shape', points: bend([56, 46], [70, 14], [98, 18], [96, 50]) },
    { pen: 'shape', points: bend([96, 50], [98, 82], [70, 86], [56, 54]) },
    { pen: 'shape', closed: true, points: bend([44, 40], [40, 62], [60, 62], [56, 40]) },
    { pen: 'fold', points: bend([43, 47], [32, 38], [24, 36], [16, 38]) },
    { pen: 'fold', points: bend([43, 52], [32, 60], [24, 64], [16, 62]) },
    { pen: 'fold', points: bend([57, 47], [68, 38], [76, 36], [84, 38]) },
    { pen: 'fold', points: bend([57, 52], [68, 60], [76, 64], [84, 62]) },
    {
      pen: 'fullness',
      points: [
        [43, 50],
        [30, 50],
      ],
    },
    {
      pen: 'fullness',
      points: [
        [57, 50],
        [70, 50],
      ],
    },
  ],
});
