import { type Length, mm, nm } from '../length/length.ts';
import type { Point } from '../shape/outline.ts';
import { type FootWords, footInk, keyInk } from './foot.ts';
import { type Ink, inkWords, type Page } from './ink.ts';
import { wrapped } from './letters.ts';
import { type Paper, roomOn } from './papers.ts';
import type { Stroke } from './pattern-sheet.ts';
import { mapInk } from './small-picture.ts';
import type { Grid } from './tiles.ts';

/** One sheet as the first page tells of it. */
export interface Listing {
  readonly name: string;
  readonly notes: readonly string[];
  readonly ink: readonly Ink[];
  /** Its tiles and the page of each, in the same order; none where it shares a page. */
  readonly map?: { readonly grid: Grid; readonly pages: readonly number[] };
  /** Where it is, in words: `pages 2 to 7`. */
  readonly where: string;
}

const at = (x: number, y: number): Point => ({ x: nm(x), y: nm(y) });
const TEXT: Length = mm(3);
const STEP = mm(4);
const GAP = mm(6);

/** Room for the map of one sheet: as large as the number of maps lets it be. */
const mapRoom = (maps: number) =>
  maps <= 2 ? { wide: mm(95), high: mm(130 / maps) } : { wide: mm(40), high: mm(46) };

const HOW: readonly string[] = [
  'Print this page first, at 100 %, not fitted to the page, and measure the two lines at its foot. Cut nothing before both are right.',
  'Cut each page along its frame at the left and at the top, where another page meets it. Lay it on that page up to the fine line, so that equal signs make a whole diamond, and tape it down. Work row by row, then join the rows.',
];

/**
 * The first page of a pattern: how to print and join it, a key of the lines, and every sheet with its notes and, where
 * it goes over several pages, a small map of them. It goes on over further pages where there are many sheets.
 * @param foot words of the foot for the page of a number, from 1
 */
export function firstPages(
  name: string,
  listings: readonly Listing[],
  used: ReadonlySet<Stroke>,
  paper: Paper,
  foot: (page: number) => FootWords,
): readonly Page[] {
  const room = roomOn(paper, false);
  const { left, top, wide, high } = room;
  const pages: Ink[][] = [];
  let ink: Ink[] = [];
  const begin = (): void => {
    ink = [...footInk(room, foot(pages.length + 1))];
    pages.push(ink);
  };
  begin();
  let y: number = top;
  for (const line of wrapped(name, wide, mm(6))) {
    ink.push(inkWords(line, at(left, y + mm(6)), mm(6), { bold: true }));
    y += mm(8);
  }
  y += mm(2);
  for (const line of HOW.flatMap((one) => [...wrapped(one, wide, TEXT), ''])) {
    if (line === '') y += mm(1.5);
    else {
      ink.push(inkWords(line, at(left, y + TEXT), TEXT));
      y += STEP;
    }
  }
  y += mm(2);
  const key = keyInk(used, left, y, wide);
  ink.push(...key.ink);
  y += key.high + mm(4);

  const maps = listings.filter(({ map }) => map).length;
  const size = mapRoom(Math.max(1, maps));
  // Few maps are large and stand one below the other; many stand in two columns.
  const column = maps <= 2 ? wide : nm((wide - GAP) / 2);
  let [begins, side, x] = [y, 0, left as number];
  for (const listing of listings) {
    const map = listing.map
      ? mapInk(listing.ink, listing.map.grid, listing.map.pages, 0, 0, size)
      : undefined;
    const indent = map ? size.wide + mm(3) : 0;
    const space = nm(column - indent);
    const title = wrapped(listing.name, space, mm(3.6));
    const lines = [listing.where, ...listing.notes].flatMap((one) => wrapped(one, space, TEXT));
    const tall = Math.max(map?.high ?? 0, title.length * mm(4.4) + lines.length * STEP) + mm(5);
    if (y + tall > top + high && y > begins) {
      if (side === 0 && column < wide) [side, y, x] = [1, begins, left + column + GAP];
      else {
        begin();
        [begins, side, y, x] = [top, 0, top, left];
      }
    }
    const shift = { x, y };
    if (map) {
      for (const one of map.ink) {
        const by = (p: Point): Point => at(p.x + shift.x, p.y + shift.y);
        ink.push(one.kind === 'words' ? { ...one, at: by(one.at) } : { ...one, points: one.points.map(by) });
      }
    }
    let line = y;
    for (const words of title) {
      ink.push(inkWords(words, at(x + indent, line + mm(3.6)), mm(3.6), { bold: true }));
      line += mm(4.4);
    }
    for (const words of lines) {
      ink.push(inkWords(words, at(x + indent, line + TEXT), TEXT));
      line += STEP;
    }
    y += tall;
  }
  return pages.map((one) => ({ ...room.page, windows: [], ink: one }));
}
