import { type Length, mm, zero } from '../length/length.ts';
import type { Stroke } from './pattern-sheet.ts';

/** How a line is drawn on paper. There is one ink only: kinds are told apart by weight and by dashes. */
export interface Pen {
  readonly wide: Length;
  /** Lengths of dash and gap by turns; none for an unbroken line. */
  readonly dash: readonly Length[];
}

/** What lines on a page are drawn with: those of the sheet, and the page's own frames and signs. */
export type PenName = Stroke | 'frame' | 'sign';

const pen = (wide: number, ...dash: readonly number[]): Pen => ({ wide: mm(wide), dash: dash.map(mm) });

/** Weights and dashes: ours, chosen so that every kind stays apart from the others in a black and white copy. */
export const PENS: Readonly<Record<PenName, Pen>> = {
  cut: pen(0.6),
  seam: pen(0.3, 8, 2),
  stitch: pen(0.35, 3, 1.3),
  fold: pen(0.3, 7, 1.3, 0.8, 1.3),
  mark: pen(0.35, 0.8, 0.8),
  grain: pen(0.35),
  body: pen(0.3),
  thin: pen(0.15),
  frame: pen(0.12),
  sign: pen(0.25),
};

/** What each kind of line is called in the key, in the order in which the key names them. */
export const KEY: readonly (readonly [Stroke, string])[] = [
  ['cut', 'cut'],
  ['seam', 'seam line'],
  ['stitch', 'stitch'],
  ['fold', 'fold'],
  ['mark', 'mark'],
  ['grain', 'grain'],
];

/** Where in its dashes a line is after some length: what a clipped line begins with. */
export function phaseAfter(name: PenName, length: Length): Length {
  const whole = PENS[name].dash.reduce((sum, part) => sum + part, 0);
  return whole === 0 ? zero : ((length % whole) as Length);
}
