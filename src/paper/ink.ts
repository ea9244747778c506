import { type Length, mm, nm, zero } from '../length/length.ts';
import { type Box, boundingBox } from '../shape/measure.ts';
import type { Point } from '../shape/outline.ts';
import { wordsWide } from './letters.ts';
import type { Drawn } from './pattern-sheet.ts';
import type { PenName } from './pens.ts';

/** Words as they stand on a page. */
export interface InkWords {
  readonly kind: 'words';
  readonly words: string;
  readonly at: Point;
  readonly from: 'start' | 'middle';
  readonly high: Length;
  /** Degrees, clockwise. */
  readonly turn: number;
  readonly bold: boolean;
}

/** What is put on paper: lines, filled shapes, words. */
export type Ink =
  | {
      readonly kind: 'line';
      readonly pen: PenName;
      readonly points: readonly Point[];
      readonly closed: boolean;
      /** Where in the pen's dashes the line begins. */
      readonly phase: Length;
    }
  | { readonly kind: 'fill'; readonly points: readonly Point[] }
  | InkWords;

/** A part of a page that shows a part of a sheet; nothing of it may stand outside its area. */
export interface Window {
  readonly area: Box;
  readonly ink: readonly Ink[];
}

/** One page, at true size. */
export interface Page {
  readonly wide: Length;
  readonly high: Length;
  readonly windows: readonly Window[];
  /** Frame, signs, foot: what belongs to the page and not to a sheet. */
  readonly ink: readonly Ink[];
}

/** A line of the page's own. */
export const inkLine = (pen: PenName, points: readonly Point[], closed = false): Ink => ({
  kind: 'line',
  pen,
  points,
  closed,
  phase: zero,
});

/** Words of the page's own. */
export const inkWords = (
  words: string,
  at: Point,
  high: Length,
  { from = 'start', bold = false }: { readonly from?: 'start' | 'middle'; readonly bold?: boolean } = {},
): Ink => ({ kind: 'words', words, at, from, high, turn: 0, bold });

const HEAD = { long: mm(5), wide: mm(1.4) };

/** A filled arrow head with its tip at the end of a line. */
function head(from: Point, tip: Point): Ink | undefined {
  const long = Math.hypot(tip.x - from.x, tip.y - from.y);
  if (long < 1) return undefined;
  const [x, y] = [(tip.x - from.x) / long, (tip.y - from.y) / long];
  const at = (back: number, side: number): Point => ({
    x: nm(tip.x - x * back - y * side),
    y: nm(tip.y - y * back + x * side),
  });
  const size = Math.min(HEAD.long, long / 3);
  return {
    kind: 'fill',
    points: [tip, at(size, (HEAD.wide * size) / HEAD.long), at(size, (-HEAD.wide * size) / HEAD.long)],
  };
}

/** What is drawn on a sheet as ink; grain lines get their arrow heads. */
export function inkOf(drawn: readonly Drawn[]): readonly Ink[] {
  return drawn.flatMap((one): Ink[] => {
    if (one.kind === 'words') {
      const { words, at, from, high, turn = 0 } = one;
      return [{ kind: 'words', words, at, from, high, turn, bold: false }];
    }
    const { points, closed, stroke } = one;
    if (points.length < 2) return [];
    const ink: Ink[] = [{ kind: 'line', pen: stroke, points, closed, phase: zero }];
    const [first, second] = points;
    const [last, before] = [points.at(-1), points.at(-2)];
    if (stroke === 'grain' && !closed && first && second && last && before) {
      for (const one of [head(second, first), head(before, last)]) if (one) ink.push(one);
    }
    return ink;
  });
}

/** The four corners of the box that words take, about. */
export function wordsCorners(ink: InkWords): readonly Point[] {
  const wide = wordsWide(ink.words, ink.high);
  const left = ink.from === 'middle' ? -wide / 2 : 0;
  const angle = (ink.turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const at = (x: number, y: number): Point => ({
    x: nm(ink.at.x + x * cos - y * sin),
    y: nm(ink.at.y + x * sin + y * cos),
  });
  const [up, down] = [-0.8 * ink.high, 0.25 * ink.high];
  return [at(left, up), at(left + wide, up), at(left + wide, down), at(left, down)];
}

/** The points that show how far something reaches. */
export const reachOf = (ink: Ink): readonly Point[] =>
  ink.kind === 'words' ? wordsCorners(ink) : ink.points;

/** The box round all of it. */
export const boxOf = (ink: readonly Ink[]): Box => boundingBox(ink.flatMap(reachOf));

/** The same ink, moved. */
export function inkMoved(ink: Ink, x: number, y: number): Ink {
  const by = (p: Point): Point => ({ x: nm(p.x + x), y: nm(p.y + y) });
  return ink.kind === 'words' ? { ...ink, at: by(ink.at) } : { ...ink, points: ink.points.map(by) };
}
