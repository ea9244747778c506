/** How a line of a sketch is drawn: the shape itself, a fold, stitching, fullness, or something further away. */
export type SketchPen = 'shape' | 'fold' | 'stitch' | 'fullness' | 'faint';

/** One line of a sketch, from point to point in a box of 100 by 100, x to the right and y downwards. */
export interface SketchLine {
  readonly pen: SketchPen;
  readonly points: readonly (readonly [number, number])[];
  readonly closed?: true;
}

/** How a unit looks when it is finished: a few lines to choose by. */
export type Sketch = readonly SketchLine[];

/** Points along a cubic curve, enough of them to look smooth. */
export function bend(
  from: readonly [number, number],
  first: readonly [number, number],
  second: readonly [number, number],
  to: readonly [number, number],
  steps = 12,
): readonly (readonly [number, number])[] {
  return Array.from({ length: steps + 1 }, (_, i) => {
    const t = i / steps;
    const s = 1 - t;
    const mix = (k: 0 | 1): number =>
      s ** 3 * from[k] + 3 * s * s * t * first[k] + 3 * s * t * t * second[k] + t ** 3 * to[k];
    return [mix(0), mix(1)] as const;
  });
}

/** A wavy line, as the free edge of a frill hangs: from one point to another with so many waves, each so high. */
export function wave(
  from: readonly [number, number],
  to: readonly [number, number],
  waves: number,
  high: number,
): readonly (readonly [number, number])[] {
  const steps = waves * 8;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const long = Math.hypot(dx, dy) || 1;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const t = i / steps;
    const off = Math.sin(t * waves * 2 * Math.PI) * high;
    return [from[0] + dx * t - (dy / long) * off, from[1] + dy * t + (dx / long) * off] as const;
  });
}
