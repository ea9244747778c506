import { inches, type Length, mm, nm } from '../length/length.ts';
import type { Point } from '../shape/outline.ts';
import { type Ink, inkLine, inkWords } from './ink.ts';
import { wordsWide, wrapped } from './letters.ts';
import { FOOT_HIGH, type Room } from './papers.ts';
import type { Stroke } from './pattern-sheet.ts';
import { KEY } from './pens.ts';
import type { Grid, Tile } from './tiles.ts';

/** How a sheet has to be printed, in words. */
export const AT_FULL_SIZE = 'Print at 100 %, not fitted to the page.';

/** Length of the two check lines. */
export const CHECK_MM: Length = mm(100);
export const CHECK_IN: Length = inches(4);

const at = (x: number, y: number): Point => ({ x: nm(x), y: nm(y) });
const SMALL: Length = mm(2.8);

/** A ruler of a stated length with a tick at each end and smaller ones between, and what it must measure. */
function checkLine(left: number, y: number, long: Length, parts: number, words: string): readonly Ink[] {
  const ink: Ink[] = [inkLine('body', [at(left, y), at(left + long, y)])];
  for (let i = 0; i <= parts; i++) {
    const x = left + (long * i) / parts;
    const tall = i === 0 || i === parts ? mm(4) : mm(1.5);
    ink.push(inkLine('body', [at(x, y - tall), at(x, y)]));
  }
  ink.push(inkWords(words, at(left + long / 2, y - mm(2.2)), SMALL, { from: 'middle' }));
  return ink;
}

/** Both check lines, the second below the first; they take 16 mm in height and 4 in across. */
export const checkLines = (left: number, top: number): readonly Ink[] => [
  ...checkLine(left, top + mm(5.5), CHECK_MM, 10, 'This line must measure 100 mm'),
  ...checkLine(left, top + mm(15.5), CHECK_IN, 4, 'This line must measure 4 in'),
];

/** What the foot of a page says beside its check lines. */
export interface FootWords {
  readonly name: string;
  /** Short lines below the name: the tile, the number of the page. */
  readonly lines: readonly string[];
  /** The tile of the grid that this page is, for the small map. */
  readonly map?: { readonly grid: Grid; readonly tile: Tile };
}

const MAP: Length = mm(20);

/** All tiles of a grid, small, this one filled. */
function smallMap(grid: Grid, tile: Tile, left: number, top: number, ratio: number): readonly Ink[] {
  const high = Math.min(MAP, (MAP / (grid.columns * ratio)) * grid.rows);
  const cell = { wide: (high / grid.rows) * ratio, high: high / grid.rows };
  const shift = left + (MAP - cell.wide * grid.columns) / 2;
  return grid.tiles.map((one): Ink => {
    const x = shift + one.column * cell.wide;
    const y = top + one.row * cell.high;
    const corners = [at(x, y), at(x + cell.wide, y), at(x + cell.wide, y + cell.high), at(x, y + cell.high)];
    return one === tile ? { kind: 'fill', points: corners } : inkLine('thin', corners, true);
  });
}

/** The foot of a page: check lines, name, where the page belongs. */
export function footInk(room: Room, { name, lines, map }: FootWords): readonly Ink[] {
  const { left, foot, wide } = room;
  const ink: Ink[] = [...checkLines(left, foot + mm(1))];
  const x = left + CHECK_IN + mm(6);
  const space = nm(wide - CHECK_IN - mm(6) - (map ? MAP + mm(3) : 0));
  let y = foot + mm(4.2);
  const written = wrapped(name, space, mm(3.8));
  for (const line of written.slice(0, 2)) {
    ink.push(inkWords(line, at(x, y), mm(3.8), { bold: true }));
    y += mm(4.4);
  }
  for (const line of [...lines, AT_FULL_SIZE].flatMap((one) => wrapped(one, space, SMALL))) {
    ink.push(inkWords(line, at(x, y), SMALL));
    y += mm(3.6);
  }
  if (map) {
    const { left: l, right: r, top: t, bottom: b } = map.tile.area;
    ink.push(
      ...smallMap(map.grid, map.tile, left + wide - MAP, foot + (FOOT_HIGH - MAP) / 2, (r - l) / (b - t)),
    );
  }
  return ink;
}

/** Height of one row of the key. */
export const KEY_HIGH: Length = mm(6);

/** A short key of the kinds of line that are used, in rows no wider than asked; how high it is and its ink. */
export function keyInk(
  used: ReadonlySet<Stroke>,
  left: number,
  top: number,
  wide: Length,
): { readonly high: Length; readonly ink: readonly Ink[] } {
  const ink: Ink[] = [];
  let [x, row] = [0, 0];
  const shown = KEY.filter(([stroke]) => used.has(stroke));
  for (const [stroke, says] of shown) {
    const takes = mm(16) + wordsWide(says, SMALL) + mm(4);
    if (x > 0 && x + takes > wide) [x, row] = [0, row + 1];
    const y = top + row * KEY_HIGH + mm(3.5);
    const from = at(left + x, y);
    const to = at(left + x + mm(14), y);
    ink.push(inkLine(stroke, [from, to]));
    if (stroke === 'grain') {
      ink.push({
        kind: 'fill',
        points: [from, at(from.x + mm(3), y - mm(0.9)), at(from.x + mm(3), y + mm(0.9))],
      });
      ink.push({ kind: 'fill', points: [to, at(to.x - mm(3), y - mm(0.9)), at(to.x - mm(3), y + mm(0.9))] });
    }
    ink.push(inkWords(says, at(left + x + mm(16), y + mm(1)), SMALL));
    x += takes;
  }
  return { high: nm(shown.length === 0 ? 0 : (row + 1) * KEY_HIGH), ink };
}
