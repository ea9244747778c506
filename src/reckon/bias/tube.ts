import { type Advice, advise } from '../../cloth/advice.ts';
import type { ContinuousBiasMade } from '../../cloth/continuous-bias.ts';
import { geometry } from '../../cloth/source.ts';
import { add, type Length, longest, nm, shortest, subtract, times, zero } from '../../length/length.ts';
import { box, line, place, ring, sheet } from '../../paper/drawing.ts';
import type { StripMarks } from '../../paper/marking-strip.ts';
import type { PatternSheet } from '../../paper/pattern-sheet.ts';
import type { ReckonedFigure } from '../reckoning.ts';

/** More rounds than this cannot be ruled. */
export const MOST_ROUNDS = 1000;

/** How the tube is closed. */
export const CLOSING: readonly Advice[] = [
  advise(
    'Close the tube with one edge shifted by one line, and match the lines at the seam line, not at the raw edge.',
    geometry,
  ),
];

/** Figures of a continuous strip; its length goes first. */
export const tubeFigures = (made: ContinuousBiasMade): readonly ReckonedFigure[] => [
  { kind: 'length', name: 'Strip', length: made.total },
  { kind: 'length', name: 'Triangle, along both its straight sides', length: made.triangle },
  { kind: 'length', name: 'From line to line, along the straight edges', length: made.step },
  { kind: 'number', name: 'Rounds of the tube', number: made.rounds },
  { kind: 'number', name: 'Joins in the strip', number: made.joins },
  { kind: 'length', name: 'Trim off past the last line, along the edge', length: made.trim },
];

/** Where the triangle is cut, and where the lines begin and end. */
export function tubeMarks(made: ContinuousBiasMade, across: Length, along: Length): readonly StripMarks[] {
  const long = longest(across, along);
  return [
    {
      name: 'Longer side, for the triangle',
      from: 'the corner',
      span: long,
      marks: [{ at: made.triangle, name: 'cut from here to the other corner' }],
    },
    {
      name: 'Straight edges, lines',
      from: 'the slanted edge',
      span: nm(made.rounds * made.step + made.trim),
      marks: Array.from({ length: made.rounds }, (_, i) => ({
        at: times(made.step, i + 1),
        name: `line ${i + 1}`,
      })),
    },
  ];
}

/** Above, the cloth and its triangle; below, the triangle sewn to the other end and the lines to cut. */
export function tubeDrawing(
  made: ContinuousBiasMade,
  across: Length,
  along: Length,
  join: Length,
): PatternSheet {
  const [long, high] = [longest(across, along), shortest(across, along)];
  const straight = nm(made.rounds * made.step + made.trim);
  const top = times(high, 1.2);
  const bottom = add(top, high);
  const slant = (x: number) => [place(nm(high + x), top), place(nm(x), bottom)] as const;
  const [a, b] = slant(0);
  const [c, d] = slant(straight);
  const seam = subtract(long, join);
  return sheet('The cloth, and the triangle sewn on', [
    box('body', zero, zero, long, high),
    line('cut', place(high, zero), place(zero, high)),
    ring('body', [a, c, d, b]),
    line('seam', place(seam, top), place(seam, subtract(bottom, join))),
    ...Array.from({ length: made.rounds - (made.trim > 0 ? 0 : 1) }, (_, i) =>
      line('cut', ...slant(made.step * (i + 1))),
    ),
  ]);
}
