import { inBothRules } from '../length/both-rules.ts';
import { type Length, nm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Polygon, pointOf } from '../shape/flatten.ts';
import { signedArea } from '../shape/measure.ts';
import { type Lying, lay, type Turn } from './laid-piece.ts';
import { type Refusal, refusal } from './refusal.ts';

/** A piece of the pattern as it is cut, allowances included. */
export interface ClothPiece {
  readonly name: string;
  /**
   * Its cut edge, or the box it is cut as. Of a piece cut on the fold, the half: an outline with the fold along x = 0
   * and the rest to the right of it, or a box with half the breadth.
   */
  readonly shape: Polygon | { readonly across: Length; readonly along: Length };
  /** `one`: a single piece. `pair`: a left and a right, mirrored. `fold`: one piece, symmetric about its fold. */
  readonly cut: 'one' | 'pair' | 'fold';
  /** How many pieces, pairs or folded pieces; 1 if not given. */
  readonly count?: number;
  /** Direction of the grain line, in degrees from the upright of its drawing, clockwise; 0 if not given, 45 for a piece on the bias. */
  readonly grain?: number;
  /**
   * How it may be turned on the cloth: not at all, upside down, or also crosswise. If not given: upside down, but not at
   * all on a cloth that lies one way.
   */
  readonly turns?: 'none' | 'half' | 'quarter';
}

/** A piece that has been checked, once for each time that it is laid. */
export interface Checked {
  /** Its number among the pieces given. */
  readonly piece: number;
  readonly ways: readonly Lying[];
  readonly onFold: boolean;
  /** Area of what is cut here, of all layers, in mm². */
  readonly area: number;
}

/** Most pieces that are laid at once; more is a factory's work. */
const MOST = 300;

const corners = (shape: ClothPiece['shape']): Polygon =>
  'across' in shape
    ? [pointOf(0, 0), pointOf(shape.across, 0), pointOf(shape.across, shape.along), pointOf(0, shape.along)]
    : shape;

/** A half piece opened out along its fold; nothing where it has no one straight edge on x = 0. */
export function openedOut(half: Polygon): Polygon | undefined {
  const n = half.length;
  if (half.some(({ x }) => x < 0)) return undefined;
  const starts = [...half.keys()].filter((i) => half[i]?.x === 0 && half[(i + 1) % n]?.x !== 0);
  const [start] = starts;
  if (starts.length !== 1 || start === undefined) return undefined;
  const walk = half.map((point, i) => half[(start + i) % n] ?? point);
  const end = walk.findIndex(({ x }, i) => i > 0 && x === 0);
  if (end < 0) return undefined;
  const right = walk.slice(0, end + 1);
  const left = right.slice(1, -1).map(({ x, y }) => pointOf(-x, y));
  return [...right, ...left.reverse()];
}

/** How many layers of cloth a piece is cut through, and which of the cloth it is laid on: doubled or opened out. */
export interface Spread {
  readonly doubled: boolean;
  readonly oneWay: boolean;
  readonly gap: Length;
}

/**
 * The ways in which one piece may lie, once for each time that it is laid.
 *
 * Refused: a number that is not whole, or none; no area; on the fold without a straight edge there or, on doubled cloth,
 * with another grain; turning on cloth that lies one way; a piece wider than the room for it.
 * @param room width of the cloth that pieces may lie on; for pieces on the fold it begins at the fold
 */
export function checkPiece(
  piece: ClothPiece,
  which: number,
  spread: Spread,
  room: { readonly free: Length; readonly onFold: Length },
): Result<readonly Checked[], Refusal> {
  const { name, cut, count = 1, grain = 0 } = piece;
  if (!Number.isInteger(count) || count < 1 || count > MOST) {
    return bad(
      refusal(
        'count',
        `The number of ${name} is not one that can be cut.`,
        `Give a whole number from 1 to ${MOST}.`,
      ),
    );
  }
  if (!Number.isFinite(grain))
    return bad(refusal('grain', `The grain of ${name} is not an angle.`, 'Give degrees from the upright.'));
  const half = corners(piece.shape);
  const halfArea = Math.abs(signedArea(half));
  if (half.length < 3 || halfArea === 0 || ('across' in piece.shape && piece.shape.across < 0)) {
    return bad(
      refusal(
        'shape',
        `${name} has no area.`,
        'Give at least three corners, or both sides of a box above zero.',
      ),
    );
  }
  if (spread.oneWay && piece.turns !== undefined && piece.turns !== 'none') {
    return bad(
      refusal(
        'turns',
        `${name} may be turned, but the cloth lies one way.`,
        'Let no piece be turned on this cloth.',
      ),
    );
  }
  const opened = cut === 'fold' ? openedOut(half) : half;
  if (!opened) {
    return bad(
      refusal(
        'shape',
        `${name} is cut on the fold but has no straight edge for it.`,
        'Give half the piece with one edge on x = 0 and all the rest to the right of it.',
      ),
    );
  }
  const onFold = spread.doubled && cut === 'fold';
  if (onFold && grain !== 0) {
    return bad(
      refusal(
        'grain',
        `${name} is cut on the fold, but its grain does not run along the fold.`,
        'Cut it on cloth that is not doubled.',
      ),
    );
  }
  const turns = piece.turns ?? (spread.oneWay ? 'none' : 'half');
  const polygon = onFold ? half : opened;
  const put = (turn: Turn, mirrored: boolean): Lying => lay(polygon, grain, turn, mirrored, spread.gap);
  const turned: readonly Turn[] = turns === 'none' ? [0] : turns === 'half' ? [0, 180] : [0, 180, 90, 270];
  // Half a turn of a folded piece leaves the fold where it is and the half upside down: mirrored and turned.
  const foldWays = (): Lying[] => [put(0, false), ...(turns === 'none' ? [] : [put(180, true)])];
  const waysOf = (mirrored: boolean): Lying[] =>
    fits(distinct(turned.map((turn) => put(turn, mirrored))), room.free);
  const sets: Lying[][] = onFold
    ? [fits(distinct(foldWays()), room.onFold)]
    : cut !== 'pair'
      ? [waysOf(false)]
      : spread.doubled
        ? [
            fits(
              distinct([...turned.map((t) => put(t, false)), ...turned.map((t) => put(t, true))]),
              room.free,
            ),
          ]
        : [waysOf(false), waysOf(true)];
  if (sets.some((ways) => ways.length === 0)) {
    const narrowest = Math.min(
      ...(onFold ? foldWays() : turned.map((turn) => put(turn, false))).map((way) => way.width),
    );
    return bad(
      refusal(
        'width',
        `${name} is ${inBothRules(nm(narrowest), 'up')} wide where it is narrowest, wider than the ${inBothRules(onFold ? room.onFold : room.free, 'down')} of cloth that it may lie on.`,
        spread.doubled
          ? 'Use a wider cloth, or lay it out single.'
          : 'Use a wider cloth, turn the piece, or cut it in two with a seam.',
      ),
    );
  }
  const layers = (cut === 'fold' ? 2 : 1) * (spread.doubled && cut === 'pair' ? 2 : 1);
  return good(
    Array.from({ length: count }, () => sets)
      .flat()
      .map((ways) => ({ piece: which, ways, onFold, area: halfArea * layers })),
  );
}

const fits = (ways: readonly Lying[], room: Length): Lying[] => ways.filter(({ width }) => width <= room);

/** Leaves out ways that come to the same, such as a box upside down. */
function distinct(ways: readonly Lying[]): Lying[] {
  const seen = new Set<string>();
  return ways.filter(({ slices: { from, top, bottom } }) => {
    const key = JSON.stringify([from, top, bottom]);
    return !seen.has(key) && seen.add(key);
  });
}
