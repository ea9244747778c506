import { type Length, mm, nm } from '../length/length.ts';
import type { Box } from '../shape/measure.ts';
import type { Point } from '../shape/outline.ts';
import { type Ink, inkLine, inkWords } from './ink.ts';
import { OVERLAP } from './papers.ts';
import type { Grid, Tile } from './tiles.ts';

/** Where two tiles meet: side by side joints are numbered, those above one another have letters. */
export interface Joint {
  /** The tile to the left, or above. */
  readonly first: Tile;
  /** The tile to the right, or below; it is laid on the first. */
  readonly second: Tile;
  readonly way: 'across' | 'down';
  readonly sign: string;
}

/** `A` to `Z`, then `AA`, `AB` and on. */
export function letterOf(count: number): string {
  let word = '';
  for (let left = count; left >= 0; left = Math.floor(left / 26) - 1) {
    word = String.fromCharCode(65 + (left % 26)) + word;
  }
  return word;
}

/** All places where two tiles of a grid meet. */
export function jointsOf(grid: Grid): readonly Joint[] {
  const at = new Map(grid.tiles.map((tile) => [tile.row * grid.columns + tile.column, tile]));
  const joints: Joint[] = [];
  let [numbers, letters] = [0, 0];
  for (const first of grid.tiles) {
    const cell = first.row * grid.columns + first.column;
    const right = first.column + 1 < grid.columns ? at.get(cell + 1) : undefined;
    if (right) {
      numbers += 1;
      joints.push({ first, second: right, way: 'across', sign: String(numbers) });
    }
    const below = at.get(cell + grid.columns);
    if (below) {
      joints.push({ first, second: below, way: 'down', sign: letterOf(letters) });
      letters += 1;
    }
  }
  return joints;
}

const HALF = mm(3.5);
const LETTER: Length = mm(4);

/** Half a diamond on the line of a joint, its tip to one side, with its sign: the other half stands on the neighbour. */
function halfDiamond(at: Point, way: Joint['way'], side: 1 | -1, sign: string): readonly Ink[] {
  const spot = (off: number, along: number): Point =>
    way === 'across'
      ? { x: nm(at.x + side * off), y: nm(at.y + along) }
      : { x: nm(at.x + along), y: nm(at.y + side * off) };
  const middle = spot(way === 'across' ? 6.5e6 : side === 1 ? 8e6 : 4.6e6, 0);
  return [
    inkLine('sign', [spot(0, -HALF), spot(HALF, 0), spot(0, HALF)]),
    inkWords(sign, way === 'across' ? { x: middle.x, y: nm(middle.y + mm(1.4)) } : middle, LETTER, {
      from: 'middle',
      bold: true,
    }),
  ];
}

/**
 * What a tile shows of its joints, in the sheet's measures: on the first tile a broken line where the edge of the
 * second is laid, on both the halves of two diamonds with the sign of the joint.
 */
export function jointInk(tile: Tile, joints: readonly Joint[]): readonly Ink[] {
  const ink: Ink[] = [];
  for (const { first, second, way, sign } of joints) {
    if (first !== tile && second !== tile) continue;
    const side = first === tile ? -1 : 1;
    const { left, top, right, bottom } = tile.area;
    const edge = way === 'across' ? second.area.left : second.area.top;
    const ends: readonly [Point, Point] =
      way === 'across'
        ? [
            { x: edge, y: top },
            { x: edge, y: bottom },
          ]
        : [
            { x: left, y: edge },
            { x: right, y: edge },
          ];
    if (side === -1) ink.push({ kind: 'line', pen: 'frame', points: ends, closed: false, phase: nm(0) });
    for (const share of shares(ends)) {
      const spot = {
        x: nm(ends[0].x + (ends[1].x - ends[0].x) * share),
        y: nm(ends[0].y + (ends[1].y - ends[0].y) * share),
      };
      ink.push(...halfDiamond(spot, way, side, sign));
    }
  }
  return ink;
}

/** A short joint, as of a strip, has one diamond, away from the middle where the strip has its numbers; a long one two. */
const shares = ([a, b]: readonly [Point, Point]): readonly number[] =>
  Math.hypot(b.x - a.x, b.y - a.y) < 4 * OVERLAP ? [0.22] : [0.27, 0.73];

/** The frame round a tile. */
export const frameInk = ({ left, top, right, bottom }: Box): Ink =>
  inkLine(
    'frame',
    [
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: bottom },
      { x: left, y: bottom },
    ],
    true,
  );
