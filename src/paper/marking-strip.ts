import { type Length, mm, nm, zero } from '../length/length.ts';
import { type Marking, writeLength } from '../length/writing.ts';
import { box, line, middleWords, place, sheet, words } from './drawing.ts';
import type { Drawn, PatternSheet } from './pattern-sheet.ts';

/** Places along one line, each measured from the same datum. */
export interface StripMarks {
  /** `left front, tuck folds`. */
  readonly name: string;
  /** What the datum is: `the neck seam`. */
  readonly from: string;
  /** How long the whole line is. */
  readonly span: Length;
  readonly marks: readonly {
    readonly at: Length;
    readonly name: string;
    /** How it is drawn; a plain mark where left out. */
    readonly stroke?: 'stitch' | 'fold' | 'mark';
  }[];
}

/** Width of a strip: wide enough for two lines of words and a thumb. */
export const STRIP_WIDE: Length = mm(28);

/**
 * A strip of paper to lay on the cloth: the datum at its left end, a line across at every mark, each with its number
 * and its distance from the datum. Marks before the datum make the strip begin there.
 */
export function markingStrip(on: StripMarks, marking: Marking): PatternSheet {
  const places = on.marks.map(({ at }) => at);
  const left = nm(Math.min(zero, ...places));
  const right = nm(Math.max(on.span, ...places));
  const drawn: Drawn[] = [
    box('cut', left, zero, nm(right - left), STRIP_WIDE),
    line('body', place(zero, zero), place(zero, STRIP_WIDE)),
    words(`0 = ${on.from}`, place(nm(zero + mm(1)), nm(STRIP_WIDE - mm(1))), mm(3)),
  ];
  for (const [i, mark] of on.marks.entries()) {
    const stroke = mark.stroke ?? 'mark';
    drawn.push(
      line(stroke, place(mark.at, zero), place(mark.at, mm(12))),
      middleWords(String(i + 1), place(mark.at, mm(16)), mm(3.5)),
      middleWords(writeLength(mark.at, marking).text, place(mark.at, i % 2 === 0 ? mm(20) : mm(24)), mm(3)),
    );
  }
  return sheet(on.name, drawn, [`Lay the 0 on ${on.from}.`]);
}
