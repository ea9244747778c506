import { fullnessFor } from '../../cloth/gathers.ts';
import { FRILL_FIELDS, MARKS_FIELD } from './frill.ts';
import { GOES_FIELD, seamToEdge } from './frill-seam.ts';
import { gatheredStrip } from './gathered-strip.ts';
import { wave } from './sketch.ts';
import { unit } from './unit.ts';

/** A gathered strip cut on the bias. */
export const biasFrill = unit({
  id: 'bias-frill',
  name: 'Bias frill',
  tells: 'A strip cut on the bias, single or folded, gathered to an edge.',
  group: 'Frills',
  places: {
    edge: {
      kind: 'edges',
      label: 'the edge it is sewn to',
      like: ['neck', 'lower', 'outer', 'hem', 'opening'],
    },
  },
  fields: {
    ...FRILL_FIELDS,
    layers: {
      kind: 'choice',
      label: 'Layers',
      options: [
        { value: 'folded', label: 'double, folded at the outer edge' },
        { value: 'single', label: 'single, with a narrow hem' },
      ],
      start: 'folded',
    },
    ...GOES_FIELD,
    marks: MARKS_FIELD,
  },
  propose: ({ at, garment }) => {
    const { value, source } = fullnessFor('bias ruffle');
    return {
      fullness: {
        value: Number(value.toFixed(2)),
        because: 'Between 1 1/4 and 1 1/3: on the bias less is enough',
        source,
      },
      ...seamToEdge.propose(garment, at.edge),
    };
  },
  build: (making) => {
    const finish = making.values.layers === 'folded' ? 'folded' : 'hem';
    return gatheredStrip(making, { kind: 'plain ruffle', grain: 'bias', finish });
  },
  sketch: [
    {
      pen: 'faint',
      points: [
        [20, 4],
        [20, 22],
      ],
    },
    {
      pen: 'faint',
      points: [
        [80, 4],
        [80, 22],
      ],
    },
    {
      pen: 'shape',
      points: [
        [20, 22],
        [80, 22],
      ],
    },
    {
      pen: 'shape',
      points: [
        [20, 22],
        [8, 70],
      ],
    },
    {
      pen: 'shape',
      points: [
        [80, 22],
        [92, 70],
      ],
    },
    { pen: 'fold', points: wave([8, 70], [92, 70], 4, 8) },
    { pen: 'fold', points: wave([8, 66], [92, 66], 4, 8) },
    ...Array.from({ length: 6 }, (_, i) => ({
      pen: 'faint' as const,
      points: [
        [16 + i * 11, 62],
        [26 + i * 11, 40],
      ] as const,
    })),
    ...Array.from({ length: 6 }, (_, i) => ({
      pen: 'fullness' as const,
      points: [
        [25 + i * 10, 23],
        [22 + i * 11.2, 34],
      ] as const,
    })),
  ],
});
