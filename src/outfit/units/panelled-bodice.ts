import type { Refusal } from '../../cloth/refusal.ts';
import { refusal } from '../../cloth/refusal.ts';
import { zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { lower } from '../lower.ts';
import { ALLOWANCE, HALF_BODY, HALF_BODY_USUAL, LAP } from './body-fields.ts';
import { bodyFigures, FITTED_BODY } from './body-figures.ts';
import { BODY_CHECKS } from './body-joins.ts';
import { both, torso } from './body-sketch.ts';
import { asked, perhaps, usually } from './length-field.ts';
import { PANELLED, panelled } from './panelled.ts';
import { gateOf, joinOf } from './parts.ts';
import { bend } from './sketch.ts';
import { unit } from './unit.ts';

const { across, hem, ...USUAL } = HALF_BODY_USUAL;

/** What is wrong with a back, said at the field of its own. */
const ofBack = (wrong: Refusal): Refusal => {
  const own: Readonly<Record<string, string>> = {
    chest: 'backChest',
    neckDeep: 'backNeckDeep',
    across: 'backAcross',
    waist: 'backWaist',
    panel: 'backPanel',
  };
  return refusal(own[wrong.field] ?? wrong.field, wrong.wrong, wrong.cure);
};

/** A whole bodice whose panel seams run from hem to hem over the shoulders. */
export const panelledBodice = unit({
  id: 'panelled-bodice',
  name: 'Panelled bodice',
  tells: 'Front and back with panel seams that run over the shoulders, with a try-on.',
  group: 'Body',
  fields: {
    chest: { ...HALF_BODY.chest, label: 'Half front at the chest' },
    backChest: { ...HALF_BODY.chest, label: 'Half back at the chest' },
    neckWide: HALF_BODY.neckWide,
    neckDeep: asked('Depth of the front neck', '3', '76'),
    shoulder: HALF_BODY.shoulder,
    armhole: HALF_BODY.armhole,
    side: PANELLED.side,
    waist: perhaps('Half front at the waist', PANELLED.waist.means ?? ''),
    backWaist: perhaps('Half back at the waist', PANELLED.waist.means ?? ''),
    backNeckDeep: usually('Depth of the back neck', '3/4', '19'),
    panel: { ...PANELLED.panel, label: 'Centre front to panel seam' },
    backPanel: { ...PANELLED.panel, label: 'Centre back to panel seam' },
    across: { ...across, label: 'Half front at the armhole' },
    backAcross: { ...across, label: 'Half back at the armhole' },
    ...LAP,
    slope: USUAL.slope,
    below: PANELLED.below,
    hem: {
      ...hem,
      label: 'Half width at the hem',
      means: 'Of a front or a back. Left empty, as at the chest.',
    },
    ...ALLOWANCE,
  },
  sketch: [
    ...torso(24, 66, 8),
    ...both('stitch', bend([70, 14], [65, 30], [62, 50], [62, 66])),
    ...both('fold', bend([70, 14], [69, 11], [67, 9], [65, 8])),
    {
      pen: 'fold',
      points: [
        [50, 24],
        [50, 66],
      ],
    },
    {
      pen: 'faint',
      points: [
        [39, 11],
        [45, 14],
        [55, 14],
        [61, 11],
      ],
    },
  ],
  propose: ({ measures }) => {
    const back = bodyFigures(measures, 'back', FITTED_BODY);
    const own = {
      backChest: back.chest,
      backWaist: back.waist,
      backNeckDeep: back.neckDeep,
      backPanel: back.panel,
      backAcross: back.across,
    };
    const known = Object.entries(own).flatMap(([name, one]) => (one ? [[name, one] as const] : []));
    return { ...bodyFigures(measures, 'front', FITTED_BODY), ...Object.fromEntries(known) };
  },
  build: ({ values, cloth, id, garment }) => {
    const usual = { from: 'shoulder', cloth: cloth.main.id } as const;
    const front = panelled({
      ...usual,
      body: values,
      panel: values.panel,
      neck: 'front',
      centre: { name: 'opening', lap: values.lap },
      ids: [id('centre-front'), id('side-front'), id('panel-seam')],
    });
    if (!front.ok) return front;
    const back = panelled({
      ...usual,
      body: {
        ...values,
        chest: values.backChest,
        waist: values.backWaist,
        neckDeep: values.backNeckDeep,
        across: values.backAcross,
      },
      panel: values.backPanel,
      neck: 'back',
      centre: { name: 'fold', lap: zero },
      ids: [id('back'), id('side-back'), id('panel-seam')],
    });
    if (!back.ok) return bad(ofBack(back.error));
    const [f, b] = [front.value, back.value];
    const depth = values.allowance;
    const [centreFront, sideFront] = f.shoulder;
    const [centreBack, sideBack] = b.shoulder;
    if (!centreFront || !sideFront || !centreBack || !sideBack)
      return bad(refusal('shoulder', 'The shoulder has no panels.', 'Write a longer shoulder.'));
    const shoulder = (part: string, name: string, here: typeof centreFront, there: typeof centreBack) =>
      joinOf({ id: id(part), name, this: [here], to: [there], depth, finish: 'overlock' });
    const over = {
      ...f.seam,
      name: 'Panel seam',
      this: [...f.seam.this, ...b.seam.this],
      to: [...f.seam.to, ...b.seam.to],
    };
    return good({
      pieces: [...f.pieces, ...b.pieces].map((piece) =>
        piece.id === id('back') ? { ...piece, name: 'Back' } : piece,
      ),
      works: [...f.works, ...b.works],
      joins: [
        shoulder('centre-shoulder', 'Centre shoulder seam', centreFront, centreBack),
        shoulder('side-shoulder', 'Side shoulder seam', sideFront, sideBack),
        over,
        joinOf({
          id: id('side-seam'),
          name: 'Side seam',
          this: f.sides,
          to: b.sides,
          depth,
          closes: true,
          tacked: true,
          finish: 'overlock',
        }),
      ],
      gates: [
        gateOf({
          id: id('try'),
          name: `The ${lower(garment.name)}, basted at the sides`,
          after: [over.id, id('side-seam')],
          checks: [...BODY_CHECKS.slice(0, 6), 'The panel seams run straight over the shoulders'],
        }),
      ],
    });
  },
});
