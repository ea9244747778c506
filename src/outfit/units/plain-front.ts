import { zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { ALLOWANCE, FRONT_CENTRE, HALF_BODY, HALF_BODY_USUAL, LAP } from './body-fields.ts';
import { bodyFigures, PLAIN_BODY } from './body-figures.ts';
import { neckStay } from './body-joins.ts';
import { wholeOutline } from './body-outlines.ts';
import { torso } from './body-sketch.ts';
import { drawHalf } from './half-body.ts';
import { asked } from './length-field.ts';
import { pieceOf } from './parts.ts';
import { unit } from './unit.ts';

/** The front of a shirt, a blouse or a tunic. */
export const plainFront = unit({
  id: 'plain-front',
  name: 'Front',
  tells: 'A plain front, open down the middle or closed.',
  group: 'Body',
  fields: {
    ...FRONT_CENTRE,
    ...HALF_BODY,
    neckDeep: asked(
      'Depth of the neck',
      '3',
      '76',
      'At the centre, straight down from the level of the shoulder at the neck.',
    ),
    ...LAP,
    ...HALF_BODY_USUAL,
    ...ALLOWANCE,
  },
  sketch: [
    ...torso(24, 90),
    {
      pen: 'fold',
      points: [
        [50, 24],
        [50, 90],
      ],
    },
    {
      pen: 'stitch',
      points: [
        [53, 25],
        [53, 90],
      ],
    },
  ],
  propose: ({ measures }) => bodyFigures(measures, 'front', PLAIN_BODY),
  build: ({ values, cloth, id, name }) => {
    const open = values.opens === 'opening';
    const lap = open ? values.lap : zero;
    const drawn = drawHalf(values, 'front', lap);
    if (!drawn.ok) return drawn;
    const piece = pieceOf({
      id: id(),
      name,
      cloth: cloth.main.id,
      cut: open ? 'pair' : 'fold',
      allowance: values.allowance,
      outline: wholeOutline(drawn.value, { name: values.opens, lap }),
    });
    return good({ pieces: [piece], works: [neckStay(piece)] });
  },
});
