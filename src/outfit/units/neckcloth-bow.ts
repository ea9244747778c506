import { practice } from '../../cloth/source.ts';
import { tiedBow } from '../../cloth/tied-bow.ts';
import { add, inches, type Length, times, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import type { Join, PieceMark, Work } from '../outfit.ts';
import { edgeOn } from './collar.ts';
import { joinOf, pieceOf, stepOf } from './parts.ts';
import { beyondReason } from './reason.ts';
import { strip } from './rectangle.ts';
import { bend } from './sketch.ts';
import { unit } from './unit.ts';

/** A neckcloth lies so much looser than the neck measures. */
const LOOSE = inches(1);

/** A long strip that is tied in a bow round the neck. */
export const neckclothBow = unit({
  id: 'neckcloth-bow',
  name: 'Neckcloth',
  tells: 'A long strip, folded double, tied in a bow with two tails.',
  group: 'Neck and collar',
  fields: {
    round: {
      kind: 'length',
      label: 'Round the neck',
      means: 'Where it lies, over the collar if it is worn so.',
      start: { in: '16', mm: '400' },
    },
    bow: {
      kind: 'length',
      label: 'Width of the bow',
      means: 'Tied, from the end of one loop to the end of the other.',
      start: { in: '7', mm: '180' },
    },
    tail: {
      kind: 'length',
      label: 'Length of a tail',
      means: 'From the knot to its end.',
      start: { in: '7', mm: '180' },
    },
    width: {
      kind: 'length',
      label: 'Width of the tie',
      means: 'Finished, lying flat.',
      start: { in: '3', mm: '75' },
    },
    knot: {
      kind: 'length',
      optional: true,
      label: 'Taken by the knot',
      means: 'Tie a sample and measure what it lost. Empty: twice the width.',
      start: { in: '', mm: '' },
    },
    allowance: { kind: 'length', usual: true, label: 'Seam allowance', start: { in: '3/8', mm: '10' } },
  },
  blame: { longest: 'tail' },
  propose: ({ measures }) =>
    measures.neck === undefined
      ? {}
      : {
          round: {
            value: add(measures.neck, LOOSE),
            because: 'The neck and 1 in to lie easily',
            source: practice,
          },
        },
  build: ({ values, cloth, id, name }) => {
    const { knot, allowance, width, ...sizes } = values;
    const beyond = beyondReason({ ...sizes, width, knot }, allowance);
    if (beyond) return bad(beyond);
    const made = tiedBow({
      ...sizes,
      width,
      allowance,
      ...(knot === undefined ? {} : { knot }),
      longest: cloth.main.width,
    });
    if (!made.ok) return made;
    const { length, cut, marks } = made.value;
    const on = id();
    const halves = cut.count === 2;
    const long = halves ? times(length, 1 / 2) : length;
    const at = (label: string, far: Length): PieceMark => ({ name: label, at: { x: far, y: width } });
    const outline = strip(long, times(width, 2));
    const pieces = [
      pieceOf({
        id: on,
        name,
        cloth: cloth.main.id,
        cut: halves ? 'pair' : 'one',
        allowance,
        outline,
        marks: [
          at('Fold', zero),
          at('Loop turns', marks.loops[0]),
          at('Knot', marks.knot[0]),
          ...(halves
            ? []
            : [
                at('Centre back', marks.centreBack),
                at('Knot', marks.knot[1]),
                at('Loop turns', marks.loops[1]),
              ]),
        ],
      }),
    ];
    const joins: Join[] = [
      ...(halves
        ? [
            joinOf({
              id: id('middle'),
              name: `Centre back seam of the ${name.toLowerCase()}`,
              this: [edgeOn(on, 'right-end')],
              to: [edgeOn(on, 'right-end', true)],
              depth: allowance,
            }),
          ]
        : []),
      joinOf({
        id: id('seam'),
        name: `Long seam and ends of the ${name.toLowerCase()}`,
        this: halves ? [edgeOn(on, 'upper'), edgeOn(on, 'upper', true)] : [edgeOn(on, 'upper')],
        to: halves ? [edgeOn(on, 'lower'), edgeOn(on, 'lower', true)] : [edgeOn(on, 'lower')],
        seam: 'turned',
        depth: allowance,
      }),
    ];
    const works: Work[] = [
      {
        kind: 'own',
        id: id('closing'),
        name: `Closing the ${name.toLowerCase()}`,
        on,
        with: [],
        when: 'late',
        finishes: [edgeOn(on, 'left-end'), ...(halves ? [] : [edgeOn(on, 'right-end')])],
        steps: [
          stepOf(`Close the gap beside the centre back of the ${name.toLowerCase()} by hand`, 'hand', 5),
          stepOf(`Press the ${name.toLowerCase()}, its seam on the very edge`, 'iron', 6),
          stepOf(`Tie the ${name.toLowerCase()} over the collar and look at loops and tails`, 'try-on', 5),
        ],
      },
    ];
    return good({ pieces, joins, works, advice: made.value.advice, assumed: made.value.assumed });
  },
  sketch: [
    { pen: 'faint', points: bend([30, 6], [34, 24], [66, 24], [70, 6]) },
    { pen: 'shape', points: bend([26, 10], [30, 34], [70, 34], [74, 10]) },
    { pen: 'shape', points: bend([46, 40], [30, 18], [4, 26], [6, 42]) },
    { pen: 'shape', points: bend([6, 42], [6, 58], [32, 54], [46, 46]) },
    { pen: 'shape', points: bend([54, 40], [70, 18], [96, 26], [94, 42]) },
    { pen: 'shape', points: bend([94, 42], [94, 58], [68, 54], [54, 46]) },
    {
      pen: 'shape',
      closed: true,
      points: [
        [45, 35],
        [55, 35],
        [56, 49],
        [44, 49],
      ],
    },
    {
      pen: 'shape',
      points: [
        [45, 49],
        [24, 94],
        [40, 96],
        [50, 50],
      ],
    },
    {
      pen: 'shape',
      points: [
        [55, 49],
        [76, 94],
        [60, 96],
        [50, 50],
      ],
    },
    { pen: 'fold', points: bend([45, 42], [34, 38], [24, 36], [16, 40]) },
    { pen: 'fold', points: bend([55, 42], [66, 38], [76, 36], [84, 40]) },
  ],
});
