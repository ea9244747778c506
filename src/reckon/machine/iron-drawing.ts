import { DOT_LIMIT, type Dots } from '../../cloth/press-heat.ts';
import { type Length, mm, nm, zero } from '../../length/length.ts';
import { arc, line, place, ring } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';

/** Length and half the width of a sole plate of usual size; only for the drawing. */
const LONG: Length = mm(210);
const HALF: Length = mm(58);

/** Length of the sole as it is drawn. */
export const SOLE_LONG: Length = LONG;

/** Dots in a row round a place, as on a care label; crossed out where there is none. */
export function dotsDrawn(dots: Dots, x: Length, y: Length, size: Length): Drawn[] {
  if (dots === 0) {
    const arm = nm(size * 2.5);
    return [
      line('cut', place(nm(x - arm), nm(y - arm)), place(nm(x + arm), nm(y + arm))),
      line('cut', place(nm(x - arm), nm(y + arm)), place(nm(x + arm), nm(y - arm))),
    ];
  }
  return Array.from({ length: dots }, (_, i) =>
    arc('mark', place(nm(x + (i - (dots - 1) / 2) * size * 3), y), size),
  );
}

/** The sole of an iron, point to the right, with the dots of its dial. */
export function soleDrawn(dots: Dots, left: Length = zero, middle: Length = zero): Drawn[] {
  const side = Array.from({ length: 33 }, (_, i) => {
    const t = i / 32;
    return place(nm(left + LONG * t), nm(HALF * (1 - t ** 2.6)));
  });
  const outline = [
    ...side.map(({ x, y }) => place(x, nm(middle + y))),
    ...side.map(({ x, y }) => place(x, nm(middle - y))).reverse(),
  ];
  return [ring('body', outline), ...dotsDrawn(dots, nm(left + LONG * 0.4), middle, mm(9))];
}

/** Words for the dots of a care label. */
export const sayDots = (dots: Dots): string =>
  dots === 0
    ? 'must not be ironed'
    : `${['', 'one dot', 'two dots', 'three dots'][dots]}, ${DOT_LIMIT.value[dots]} °C`;

/** What a care label may say, for a field. */
export const CARE_OPTIONS = [
  { value: '3', label: sayDots(3) },
  { value: '2', label: sayDots(2) },
  { value: '1', label: sayDots(1) },
  { value: '0', label: 'iron crossed out' },
] as const;

/** The dots that were chosen. */
export const dotsOf = (chosen: '0' | '1' | '2' | '3'): Dots =>
  (({ 0: 0, 1: 1, 2: 2, 3: 3 }) as const)[chosen];
