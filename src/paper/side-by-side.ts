import { type Length, nm, times } from '../length/length.ts';
import { boundingBox } from '../shape/measure.ts';
import { middleWords, moved, place } from './drawing.ts';
import type { Drawn, PatternSheet } from './pattern-sheet.ts';

type Path = Extract<Drawn, { readonly kind: 'path' }>;

interface Shelved {
  readonly name: string;
  readonly drawn: readonly Path[];
  readonly wide: Length;
  readonly high: Length;
}

/** Its lines alone, moved so that the left upper corner of what they take up lies at the origin. */
function atOrigin({ name, drawn }: PatternSheet): Shelved {
  const lines = drawn.filter((one): one is Path => one.kind === 'path');
  const { left, top, right, bottom } = boundingBox(lines.flatMap(({ points }) => points));
  return {
    name,
    drawn: lines.map((one) => moved(one, nm(-left), nm(-top))).filter((one) => one.kind === 'path'),
    wide: nm(right - left),
    high: nm(bottom - top),
  };
}

/** How far a line goes, the larger way. */
function reach(points: Path['points']): number {
  const { left, top, right, bottom } = boundingBox(points);
  return Math.max(right - left, bottom - top);
}

/**
 * Several sheets as one drawing to one scale: laid in rows as they come, in about as much width as height, each with
 * its name below and no other words. Sheets with no line are left out, and grain lines that their heads would fill.
 */
export function sideBySide(name: string, sheets: readonly PatternSheet[]): PatternSheet {
  const all = sheets.filter(({ drawn }) => drawn.some(({ kind }) => kind === 'path')).map(atOrigin);
  const side = Math.sqrt(all.reduce((sum, { wide, high }) => sum + wide * high, 0));
  const gap = nm(side / 12);
  const room = Math.max(side * 1.3, ...all.map(({ wide }) => wide));
  const letters = nm(side / 18);
  const drawn: Drawn[] = [];
  let [x, y, high] = [0, 0, 0];
  for (const one of all) {
    if (x > 0 && x + one.wide > room) [x, y, high] = [0, y + high + gap + letters * 2, 0];
    const clear = one.drawn.filter(({ stroke, points }) => stroke !== 'grain' || reach(points) > gap * 1.5);
    drawn.push(...clear.map((line) => moved(line, nm(x), nm(y))));
    const below = nm(y + one.high + letters * 1.4);
    drawn.push(middleWords(one.name, place(nm(x + times(one.wide, 1 / 2)), below), letters));
    high = Math.max(high, one.high);
    x += one.wide + gap;
  }
  return { name, notes: [], drawn };
}
