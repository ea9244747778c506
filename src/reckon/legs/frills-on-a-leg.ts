import { refusal } from '../../cloth/refusal.ts';
import { stretchLeg as draft } from '../../cloth/stretch-leg.ts';
import { frillLines, seamFeet } from '../../cloth/stretch-leg-cut.ts';
import type { LengthField } from '../../fields/fields.ts';
import { type Length, mm, nm, subtract, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { line, middleWords, place, sheet } from '../../paper/drawing.ts';
import type { StripMarks } from '../../paper/marking-strip.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import { reckoning } from '../reckoning.ts';
import { kneeOf, levelUpFromKnee } from './knee-levels.ts';
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
} from './leg-fields.ts';
import { LEG_SOURCES, legFigures, QUARTERS } from './leg-figures.ts';

const another = (label: string) =>
  ({
    kind: 'length',
    label,
    means: 'Above the knee as the first; empty if there is none.',
    start: { in: '', mm: '' },
    optional: true,
  }) as const satisfies LengthField;

/** Lines round a leg that frills are set on, marked in quarters. */
export const frillsOnALeg = reckoning({
  id: 'frills-on-a-leg',
  name: 'Frills on a leg',
  tells: 'How long the line under each frill is, and its quarter marks on the leg.',
  group: 'Stretch legs',
  fields: {
    first: {
      kind: 'length',
      label: 'First frill, above the knee',
      means: 'On the cut leg, finished; with a minus sign it lies below the knee.',
      start: { in: '4', mm: '100' },
    },
    ...MEASURE_FIELDS,
    ...ALLOWANCE_FIELDS,
    opening: OPENING_FIELD,
    second: another('Second frill'),
    third: another('Third frill'),
    fourth: another('Fourth frill'),
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
    const levels: Length[] = [];
    for (const name of ['first', 'second', 'third', 'fourth'] as const) {
      const up = values[name];
      if (up === undefined) continue;
      const level = levelUpFromKnee(leg, up, name, unit);
      if (!level.ok) return level;
      if (levels.includes(level.value)) {
        return bad(
          refusal(name, 'Two frills lie on the same line.', 'Give each its own level, or leave one out.'),
        );
      }
      levels.push(level.value);
    }
    const found = frillLines(leg, levels);
    if (!found.ok) return found;
    const frills = found.value;
    const lines = seamAndCut(leg.outline, values);
    if (!lines.ok) return lines;
    const { seam, cut, drawn } = lines.value;
    const setOn = (arm: Length): Drawn[] =>
      frills.flatMap(({ quarters }) => {
        const [from, to] = [quarters[0], quarters.at(-1)];
        if (!from || !to) return [];
        return [
          line('stitch', from, to),
          ...quarters.map(({ x, y }) => line('mark', place(x, nm(y - arm)), place(x, nm(y + arm)))),
        ];
      });
    const high = readable(cut);
    const numbered = (size: Length): Drawn[] =>
      frills.map(({ level }, i) => middleWords(String(i + 1), place(size, nm(level - size / 4)), size));
    return good({
      figures: [
        ...frills.map(({ length }, i) => ({
          kind: 'length' as const,
          name: `Frill ${i + 1}, gathered to`,
          length,
        })),
        ...frills.map(({ length }, i) => ({
          kind: 'length' as const,
          name: `Frill ${i + 1}, a quarter`,
          length: nm(length / 4),
        })),
        ...frills.map(({ level }, i) => ({
          kind: 'length' as const,
          name: `Frill ${i + 1}, below the waist at the side`,
          length: level,
        })),
        ...legFigures(leg),
      ],
      strips: [
        ...frills.map(
          ({ length, quarters }, i): StripMarks => ({
            name: `Quarters under frill ${i + 1}`,
            from: 'the inner seam at the back',
            span: length,
            marks: quarters.map(({ x }, k) => ({
              at: subtract(x, quarters[0]?.x ?? zero),
              name: QUARTERS[k] ?? '',
            })),
          }),
        ),
        {
          name: 'Lines of the frills, down the outer side',
          from: 'the waist at the side',
          span: nm(Math.max(...levels)),
          marks: frills
            .map(({ level }, i) => ({ at: level, name: `frill ${i + 1}`, stroke: 'stitch' as const }))
            .sort((a, b) => a.at - b.at),
        },
      ],
      drawing: sheet('Leg with its frill lines', [
        ...drawn,
        ...outerSide(seam),
        ...setOn(nm(high / 3)),
        ...numbered(high),
        ...sidesDrawn(seam, leg.crotchLevel, kneeOf(leg), levels, high),
      ]),
      sheets: [
        sheet(
          'Leg with its frill lines',
          [
            ...drawn,
            ...outerSide(seam),
            ...levelsDrawn(leg, seam),
            ...setOn(mm(4)),
            ...sidesDrawn(seam, leg.crotchLevel, kneeOf(leg), [...levels, ...linesOf(leg)]),
            ...numbered(mm(5)),
            ...seamFeet(leg).flatMap(({ at }) => crossAt(at)),
          ],
          [...legNotes(values, unit, false), 'Gather each frill to its line, quarter to quarter.'],
        ),
      ],
      advice: leg.advice,
      assumed: leg.assumed,
      sources: LEG_SOURCES,
    });
  },
});
