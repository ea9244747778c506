import type { WorkKind } from '../../outfit/outfit.ts';
import { type Asks, type FieldAsk, long, yes } from './asks.ts';

/** A kind of work: what the trade calls it, what it is, and what is asked of it. */
export interface KindOfWork {
  readonly word: string;
  readonly tells: string;
  readonly asks: Asks;
}

const marker = { kind: 'which', of: 'markers', label: 'Marked with', usual: true } as const;
const edge = (label = 'Edge', means?: string) =>
  ({ kind: 'edge', label, ...(means === undefined ? {} : { means }) }) as const;
const words = (label: string, start: string, means?: string) =>
  ({ kind: 'words', label, start, ...(means === undefined ? {} : { means }) }) as const;
const count = (
  label: string,
  start: string,
  more: Partial<Extract<FieldAsk, { kind: 'number' }>> = {},
): FieldAsk => ({
  kind: 'number',
  label,
  start,
  ...more,
});
const ring = (start: 'yes' | 'no') =>
  yes('Runs round in a ring', start, 'Where the run comes back to where it began: a hem, a waist.');
const piece = { kind: 'which', of: 'pieces', label: 'Piece' } as const;

const family = (at: string, of: string, angle: string): Asks => ({
  [`${at}.depths`]: {
    kind: 'lengths',
    label: `Depth of each tuck${of}`,
    means: 'The one nearest the edge they are measured from comes first; write 12 × 1/4 for twelve alike.',
    start: { in: '5 × 1/4', mm: '5 × 6' },
  },
  [`${at}.spacing`]: long(`From stitching to stitching${of}`, ['3/4', '20']),
  [`${at}.first`]: long(`From that edge to the first${of}`, ['1', '25']),
  [`${at}.angle`]: count(`Angle to the upright${of}`, angle, { unit: '°', usual: true }),
  [`${at}.pressed`]: {
    kind: 'choice',
    label: `Pressed${of}`,
    options: [
      { value: 'away', label: 'Away from that edge' },
      { value: 'toward', label: 'Toward that edge' },
    ],
    start: 'away',
    usual: true,
  },
});
const datum = edge('Edge measured from', 'All tucks are marked from it.');

const bead = (at: string, of: string, optional?: true): Asks => ({
  [`${at}.name`]: { ...words(`Bead${of}`, optional ? '' : 'Seed bead'), ...(optional ? { optional } : {}) },
  [`${at}.length`]: optional
    ? long(`Length of a bead${of}`)
    : long(`Length of a bead${of}`, ['1/16', '2'], { means: 'Along the thread.' }),
  [`${at}.atATime`]: {
    kind: 'choice',
    as: 'number',
    label: `Sewn${of}`,
    options: [
      { value: '1', label: 'One at a stitch' },
      { value: '2', label: 'Two at a stitch' },
    ],
    start: '1',
    usual: true,
  },
});

const STATIONS = [
  ['cut', 'Cutting table'],
  ['mark', 'Marking'],
  ['pin', 'Pins'],
  ['machine', 'Machine'],
  ['overlocker', 'Overlocker'],
  ['iron', 'Iron'],
  ['hand', 'By hand'],
  ['try-on', 'On the body'],
] as const;

/** Every kind of work with what its form asks; what is not a word of the trade is not a kind. */
export const WORK_KINDS: Readonly<Record<WorkKind, KindOfWork>> = {
  hem: {
    word: 'Hem',
    tells: 'An edge, or a run of edges, turned up and sewn.',
    asks: {
      along: { kind: 'run', on: true, label: 'Along' },
      turn: long('Turned up by', ['1', '25'], { means: 'All that is turned, with what is folded in.' }),
      by: {
        kind: 'choice',
        label: 'Sewn',
        options: [
          { value: 'hand', label: 'By hand' },
          { value: 'machine', label: 'By machine' },
        ],
        start: 'hand',
      },
      ring: ring('no'),
      hang: count('Hangs before it is levelled', '0', { unit: 'hours', usual: true }),
    },
  },
  gather: {
    word: 'Gathers',
    tells: 'An edge drawn up on threads to fit a shorter one.',
    asks: {
      edge: edge(),
      fullness: count('Fullness', '2.5', { unit: 'times' }),
      divide: {
        kind: 'choice',
        as: 'number',
        label: 'Divided in',
        options: [
          { value: '4', label: 'Quarters' },
          { value: '8', label: 'Eighths' },
        ],
        start: '4',
        usual: true,
      },
      marker,
    },
  },
  tucks: {
    word: 'Tucks',
    tells: 'Parallel tucks, stitched and pressed.',
    asks: { from: datum, ...family('family', '', '0'), marker },
  },
  'crossed-tucks': {
    word: 'Crossed tucks',
    tells: 'Two groups of tucks, one across the other.',
    asks: {
      from: datum,
      ...family('families.0', ', first group', '0'),
      ...family('families.1', ', second group', '90'),
      marker,
    },
  },
  'folded-band': {
    word: 'Folded band',
    tells: 'An edge folded over twice on itself: a button band.',
    asks: {
      edge: edge(),
      firstTurn: long('First turn', ['1/2', '12']),
      secondTurn: long('Second turn', ['1', '25'], { means: 'As wide as the finished band.' }),
    },
  },
  'press-edge': {
    word: 'Turned edge',
    tells: 'An edge pressed under along its line before it is sewn down.',
    asks: { edge: edge(), turn: long('Turned under by', ['1/2', '12']) },
  },
  'bind-edge': {
    word: 'Bound edge',
    tells: 'A raw edge closed in a bias strip.',
    asks: { edge: edge(), strip: long('Width of the strip', ['1 1/2', '38'], { means: 'As it is cut.' }) },
  },
  'stay-stitch': {
    word: 'Stay-stitching',
    tells: 'A row of stitching that keeps a curved edge from stretching.',
    asks: { edge: edge() },
  },
  interfacing: {
    word: 'Interfacing',
    tells: 'A stiffer layer behind a whole piece, fused or sewn in.',
    asks: {
      on: piece,
      material: words('Interfacing', 'Light woven interfacing'),
      'fuse.degrees': count('Fused at', '', {
        unit: '°C',
        optional: true,
        means: 'As its leaflet says; empty where it is sewn in.',
      }),
      'fuse.seconds': count('Pressed for', '', { unit: 'seconds', optional: true }),
      'fuse.coolMinutes': count('Cools for', '', { unit: 'minutes', optional: true }),
    },
  },
  'applied-tape': {
    word: 'Tape or braid',
    tells: 'A tape laid on beside an edge and stitched.',
    asks: {
      edge: edge(),
      tape: words('Tape', 'Cotton tape'),
      inset: long('Away from the edge', ['1/2', '12']),
      marker,
    },
  },
  casing: {
    word: 'Casing',
    tells: 'An edge turned down as a tunnel for elastic.',
    asks: {
      along: { kind: 'run', on: true, label: 'Along' },
      turn: long('Turned down by', ['1 1/4', '32'], { means: 'All that is turned, with what is folded in.' }),
      elastic: long('Width of the elastic', ['3/4', '20']),
      cut: long('Length of the elastic', undefined, { means: 'As it is cut, the lap of its ends with it.' }),
      ring: ring('yes'),
    },
  },
  buttonholes: {
    word: 'Buttonholes and buttons',
    tells: 'Holes along an edge, spaced evenly, with their buttons.',
    asks: {
      along: edge('Edge they stand along'),
      count: count('How many', '5', { whole: true }),
      from: words('Measured from', 'the neck seam'),
      first: long('Down to the first', ['1/2', '12']),
      last: long('Down to the last', ['14', '360']),
      'button.diameter': long('Button, across', ['1/2', '12']),
      'button.thickness': long('Button, thick', ['1/8', '3'], { usual: true }),
      direction: {
        kind: 'choice',
        label: 'Holes lie',
        options: [
          { value: 'along', label: 'Along the edge' },
          { value: 'across', label: 'Across it' },
        ],
        start: 'along',
        usual: true,
      },
      top: {
        kind: 'choice',
        label: 'On top lies',
        options: [
          { value: 'right', label: 'The right side' },
          { value: 'left', label: 'The left side' },
          { value: 'each', label: 'Each has its own' },
        ],
        start: 'right',
        usual: true,
      },
      held: long('One must stand at', undefined, { means: 'Where it would gape: the chest, the waist.' }),
      through: { kind: 'some', of: 'pieces', label: 'Also through', usual: true, optional: true },
      marker,
    },
  },
  'lattice-beads': {
    word: 'Beaded lattice',
    tells: 'Beads sewn along crossing lines.',
    asks: {
      on: piece,
      'families.0.angle': count('Angle of the first lines', '-45', { unit: '°' }),
      'families.0.spacing': long('Apart', ['3', '80']),
      'families.1.angle': count('Angle of the second lines', '45', { unit: '°' }),
      'families.1.spacing': long('Second lines, apart', ['3', '80']),
      ...bead('line', ''),
      'cluster.of': count('Beads at each crossing', '', { whole: true, optional: true }),
      ...bead('cluster.bead', ' at the crossings', true),
      marker,
    },
  },
  ribbon: {
    word: 'Ribbon',
    tells: 'A ribbon cut to length and sewn or drawn in.',
    asks: {
      on: piece,
      ribbon: long('Length to cut', ['36', '900'], { means: 'For one piece.' }),
      where: words('Where', 'through the casing'),
    },
  },
  own: {
    word: 'Work of your own',
    tells: 'Anything else, in steps of your own words.',
    asks: {
      on: piece,
      when: {
        kind: 'choice',
        label: 'When',
        options: [
          { value: 'flat', label: 'While the piece lies flat' },
          { value: 'free', label: 'At any time' },
          { value: 'late', label: 'When all its seams are sewn' },
        ],
        start: 'flat',
      },
      steps: {
        kind: 'rows',
        each: 'step',
        label: 'Steps',
        first: 1,
        row: {
          say: { kind: 'words', lines: true, label: 'What to do', start: '' },
          station: {
            kind: 'choice',
            label: 'Where',
            options: STATIONS.map(([value, label]) => ({ value, label })),
            start: 'hand',
          },
          minutes: count('Minutes', '10'),
          rest: count('Then rests', '0', { unit: 'minutes', usual: true, means: 'To dry or to cool.' }),
          final: yes('Cannot be undone', 'no'),
          wets: yes('Wets the cloth', 'no', 'Water-fading marks go with it.'),
        },
      },
      with: { kind: 'some', of: 'pieces', label: 'Also in hand', usual: true, optional: true },
      finishes: {
        kind: 'run',
        apart: true,
        optional: true,
        label: 'Edges it finishes',
        means: 'Rolled, faced or covered by these steps, so that they are no longer raw.',
      },
    },
  },
};
