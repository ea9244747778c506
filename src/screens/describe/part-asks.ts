import type { Join } from '../../outfit/outfit.ts';
import { type Asks, long, yes } from './asks.ts';

const SEAMS: readonly (readonly [Join['seam'], string, string])[] = [
  ['plain', 'Plain seam', 'Pinned, stitched, pressed.'],
  ['stretch', 'Stretch seam', 'Sewn with a stitch that gives.'],
  ['turned', 'Turned seam', 'Right sides together, stitched, clipped, turned and pressed.'],
  ['ends', 'Ends closed', 'The short ends of two layers, stitched and turned.'],
  ['covered', 'Covered seam', 'Stitched with one layer held away, which is then sewn over it by hand.'],
  ['bound', 'Bound seam', 'Finished with a bias strip that is sewn down inside by hand.'],
  ['laid-on', 'Laid on', 'Laid flat on the right side and stitched through.'],
];

/** What is asked of a join, besides its name. */
export const JOIN_ASKS: Asks = {
  this: {
    kind: 'run',
    label: 'This edge',
    means: 'Touch one, or several that lie end to end, in their order.',
  },
  to: { kind: 'run', label: 'Is sewn to', means: 'Touch one, or several in the same direction as above.' },
  seam: {
    kind: 'kind',
    label: 'Seam',
    options: SEAMS.map(([value, label, tells]) => ({ value, label, tells })),
    start: 'plain',
  },
  depth: long('Depth of the seam', ['1/2', '12'], { means: 'From the cut edge.' }),
  finish: {
    kind: 'choice',
    label: 'Raw edges',
    options: [
      { value: 'none', label: 'Left as they are' },
      { value: 'overlock', label: 'Overlocked' },
      { value: 'pinked', label: 'Pinked' },
    ],
    start: 'none',
  },
  cover: {
    kind: 'run',
    one: true,
    optional: true,
    label: 'Edge sewn over it',
    means: 'For a covered seam: the edge of the layer that was held away.',
  },
  catches: {
    kind: 'rows',
    each: 'trim',
    first: 0,
    optional: true,
    label: 'Caught in the seam',
    means: 'A frill, lace or piping: basted to one side first, less deep than the seam.',
    row: {
      trim: { kind: 'run', one: true, label: 'Its edge' },
      basteTo: {
        kind: 'choice',
        label: 'Basted first to',
        options: [
          { value: 'this', label: 'This edge' },
          { value: 'to', label: 'The edge it is sewn to' },
        ],
        start: 'this',
      },
      depth: long('Basted at', ['3/8', '9'], { means: 'From the cut edge, less than the seam.' }),
    },
  },
  ring: yes(
    'Closes into a ring',
    'no',
    'Both runs come back to where they began: a sleeve set in the round.',
  ),
  worked: {
    kind: 'choice',
    label: 'Sewn',
    options: [
      { value: 'flat', label: 'While the garment lies open' },
      { value: 'round', label: 'In the round, when it is closed' },
    ],
    start: 'flat',
    usual: true,
  },
  closes: yes('Closes the tube', 'no', 'The seam that makes a body, a leg or a sleeve round.'),
  tacked: yes('Tacked first for a try-on', 'no'),
  stopsAt: {
    kind: 'words',
    optional: true,
    label: 'Stops short at',
    start: '',
    means: 'Where the stitching ends before the edge: the cuff.',
  },
};

/** What is asked of a try-on, besides its name. */
export const TRY_ON_ASKS: Asks = {
  checks: {
    kind: 'rows',
    each: 'thing to look at',
    first: 1,
    plain: true,
    label: 'What to look at',
    means: 'The most basic first.',
    row: { words: { kind: 'words', label: 'Look at', start: '' } },
  },
  after: {
    kind: 'some',
    of: 'joins and works',
    label: 'Comes after',
    means: 'What must be sewn or done for it; seams that are tacked first only need their tacking.',
  },
  tack: {
    kind: 'some',
    of: 'joins',
    optional: true,
    label: 'Tacked for it alone',
    means: 'Seams tacked by hand for this try-on and opened again after it.',
  },
  trial: {
    ...yes(
      'A trial in cheap cloth',
      'no',
      'Its pieces are cut plain from cheap cloth first, before the good cloth.',
    ),
    as: 'only yes',
  },
};

/** What is asked of a piece that is drawn already. */
export const PIECE_ASKS: Asks = {
  cloth: { kind: 'which', of: 'cloths', label: 'Cloth' },
  cut: {
    kind: 'choice',
    label: 'Cut',
    options: [
      { value: 'one', label: 'One' },
      { value: 'pair', label: 'A pair, left and right' },
      { value: 'fold', label: 'One on the fold' },
    ],
    start: 'one',
  },
  allowance: long('Seam allowance', ['1/2', '12'], {
    means: 'Of edges that are in no seam; a seam takes its own depth, a hem its turn.',
  }),
  unit: {
    kind: 'words',
    as: 'id',
    optional: true,
    label: 'Made up with',
    start: '',
    means: 'Pieces with the same word here are made up by themselves first: a collar, a cuff.',
  },
  cutAfterWork: yes(
    'Cut to shape after its works',
    'no',
    'A block is cut first, tucked or beaded, and then cut.',
  ),
  grain: {
    kind: 'number',
    optional: true,
    label: 'Grain',
    unit: '°',
    start: '',
    means: 'Clockwise from the upright of the drawing; empty where it is upright, 45 on the bias.',
  },
  marks: {
    kind: 'rows',
    each: 'mark',
    first: 0,
    optional: true,
    label: 'Marked on it',
    means: 'A dart’s point, where a pocket sits.',
    row: {
      name: { kind: 'words', label: 'What is there', start: '' },
      'at.x': long('Across', ['1', '25'], { means: 'From the 0 of the drawing, to the right.' }),
      'at.y': long('Down', ['1', '25']),
    },
  },
};
