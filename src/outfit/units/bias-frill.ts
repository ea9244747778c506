import { frillCut } from '../../cloth/frill-cut.ts';
import { fullnessFor } from '../../cloth/gathers.ts';
import { times } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { atPlace, FRILL_FIELDS, frillParts, MARKS_FIELD, tooFull } from './frill.ts';
import { GOES_FIELD, seamToEdge } from './frill-seam.ts';
import { beyondReason } from './reason.ts';
import { runOf } from './runs.ts';
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
      label: 'Made',
      options: [
        { value: 'folded', label: 'double, its fold outside' },
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
  build: ({ values, at, cloth, garment, marker, id, name }) => {
    const { depth, fullness, layers, allowance, marks, goes } = values;
    const full = tooFull(fullness);
    if (full) return bad(full);
    const beyond = beyondReason({ depth }, allowance);
    if (beyond) return bad(beyond);
    const run = runOf(garment, at.edge.chain);
    const sewn = seamToEdge.join({ id, name, garment, run, allowance, goes, parts: [id()] });
    if (!sewn.ok) return sewn;
    const folded = layers === 'folded';
    const made = atPlace(
      frillCut({
        place: run.length,
        // Folded, both long edges lie in the seam.
        depth: folded ? times(depth, 2) : depth,
        kind: 'plain ruffle',
        fullness,
        grain: 'bias',
        clothWidth: cloth.main.width,
        allowance,
        hem: allowance,
        ring: goes === 'ring',
        parts: marks === '4' ? 4 : 8,
      }),
      'edge',
    );
    if (!made.ok) return made;
    const parts = frillParts({
      id,
      name,
      cloth: cloth.main.id,
      cut: run.cut,
      allowance,
      depth,
      made: made.value,
      divide: marks === '4' ? 4 : 8,
      marker,
      finish: folded ? 'folded' : 'hem',
      ends: goes === 'ring' ? 'sewn' : 'hem',
      grain: 45,
    });
    if (!parts.ok) return parts;
    return good({
      ...parts.value,
      joins: sewn.value,
      advice: made.value.advice,
      assumed: made.value.assumed,
    });
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
