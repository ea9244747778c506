import { type Length, mm, nm } from '../length/length.ts';
import type { Point } from '../shape/outline.ts';
import type { Drawn, PatternSheet, Stroke } from './pattern-sheet.ts';

/** How far a flattened curve on a sheet may lie from the true one: a third of a pencil line. */
export const FLAT: Length = mm(0.05);

/** Height of the letters where nothing else is asked for. */
export const LETTERS: Length = mm(4);

/** A place from two lengths. */
export const place = (x: Length, y: Length): Point => ({ x, y });

/** A line through points, open. */
export const line = (stroke: Stroke, ...points: readonly Point[]): Drawn => ({
  kind: 'path',
  stroke,
  points,
  closed: false,
});

/** A line through points that comes back to its beginning. */
export const ring = (stroke: Stroke, points: readonly Point[]): Drawn => ({
  kind: 'path',
  stroke,
  points,
  closed: true,
});

/** A box, by its left upper corner and its size. */
export const box = (stroke: Stroke, left: Length, top: Length, wide: Length, high: Length): Drawn => {
  const [right, bottom] = [nm(left + wide), nm(top + high)];
  return ring(stroke, [place(left, top), place(right, top), place(right, bottom), place(left, bottom)]);
};

/** A circle or a part of one, flattened within {@link FLAT}; degrees clockwise from the right. */
export function arc(stroke: Stroke, middle: Point, radius: Length, from = 0, to = 360): Drawn {
  const widest = 2 * Math.acos(Math.max(0, 1 - FLAT / Math.max(FLAT, radius)));
  const whole = Math.abs(to - from) >= 360;
  const parts = Math.max(8, Math.ceil((Math.abs(to - from) * Math.PI) / 180 / widest));
  const points = Array.from({ length: whole ? parts : parts + 1 }, (_, i) => {
    const angle = ((from + ((to - from) * i) / parts) * Math.PI) / 180;
    return place(nm(middle.x + radius * Math.cos(angle)), nm(middle.y + radius * Math.sin(angle)));
  });
  return { kind: 'path', stroke, points, closed: whole };
}

/** Words that begin at a place. */
export const words = (text: string, at: Point, high: Length = LETTERS, turn = 0): Drawn => ({
  kind: 'words',
  words: text,
  at,
  from: 'start',
  high,
  ...(turn === 0 ? {} : { turn }),
});

/** Words whose middle is at a place. */
export const middleWords = (text: string, at: Point, high: Length = LETTERS, turn = 0): Drawn => ({
  kind: 'words',
  words: text,
  at,
  from: 'middle',
  high,
  ...(turn === 0 ? {} : { turn }),
});

/** The same thing, moved. */
export function moved(drawn: Drawn, x: Length, y: Length): Drawn {
  const by = (p: Point): Point => place(nm(p.x + x), nm(p.y + y));
  return drawn.kind === 'path' ? { ...drawn, points: drawn.points.map(by) } : { ...drawn, at: by(drawn.at) };
}

/** A sheet from what is drawn on it. */
export const sheet = (
  name: string,
  drawn: readonly Drawn[],
  notes: readonly string[] = [],
): PatternSheet => ({ name, notes, drawn });
