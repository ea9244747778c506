import { zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { ALLOWANCE, HALF_BODY, HALF_BODY_USUAL } from './body-fields.ts';
import { bodyFigures, PLAIN_BODY } from './body-figures.ts';
import { FRONT_PLACES, joinedToFront, neckStay, notTheFront } from './body-joins.ts';
import { wholeOutline } from './body-outlines.ts';
import { agreeing } from './body-sheet.ts';
import { torso } from './body-sketch.ts';
import { drawHalf } from './half-body.ts';
import { asked } from './length-field.ts';
import { pieceOf } from './parts.ts';
import { edgeOf } from './sleeve-made.ts';
import { unit } from './unit.ts';

/** The back of a shirt, a blouse or a tunic, sewn to its front at the shoulders and sides. */
export const plainBack = unit({
  id: 'plain-back',
  name: 'Back',
  tells: 'A plain back on the fold, sewn to the front, with a try-on.',
  group: 'Body',
  fields: {
    ...HALF_BODY,
    neckDeep: asked(
      'Depth of the neck',
      '3/4',
      '19',
      'At the centre, straight down from the level of the shoulder at the neck.',
    ),
    ...HALF_BODY_USUAL,
    ...ALLOWANCE,
  },
  places: FRONT_PLACES,
  sketch: [
    ...torso(14, 90),
    {
      pen: 'faint',
      points: [
        [50, 14],
        [50, 90],
      ],
    },
    {
      pen: 'stitch',
      points: [
        [63, 12],
        [76, 18],
      ],
    },
    {
      pen: 'stitch',
      points: [
        [37, 12],
        [24, 18],
      ],
    },
  ],
  propose: ({ measures, at, garment }) => ({
    ...bodyFigures(measures, 'back', PLAIN_BODY),
    ...agreeing(garment, measures, PLAIN_BODY, at),
  }),
  build: ({ values, at, cloth, id, name, garment }) => {
    const wrong = notTheFront(at);
    if (wrong) return bad(wrong);
    const drawn = drawHalf(values, 'back', zero);
    if (!drawn.ok) return drawn;
    const piece = pieceOf({
      id: id(),
      name,
      cloth: cloth.main.id,
      cut: 'fold',
      allowance: values.allowance,
      outline: wholeOutline(drawn.value, { name: 'fold', lap: zero }),
    });
    const seams = { shoulder: [edgeOf(id(), 'shoulder')], side: [edgeOf(id(), 'side')] };
    return good({
      pieces: [piece],
      works: [neckStay(piece)],
      ...joinedToFront({ id, garment, at, depth: values.allowance, ...seams }),
    });
  },
});
