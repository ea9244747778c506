import { advise } from '../../cloth/advice.ts';
import { latticeBeads, SPARE_BEADS } from '../../cloth/beads.ts';
import { LATTICE_ANGLE } from '../../cloth/lattice-panel.ts';
import { refusal } from '../../cloth/refusal.ts';
import { geometry } from '../../cloth/source.ts';
import { mm, times } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { flattenOutline } from '../../shape/flatten.ts';
import { boundingBox } from '../../shape/measure.ts';
import { lower } from '../lower.ts';
import type { Work } from '../outfit.ts';
import { latticeOf } from '../piece-lattice.ts';
import { asked, usually } from './length-field.ts';
import { sizesFit } from './sizes-fit.ts';
import type { SketchLine } from './sketch.ts';
import { line } from './sketch-lines.ts';
import { unit } from './unit.ts';

/** Angle from the level that the proposed spacing is reckoned for. */
const USUAL_ANGLE = 60;
/** About so wide a diamond reads from the seats and takes a bead or two a side at the least. */
const DIAMOND = mm(75);

/** A length of thread as it is bought. */
const inMetres = (thread: number): string =>
  `${Math.ceil(thread / 1e9)} m (${Math.ceil(thread / 1e6 / 914.4)} yd)`;

/** More lines than this one way nobody sews. */
const MOST_LINES = 1000;

const BEADS = {
  bugle: { name: 'Bugle beads', atATime: 2 },
  seed: { name: 'Seed beads', atATime: 1 },
  round: { name: 'Round beads', atATime: 1 },
} as const;

/** Lines of the sketch that lean one way. */
const leaning = (way: 1 | -1): readonly SketchLine[] =>
  [
    [14, 40, 32, 12],
    [14, 68, 50, 12],
    [18, 90, 68, 12],
    [36, 90, 84, 16],
    [54, 90, 86, 40],
    [72, 90, 86, 68],
  ].map(([a = 0, b = 0, c = 0, d = 0]) =>
    line('stitch', way === 1 ? a : 100 - a, b, way === 1 ? c : 100 - c, d),
  );

/** Beads sewn along two families of lines that cross, with clusters where they meet. */
export const beadedLattice = unit({
  id: 'beaded-lattice',
  name: 'Beaded lattice',
  tells: 'Beads along crossing lines on a piece, and clusters where they meet.',
  group: 'Decoration',
  places: {
    piece: { kind: 'piece', label: 'the piece to bead', like: ['sleeve', 'front', 'panel', 'collar'] },
  },
  cloths: {},
  fields: {
    kind: {
      kind: 'choice',
      label: 'Along the lines',
      options: [
        { value: 'bugle', label: 'bugle beads, two at a time' },
        { value: 'seed', label: 'seed beads, singly' },
        { value: 'round', label: 'round beads, singly' },
      ],
      start: 'bugle',
    },
    long: asked('Length of a bead', '1/4', '6', 'Measure ten in a row and take a tenth.'),
    spacing: asked('Line to line', '2 1/2', '65', 'Measured square to the lines.'),
    angle: {
      kind: 'number',
      label: 'Angle from the level',
      means: '45 makes squares on their points, 60 tall diamonds.',
      unit: '°',
      start: String(USUAL_ANGLE),
    },
    cluster: {
      kind: 'number',
      label: 'Beads at a crossing',
      whole: true,
      usual: true,
      start: '3',
      means: '0 for none, up to 12.',
    },
    clusterLong: usually('Length of a crossing bead', '1/8', '4'),
  },
  sketch: [
    line('shape', 14, 12, 86, 12, 86, 90, 14, 90, 14, 12),
    ...leaning(1),
    ...leaning(-1),
    ...(
      [
        [50, 12],
        [32, 40],
        [68, 40],
        [50, 66],
        [34, 90],
        [66, 90],
      ] as const
    ).map(([x, y]) => line('shape', x - 2, y, x, y - 2, x + 2, y, x, y + 2, x - 2, y)),
  ],
  propose: ({ at }) => {
    if (!at.piece) return {};
    const { left, right } = boundingBox(flattenOutline(at.piece.piece.outline));
    const across = Math.max(1, Math.round((right - left) / DIAMOND));
    const wide = times(mm((right - left) / 1e6), 1 / across);
    return {
      spacing: {
        value: times(wide, Math.sin((USUAL_ANGLE * Math.PI) / 180)),
        because: `${across === 1 ? 'One diamond' : `${across} diamonds`} across its width, at ${USUAL_ANGLE}°`,
        source: geometry,
      },
    };
  },
  blame: {
    families: 'angle',
    pairs: 'long',
    bead: 'long',
    count: 'spacing',
    clusterBead: 'clusterLong',
  },
  build: ({ values, at, marker, id, name }) => {
    const wrong = sizesFit(values, ['long', 'spacing', 'clusterLong']);
    if (wrong) return bad(wrong);
    const { kind, long, spacing, angle, cluster, clusterLong } = values;
    const { piece } = at.piece;
    const [least, most] = LATTICE_ANGLE.value;
    if (!(angle >= least && angle <= most))
      return bad(
        refusal('angle', 'The lines would hardly cross.', 'Give from 5 to 85 degrees; 45 makes squares.'),
      );
    const { left, top, right, bottom } = boundingBox(flattenOutline(piece.outline));
    if (right - left + bottom - top > spacing * MOST_LINES)
      return bad(refusal('spacing', 'The lines are too close to sew.', 'Give a wider spacing.'));
    if (!(Number.isInteger(cluster) && cluster >= 0 && cluster <= 12))
      return bad(refusal('cluster', 'This is not a cluster of beads.', 'Give 0 to 12.'));
    const { name: called, atATime } = BEADS[kind];
    const work: Extract<Work, { kind: 'lattice-beads' }> = {
      kind: 'lattice-beads',
      id: id(),
      name,
      on: piece.id,
      // A work counts its angles from the upright.
      families: [
        { angle: 90 - angle, spacing },
        { angle: angle - 90, spacing },
      ],
      line: { name: called, length: long, atATime },
      ...(cluster > 0 && {
        cluster: { of: cluster, bead: { name: 'Round beads', length: clusterLong, atATime: 1 } },
      }),
      marker,
    };
    const lattice = latticeOf(piece, work);
    if (!lattice.ok) {
      const { field } = lattice.error;
      return field === 'outline' || field === 'clear'
        ? bad({ ...lattice.error, field: 'at.piece' })
        : lattice;
    }
    const counted = latticeBeads({
      lattice: lattice.value,
      bead: long,
      pairs: atATime === 2,
      clear: long,
      cluster,
      clusterBead: clusterLong,
    });
    if (!counted.ok) return counted;
    const both = piece.cut === 'one' ? 1 : 2;
    const { alongLines, inClusters, toBuy, thread, assumed } = counted.value;
    const number = (n: number): string => String(n * both).replace(/\B(?=(\d{3})+$)/g, ' ');
    const clusters = inClusters === 0 ? '' : `, and ${number(inClusters)} at the crossings`;
    const say = `${number(alongLines)} ${lower(called)} along the lines${clusters}, on ${both === 2 ? 'both sides of ' : ''}the ${lower(piece.name)}; ${inMetres(thread * both)} of thread.`;
    return good({
      works: [work],
      advice: [
        advise(say, geometry),
        advise(`Buy ${number(toBuy)}: ${SPARE_BEADS.value} in the hundred to spare.`, SPARE_BEADS.source),
      ],
      assumed,
    });
  },
});
