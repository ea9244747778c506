import { advise } from '../../cloth/advice.ts';
import { practice } from '../../cloth/source.ts';
import { stretchLeg as draft } from '../../cloth/stretch-leg.ts';
import { partLeg } from '../../cloth/stretch-leg-cut.ts';
import { add, type Length, nm, times, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { moved, sheet } from '../../paper/drawing.ts';
import type { Drawn, PatternSheet } from '../../paper/pattern-sheet.ts';
import type { Polygon } from '../../shape/flatten.ts';
import { boundingBox, edgeLengths } from '../../shape/measure.ts';
import { reckoning } from '../reckoning.ts';
import { levelUpFromKnee } from './knee-levels.ts';
import {
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
} from './leg-fields.ts';
import { LEG_SOURCES, legFigures, legStrips } from './leg-figures.ts';

/** A part of the leg with its lines. */
interface Part {
  readonly name: string;
  readonly seam: Polygon;
  readonly cut: Polygon;
  readonly drawn: readonly Drawn[];
  /** Between these levels the arrow of the stretch is drawn. */
  readonly between: readonly [Length, Length];
}

/** A leg of stretch cloth cut across at a level, for two cloths. */
export const legInTwoCloths = reckoning({
  id: 'leg-in-two-cloths',
  name: 'Leg in two cloths',
  tells: 'A leg cut across at a level, each part at true size, with edges that match.',
  group: 'Stretch legs',
  fields: {
    up: {
      kind: 'length',
      label: 'Cut above the knee',
      means: 'On the cut leg, finished; with a minus sign it lies below the knee.',
      start: { in: '4', mm: '100' },
    },
    ...MEASURE_FIELDS,
    ...ALLOWANCE_FIELDS,
    opening: OPENING_FIELD,
  },
  blame: LEG_BLAME,
  work: (values, unit) => {
    const fits = allowancesFit(values);
    if (!fits.ok) return fits;
    const input = legInput(values);
    if (!input.ok) return input;
    const made = draft(input.value);
    if (!made.ok) return made;
    const leg = made.value;
    const level = levelUpFromKnee(leg, values.up, 'up', unit);
    if (!level.ok) return level;
    const parted = partLeg(leg, level.value);
    if (!parted.ok) return parted;
    const { upper, lower, cut } = parted.value;
    const above = seamAndCut(upper, values);
    if (!above.ok) return above;
    const below = seamAndCut(lower, values);
    if (!below.ok) return below;
    const bottom = boundingBox(below.value.seam).bottom;
    const parts: readonly Part[] = [
      { name: 'Leg, upper part', ...above.value, between: [leg.crotchLevel, level.value] },
      { name: 'Leg, lower part', ...below.value, between: [level.value, bottom] },
    ];
    const drawing = (part: Part, high?: Length): Drawn[] => [
      ...part.drawn,
      ...outerSide(part.seam),
      ...levelsDrawn(leg, part.seam, high),
      ...sidesDrawn(part.seam, ...part.between, linesOf(leg), high),
    ];
    const notes = legNotes(values, unit, false);
    const high = readable(above.value.cut);
    // Drawn apart, so that both cut lines can be seen.
    const apart = add(times(values.seam, 2), times(high, 2));
    const [top, low] = parts.map((part) => drawing(part, high));
    const [first, second] = [edgeLengths(upper), edgeLengths(lower)];
    return good({
      figures: [
        { kind: 'length', name: 'The cut across, finished', length: cut },
        { kind: 'length', name: 'Level, below the waist', length: level.value },
        { kind: 'length', name: 'Inner seam, upper part', length: first.get('inner-front') ?? zero },
        { kind: 'length', name: 'Inner seam, lower part', length: second.get('inner-front') ?? zero },
        ...legFigures(leg).filter(({ name }) => !name.startsWith('Inner seam')),
      ],
      strips: legStrips(leg),
      drawing: sheet('Leg in two parts', [
        ...(top ?? []),
        ...(low ?? []).map((one) => moved(one, zero, nm(apart))),
      ]),
      sheets: parts.map((part): PatternSheet => sheet(part.name, drawing(part), notes)),
      advice: [
        advise(
          'Where the cloths stretch differently, give the stretch of the one that stretches less.',
          practice,
        ),
        ...leg.advice,
      ],
      assumed: leg.assumed,
      sources: LEG_SOURCES,
    });
  },
});
