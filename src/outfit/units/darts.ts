import { advise } from '../../cloth/advice.ts';
import { refusal } from '../../cloth/refusal.ts';
import { geometry } from '../../cloth/source.ts';
import { add, subtract, times } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { lower } from '../lower.ts';
import { endsOf } from './body-sheet.ts';
import { both, torso } from './body-sketch.ts';
import { asked, usually } from './length-field.ts';
import { stepOf } from './parts.ts';
import { chainLength } from './place.ts';
import { eachOf } from './runs.ts';
import { unit } from './unit.ts';

/** Folds that are stitched to a point, so that flat cloth goes round the body. */
export const darts = unit({
  id: 'darts',
  name: 'Darts',
  tells: 'Darts from the waist, the side or a shoulder of one piece.',
  group: 'Body',
  fields: {
    count: { kind: 'number', label: 'Darts', whole: true, start: '1', means: 'On this edge of one piece.' },
    width: asked('Width of a dart', '3/4', '20', 'At the edge, all that it takes up.'),
    length: asked('Length of a dart', '5', '130', 'From the edge to its point.'),
    from: asked('First dart', '3 1/2', '90', 'From the end of the edge that the step names, to its middle.'),
    apart: usually('From dart to dart', '1 1/2', '38', 'From middle to middle.'),
  },
  places: {
    edge: {
      kind: 'edges',
      one: true,
      label: 'the edge the darts start from',
      like: ['waist', 'hem', 'side', 'shoulder'],
    },
  },
  sketch: [
    ...torso(22, 82),
    ...both('stitch', [
      [64, 82],
      [66, 56],
      [68, 82],
    ]),
    ...both('stitch', [
      [78, 50],
      [64, 44],
      [77, 46],
    ]),
    ...both('fold', [
      [66, 56],
      [66, 82],
    ]),
  ],
  build: ({ values, at, garment, id, name, written }) => {
    const { count, width, length, from, apart } = values;
    const [ref, more] = at.edge.chain;
    const [piece] = at.edge.pieces;
    const ends = ref && endsOf(garment, ref.piece, ref.edge);
    if (!ref || more || !piece || !ends)
      return bad(refusal('at.edge', 'Darts start from one edge.', 'Choose one edge of one piece.'));
    if (!(count >= 1 && count <= 12))
      return bad(refusal('count', 'There are no such darts.', 'Write from 1 to 12.'));
    for (const [field, size] of Object.entries({ width, length, from })) {
      if (size <= 0) return bad(refusal(field, 'This has no length.', 'Write a length above zero.'));
    }
    if (count > 1 && apart <= width)
      return bad(
        refusal('apart', 'The darts would run into each other.', 'Write more than the width of a dart.'),
      );
    const edge = chainLength(garment, [ref]);
    const last = add(from, times(apart, count - 1));
    if (from < width / 2 || last + width / 2 > edge)
      return bad(
        refusal(
          'from',
          'A dart would run past the end of the edge.',
          `The edge is ${written(edge)} long; write less, or narrower darts.`,
        ),
      );
    // Told from the end nearer the middle of the body; on an upright edge, from its upper end.
    const [a, b] = ends;
    const level = Math.abs(a.x - b.x) > Math.abs(a.y - b.y);
    const atStart = level ? a.x <= b.x : a.y <= b.y;
    const names = piece.outline.edges.map((one) => one.name);
    const here = names.indexOf(ref.edge);
    const beside = names.at(atStart ? here - 1 : (here + 1) % names.length) ?? '';
    const spots = Array.from({ length: count }, (_, i) => written(add(from, times(apart, i))));
    const [each, many] = [eachOf(piece.cut, piece.name), count > 1];
    const taken = times(width, count);
    return good({
      works: [
        {
          kind: 'own',
          id: id(),
          name,
          on: piece.id,
          with: [],
          when: 'flat',
          steps: [
            stepOf(
              `Mark on ${each} the middle of ${many ? 'the darts' : 'the dart'} ${spots.join(', ')} along the ${lower(ref.edge).replaceAll('-', ' ')} from its ${beside.replaceAll('-', ' ')} end, ${written(width)} wide there, and ${many ? 'their points' : 'its point'} ${written(length)} into the piece`,
              'mark',
              4 * count,
            ),
            stepOf(
              `Fold ${many ? 'the darts' : 'the dart'} of ${each} right sides together and pin`,
              'pin',
              2 * count,
            ),
            stepOf(
              `Stitch ${many ? 'the darts' : 'the dart'} of ${each} from the edge, running out along the fold at the point, and tie the ends`,
              'machine',
              3 * count,
            ),
            stepOf(
              `Press ${many ? 'the darts' : 'the dart'} of ${each} toward the middle, over a ham or a rolled towel`,
              'iron',
              2 * count,
            ),
          ],
        },
      ],
      advice: [
        advise(
          `The outline shows this edge with its darts open, ${written(edge)}; closed it is ${written(subtract(edge, taken))} long. Give what is sewn to it that length.`,
          geometry,
        ),
      ],
    });
  },
});
