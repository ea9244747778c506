import { inches, type Length, mm, nm } from '../length/length.ts';

/** A size of paper, upright. */
export interface Paper {
  readonly name: 'A4' | 'Letter';
  readonly wide: Length;
  readonly high: Length;
}

/** A4: 210 mm by 297 mm. Source: ISO 216:2007, Writing paper and certain classes of printed matter, trimmed sizes (from memory). */
export const A4: Paper = { name: 'A4', wide: mm(210), high: mm(297) };

/** Letter: 8 1/2 in by 11 in. Source: ANSI/ASME Y14.1, drawing sheet size A (from memory). */
export const LETTER: Paper = { name: 'Letter', wide: inches(17, 2), high: inches(11) };

/** Both sizes, in the order in which they are offered. */
export const PAPERS: readonly Paper[] = [A4, LETTER];

/** Left free all round, as printers do not reach the edge. Common practice, no source: most need 3 to 6 mm, some 1/2 in at one end. */
export const MARGIN: Length = inches(1, 2);

/** How much of a sheet stands on both of two neighbouring pages. Common practice, no source. */
export const OVERLAP: Length = mm(15);

/** The part of a page that can be printed on, by its left upper corner and its size. */
export interface Room {
  /** The page itself. */
  readonly page: { readonly wide: Length; readonly high: Length };
  readonly left: Length;
  readonly top: Length;
  readonly wide: Length;
  readonly high: Length;
  /** Where the foot of the page begins, below the room. */
  readonly foot: Length;
}

/** Height of a page's foot: two check lines, the name, a small map. */
export const FOOT_HIGH: Length = mm(24);

/** The room on a page above its foot. @param below room kept free between them, for a key of lines */
export function roomOn(paper: Paper, lying: boolean, below: Length = mm(0)): Room {
  const [wide, high] = lying ? [paper.high, paper.wide] : [paper.wide, paper.high];
  const foot = nm(high - MARGIN - FOOT_HIGH);
  return {
    page: { wide, high },
    left: MARGIN,
    top: MARGIN,
    wide: nm(wide - 2 * MARGIN),
    high: nm(foot - MARGIN - mm(2) - below),
    foot,
  };
}
