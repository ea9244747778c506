import { type Length, nm, zero } from '../../length/length.ts';
import { pointOf } from '../../shape/flatten.ts';
import type { Outline, Point, Segment } from '../../shape/outline.ts';
import { along, backwards, longOf, type Path, pointsOn } from './neck-line.ts';

/** Handles of a round end reach so far to the corner that it leaves out. */
const ROUNDING = 0.55;
/** Where the curve of a band begins to turn, and how steeply it ends, as parts of its length and of its rise. */
const [BEGINS, TURNS, STEEP] = [0.5, 0.82, 0.25];

/**
 * A line of a wanted length that leaves the centre level and ends so much higher (lower, below zero). Its reach is
 * sought until it is as long as it should be, to a thousandth of a millimetre.
 */
export function risingLine(long: Length, rise: Length): Path {
  const line = (reach: number): Path => ({
    start: pointOf(0, 0),
    segments: [
      {
        kind: 'curve',
        first: pointOf(reach * BEGINS, 0),
        second: pointOf(reach * TURNS, -rise * STEEP),
        to: pointOf(reach, -rise),
      },
    ],
  });
  let [least, most] = [0, Number(long)];
  while (most - least > 500) {
    const middle = (least + most) / 2;
    if (longOf(line(middle)) < long) least = middle;
    else most = middle;
  }
  return line((least + most) / 2);
}

/** A point beside a line, to the left as it runs. */
function beside(line: Path, far: number, by: number): Point {
  const { at, way } = along(pointsOn(line), far);
  return pointOf(at.x + way.y * by, at.y - way.x * by);
}

/** A line beside another one, out to a place on it. */
function parallel(line: Path, to: number, by: number): Path {
  const places = Array.from({ length: 5 }, (_, i) => (to * i) / 4);
  const points = places.map((far) => beside(line, far, by));
  const ways = places.map((far) => along(pointsOn(line), far).way);
  const segments = points.slice(1).flatMap((end, i): Segment[] => {
    const [start, a, b] = [points[i], ways[i], ways[i + 1]];
    if (!start || !a || !b) return [];
    const pull = Math.hypot(end.x - start.x, end.y - start.y) / 3;
    return [
      {
        kind: 'curve',
        first: pointOf(start.x + a.x * pull, start.y + a.y * pull),
        second: pointOf(end.x - b.x * pull, end.y - b.y * pull),
        to: end,
      },
    ];
  });
  return { start: points[0] ?? line.start, segments };
}

/**
 * Half of a standing band on the fold: `upper`, `front-end`, `neck`, `fold`. Its neck edge is as long as the neck and
 * the lap together; over the lap its end is rounded from the centre front on.
 */
export function standOutline(told: {
  readonly half: Length;
  readonly lap: Length;
  readonly height: Length;
  readonly rise: Length;
}): Outline {
  const { half, lap, height, rise } = told;
  const neck = risingLine(nm(half + lap), rise);
  const upper = parallel(neck, half, height);
  const back = backwards(neck);
  const corner = upper.segments.at(-1)?.to ?? upper.start;
  const { way } = along(pointsOn(neck), half + lap);
  const end: Segment =
    lap > 0
      ? {
          kind: 'curve',
          first: pointOf(corner.x + way.x * lap * ROUNDING, corner.y + way.y * lap * ROUNDING),
          second: pointOf(back.start.x + way.y * height * ROUNDING, back.start.y - way.x * height * ROUNDING),
          to: back.start,
        }
      : { kind: 'line', to: back.start };
  return {
    start: upper.start,
    edges: [
      { name: 'upper', segments: upper.segments },
      { name: 'front-end', segments: [end] },
      { name: 'neck', segments: back.segments },
      { name: 'fold', segments: [{ kind: 'line', to: upper.start }] },
    ],
  };
}

/**
 * Half of a fall on the fold: `outer`, `front-end`, `neck`, `fold`. Its neck edge drops towards the front by as much
 * as the stand rises; its point leans out.
 */
export function fallOutline(told: {
  readonly half: Length;
  readonly width: Length;
  readonly point: Length;
  readonly drop: Length;
}): Outline {
  const { half, width, point, drop } = told;
  const neck = risingLine(half, nm(-drop));
  const back = backwards(neck);
  const { way } = along(pointsOn(neck), half);
  // Square to the neck edge, leaning outwards.
  const [lean, up] = [LEAN, Math.sqrt(1 - LEAN * LEAN)];
  const tip = pointOf(
    back.start.x + (way.y * up + way.x * lean) * point,
    back.start.y + (-way.x * up + way.y * lean) * point,
  );
  const start = pointOf(zero, -width);
  return {
    start,
    edges: [
      {
        name: 'outer',
        segments: [
          {
            kind: 'curve',
            first: pointOf(tip.x * 0.4, -width),
            second: pointOf(tip.x * 0.75, -width + (tip.y + width) * 0.4),
            to: tip,
          },
        ],
      },
      { name: 'front-end', segments: [{ kind: 'line', to: back.start }] },
      { name: 'neck', segments: back.segments },
      { name: 'fold', segments: [{ kind: 'line', to: start }] },
    ],
  };
}

/** The point of a collar leans out by this part of its length. */
const LEAN = 0.3;
