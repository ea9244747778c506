import { type Length, mm, nm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { clipLine, directionOf, type Line, pointAlong, type Stretch } from '../shape/clip.ts';
import { type Polygon, pointOf } from '../shape/flatten.ts';
import { insetPolygon } from '../shape/inset.ts';
import type { Point } from '../shape/outline.ts';
import type { Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory, practice } from './source.ts';

/** Parallel lines of a lattice. */
export interface LatticeFamily {
  /** Direction of the lines, in degrees from rightwards, turning downwards. */
  readonly angle: number;
  /** From line to line, at right angles to them. */
  readonly spacing: Length;
  /** A place that one of the lines runs through. */
  readonly through: Point;
}

/** One line of a lattice as far as it lies on the piece; a line over a hollow piece counts once for each part. */
export interface LatticeLine {
  readonly family: 0 | 1;
  readonly from: Point;
  readonly to: Point;
  readonly length: Length;
  /** Where the other family crosses it, from `from`, in order. */
  readonly crossings: readonly Length[];
  /** The stretches from end to crossing, from crossing to crossing and from crossing to end; their sum is the length. */
  readonly segments: readonly Length[];
}

/** What {@link lattice} gives back. */
export interface LatticeMade {
  /** All lines of the first family in order across, then all of the second. */
  readonly lines: readonly LatticeLine[];
  /** How many places there are where two lines cross; see {@link crossingPlaces} for where. */
  readonly crossings: number;
  /** All lines together. */
  readonly total: Length;
  /** The edge that the lines stop at. */
  readonly within: Polygon;
  readonly assumed: readonly string[];
}

/**
 * Two directions of lines or tucks closer together than this hardly cross, and are refused.
 * @unit degrees
 */
export const LEAST_CROSSING: Sourced<number> = { value: 5, source: memory };
/** Beads stop this far from the seam line, so that the foot of the machine can pass. */
export const FOOT_ROOM: Sourced<Length> = { value: mm(6), source: practice };

const MOST_LINES = 20_000;
const NEAR = 1; // nanometre

/** Two families that make diamonds of a width and a height, one corner at a given place. */
export function diamonds(
  width: Length,
  height: Length,
  through: Point,
): readonly [LatticeFamily, LatticeFamily] {
  const angle = (Math.atan2(height, width) * 180) / Math.PI;
  const spacing = nm((width * height) / Math.hypot(width, height));
  return [
    { angle, spacing, through },
    { angle: -angle, spacing, through },
  ];
}

interface Drawn {
  readonly family: 0 | 1;
  readonly line: Line;
  readonly stretch: Stretch;
  readonly hits: number[];
}

const normal = (angle: number) => directionOf(angle + 90);

/** Every line of a family that meets the shape, by its index from the given place. */
function draw(shape: Polygon, which: 0 | 1, family: LatticeFamily): Map<number, Drawn[]> {
  const n = normal(family.angle);
  const off = shape.map((p) => (p.x - family.through.x) * n.x + (p.y - family.through.y) * n.y);
  const low = Math.ceil((Math.min(...off) - NEAR) / family.spacing);
  const high = Math.floor((Math.max(...off) + NEAR) / family.spacing);
  const drawn = new Map<number, Drawn[]>();
  for (let index = low; index <= high; index++) {
    const d = index * family.spacing;
    const through = pointOf(family.through.x + n.x * d, family.through.y + n.y * d);
    const line = { through, angle: family.angle };
    const parts = clipLine(shape, line).map((stretch) => ({
      family: which,
      line,
      stretch,
      hits: [],
    }));
    if (parts.length > 0) drawn.set(index, parts);
  }
  return drawn;
}

const countLines = (shape: Polygon, { angle, spacing }: LatticeFamily): number => {
  const n = normal(angle);
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const p of shape) {
    const d = p.x * n.x + p.y * n.y;
    low = Math.min(low, d);
    high = Math.max(high, d);
  }
  return (high - low) / spacing;
};

function finish({ family, line, stretch, hits }: Drawn): LatticeLine {
  const length = nm(stretch.to - stretch.from);
  const segments: Length[] = [];
  let last = 0;
  // Lines of the other family come in order of their index, which may be against the run of this line.
  if ((hits[0] ?? 0) > (hits.at(-1) ?? 0)) hits.reverse();
  const crossings = hits.map((hit) => nm(Math.min(length, Math.max(0, hit - stretch.from))));
  for (const at of crossings) {
    if (at > last) segments.push(nm(at - last));
    last = at;
  }
  if (length > last) segments.push(nm(length - last));
  return {
    family,
    from: pointAlong(line, stretch.from),
    to: pointAlong(line, stretch.to),
    length,
    crossings,
    segments,
  };
}

/**
 * A lattice of two families of lines over a piece, each line ended where the piece does. Work and memory grow with
 * the number of lines times corners and with the number of crossings.
 *
 * @param outline finished corners of the piece (straighten curves first)
 * @param clear how far to stay inside the finished edge, so that nothing hard lies under the presser foot
 *
 * Refused: a shape without area or too narrow for `clear`; spacing of zero or less; families within 5° of each
 * other; more than 20 000 lines in a family; a lattice so wide that no line meets the piece.
 */
export function lattice(input: {
  readonly outline: Polygon;
  readonly clear: Length;
  readonly families: readonly [LatticeFamily, LatticeFamily];
}): Result<LatticeMade, Refusal> {
  const [one, two] = input.families;
  for (const { spacing } of input.families) {
    if (spacing <= 0)
      return bad(
        refusal('spacing', 'The lines have no distance between them.', 'Give a spacing above zero.'),
      );
  }
  const [a, b] = [directionOf(one.angle), directionOf(two.angle)];
  const sine = a.x * b.y - a.y * b.x;
  if (Math.abs(sine) < Math.sin((LEAST_CROSSING.value * Math.PI) / 180)) {
    return bad(
      refusal(
        'families',
        'The two families of lines run the same way.',
        'Give angles at least 5 degrees apart.',
      ),
    );
  }
  const moved = insetPolygon(input.outline, input.clear);
  if (!moved.ok)
    return bad(refusal('clear', moved.error, 'Give a distance inwards that leaves room, or a larger piece.'));
  const shape = moved.value;
  if (input.families.some((family) => countLines(shape, family) > MOST_LINES)) {
    return bad(
      refusal(
        'spacing',
        'The lines are too close to sew: there are more than 20 000.',
        'Give a wider spacing.',
      ),
    );
  }
  const drawnOne = draw(shape, 0, one);
  const drawnTwo = draw(shape, 1, two);
  const all: Drawn[] = [...drawnOne.values(), ...drawnTwo.values()].flat();
  if (all.length === 0)
    return bad(
      refusal(
        'spacing',
        'No line meets the piece.',
        'Give a closer spacing, or a place on the piece for a line to run through.',
      ),
    );

  // Along a line, the others cross at even steps: the place of each crossing follows from its two indices alone.
  let crossings = 0;
  const n = normal(two.angle);
  const offset = (p: Point, from: Point): number => (p.x - from.x) * n.x + (p.y - from.y) * n.y;
  const slope = a.x * n.x + a.y * n.y; // how fast the second family's offset grows along a line of the first
  for (const parts of drawnOne.values()) {
    for (const drawn of parts) {
      const { line, stretch } = drawn;
      const base = offset(line.through, two.through);
      const ends = [stretch.from - NEAR, stretch.to + NEAR].map((t) => (base + t * slope) / two.spacing);
      const [low, high] = [Math.ceil(Math.min(...ends)), Math.floor(Math.max(...ends))];
      for (let k = 0; k <= high - low; k++) {
        const j = slope > 0 ? low + k : high - k;
        const t = (j * two.spacing - base) / slope;
        const [x, y] = [line.through.x + t * a.x, line.through.y + t * a.y];
        const others = drawnTwo.get(j);
        if (!others) continue;
        for (const other of others) {
          const { through } = other.line;
          const s = (x - through.x) * b.x + (y - through.y) * b.y;
          if (s < other.stretch.from - 2 * NEAR || s > other.stretch.to + 2 * NEAR) continue;
          drawn.hits.push(t);
          other.hits.push(s);
          crossings++;
          break;
        }
      }
    }
  }
  const lines = all.map((drawn) => finish(drawn));
  return good({
    lines,
    crossings,
    total: nm(lines.reduce((sum, l) => sum + l.length, 0)),
    within: shape,
    assumed: [],
  });
}

/** Where the lines of a lattice cross, in order along the lines of the first family. */
export const crossingPlaces = ({ lines }: LatticeMade): Point[] =>
  lines.flatMap(({ family, from, to, length, crossings }) =>
    family === 1
      ? []
      : crossings.map((at) =>
          pointOf(
            from.x + (to.x - from.x) * (at / Math.max(1, length)),
            from.y + (to.y - from.y) * (at / Math.max(1, length)),
          ),
        ),
  );
