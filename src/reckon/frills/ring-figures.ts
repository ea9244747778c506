import type { CircleFrillMade } from '../../cloth/circles.ts';
import { easeNotches } from '../../cloth/ease-notches.ts';
import { joinsOf, type RingPart } from '../../cloth/flounce.ts';
import type { Refusal } from '../../cloth/refusal.ts';
import { type RingMarks, ringMarks } from '../../cloth/ring-marks.ts';
import type { Length } from '../../length/length.ts';
import { good, type Result } from '../../length/result.ts';
import type { StripMarks } from '../../paper/marking-strip.ts';
import type { PatternSheet } from '../../paper/pattern-sheet.ts';
import type { ReckonedFigure } from '../reckoning.ts';
import { alike, ringDrawing, ringSheets } from './ring-sheet.ts';
import { count, writeTimes } from './times.ts';

/** A frill of rings, as far as it does not matter how its radius was found. */
export interface RingsMade {
  readonly figures: readonly ReckonedFigure[];
  readonly strips: readonly StripMarks[];
  readonly drawing: PatternSheet;
  readonly sheets: readonly PatternSheet[];
}

/** Figures, marks, drawing and sheets of rings. Refused: what `ringMarks` refuses. */
export function ringsMade(told: {
  readonly frill: CircleFrillMade;
  readonly circles: number;
  readonly parts: readonly RingPart[];
  readonly seam: Length;
  readonly allowance: Length;
  readonly slit: Length;
  readonly closed: boolean;
}): Result<RingsMade, Refusal> {
  const { frill, circles, parts, seam, allowance, slit, closed } = told;
  const marked = ringMarks(
    parts.map(({ turn }) => turn),
    frill.radius,
    slit,
  );
  if (!marked.ok) return marked;
  const joins = joinsOf(circles, closed);
  const turnsOf = (part: RingPart): readonly number[] => marked.value[parts.indexOf(part)]?.turns ?? [];
  const toDraw = (part: RingPart) => ({ frill, slit, turns: turnsOf(part) });
  return good({
    figures: [
      { kind: 'length', name: 'Radius to cut inside', length: frill.cutInside },
      { kind: 'length', name: 'Radius to cut outside', length: frill.cutOutside },
      { kind: 'length', name: 'Radius of the seam line', length: frill.radius },
      { kind: 'words', name: 'Rings and joins', words: ringsInWords(parts, joins) },
      { kind: 'length', name: 'Finished lower edge, whole', length: frill.outerEdge },
      ...alike(parts).flatMap(({ part }) => clothFor(part, frill)),
      ...clips(seam, frill.radius, allowance),
    ],
    strips: [seamMarks(seam, marked.value)],
    drawing: ringDrawing(parts, toDraw),
    sheets: ringSheets(parts, toDraw),
  });
}

function ringsInWords(parts: readonly RingPart[], joins: number): string {
  const whole = parts.filter(({ turn }) => turn === 1).length;
  const rest = parts.find(({ turn }) => turn < 1);
  const said = [
    ...(whole > 0 ? [count(whole, 'whole ring')] : []),
    ...(rest ? [`1 part of ${Math.round(rest.turn * 360)} degrees`] : []),
  ];
  return `${said.join(' and ')}, ${count(joins, 'join')}`;
}

function clothFor(part: RingPart, frill: CircleFrillMade): readonly ReckonedFigure[] {
  return part.turn === 1
    ? [{ kind: 'length', name: 'Side of the cloth square for a ring', length: frill.square }]
    : [
        { kind: 'length', name: 'Cloth for the part, along the grain', length: part.along },
        { kind: 'length', name: 'Cloth for the part, across', length: part.across },
      ];
}

/** How the inner allowance is clipped so that it spreads; none where it is too narrow to need it. */
function clips(seam: Length, radius: Length, allowance: Length): readonly ReckonedFigure[] {
  const notches = easeNotches({ seam, radius, allowance, curve: 'inward' });
  if (!notches.ok) return [];
  return [
    { kind: 'length', name: 'Clip the inner allowance every', length: notches.value.apart },
    { kind: 'length', name: 'Depth of a clip', length: notches.value.deep },
  ];
}

/** Where each ring and its quarters come on the seam. */
function seamMarks(seam: Length, rings: readonly RingMarks[]): StripMarks {
  const marks = rings.flatMap(({ at }, i) =>
    at.slice(i === 0 ? 0 : 1).map((place, k) => {
      const quarter = i === 0 ? k : k + 1;
      const end = i === rings.length - 1 ? 'end' : `join of ring ${i + 1} and ${i + 2}`;
      const name = quarter === 0 ? 'start' : quarter === 4 ? end : `ring ${i + 1}, quarter ${quarter}`;
      return { at: place, name, stroke: quarter % 4 === 0 ? ('stitch' as const) : ('mark' as const) };
    }),
  );
  return { name: 'The seam that the frill is set to', from: 'the start of the seam', span: seam, marks };
}

/** How much of a circle, for the maker to judge how it ripples: `2.5 times`. */
export const inCircles = (circles: number): string => `${writeTimes(circles)} a full circle`;
