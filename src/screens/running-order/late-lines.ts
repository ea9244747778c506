import type { LatePoint } from '../../order/undoing/late.ts';

/** Width of the drawing, in its own units. */
export const WIDE = 358;
/** Room for the hours at the left, and for the end of the curve at the right. */
export const LEFT = 46;
export const RIGHT = 8;
const TOP = 24;
/** Where the curve stands on. */
export const FLOOR = 136;
/** Numbered pins are this wide, and their rows this far apart. */
export const PIN = 20;
export const ROW = 25;

/** Spaces between the lines across, minutes. */
const SPACES = [5, 10, 15, 30, 60, 120, 240, 480, 960, 1920];

/** The heights of the lines across: at most four, none at the floor. */
export function linesAcross(most: number): readonly number[] {
  const space = SPACES.find((one) => most <= one * 4) ?? Math.ceil(most / 4 / 1920) * 1920;
  const count = Math.max(1, Math.ceil(most / space));
  return Array.from({ length: count }, (_, i) => space * (i + 1));
}

/** Where a point lies on the drawing. */
export interface Scale {
  readonly x: (done: number) => number;
  readonly y: (minutes: number) => number;
  /** How many steps are done where the drawing is touched; `part` is the part of its width from the left. */
  readonly doneAt: (part: number) => number;
}

/** The scale for so many steps and so many minutes at most. */
export function scaleFor(steps: number, most: number): Scale {
  const room = WIDE - LEFT - RIGHT;
  const top = linesAcross(most).at(-1) ?? 1;
  return {
    x: (done) => LEFT + (room * done) / Math.max(1, steps),
    y: (minutes) => FLOOR - ((FLOOR - TOP) * minutes) / top,
    doneAt: (part) => {
      const done = Math.round(((part * WIDE - LEFT) / room) * steps);
      return Math.min(steps, Math.max(1, done));
    },
  };
}

/** Working time in words, no finer than it can be known: `25 min`, `3 h 20 min`, `20 h`. A day of work is not a day. */
export function roughly(minutes: number): string {
  const step = minutes < 60 ? 5 : minutes < 300 ? 10 : minutes < 1200 ? 30 : 60;
  const near = Math.max(step, Math.round(minutes / step) * step);
  const [hours, rest] = [Math.floor(near / 60), near % 60];
  return [hours > 0 && `${hours} h`, rest > 0 && `${rest} min`].filter(Boolean).join(' ');
}

const short = (n: number): string => String(Math.round(n * 10) / 10);

/** The curve as stairs: a cost is there from the step on that makes it. */
export function pathOf(points: readonly LatePoint[], { x, y }: Scale): string {
  let path = `M${short(x(0))} ${short(y(0))}`;
  let height = y(0);
  for (const { done, minutes } of points) {
    const here = y(minutes);
    if (Math.abs(here - height) < 0.05) continue;
    path += `H${short(x(done))}V${short(here)}`;
    height = here;
  }
  return `${path}H${short(x(points.length))}`;
}

/** Rows in which numbered pins stand side by side without covering each other. */
export function rowsFor(places: readonly number[], apart: number): readonly number[] {
  const last: number[] = [];
  return places.map((place) => {
    const free = last.findIndex((one) => place - one >= apart);
    const row = free < 0 ? last.length : free;
    last[row] = place;
    return row;
  });
}
