import type { MarkedLine } from '../../cloth/tuck-lines.ts';
import type { TuckMarks } from '../../cloth/tucks.ts';
import { add, type Length, nm, times, zero } from '../../length/length.ts';
import { box, line, middleWords, place, words } from '../../paper/drawing.ts';
import type { StripMarks } from '../../paper/marking-strip.ts';
import type { Drawn, PatternSheet } from '../../paper/pattern-sheet.ts';

/** Both stitching lines and the fold of every tuck, from one datum on the flat cloth. */
export const tuckStrip = (
  name: string,
  from: string,
  span: Length,
  tucks: readonly TuckMarks[],
): StripMarks => ({
  name,
  from,
  span,
  marks: tucks.flatMap((tuck, i) => [
    { at: tuck.firstStitching, name: `tuck ${i + 1}, stitch`, stroke: 'stitch' as const },
    { at: tuck.fold, name: `tuck ${i + 1}, fold`, stroke: 'fold' as const },
    { at: tuck.secondStitching, name: `tuck ${i + 1}, stitch`, stroke: 'stitch' as const },
  ]),
});

/** The stitching lines as they lie when the tucks are done, to check by. */
export const doneStrip = (from: string, span: Length, tucks: readonly TuckMarks[]): StripMarks => ({
  name: 'Stitching when done, to check by',
  from,
  span,
  marks: tucks.map(({ finished }, i) => ({
    at: finished,
    name: `tuck ${i + 1}, done`,
    stroke: 'stitch' as const,
  })),
});

/** Numbers of tucks at their places, as many as stand clear of each other. */
function numbers(places: readonly Length[], y: Length, letters: Length): Drawn[] {
  const digits = String(places.length).length;
  const drawn: Drawn[] = [];
  let free = Number.NEGATIVE_INFINITY;
  for (const [i, x] of places.entries()) {
    if (x < free) continue;
    drawn.push(middleWords(String(i + 1), place(x, y), letters));
    free = x + letters * (0.7 * digits + 0.4);
  }
  return drawn;
}

/**
 * Tucks twice over: the flat cloth with its lines, numbered at the folds, and below it the same piece with the tucks
 * done, each fold as it lies.
 */
export function flatAndFinished(tucks: readonly TuckMarks[], flat: Length, finished: Length): PatternSheet {
  const letters = times(flat, 1 / 25);
  const high = times(flat, 0.3);
  const top = times(letters, 1.6);
  const under = add(top, high, times(letters, 2.6));
  const down = (x: Length, from: Length) => [place(x, from), place(x, add(from, high))] as const;
  const drawn: Drawn[] = [
    words('Flat', place(zero, letters), letters),
    ...numbers(
      tucks.map(({ fold }) => fold),
      letters,
      letters,
    ),
    box('body', zero, top, flat, high),
    words('Done', place(zero, nm(under - letters * 0.5)), letters),
    box('body', zero, under, finished, high),
  ];
  for (const tuck of tucks) {
    drawn.push(
      line('stitch', ...down(tuck.firstStitching, top)),
      line('fold', ...down(tuck.fold, top)),
      line('stitch', ...down(tuck.secondStitching, top)),
      line('stitch', ...down(tuck.finished, under)),
      line('body', ...down(tuck.foldFinished, under)),
    );
  }
  if (tucks[0] && tucks[0].fold < letters * 3) drawn.shift();
  return { name: 'Tucks, flat and done', notes: [], drawn };
}

/** Marked lines as strokes: folds and stitching apart. */
export const tuckStrokes = (lines: readonly MarkedLine[]): Drawn[] =>
  lines.flatMap((marked) =>
    marked.runs.map((run) => line(marked.line === 'fold' ? 'fold' : 'stitch', ...run)),
  );
