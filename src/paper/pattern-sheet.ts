import type { Length } from '../length/length.ts';
import type { Point } from '../shape/outline.ts';

/**
 * What a line on a sheet is for; paper and screen each draw the kinds in their own way, told apart by dash and weight.
 *
 * `cut` cut here, `seam` the seam line, `stitch` sew along here, `fold` fold here, `mark` a place to mark or match,
 * `grain` lies along the grain, with arrow heads; `body` any other part of a thing drawn, `thin` measures and helps.
 */
export type Stroke = 'cut' | 'seam' | 'stitch' | 'fold' | 'mark' | 'grain' | 'body' | 'thin';

/** Something drawn on a sheet, at true size; x to the right, y downwards. */
export type Drawn =
  | {
      readonly kind: 'path';
      readonly stroke: Stroke;
      /** Straight from point to point; a curve is given flattened, see `FLAT`. */
      readonly points: readonly Point[];
      readonly closed: boolean;
    }
  | {
      readonly kind: 'words';
      readonly words: string;
      /** Where the base line begins, or its middle. */
      readonly at: Point;
      readonly from: 'start' | 'middle';
      /** Height of the letters' body, as a font size. */
      readonly high: Length;
      /** Degrees, clockwise; level where left out. */
      readonly turn?: number;
    };

/** A drawing at true size: a pattern piece, a marking strip, a layout. Pages are made from it, and the screen's drawing. */
export interface PatternSheet {
  /** `left front`, `cuff frill`. */
  readonly name: string;
  /** What stands beside the name on paper: `cut 2, one a mirror image`, `cotton batiste`, `seam allowance 5/8 in drawn`. */
  readonly notes: readonly string[];
  readonly drawn: readonly Drawn[];
}
