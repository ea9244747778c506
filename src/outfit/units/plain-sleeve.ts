import { lowerWide, sleeveWide, USUAL_CAP_EASE } from '../../cloth/sleeve-room.ts';
import { geometry, practice } from '../../cloth/source.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { nm, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { asked, usually } from './length-field.ts';
import { pieceOf } from './parts.ts';
import { sizesFit } from './sizes-fit.ts';
import { curve, line } from './sketch-lines.ts';
import { SETTING, SLEEVE_USUAL } from './sleeve-fields.ts';
import { easeWork, sleeveParts } from './sleeve-made.ts';
import { capFor, shoulderMark, sleeveOutline, underArm } from './sleeve-shape.ts';
import { unit } from './unit.ts';

/** A plain sleeve, set into its armhole with a little ease. */
export const plainSleeve = unit({
  id: 'plain-sleeve',
  name: 'Plain sleeve',
  tells: 'Set in smooth, its cap drafted to the armhole.',
  group: 'Sleeves and cuffs',
  places: {
    armhole: {
      kind: 'edges',
      label: 'the armhole',
      means: 'Front first, then back.',
      like: ['armhole'],
      ring: true,
    },
  },
  cloths: { main: { label: 'Cloth' } },
  fields: {
    length: asked(
      'Length',
      '23 1/2',
      '600',
      'From the end of the shoulder over the bent elbow, cuff included.',
    ),
    wide: asked('Upper arm, finished', '14 1/2', '370', 'Round the sleeve just under the arm.'),
    lower: asked('Lower edge, finished', '10', '250', 'Round it, before any cuff gathers it.'),
    ends: {
      kind: 'choice',
      label: 'At the wrist',
      options: [
        { value: 'cuff', label: 'left open, for a cuff or a band' },
        { value: 'hem', label: 'hemmed' },
      ],
      start: 'cuff',
    },
    setting: SETTING,
    ease: usually('Ease in the cap', '3/4', '20', 'How much longer the cap is than the armhole.'),
    hem: usually('Hem', '1', '25'),
    cuffDepth: SLEEVE_USUAL.cuffDepth,
    opening: SLEEVE_USUAL.opening,
    allowance: SLEEVE_USUAL.allowance,
  },
  sketch: [
    curve('faint', 8, 34, 20, 26, 26, 18, 34, 12),
    curve('shape', 34, 12, 62, 10, 70, 30, 78, 86),
    curve('shape', 40, 46, 48, 58, 54, 72, 58, 92),
    line('shape', 58, 92, 78, 86),
    curve('stitch', 34, 12, 28, 24, 30, 40, 40, 46),
    curve('faint', 40, 46, 38, 60, 38, 76, 38, 92),
    line('stitch', 57, 88, 77, 82),
  ],
  propose: ({ measures, at }) => {
    const arm = measures['upper-arm'];
    const wide = sleeveWide(arm, at.armhole?.length);
    const lower = lowerWide(measures.wrist, measures.hand);
    return {
      ...(measures['arm-length'] && {
        length: { value: measures['arm-length'], because: 'The arm, over the bent elbow', source: geometry },
      }),
      ...(wide && {
        wide: {
          value: wide,
          because: arm
            ? 'The upper arm and 2 in of ease, as far as the armhole takes it'
            : 'What the armhole takes easily',
          source: practice,
        },
      }),
      ...(lower && {
        lower: { value: lower, because: 'The hand passes, and a cuff can gather it', source: practice },
      }),
      ease: {
        value: USUAL_CAP_EASE.value,
        because: `${inBothRules(USUAL_CAP_EASE.value)} eases into woven cloth without a pucker`,
        source: USUAL_CAP_EASE.source,
      },
    };
  },
  build: ({ values, at, cloth, garment, id, name }) => {
    const wrong = sizesFit(
      values,
      ['length', 'wide', 'lower', 'hem', 'cuffDepth', 'allowance'],
      ['ease', 'opening'],
    );
    if (wrong) return bad(wrong);
    const { length, wide, lower, ends, setting, ease, hem, cuffDepth, opening, allowance } = values;
    const cap = capFor(garment, at.armhole, { wide, ease, fullness: 1 });
    if (!cap.ok) return cap;
    const under = underArm(nm(length - (ends === 'cuff' ? cuffDepth : 0)), cap.value);
    if (!under.ok) return under;
    const parts = sleeveParts({
      id,
      name,
      garment,
      allowance,
      pieces: [id()],
      top: 'cap',
      armhole: at.armhole,
      setting,
      held: 'armhole',
      ends,
      elastic: zero,
      hem,
      opening,
      gathered: false,
    });
    return good({
      ...parts,
      pieces: [
        pieceOf({
          id: id(),
          name,
          cloth: cloth.main.id,
          cut: 'pair',
          allowance,
          marks: shoulderMark(cap.value),
          outline: sleeveOutline(wide, lower, under.value, cap.value),
        }),
      ],
      works: [...easeWork({ id, name }, ease), ...parts.works],
    });
  },
});
