import { type Length, times } from '../../length/length.ts';
import { line, place } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';

/** A lengthwise grain line in the middle of a sheet of this size, whose left upper corner is at the origin. */
export const grainLine = (wide: Length, high: Length): Drawn =>
  line('grain', place(times(wide, 1 / 2), times(high, 1 / 4)), place(times(wide, 1 / 2), times(high, 3 / 4)));
