import { type Refusal, refusal } from '../../cloth/refusal.ts';
import type { LegMade } from '../../cloth/stretch-leg-measures.ts';
import { type Length, mm, nm, times, zero } from '../../length/length.ts';
import type { ReadingUnit } from '../../length/reading.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { writeLength } from '../../length/writing.ts';
import { FLAT, line, middleWords, place, ring, words } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import { clipToPieces } from '../../shape/clip.ts';
import { flattenOutline, type Polygon } from '../../shape/flatten.ts';
import { boundingBox } from '../../shape/measure.ts';
import { addAllowance } from '../../shape/offset.ts';
import type { Outline, Point } from '../../shape/outline.ts';

/** What is added outside the seams, and at the waist and the ankle. */
export interface Allowances {
  readonly seam: Length;
  readonly hem: Length;
}

/** A length in the maker's own unit, for notes and messages. */
export const inUnit = (length: Length, unit: ReadingUnit): string =>
  writeLength(length, unit === 'in' ? { unit, per: 16 } : { unit, step: 1 }).text;

/** What stands on every sheet of a leg. */
export const legNotes = ({ seam, hem }: Allowances, unit: ReadingUnit, footed: boolean): string[] => [
  'Cut 2, one of them turned over.',
  `Allowances drawn: ${inUnit(seam, unit)} at the seams, ${inUnit(hem, unit)} at the waist${footed ? '' : ' and the ankle'}.`,
  'The greatest stretch of the cloth goes round the leg.',
];

/** The seam line of a piece and its cut line. Refused at the allowance that the outline has no room for. */
export function seamAndCut(
  outline: Outline,
  { seam, hem }: Allowances,
): Result<{ readonly seam: Polygon; readonly cut: Polygon; readonly drawn: readonly Drawn[] }, Refusal> {
  const hems = new Map([
    ['waist', hem],
    ['ankle', hem],
  ]);
  const cut = addAllowance(outline, hems, seam, FLAT);
  if (!cut.ok) return bad(refusal('seam', cut.error, 'Make the allowances smaller.'));
  const line = flattenOutline(outline, FLAT);
  return good({ seam: line, cut: cut.value, drawn: [ring('cut', cut.value), ring('seam', line)] });
}

/** A line across a piece at a level, from one side of it to the other; nothing where the level does not cross it. */
export function across(polygon: Polygon, y: Length): readonly [Point, Point] | undefined {
  const pieces = clipToPieces(polygon, { through: place(zero, y), angle: 0 });
  const [first, last] = [pieces[0], pieces.at(-1)];
  return first && last ? [first.from, last.to] : undefined;
}

/** Letters on paper: read at arm's length. */
export const LETTERS: Length = mm(6);

/** Levels of the leg drawn across a piece, each with its name beside the outer side. */
export function levelsDrawn(leg: LegMade, polygon: Polygon, high: Length = LETTERS): Drawn[] {
  const { top, bottom } = boundingBox(polygon);
  const levels = [
    ...leg.levels.filter(({ name }) => name !== 'waist').map(({ name, y }) => ({ name: name as string, y })),
    { name: 'crotch', y: leg.crotchLevel },
  ];
  return levels.flatMap(({ name, y }) => {
    const ends = y > top && y < bottom ? across(polygon, y) : undefined;
    return ends ? [line('thin', ...ends), words(name, place(nm(high / 2), nm(y - high / 4)), high)] : [];
  });
}

/** The middle of the widest room between lines, from one level to another. */
function freeBetween(from: Length, to: Length, lines: readonly Length[]): Length {
  const stops = [from, ...lines.filter((y) => y > from && y < to), to].sort((a, b) => a - b);
  let [best, widest] = [nm((from + to) / 2), -1];
  for (const [i, stop] of stops.entries()) {
    const room = (stops[i + 1] ?? stop) - stop;
    if (room > widest) [best, widest] = [nm(stop + room / 2), room];
  }
  return best;
}

/**
 * The arrow of the greatest stretch across a piece, and which side is front and which is back, where there is most
 * room between other lines.
 */
export function sidesDrawn(
  polygon: Polygon,
  from: Length,
  to: Length,
  lines: readonly Length[],
  high: Length = LETTERS,
): Drawn[] {
  const y = freeBetween(from, to, lines);
  const ends = across(polygon, y);
  if (!ends) return [];
  const [left, right] = ends;
  const wide = right.x - left.x;
  const at = (part: number, down: number): Point => place(nm(left.x + wide * part), nm(y + down * high));
  return [
    line('grain', at(0.15, 0), at(0.85, 0)),
    middleWords('most stretch', at(0.5, -0.4), high),
    middleWords('back', at(0.25, 1.2), high),
    middleWords('front', at(0.75, 1.2), high),
  ];
}

/** All levels that are drawn on a leg. */
export const linesOf = (leg: LegMade): Length[] => [leg.crotchLevel, ...leg.levels.map(({ y }) => y)];

/** The outer side of the leg, which has no seam, from the top of a piece to its end. */
export function outerSide(polygon: Polygon): Drawn[] {
  const [first] = clipToPieces(polygon, { through: place(zero, zero), angle: 90 });
  return first ? [line('thin', first.from, first.to)] : [];
}

/** A small cross on a place to mark. */
export const crossAt = ({ x, y }: Point, arm: Length = mm(4)): Drawn[] => [
  line('mark', place(nm(x - arm), y), place(nm(x + arm), y)),
  line('mark', place(x, nm(y - arm)), place(x, nm(y + arm))),
];

/** Height of letters that can be read on a drawing of this size: a thirtieth of its larger side. */
export function readable(polygon: Polygon): Length {
  const { left, top, right, bottom } = boundingBox(polygon);
  return times(nm(Math.max(right - left, bottom - top)), 1 / 30);
}
