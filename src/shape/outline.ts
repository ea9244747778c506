import type { Length } from '../length/length.ts';

/** A place on the cloth; x to the right, y downwards, as a screen draws. */
export interface Point {
  readonly x: Length;
  readonly y: Length;
}

/** One stretch of an edge, from where the last one ended: a straight line or a cubic curve with two handles. */
export type Segment =
  | { readonly kind: 'line'; readonly to: Point }
  | { readonly kind: 'curve'; readonly first: Point; readonly second: Point; readonly to: Point };

/** A named edge of a piece: it begins where the edge before it ended. */
export interface OutlineEdge {
  readonly name: string;
  readonly segments: readonly Segment[];
}

/**
 * The seam line of a piece as it is when its works are done (finished, without allowances): named edges in order
 * round the shape, the last one ending at `start`.
 */
export interface Outline {
  readonly start: Point;
  readonly edges: readonly OutlineEdge[];
}
