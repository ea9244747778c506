import { stretchLeg as draft } from '../../cloth/stretch-leg.ts';
import { seamFeet } from '../../cloth/stretch-leg-cut.ts';
import { times } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { sheet } from '../../paper/drawing.ts';
import { reckoning } from '../reckoning.ts';
import {
  crossAt,
  legNotes,
  levelsDrawn,
  linesOf,
  outerSide,
  readable,
  seamAndCut,
  sidesDrawn,
} from './leg-drawing.ts';
import {
  ALLOWANCE_FIELDS,
  allowancesFit,
  LEG_BLAME,
  legInput,
  MEASURE_FIELDS,
  OPENING_FIELD,
  SPARE_FIELDS,
} from './leg-fields.ts';
import { LEG_SOURCES, legFigures, legStrips } from './leg-figures.ts';

/** One leg of stretch cloth in one piece, from the measures of a body and the stretch of the cloth. */
export const stretchLeg = reckoning({
  id: 'stretch-leg',
  name: 'Stretch leg',
  tells: 'The outline of a leg in one piece, at true size, and every girth when it is sewn.',
  group: 'Stretch legs',
  fields: {
    ...MEASURE_FIELDS,
    ...ALLOWANCE_FIELDS,
    opening: OPENING_FIELD,
    footed: {
      kind: 'choice',
      usual: true,
      label: 'Ends',
      options: [
        { value: 'ankle', label: 'at the ankle' },
        { value: 'foot', label: 'in a foot' },
      ],
      start: 'ankle',
    },
    footLength: {
      kind: 'length',
      label: 'Foot, length',
      means: 'Heel to longest toe; only for a foot.',
      start: { in: '', mm: '' },
      optional: true,
    },
    ball: {
      kind: 'length',
      label: 'Foot, round the ball',
      means: 'Round the widest part; only for a foot.',
      start: { in: '', mm: '' },
      optional: true,
    },
    ...SPARE_FIELDS,
  },
  blame: {
    ...LEG_BLAME,
    'measures.foot': 'footLength',
    'measures.lowerThigh': 'lowerThigh',
    'measures.crotchToHip': 'hipHeight',
    'measures.floorToAnkle': 'ankleHeight',
  },
  work: (values, unit) => {
    const fits = allowancesFit(values);
    if (!fits.ok) return fits;
    const input = legInput(values);
    if (!input.ok) return input;
    const made = draft(input.value);
    if (!made.ok) return made;
    const leg = made.value;
    const lines = seamAndCut(leg.outline, values);
    if (!lines.ok) return lines;
    const { seam, cut, drawn } = lines.value;
    const thigh = leg.levels.find(({ name }) => name === 'thigh')?.y ?? leg.crotchLevel;
    const knee = leg.levels.find(({ name }) => name === 'knee')?.y ?? times(leg.crotchLevel, 2);
    const high = readable(cut);
    return good({
      figures: legFigures(leg),
      strips: legStrips(leg),
      drawing: sheet('Leg, half of the pair', [
        ...drawn,
        ...outerSide(seam),
        ...levelsDrawn(leg, seam, high),
        ...sidesDrawn(seam, thigh, knee, linesOf(leg), high),
      ]),
      sheets: [
        sheet(
          'Leg',
          [
            ...drawn,
            ...outerSide(seam),
            ...levelsDrawn(leg, seam),
            ...sidesDrawn(seam, thigh, knee, linesOf(leg)),
            ...seamFeet(leg).flatMap(({ at }) => crossAt(at)),
          ],
          legNotes(values, unit, input.value.footed ?? false),
        ),
      ],
      advice: leg.advice,
      assumed: leg.assumed,
      sources: LEG_SOURCES,
    });
  },
});
