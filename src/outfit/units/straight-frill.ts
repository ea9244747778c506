import { frillCut } from '../../cloth/frill-cut.ts';
import { FULLNESS } from '../../cloth/gathers.ts';
import { zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { atPlace, FINISH_FIELD, FRILL_FIELDS, frillParts, MARKS_FIELD, tooFull } from './frill.ts';
import { GOES_FIELD, seamToEdge } from './frill-seam.ts';
import { beyondReason } from './reason.ts';
import { runOf } from './runs.ts';
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
  build: ({ values, at, cloth, garment, marker, id, name }) => {
    const { depth, fullness, finish, grain, allowance, marks } = values;
    const full = tooFull(fullness);
    if (full) return bad(full);
    const beyond = beyondReason({ depth }, allowance);
    if (beyond) return bad(beyond);
    const run = runOf(garment, at.edge.chain);
    const sewn = seamToEdge.join({ id, name, garment, run, allowance, goes: values.goes, parts: [id()] });
    if (!sewn.ok) return sewn;
    const made = atPlace(
      frillCut({
        place: run.length,
        depth,
        kind: 'usual',
        fullness,
        grain,
        clothWidth: cloth.main.width,
        allowance,
        hem: finish === 'bound' ? zero : allowance,
        ring: values.goes === 'ring',
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
      finish,
      ends: values.goes === 'ring' ? 'sewn' : 'hem',
      grain: grain === 'along' ? 90 : 0,
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
