import { type ClothPart, legOfTwoCloths } from '../../cloth/stretch-leg-two-cloths.ts';
import { add, type Length, mm, nm, subtract, times, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { line, moved, place, sheet } from '../../paper/drawing.ts';
import type { StripMarks } from '../../paper/marking-strip.ts';
import type { Drawn, PatternSheet } from '../../paper/pattern-sheet.ts';
import type { Polygon } from '../../shape/flatten.ts';
import { boundingBox, edgeLengths } from '../../shape/measure.ts';
import { type ReckonedFigure, reckoning } from '../reckoning.ts';
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
  gaugeOf,
  LEG_BLAME,
  legInput,
  MEASURE_FIELDS,
  OPENING_FIELD,
} from './leg-fields.ts';
import { LEG_SOURCES, legFigures, percent, QUARTERS } from './leg-figures.ts';

/** A part of the leg with its lines. */
interface Part {
  readonly which: 'upper' | 'lower';
  readonly made: ClothPart;
  readonly seam: Polygon;
  readonly cut: Polygon;
  readonly drawn: readonly Drawn[];
  /** Between these levels the arrow of the stretch is drawn. */
  readonly between: readonly [Length, Length];
}

/** A part with its levels, its sides and the quarters where the cloths meet. */
function drawing({ made, seam, drawn, between }: Part, arm: Length, high?: Length): Drawn[] {
  const { leg, quarters } = made;
  return [
    ...drawn,
    ...outerSide(seam),
    ...levelsDrawn(leg, seam, high),
    ...sidesDrawn(seam, ...between, linesOf(leg), high),
    ...quarters.map(({ x, y }) => line('mark', place(x, nm(y - arm)), place(x, nm(y + arm)))),
  ];
}

/** The quarters along the edge of a part, and the levels down its outer side. */
function strips({ which, made, seam }: Part): StripMarks[] {
  const { leg, cut, quarters, level } = made;
  const { bottom } = boundingBox(seam);
  const top = which === 'upper' ? zero : level;
  const levels = [
    ...leg.levels.map(({ name, y }) => ({ name: name as string, y })),
    { name: 'crotch', y: leg.crotchLevel },
  ]
    .filter(({ y }) => y > top && y < (which === 'upper' ? level : bottom))
    .map(({ name, y }) => ({ name, at: subtract(y, top) }))
    .sort((a, b) => a.at - b.at);
  const down: StripMarks = {
    name: `Levels of the ${which} part, down its outer side`,
    from: which === 'upper' ? 'the waist at the side' : 'where the cloths meet',
    span: levels.at(-1)?.at ?? zero,
    marks: levels,
  };
  return [
    {
      name: `Quarters where the cloths meet, ${which} part`,
      from: 'the inner seam at the back',
      span: cut,
      marks: quarters.map(({ x }, i) => ({
        at: subtract(x, quarters[0]?.x ?? zero),
        name: QUARTERS[i] ?? '',
      })),
    },
    ...(levels.length > 0 ? [down] : []),
  ];
}

/** The girths that lie on one part. */
function girths({ which, made }: Part): ReckonedFigure[] {
  const { leg, level } = made;
  const levels = leg.levels.filter(({ y }) => (which === 'upper' ? y < level : y > level));
  return legFigures({ ...leg, levels }).filter(({ name }) => name.endsWith(', finished'));
}

/** A leg of two stretch cloths that meet at a level, each part drafted for its own cloth. */
export const legInTwoCloths = reckoning({
  id: 'leg-in-two-cloths',
  name: 'Leg in two cloths',
  tells: 'A leg whose lower part is of another cloth, each part drafted for what its own cloth stretches.',
  group: 'Stretch legs',
  fields: {
    up: {
      kind: 'length',
      label: 'Meet above the knee',
      means: 'On the body; with a minus sign the cloths meet below the knee.',
      start: { in: '4', mm: '100' },
    },
    ...MEASURE_FIELDS,
    stretchRound: { ...MEASURE_FIELDS.stretchRound, label: 'Stretch round, upper cloth' },
    stretchAlong: { ...MEASURE_FIELDS.stretchAlong, label: 'Stretch along, upper cloth' },
    stretchRoundBelow: {
      kind: 'number',
      label: 'Stretch round, lower cloth',
      means: 'Of the cloth below, gauged as the upper.',
      unit: '%',
      start: '60',
    },
    stretchAlongBelow: {
      kind: 'number',
      label: 'Stretch along, lower cloth',
      means: 'The same the other way; 0 if it does not.',
      unit: '%',
      start: '30',
    },
    ...ALLOWANCE_FIELDS,
    opening: OPENING_FIELD,
  },
  blame: {
    ...LEG_BLAME,
    aboveKnee: 'up',
    'below.gauge.round': 'stretchRoundBelow',
    'below.gauge.along': 'stretchAlongBelow',
  },
  work: (values, unit) => {
    const fits = allowancesFit(values);
    if (!fits.ok) return fits;
    const input = legInput(values);
    if (!input.ok) return input;
    const made = legOfTwoCloths({
      ...input.value,
      below: { gauge: gaugeOf(values.stretchRoundBelow, values.stretchAlongBelow) },
      aboveKnee: values.up,
    });
    if (!made.ok) return made;
    const { upper, lower, eased, advice, assumed } = made.value;
    const above = seamAndCut(upper.outline, values);
    if (!above.ok) return above;
    const below = seamAndCut(lower.outline, values);
    if (!below.ok) return below;
    const bottom = boundingBox(below.value.seam).bottom;
    const parts: readonly Part[] = [
      { which: 'upper', made: upper, ...above.value, between: [upper.leg.crotchLevel, upper.level] },
      { which: 'lower', made: lower, ...below.value, between: [lower.level, bottom] },
    ];
    const other = eased.part === 'upper' ? 'lower' : 'upper';
    // Both stand below each other, so letters are in proportion to the two.
    const high = add(readable(above.value.cut), readable(below.value.cut));
    // Drawn apart, so that both cut lines can be seen.
    const apart = add(times(values.seam, 2), times(high, 2));
    const [top, low] = parts.map((part) => drawing(part, nm(high / 3), high));
    const edge = (name: string, length: Length): ReckonedFigure => ({ kind: 'length', name, length });
    const smaller = ({ leg }: ClothPart): string =>
      `${percent(leg.reduction.round)} round, ${percent(leg.reduction.along)} along`;
    return good({
      figures: [
        edge('Where they meet, upper edge', upper.cut),
        edge('Where they meet, lower edge', lower.cut),
        {
          kind: 'words',
          name: 'Joined',
          words:
            eased.by < 0.0005
              ? 'both edges are as long'
              : `the ${eased.part} edge stretched by ${percent(eased.by)} to the ${other}, quarter to quarter`,
        },
        edge('A quarter, upper edge', nm(upper.cut / 4)),
        edge('A quarter, lower edge', nm(lower.cut / 4)),
        edge('Inner seam, upper part', edgeLengths(upper.outline).get('inner-front') ?? zero),
        edge('Inner seam, lower part', edgeLengths(lower.outline).get('inner-front') ?? zero),
        edge('Cloths meet, below the waist', upper.level),
        ...parts.flatMap(girths),
        ...legFigures(upper.leg).filter(({ name }) => /^(Rise|Waist above)/.test(name)),
        { kind: 'words', name: 'Upper part, smaller than the body', words: smaller(upper) },
        { kind: 'words', name: 'Lower part, smaller than the body', words: smaller(lower) },
      ],
      strips: parts.flatMap(strips),
      drawing: sheet('Leg in two parts', [
        ...(top ?? []),
        ...(low ?? []).map((one) => moved(one, zero, nm(upper.level - lower.level + apart))),
      ]),
      sheets: parts.map(
        (part): PatternSheet =>
          sheet(`Leg, ${part.which} part`, drawing(part, mm(4)), [
            ...legNotes(values, unit, false),
            'Where the cloths meet, pin quarter to quarter and stretch the shorter edge to the longer.',
          ]),
      ),
      advice,
      assumed,
      sources: LEG_SOURCES,
    });
  },
});
