import { type Length, mm, nm, zero } from '../length/length.ts';
import { type Marking, writeLength } from '../length/writing.ts';
import { box, line, middleWords, place, sheet, words } from './drawing.ts';
import { wordsWide } from './letters.ts';
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

const NUMBER: Length = mm(3.5);
const DISTANCE: Length = mm(3);
const UPRIGHT: Length = mm(2.8);

/** Where the words of the marks stand: level in one row or two, upright where marks are close, or only at every so many. */
type Wording =
  | { readonly way: 'level'; readonly rows: 1 | 2 }
  | { readonly way: 'upright'; readonly every: number };

function wordingFor(places: readonly Length[], texts: readonly string[]): Wording {
  const sorted = places.toSorted((a, b) => a - b);
  const gaps = sorted.flatMap((at, i) => (i === 0 ? [] : [at - (sorted[i - 1] ?? at)]));
  const closest = Math.min(Number.POSITIVE_INFINITY, ...gaps.filter((gap) => gap > 0));
  const widest = Math.max(0, ...texts.map((text) => wordsWide(text, DISTANCE))) + mm(1);
  if (closest >= widest) return { way: 'level', rows: 1 };
  if (closest * 2 >= widest && closest >= mm(6)) return { way: 'level', rows: 2 };
  return { way: 'upright', every: Math.max(1, Math.ceil(mm(3.4) / closest)) };
}

/**
 * A strip of paper to lay on the cloth: the datum at its left end, a line across at every mark, each with its number
 * and its distance from the datum. Marks before the datum make the strip begin there. Where marks lie close together
 * their words stand upright; where they lie closer than letters are high, only some have words.
 */
export function markingStrip(on: StripMarks, marking: Marking): PatternSheet {
  const places = on.marks.map(({ at }) => at);
  const left = nm(Math.min(zero, ...places));
  const right = nm(Math.max(on.span, ...places));
  const texts = places.map((at) => writeLength(at, marking).text);
  const wording = wordingFor(places, texts);
  const numberWide = wordsWide(String(on.marks.length), UPRIGHT);
  const drawn: Drawn[] = [
    box('cut', left, zero, nm(right - left), STRIP_WIDE),
    line('body', place(zero, zero), place(zero, STRIP_WIDE)),
    words(`0 = ${on.from}`, place(mm(1), nm(STRIP_WIDE - mm(1))), DISTANCE),
  ];
  for (const [i, mark] of on.marks.entries()) {
    const stroke = mark.stroke ?? 'mark';
    const number = String(i + 1);
    const text = texts[i] ?? '';
    drawn.push(line(stroke, place(mark.at, zero), place(mark.at, mm(wording.way === 'level' ? 12 : 5))));
    if (wording.way === 'level') {
      const down = mm(wording.rows === 2 && i % 2 === 1 ? 23.5 : 20);
      drawn.push(
        middleWords(number, place(mark.at, mm(16)), NUMBER),
        middleWords(text, place(mark.at, down), DISTANCE),
      );
    } else if (i % wording.every === 0) {
      const x = nm(mark.at - mm(0.9));
      drawn.push(
        words(number, place(x, mm(5.5)), UPRIGHT, 90),
        words(text, place(x, nm(mm(6.8) + numberWide)), UPRIGHT, 90),
      );
    }
  }
  return sheet(on.name, drawn, [`Lay the 0 on ${on.from}.`]);
}
