import { clipToPieces, type Line } from '../shape/clip.ts';
import type { Polygon } from '../shape/flatten.ts';
import type { Point } from '../shape/outline.ts';
import { type FoldMap, movedAcross, type TuckFamily } from './fold-map.ts';
import type { TuckMarks } from './tucks.ts';

/** A line to mark: a run of points, more than one run where the piece is hollow. */
export interface MarkedLine {
  /** Number of the tuck from the datum, from 0. */
  readonly tuck: number;
  readonly line: 'first stitching' | 'fold' | 'second stitching';
  readonly runs: readonly (readonly Point[])[];
}

/** The endless line of a family at a flat distance from its datum. */
export const lineAt = (family: TuckFamily, flat: number): Line => ({
  through: movedAcross(family, family.datum, flat),
  angle: family.across + 90,
});

/** The three lines of a tuck and where they lie on the flat cloth. */
export const linesOf = (mark: TuckMarks) =>
  [
    ['first stitching', mark.firstStitching],
    ['fold', mark.fold],
    ['second stitching', mark.secondStitching],
  ] as const;

/** Every line of a family as far as it lies on the flat cloth. */
export function straightLines(map: FoldMap, cloth: Polygon): MarkedLine[] {
  return map.marks.flatMap((mark, tuck) =>
    linesOf(mark).map(([line, flat]) => ({
      tuck,
      line,
      runs: clipToPieces(cloth, lineAt(map.family, flat)).map(({ from, to }) => [from, to]),
    })),
  );
}
