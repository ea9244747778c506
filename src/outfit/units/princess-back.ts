import { zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { ALLOWANCE, HALF_BODY, HALF_BODY_USUAL } from './body-fields.ts';
import { bodyFigures, FITTED_BODY } from './body-figures.ts';
import { FRONT_PLACES, joinedToFront, notTheFront } from './body-joins.ts';
import { agreeing } from './body-sheet.ts';
import { both, torso } from './body-sketch.ts';
import { asked } from './length-field.ts';
import { PANEL_FROM, PANELLED, panelled } from './panelled.ts';
import { bend } from './sketch.ts';
import { unit } from './unit.ts';

/** A back in a centre and a side piece, sewn to its front at the shoulders and sides. */
export const princessBack = unit({
  id: 'princess-back',
  name: 'Princess back',
  tells: 'A back shaped by panel seams, sewn to the front, with a try-on.',
  group: 'Body',
  fields: {
    ...PANEL_FROM,
    ...HALF_BODY,
    neckDeep: asked(
      'Depth of the neck',
      '3/4',
      '19',
      'At the centre, straight down from the level of the shoulder at the neck.',
    ),
    ...HALF_BODY_USUAL,
    ...PANELLED,
    ...ALLOWANCE,
  },
  places: FRONT_PLACES,
  sketch: [
    ...torso(14, 84, 7),
    ...both('stitch', bend([71, 32], [60, 38], [59, 60], [60, 84])),
    {
      pen: 'faint',
      points: [
        [50, 14],
        [50, 84],
      ],
    },
  ],
  propose: ({ measures, at, garment }) => ({
    ...bodyFigures(measures, 'back', FITTED_BODY),
    ...agreeing(garment, measures, FITTED_BODY, at),
  }),
  build: ({ values, at, cloth, id, garment }) => {
    const wrong = notTheFront(at);
    if (wrong) return bad(wrong);
    const made = panelled({
      body: values,
      panel: values.panel,
      from: values.from,
      neck: 'back',
      centre: { name: 'fold', lap: zero },
      cloth: cloth.main.id,
      ids: [id('centre'), id('side'), id('panel-seam')],
    });
    if (!made.ok) return made;
    const { pieces, works, seam, shoulder, sides } = made.value;
    const { joins, gates } = joinedToFront({
      id,
      garment,
      at,
      shoulder,
      side: sides,
      depth: values.allowance,
      within: [seam.id],
    });
    return good({ pieces, works, joins: [seam, ...joins], gates });
  },
});
