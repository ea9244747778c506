import { refusal } from '../../cloth/refusal.ts';
import { shallowAdvice, tucks } from '../../cloth/tucks.ts';
import { type Length, longer } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import type { Piece, TuckFamily } from '../outfit.ts';
import { edgeFrom, fits, reachOf, TUCK_DEPTH, TUCK_PLACES } from './tuck-places.ts';
import { unit } from './unit.ts';

/** As many tucks as lie between the first one and the far side of a piece. */
const filling = (piece: Piece, angle: number, from: string, first: Length, spacing: Length): number =>
  Math.max(1, Math.min(200, Math.floor((reachOf(piece, angle, from) - first) / spacing) + 1));

/** Tucks one way, and others across them. */
export const crossedTucks = unit({
  id: 'crossed-tucks',
  name: 'Crossed tucks',
  tells: 'Tucks one way and then across them, in squares or diamonds.',
  group: 'Front and fastening',
  places: TUCK_PLACES,
  fields: {
    depth: TUCK_DEPTH,
    spacing: {
      kind: 'length',
      label: 'From tuck to tuck',
      means: 'Finished, the same both ways.',
      start: { in: '2', mm: '50' },
    },
    angle: {
      kind: 'number',
      label: 'Slant one way',
      means: 'From upright; 45 for diamonds, 0 for squares.',
      start: '45',
      unit: '°',
    },
    count: {
      kind: 'number',
      whole: true,
      optional: true,
      label: 'How many one way',
      means: 'Empty: as many as fill the piece.',
      start: '',
    },
    across: {
      kind: 'number',
      whole: true,
      optional: true,
      label: 'How many across',
      means: 'Empty: as many as fill the piece.',
      start: '',
    },
    first: {
      kind: 'length',
      usual: true,
      label: 'Corner to first tuck',
      means: 'Finished, square to the tucks, from the end of the edge to the first stitching.',
      start: { in: '1 1/2', mm: '40' },
    },
  },
  build: ({ values, at, garment, marker, id, name }) => {
    const { piece } = at.on;
    const { depth, spacing, angle, count, across, first } = values;
    const from = edgeFrom(piece, at.from);
    if (!from.ok) return from;
    if (angle < 0 || angle > 85) {
      const cure = 'Give a slant from 0 to 85 degrees; 45 for diamonds.';
      return bad(refusal('angle', 'The tucks would hardly cross.', cure));
    }
    if (spacing <= 0 || longer(depth, spacing)) {
      const cure = 'Give a spacing no less than the depth.';
      return bad(refusal('spacing', 'The tucks would lie on each other.', cure));
    }
    const families: TuckFamily[] = [];
    for (const [wished, field, slant] of [
      [count, 'count', angle],
      // Square to upright tucks lie level ones.
      [across, 'across', angle === 0 ? 90 : -angle],
    ] as const) {
      const many = wished ?? filling(piece, slant, from.value, first, spacing);
      if (many > 500) return bad(refusal(field, 'This is more than 500 tucks.', 'Give up to 500.'));
      const made = tucks({ count: many, depth, spacing, first, pressed: 'away' });
      if (!made.ok) return made.error.field === 'count' ? bad({ ...made.error, field }) : made;
      families.push({
        depths: made.value.tucks.map((t) => t.depth),
        spacing,
        first,
        angle: slant,
        pressed: 'away',
      });
    }
    const [one, two] = families;
    if (!one || !two) return bad(refusal('count', 'There are no tucks.', 'Give one tuck or more.'));
    const fit = fits(
      garment,
      piece,
      [
        [one, 'count'],
        [two, 'across'],
      ],
      from.value,
    );
    if (!fit.ok) return fit;
    return good({
      works: [
        {
          kind: 'crossed-tucks',
          id: id(),
          name,
          on: piece.id,
          from: from.value,
          marker,
          families: [one, two],
        },
      ],
      advice: [...shallowAdvice([depth]), ...fit.value],
      assumed: ['The first tucks are pressed flat before the second are sewn.'],
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
    ...[-60, -30, 0, 30, 60].flatMap((c) => {
      const cut = (sign: 1 | -1) => {
        const ends = [12, 88].map((x) => [x, 50 + c + sign * (x - 50)] as const);
        const clip = ends.map(([, y]) => Math.min(92, Math.max(8, y)));
        return clip.map((y) => [50 + sign * (y - 50 - c), y] as const);
      };
      return [
        { pen: 'stitch' as const, points: cut(1) },
        { pen: 'fold' as const, points: cut(-1) },
      ];
    }),
  ],
});
