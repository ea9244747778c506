import { refusal } from '../../cloth/refusal.ts';
import { bad, good } from '../../length/result.ts';
import { edgeName } from '../chains.ts';
import { lower } from '../lower.ts';
import type { Chain, Garment, Join, Piece } from '../outfit.ts';
import { looseEdges } from '../raw-edges.ts';
import { usually } from './length-field.ts';
import { liningEdges } from './lining-edges.ts';
import { joinOf, pieceOf } from './parts.ts';
import { runOf } from './runs.ts';
import { bend } from './sketch.ts';
import { turnedUp } from './turned-up.ts';
import { unit } from './unit.ts';

/** The pieces whose edges a join brings together; trims caught in it are left out. */
const sewn = ({ this: one, to }: Join): readonly string[] => [...one, ...to].map((ref) => ref.piece);

/** All pieces that seams join to some, except what is made up by itself (a collar, a cuff). */
function hangingTogether(garment: Garment, from: readonly Piece[]): readonly Piece[] {
  const apart = new Set(garment.pieces.filter((piece) => piece.unit !== undefined).map((piece) => piece.id));
  const seams = garment.joins
    .filter((join) => join.seam !== 'laid-on')
    .map((join) => sewn(join).filter((piece) => !apart.has(piece)));
  const found = new Set(from.map((piece) => piece.id));
  for (let before = 0; before < found.size; ) {
    before = found.size;
    for (const seam of seams)
      if (seam.some((piece) => found.has(piece))) for (const one of seam) found.add(one);
  }
  return garment.pieces.filter((piece) => found.has(piece.id));
}

/** A second body of another cloth inside the first. */
export const lining = unit({
  id: 'lining',
  name: 'Lining',
  tells: 'Copies of pieces in a second cloth, sewn together and set in.',
  group: 'Finishing',
  fields: {
    allowance: usually('Seam allowance', '1/2', '15'),
    setIn: usually('Depth of the setting-in seam', '3/8', '10'),
  },
  places: {
    edges: {
      kind: 'edges',
      label: 'the edge it is set in along',
      means: 'A neck or a waist, on pieces that are lined.',
      like: ['neck', 'waist'],
      round: true,
    },
    pieces: {
      kind: 'pieces',
      label: 'the pieces to line',
      means: 'Left out: all that are sewn together there.',
      like: [],
      optional: true,
    },
  },
  cloths: { lining: { label: 'Lining cloth' } },
  sketch: [
    {
      pen: 'shape',
      points: [
        [30, 8],
        [8, 18],
        [18, 40],
        [16, 92],
        [84, 92],
        [82, 40],
        [92, 18],
        [70, 8],
      ],
    },
    { pen: 'shape', points: bend([30, 8], [38, 30], [62, 30], [70, 8]) },
    {
      pen: 'fold',
      points: [
        [50, 25],
        [30, 60],
        [28, 92],
      ],
    },
    {
      pen: 'fold',
      points: [
        [50, 25],
        [70, 60],
        [72, 92],
      ],
    },
    { pen: 'stitch', points: bend([33, 8], [40, 33], [60, 33], [67, 8]) },
    ...[36, 44, 52, 60].map((x) => ({
      pen: 'faint' as const,
      points: [
        [x, 88],
        [x + 5, 66 - Math.abs(x - 48)],
      ] as const,
    })),
  ],
  build: ({ values, at, cloth, garment, id, name, written }) => {
    const { allowance, setIn } = values;
    for (const [field, size] of Object.entries({ allowance, setIn })) {
      if (size <= 0) return bad(refusal(field, 'A seam needs cloth beyond it.', 'Write more than zero.'));
    }
    const pieces = at.pieces?.pieces ?? hangingTogether(garment, at.edges.pieces);
    const lined = new Set(pieces.map((piece) => piece.id));
    const run = runOf(garment, at.edges.chain);
    const bare = at.edges.pieces.find((piece) => !lined.has(piece.id));
    if (bare)
      return bad(
        refusal(
          'at.edges',
          `The ${lower(bare.name)} is not lined.`,
          'Line it too, or set the lining in elsewhere.',
        ),
      );
    const hemmed = turnedUp(garment, run.chain, 'edges');
    if (hemmed) return bad(hemmed);
    const copied = (chain: Chain): Chain => chain.map((ref) => ({ ...ref, piece: id(ref.piece) }));
    const seams = garment.joins
      .filter((join) => sewn(join).every((piece) => lined.has(piece)) && join.seam !== 'laid-on')
      .map(
        ({ stopsAt, ring, closes, worked, ...join }): Join =>
          joinOf({
            id: id(join.id),
            name: `${join.name} of the ${lower(name)}`,
            this: copied(join.this),
            to: copied(join.to),
            depth: allowance,
            ring,
            closes,
            worked,
            ...(stopsAt === undefined ? {} : { stopsAt }),
          }),
      );
    const linings = pieces.map(({ grain, cut, marks, outline, ...piece }) =>
      pieceOf({
        id: id(piece.id),
        name: `${piece.name} ${lower(name)}`,
        cloth: cloth.lining.id,
        cut,
        unit: id(),
        allowance,
        marks,
        outline,
        ...(grain === undefined ? {} : { grain }),
      }),
    );
    const taken = [copied(run.chain), ...seams.flatMap((join) => [join.this, join.to])].flat();
    const edges = liningEdges({
      id,
      name,
      loose: looseEdges(linings, new Set(taken.map(edgeName))),
      outside: [...lined],
      written,
    });
    return good({
      pieces: linings,
      works: [
        // What is gathered outside is gathered inside to the same length.
        ...garment.works.flatMap((work) =>
          work.kind === 'gather' && lined.has(work.on)
            ? [{ ...work, id: id(work.id), name: `${work.name} of the ${lower(name)}`, on: id(work.on) }]
            : [],
        ),
        ...edges,
      ],
      joins: [
        ...seams,
        joinOf({
          id: id('seam'),
          name: `${name} seam`,
          this: run.chain,
          to: copied(run.chain),
          seam: 'turned',
          depth: setIn,
          ring: run.ring,
          worked: 'round',
        }),
      ],
    });
  },
});
