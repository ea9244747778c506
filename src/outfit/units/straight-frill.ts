import { FULLNESS } from '../../cloth/gathers.ts';
import { FINISH_FIELD, FRILL_FIELDS, MARKS_FIELD } from './frill.ts';
import { GOES_FIELD, seamToEdge } from './frill-seam.ts';
import { gatheredStrip } from './gathered-strip.ts';
import { wave } from './sketch.ts';
import { unit } from './unit.ts';

/** A gathered strip along an edge. */
export const straightFrill = unit({
  id: 'straight-frill',
  name: 'Straight frill',
  tells: 'A straight strip, gathered and sewn to an edge.',
  group: 'Frills',
  places: {
    edge: {
      kind: 'edges',
      label: 'the edge it is sewn to',
      like: ['lower', 'hem', 'outer', 'neck', 'waist', 'opening'],
    },
  },
  fields: {
    ...FRILL_FIELDS,
    finish: { ...FINISH_FIELD, start: 'hem' },
    grain: {
      kind: 'choice',
      usual: true,
      label: 'Strips cut',
      options: [
        { value: 'along', label: 'along the grain, in one' },
        { value: 'across', label: 'across the cloth, and joined' },
      ],
      start: 'along',
    },
    ...GOES_FIELD,
    marks: MARKS_FIELD,
  },
  propose: ({ at, garment }) => ({
    fullness: { value: FULLNESS.value, because: 'A usual frill', source: FULLNESS.source },
    ...seamToEdge.propose(garment, at.edge),
  }),
  build: (making) => {
    const { grain, finish } = making.values;
    return gatheredStrip(making, { kind: 'usual', grain, finish });
  },
  sketch: [
    {
      pen: 'faint',
      points: [
        [10, 6],
        [10, 30],
      ],
    },
    {
      pen: 'faint',
      points: [
        [90, 6],
        [90, 30],
      ],
    },
    {
      pen: 'shape',
      points: [
        [10, 30],
        [90, 30],
      ],
    },
    {
      pen: 'stitch',
      points: [
        [10, 34],
        [90, 34],
      ],
    },
    {
      pen: 'shape',
      points: [
        [10, 30],
        [5, 80],
      ],
    },
    {
      pen: 'shape',
      points: [
        [90, 30],
        [95, 80],
      ],
    },
    { pen: 'shape', points: wave([5, 80], [95, 80], 7, 5) },
    ...Array.from({ length: 10 }, (_, i) => ({
      pen: 'fullness' as const,
      points: [
        [14 + i * 8, 31],
        [12 + i * 8.4, i % 2 === 0 ? 62 : 48],
      ] as const,
    })),
  ],
});
