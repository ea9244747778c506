import { zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { ALLOWANCE, FRONT_CENTRE, HALF_BODY, HALF_BODY_USUAL, LAP } from './body-fields.ts';
import { bodyFigures, FITTED_BODY } from './body-figures.ts';
import { both, torso } from './body-sketch.ts';
import { asked } from './length-field.ts';
import { PANEL_FROM, PANELLED, panelled } from './panelled.ts';
import { bend } from './sketch.ts';
import { unit } from './unit.ts';

/** A front in a centre and a side piece, shaped by the seam between them. */
export const princessFront = unit({
  id: 'princess-front',
  name: 'Princess front',
  tells: 'A front shaped by a panel seam from the shoulder or the armhole.',
  group: 'Body',
  fields: {
    ...FRONT_CENTRE,
    ...PANEL_FROM,
    ...HALF_BODY,
    neckDeep: asked(
      'Depth of the neck',
      '3',
      '76',
      'At the centre, straight down from the level of the shoulder at the neck.',
    ),
    ...LAP,
    ...HALF_BODY_USUAL,
    ...PANELLED,
    ...ALLOWANCE,
  },
  sketch: [
    ...torso(26, 84, 7),
    ...both('stitch', bend([68, 14], [64, 36], [60, 58], [60, 84])),
    {
      pen: 'fold',
      points: [
        [50, 26],
        [50, 84],
      ],
    },
  ],
  propose: ({ measures }) => bodyFigures(measures, 'front', FITTED_BODY),
  build: ({ values, cloth, id }) => {
    const lap = values.opens === 'opening' ? values.lap : zero;
    const made = panelled({
      body: values,
      panel: values.panel,
      from: values.from,
      neck: 'front',
      centre: { name: values.opens, lap },
      cloth: cloth.main.id,
      ids: [id('centre'), id('side'), id('panel-seam')],
    });
    if (!made.ok) return made;
    const { pieces, works, seam } = made.value;
    return good({ pieces, works, joins: [seam] });
  },
});
