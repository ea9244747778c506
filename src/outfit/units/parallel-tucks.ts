import { growingDepths } from '../../cloth/growing-depths.ts';
import { refusal } from '../../cloth/refusal.ts';
import { geometry, practice } from '../../cloth/source.ts';
import { tucks } from '../../cloth/tucks.ts';
import { add, mm, subtract } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import type { TuckFamily } from '../outfit.ts';
import { edgeFrom, fits, reachOf, TUCK_DEPTH, TUCK_PLACES } from './tuck-places.ts';
import { unit } from './unit.ts';

/** Tucks beside a band keep this far from it. */
const CLEAR = mm(12);

/** Tucks side by side on a piece. */
export const parallelTucks = unit({
  id: 'parallel-tucks',
  name: 'Parallel tucks',
  tells: 'Tucks side by side, all alike or each deeper than the last.',
  group: 'Front and fastening',
  places: TUCK_PLACES,
  fields: {
    count: {
      kind: 'number',
      whole: true,
      label: 'How many',
      means: 'On a folded piece, in each half.',
      start: '5',
    },
    depth: TUCK_DEPTH,
    spacing: {
      kind: 'length',
      label: 'From tuck to tuck',
      means: 'Finished, from stitching to stitching.',
      start: { in: '1/2', mm: '12' },
    },
    first: {
      kind: 'length',
      label: 'Edge to first tuck',
      means: 'Finished, from the edge to the first stitching.',
      start: { in: '1 1/2', mm: '38' },
    },
    lastDepth: {
      kind: 'length',
      optional: true,
      label: 'Depth of the last',
      means: 'Where they grow, or shrink, from the first to the last.',
      start: { in: '', mm: '' },
    },
    angle: {
      kind: 'number',
      usual: true,
      label: 'Slant',
      means: 'From upright, clockwise; 90 for tucks that lie across.',
      start: '0',
      unit: '°',
    },
    pressed: {
      kind: 'choice',
      usual: true,
      label: 'Pressed',
      options: [
        { value: 'away', label: 'away from the edge' },
        { value: 'toward', label: 'toward the edge' },
      ],
      start: 'away',
    },
  },
  blame: { firstDepth: 'depth', tucks: 'depth' },
  propose: ({ at, garment }) => {
    const piece = at.on?.piece;
    if (!piece) return {};
    const from = edgeFrom(piece, at.from);
    if (!from.ok) return {};
    const band = garment.works.find(
      (work) => work.kind === 'folded-band' && work.on === piece.id && work.edge === from.value,
    );
    const first = band?.kind === 'folded-band' ? add(band.secondTurn, CLEAR) : undefined;
    const room = subtract(reachOf(piece, 0, from.value), first ?? mm(38));
    const count = Math.floor(room / 3 / mm(12)) + 1;
    return {
      ...(first === undefined
        ? {}
        : { first: { value: first, because: 'Clear of the band', source: practice } }),
      ...(count >= 1 && count < 5
        ? { count: { value: count, because: 'As many as lie in a third of the piece', source: geometry } }
        : {}),
    };
  },
  build: ({ values, at, garment, marker, id, name }) => {
    const { piece } = at.on;
    const { count, depth, lastDepth, spacing, first, angle, pressed } = values;
    const from = edgeFrom(piece, at.from);
    if (!from.ok) return from;
    if (angle < -90 || angle > 90) {
      return bad(refusal('angle', 'This is more than across.', 'Give a slant from -90 to 90 degrees.'));
    }
    if (spacing <= 0) {
      return bad(refusal('spacing', 'The tucks would lie on each other.', 'Give a spacing above zero.'));
    }
    if (count > 500) return bad(refusal('count', 'This is more than 500 tucks.', 'Give up to 500.'));
    const grown = lastDepth === undefined ? undefined : growingDepths(depth, lastDepth, count);
    if (grown && !grown.ok) return grown;
    const made = tucks({
      ...(grown ? { depth: grown.value } : { count, depth }),
      spacing,
      first,
      pressed,
    });
    if (!made.ok) return made;
    const family: TuckFamily = {
      depths: made.value.tucks.map((tuck) => tuck.depth),
      spacing,
      first,
      angle,
      pressed,
    };
    const fit = fits(garment, piece, [[family, 'count']], from.value);
    if (!fit.ok) return fit;
    return good({
      works: [{ kind: 'tucks', id: id(), name, on: piece.id, from: from.value, marker, family }],
      advice: [...made.value.advice, ...fit.value],
      assumed: [
        ...made.value.assumed,
        `The pattern of the ${piece.name.toLowerCase()} is drawn as it is when tucked; the cutting line is opened for them.`,
        ...(piece.cut === 'fold' ? ['Both halves are tucked alike.'] : []),
      ],
    });
  },
  sketch: [
    {
      pen: 'shape',
      closed: true,
      points: [
        [12, 8],
        [88, 8],
        [88, 92],
        [12, 92],
      ],
    },
    ...[24, 36, 48, 60, 72].flatMap((x) => [
      {
        pen: 'stitch' as const,
        points: [
          [x, 8],
          [x, 92],
        ] as const,
      },
      {
        pen: 'fold' as const,
        points: [
          [x + 6, 8],
          [x + 6, 92],
        ] as const,
      },
    ]),
  ],
});
