import { type Length, mm, nm } from '../length/length.ts';
import type { Box } from '../shape/measure.ts';
import { shareInBox } from './clip-box.ts';
import { boxOf, type Ink, reachOf } from './ink.ts';
import { OVERLAP } from './papers.ts';

/** A part of a sheet that goes on one page, in the sheet's own measures. */
export interface Tile {
  /** From 0, downwards and to the right. */
  readonly row: number;
  readonly column: number;
  readonly area: Box;
}

/** A sheet cut up. Tiles in which nothing is drawn are left out. */
export interface Grid {
  readonly rows: number;
  readonly columns: number;
  readonly tiles: readonly Tile[];
}

/** Paper kept clear round all that is drawn, so that no line lies on the edge of its page. */
export const CLEAR: Length = mm(1);

/** The box that a sheet takes, with {@link CLEAR} round it. */
export function sheetBox(ink: readonly Ink[]): Box {
  const { left, top, right, bottom } = boxOf(ink);
  return {
    left: nm(left - CLEAR),
    top: nm(top - CLEAR),
    right: nm(right + CLEAR),
    bottom: nm(bottom + CLEAR),
  };
}

interface Row {
  readonly count: number;
  readonly step: number;
  readonly from: number;
  readonly size: number;
}

/** Places along one direction: each as long as the room, the next begins one overlap before the end of the last. */
function rowOf(low: number, high: number, room: number, slack: number): Row {
  const step = room - OVERLAP;
  const count = Math.max(1, Math.ceil((high - low - OVERLAP) / step));
  const over = count === 1 ? 0 : (count * step + OVERLAP - (high - low)) * slack;
  return { count, step, from: low - over, size: room };
}

const cellOf = (row: Row, at: number): number =>
  Math.min(row.count - 1, Math.max(0, Math.floor((at - row.from) / row.step)));

/** The places in which something is drawn; where two overlap, what stands on both counts for the later one. */
function usedCells(ink: readonly Ink[], across: Row, down: Row): ReadonlySet<number> {
  const used = new Set<number>();
  for (const one of ink) {
    const points = reachOf(one);
    const closed = one.kind !== 'line' || one.closed;
    for (const [i, b] of points.entries()) {
      const a = i > 0 ? points[i - 1] : closed ? points.at(-1) : b;
      if (!a) continue;
      const [left, right] = [cellOf(across, Math.min(a.x, b.x)), cellOf(across, Math.max(a.x, b.x))];
      const [top, bottom] = [cellOf(down, Math.min(a.y, b.y)), cellOf(down, Math.max(a.y, b.y))];
      for (let c = left; c <= right; c++) {
        for (let r = top; r <= bottom; r++) {
          const number = r * across.count + c;
          if (used.has(number)) continue;
          if (left === right && top === bottom) {
            used.add(number);
            continue;
          }
          const [x, y] = [nm(across.from + c * across.step), nm(down.from + r * down.step)];
          const cell = { left: x, top: y, right: nm(x + across.size), bottom: nm(y + down.size) };
          const own = {
            ...cell,
            right: c === across.count - 1 ? cell.right : nm(x + across.step),
            bottom: r === down.count - 1 ? cell.bottom : nm(y + down.step),
          };
          if (shareInBox(a, b, own)) used.add(number);
        }
      }
    }
  }
  return used;
}

/** More places than this are not even tried: a sheet as large as a room. */
const MOST_CELLS = 2000;

/**
 * Cuts a sheet into tiles no larger than a room, neighbours sharing an overlap. Where there is room to spare it is
 * given to that side, or to both, which leaves the fewest tiles.
 * @returns nothing where the sheet is larger than any paper pattern can be
 */
export function gridOf(ink: readonly Ink[], wide: Length, high: Length): Grid | undefined {
  const box = sheetBox(ink);
  let best: Grid | undefined;
  for (const slackX of [0.5, 0, 1]) {
    for (const slackY of [0.5, 0, 1]) {
      const across = rowOf(box.left, box.right, wide, slackX);
      const down = rowOf(box.top, box.bottom, high, slackY);
      if (across.count * down.count > MOST_CELLS) return undefined;
      const used = usedCells(ink, across, down);
      if (best && used.size >= best.tiles.length) continue;
      const tiles = [...used]
        .sort((a, b) => a - b)
        .map((cell): Tile => {
          const [row, column] = [Math.floor(cell / across.count), cell % across.count];
          const [x, y] = [nm(across.from + column * across.step), nm(down.from + row * down.step)];
          return { row, column, area: { left: x, top: y, right: nm(x + wide), bottom: nm(y + high) } };
        });
      best = { rows: down.count, columns: across.count, tiles };
    }
  }
  return best;
}
