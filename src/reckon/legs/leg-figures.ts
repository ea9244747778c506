import { practice, type Source } from '../../cloth/source.ts';
import { MOST_ROUND } from '../../cloth/stretch.ts';
import { seamFeet } from '../../cloth/stretch-leg-cut.ts';
import { BACK_SHARE, BODY_SURVEY, KNEE_BY_CALF, type LegMade } from '../../cloth/stretch-leg-measures.ts';
import { subtract, zero } from '../../length/length.ts';
import type { StripMarks } from '../../paper/marking-strip.ts';
import { edgeLengths } from '../../shape/measure.ts';
import type { ReckonedFigure } from '../reckoning.ts';

const NAMES: Readonly<Record<string, string>> = {
  waist: 'Waist',
  hip: 'Hip',
  thigh: 'Thigh',
  knee: 'Knee',
  calf: 'Calf',
  ankle: 'Ankle',
  heel: 'Heel',
  ball: 'Ball of the foot',
};

/** Where the quarters of a line round the leg lie, from back to front. */
export const QUARTERS: readonly string[] = [
  'inner seam, back',
  'middle of the back',
  'outer side',
  'middle of the front',
  'inner seam, front',
];

/** A part as a maker reads it: `19.5 %`. */
export const percent = (part: number): string => `${Math.round(part * 1000) / 10} %`;

/** Where the shares of the stretch and of the body come from. */
export const LEG_SOURCES: readonly Source[] = [
  practice,
  MOST_ROUND.source,
  BACK_SHARE.source,
  KNEE_BY_CALF.source,
  BODY_SURVEY,
];

/** Girths at each level and lengths of the seams, finished. */
export function legFigures(leg: LegMade): ReckonedFigure[] {
  const seams = edgeLengths(leg.outline);
  const seam = (name: string, edge: string): ReckonedFigure => ({
    kind: 'length',
    name,
    length: seams.get(edge) ?? zero,
  });
  return [
    ...leg.levels.map(
      ({ name, finished }): ReckonedFigure => ({
        kind: 'length',
        name: `${NAMES[name] ?? name}, finished`,
        length: finished,
      }),
    ),
    seam('Inner seam, front', 'inner-front'),
    seam('Inner seam, back', 'inner-back'),
    seam('Rise, front', 'front-rise'),
    seam('Rise, back', 'back-rise'),
    { kind: 'length', name: 'Waist above the side, front', length: leg.raised.front },
    { kind: 'length', name: 'Waist above the side, back', length: leg.raised.back },
    {
      kind: 'words',
      name: 'Cut smaller than the body',
      words: `${percent(leg.reduction.round)} round, ${percent(leg.reduction.along)} along`,
    },
  ];
}

/** The levels down the outer side, and the feet of the seams along the ankle where there is one. */
export function legStrips(leg: LegMade): StripMarks[] {
  const levels = [
    ...leg.levels
      .filter(({ name }) => name !== 'waist')
      .map(({ name, y }) => ({ at: y, name: name as string })),
    { at: leg.crotchLevel, name: 'crotch' },
  ].sort((a, b) => a.at - b.at);
  const strips: StripMarks[] = [
    {
      name: 'Levels of the leg, down its outer side',
      from: 'the waist at the side',
      span: levels.at(-1)?.at ?? zero,
      marks: levels,
    },
  ];
  const feet = seamFeet(leg);
  const back = feet.find(({ name }) => name === 'foot of the inner seam, back');
  const front = feet.find(({ name }) => name === 'foot of the inner seam, front');
  if (leg.outline.edges.some(({ name }) => name === 'ankle') && back && front) {
    strips.push({
      name: 'Feet of the seams, along the ankle',
      from: 'the inner seam at the back',
      span: subtract(front.at.x, back.at.x),
      marks: feet
        .filter(({ name }) => name.startsWith('foot of the') && !name.includes('inner seam'))
        .map(({ name, at }) => ({ at: subtract(at.x, back.at.x), name }))
        .sort((a, b) => a.at - b.at),
    });
  }
  return strips;
}
