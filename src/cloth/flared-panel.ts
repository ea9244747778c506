import { type Length, nm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { pointOf } from '../shape/flatten.ts';
import type { Point, Segment } from '../shape/outline.ts';
import { type Refusal, refusal } from './refusal.ts';

/** A panel that goes once round and flares evenly, as a lampshade does. */
export interface FlaredInput {
  /** Its narrow edge; straight across where something else is drafted on it, else round like the wide one. */
  readonly narrow: Length;
  readonly straight?: boolean;
  /** Its wide edge, along the seam. */
  readonly wide: Length;
  /** Down its sides. */
  readonly side: Length;
}

/** What {@link flaredPanel} gives back: the narrow edge above, its left end at the datum. */
export interface FlaredMade {
  /** From the right end of the narrow edge down its side to `lowerRight`, along the wide edge to `lowerLeft`. */
  readonly upperRight: Point;
  readonly lowerRight: Point;
  readonly lowerLeft: Point;
  /** From left to right; one straight line where it was asked so. */
  readonly narrow: readonly Segment[];
  /** From right to left. */
  readonly wide: readonly Segment[];
  /** How far the middle of the wide edge hangs below the level of the narrow edge’s ends. */
  readonly deep: Length;
}

/** An arc round the middle of a circle, in cubics of an eighth of a turn at most. Angles from straight down, in radians. */
function arc(cx: number, cy: number, radius: number, from: number, to: number): readonly Segment[] {
  const n = Math.max(1, Math.ceil(Math.abs(to - from) / (Math.PI / 4)));
  const each = (to - from) / n;
  const handle = (4 / 3) * Math.tan(each / 4) * radius;
  return Array.from({ length: n }, (_, i): Segment => {
    const [a, b] = [from + each * i, from + each * (i + 1)];
    const at = (angle: number) => ({
      x: cx + radius * Math.sin(angle),
      y: cy + radius * Math.cos(angle),
    });
    const [p, q] = [at(a), at(b)];
    return {
      kind: 'curve',
      first: pointOf(p.x + handle * Math.cos(a), p.y - handle * Math.sin(a)),
      second: pointOf(q.x - handle * Math.cos(b), q.y + handle * Math.sin(b)),
      to: pointOf(q.x, q.y),
    };
  });
}

/** Half the angle between the sides, from which everything follows. */
function halfAngle({ narrow, straight, wide, side }: FlaredInput): number {
  if (!straight) return (wide - narrow) / (2 * side);
  // A chord is known instead of an arc, so the angle is found by halving.
  let [low, high] = [0, Math.PI];
  for (let i = 0; i < 60; i++) {
    const a = (low + high) / 2;
    if (2 * a * side + (a * narrow) / Math.sin(a) > wide) high = a;
    else low = a;
  }
  return (low + high) / 2;
}

/**
 * A part of a ring whose edges are as long as asked and meet its sides squarely. Follows from the measures.
 *
 * Refused: sizes of zero or less; a wide edge no longer than the narrow one; so much flare that the sides would cross.
 */
export function flaredPanel(input: FlaredInput): Result<FlaredMade, Refusal> {
  const { narrow, wide, side, straight } = input;
  for (const [field, size] of Object.entries({ narrow, wide, side }))
    if (size <= 0) return bad(refusal(field, 'The panel has no size here.', 'Give a measure above zero.'));
  const half = halfAngle(input);
  if (wide <= narrow || half < 1e-4) {
    const cure = 'Give a longer wide edge, or a shorter narrow one.';
    return bad(refusal('wide', 'The wide edge is no longer than the narrow one, so nothing flares.', cure));
  }
  if (half > 2.6) {
    const cure = 'Give a shorter wide edge, or a deeper panel.';
    return bad(refusal('wide', 'So much flare would go round nearly the whole circle.', cure));
  }
  const outer = wide / (2 * half);
  const inner = straight ? narrow / (2 * Math.sin(half)) : narrow / (2 * half);
  // The middle of the circle lies above the narrow edge; the left end of that edge is the datum.
  const [cx, cy] = [inner * Math.sin(half), -inner * Math.cos(half)];
  const at = (radius: number, angle: number): Point =>
    pointOf(cx + radius * Math.sin(angle), cy + radius * Math.cos(angle));
  const upperRight = at(inner, half);
  return good({
    upperRight,
    lowerRight: at(outer, half),
    lowerLeft: at(outer, -half),
    narrow: straight ? [{ kind: 'line', to: upperRight }] : arc(cx, cy, inner, -half, half),
    wide: arc(cx, cy, outer, half, -half),
    deep: nm(cy + outer),
  });
}
