import { type Refusal, refusal } from '../cloth/refusal.ts';
import { mm, nm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Box } from '../shape/measure.ts';
import { inkInBox } from './clip-box.ts';
import { firstPages, type Listing } from './first-page.ts';
import { type FootWords, footInk, keyInk } from './foot.ts';
import { type Ink, inkMoved, inkOf, type Page } from './ink.ts';
import { frameInk, jointInk, jointsOf } from './joints.ts';
import { MARGIN, OVERLAP, type Paper, type Room, roomOn } from './papers.ts';
import type { PatternSheet, Stroke } from './pattern-sheet.ts';
import { type Block, fits, type SharedPage, sharePages } from './shared.ts';
import { type Grid, gridOf, sheetBox } from './tiles.ts';

/** Most pages that are laid at one time: more than anyone tapes together. */
export const MOST_PAGES = 100;

/** A sheet no wider than this and longer than a page is a strip: it is laid in rows. */
const STRIP = mm(110);

/** Where a sheet has gone. */
export interface Laid {
  readonly name: string;
  /** Numbers of its pages, from 1, each once. */
  readonly pages: readonly number[];
  /** Its tiles and the page of each; none where it shares a page with others. */
  readonly grid?: { readonly lying: boolean; readonly grid: Grid; readonly pages: readonly number[] };
}

/** Sheets laid on pages. */
export interface Pages {
  readonly name: string;
  readonly paper: Paper;
  readonly pages: readonly Page[];
  /** How many pages at the beginning say how to put the others together. */
  readonly first: number;
  /** One for every sheet, in order. */
  readonly laid: readonly Laid[];
}

interface Sheet {
  readonly number: number;
  readonly sheet: PatternSheet;
  readonly ink: readonly Ink[];
  readonly box: Box;
}

interface Tiled {
  readonly of: Sheet;
  readonly lying: boolean;
  readonly grid: Grid;
}

interface Plan {
  readonly tiled: readonly Tiled[];
  readonly shared: readonly (SharedPage & { readonly lying: boolean })[];
  /** How many parts there are to put together or cut out. */
  readonly parts: number;
}

/** The rows of a strip: one grid of a single row or column, each tile as narrow as the strip. */
function stripBlocks({ number, sheet, ink, box }: Sheet, room: Room): readonly Block[] | undefined {
  const [wide, high] = [box.right - box.left, box.bottom - box.top];
  const grid =
    high <= STRIP && wide > room.wide
      ? gridOf(ink, room.wide, nm(Math.max(high, OVERLAP + mm(1))))
      : wide <= STRIP && high > room.high
        ? gridOf(ink, nm(Math.max(wide, OVERLAP + mm(1))), nm(room.high - mm(30)))
        : undefined;
  if (!grid || (grid.rows > 1 && grid.columns > 1)) return undefined;
  const joints = jointsOf(grid);
  const parts = grid.tiles.length;
  return grid.tiles.map((tile, i) => {
    const area = {
      left: nm(Math.max(tile.area.left, box.left)),
      right: nm(Math.min(tile.area.right, box.right)),
      top: nm(Math.max(tile.area.top, box.top)),
      bottom: nm(Math.min(tile.area.bottom, box.bottom)),
    };
    const cropped = { ...tile, area };
    const ends = joints.map((joint) => ({
      ...joint,
      first: joint.first === tile ? cropped : joint.first,
      second: joint.second === tile ? cropped : joint.second,
    }));
    return {
      sheet: number,
      name: `${sheet.name}, part ${i + 1} of ${parts}`,
      notes:
        i > 0
          ? []
          : [
              ...sheet.notes,
              'Cut the parts out, lay each on the one before up to the fine line, equal signs together.',
            ],
      area,
      ink,
      over: [frameInk(area), ...jointInk(cropped, ends)],
    };
  });
}

const blockOf = ({ number, sheet, ink, box }: Sheet): Block => ({
  sheet: number,
  name: sheet.name,
  notes: sheet.notes,
  area: box,
  ink,
  over: [],
});

/** Tiles upright or lying, whichever needs fewer pages. */
function tiledOf(of: Sheet, paper: Paper): Tiled | undefined {
  let best: Tiled | undefined;
  for (const lying of [false, true]) {
    const room = roomOn(paper, lying);
    const grid = gridOf(of.ink, room.wide, room.high);
    if (grid && (!best || grid.tiles.length < best.grid.tiles.length)) best = { of, lying, grid };
  }
  return best;
}

/** Lays what can share a page upright or lying, as asked where both do; the rest in tiles. */
function planned(
  sheets: readonly Sheet[],
  paper: Paper,
  lying: boolean,
  used: ReadonlySet<Stroke>,
  tile: (sheet: Sheet) => Tiled | undefined,
): Plan | 'too large' {
  const roomFor = (way: boolean): Room =>
    roomOn(paper, way, nm(keyInk(used, 0, 0, roomOn(paper, way).wide).high));
  const ways = [lying, !lying].map((way) => ({ way, room: roomFor(way), blocks: [] as Block[] }));
  const [liked] = ways;
  const tiled: Tiled[] = [];
  for (const sheet of sheets) {
    const whole = blockOf(sheet);
    const way = ways.find(({ room }) => fits(whole, room));
    const rows = way || !liked ? [whole] : stripBlocks(sheet, liked.room);
    const place = way ?? liked;
    if (place && rows?.every((block) => fits(block, place.room))) place.blocks.push(...rows);
    else {
      const one = tile(sheet);
      if (!one) return 'too large';
      tiled.push(one);
    }
  }
  return {
    tiled,
    shared: ways.flatMap(({ way, room, blocks }) =>
      sharePages(blocks, room).map((page) => ({ ...page, lying: way })),
    ),
    parts: ways.reduce((sum, { blocks }) => sum + blocks.length, 0),
  };
}

const pagesOf = (plan: Plan): number =>
  plan.shared.length + plan.tiled.reduce((sum, { grid }) => sum + grid.tiles.length, 0);

const strokesOf = (sheets: readonly PatternSheet[]): ReadonlySet<Stroke> =>
  new Set(sheets.flatMap(({ drawn }) => drawn.flatMap((one) => (one.kind === 'path' ? [one.stroke] : []))));

/** `page 4`, `pages 2 to 5`, `pages 2, 4`. */
function pagesInWords(pages: readonly number[]): string {
  const [first = 0] = pages;
  const last = pages.at(-1) ?? first;
  if (pages.length === 1) return `page ${first}`;
  return last - first === pages.length - 1 ? `pages ${first} to ${last}` : `pages ${pages.join(', ')}`;
}

/**
 * Lays sheets on pages at true size. A sheet that fits shares a page with others; a strip longer than a page is laid
 * in rows; anything larger is cut into tiles that overlap, upright or lying, whichever takes fewer pages. Where there
 * are tiles, a first page tells how to put them together. Every page has a 100 mm and a 4 in check line.
 *
 * Refused: no sheets, or nothing on one; more than {@link MOST_PAGES} pages.
 */
export function layPages(
  name: string,
  sheets: readonly PatternSheet[],
  paper: Paper,
): Result<Pages, Refusal> {
  const cure = 'Choose fewer sheets or smaller ones, or save one drawing for a printer of wide rolls.';
  const all = sheets
    .map((sheet, number): Sheet => {
      const ink = inkOf(sheet.drawn);
      return { number, sheet, ink, box: sheetBox(ink) };
    })
    .filter(({ ink }) => ink.length > 0);
  if (all.length < Math.max(1, sheets.length)) {
    const which = sheets.find(({ drawn }) => inkOf(drawn).length === 0);
    return bad(
      refusal(
        'sheets',
        which ? `There is nothing drawn on “${which.name}”.` : 'There is nothing to print.',
        'Choose something that has a drawing.',
      ),
    );
  }
  const used = strokesOf(sheets);
  // Cutting into tiles is most of the work, and the same in both plans.
  const cut = new Map<Sheet, Tiled | undefined>();
  const tile = (sheet: Sheet): Tiled | undefined => {
    if (!cut.has(sheet)) cut.set(sheet, tiledOf(sheet, paper));
    return cut.get(sheet);
  };
  let best: Plan | undefined;
  for (const lying of [false, true]) {
    const plan = planned(all, paper, lying, used, tile);
    if (plan === 'too large') {
      return bad(refusal('sheets', `One of the sheets would take more than ${MOST_PAGES} pages.`, cure));
    }
    const fewer = best ? pagesOf(plan) - pagesOf(best) || plan.parts - best.parts : -1;
    if (fewer < 0) best = plan;
  }
  if (!best) return bad(refusal('sheets', 'There is nothing to print.', cure));
  if (pagesOf(best) > MOST_PAGES) {
    return bad(
      refusal(
        'sheets',
        `This would take ${pagesOf(best)} pages; at most ${MOST_PAGES} are laid at a time.`,
        cure,
      ),
    );
  }
  return good(finished(name, all, best, paper, used));
}

function finished(
  name: string,
  all: readonly Sheet[],
  plan: Plan,
  paper: Paper,
  used: ReadonlySet<Stroke>,
): Pages {
  const body = pagesOf(plan);
  const laidAfter = (first: number): { laid: Laid[]; total: number } => {
    let page = first;
    const grids = new Map(
      plan.tiled.map(({ of, lying, grid }) => {
        const pages = grid.tiles.map(() => ++page);
        return [of.number, { lying, grid, pages }] as const;
      }),
    );
    const begins = page;
    const laid = all.map(({ number, sheet }): Laid => {
      const grid = grids.get(number);
      if (grid) return { name: sheet.name, pages: grid.pages, grid };
      const on = plan.shared.flatMap(({ sheets: held }, i) =>
        held.includes(number) ? [begins + i + 1] : [],
      );
      return { name: sheet.name, pages: on };
    });
    return { laid, total: first + body };
  };
  const cover = (first: number): readonly Page[] => {
    const { laid, total } = laidAfter(first);
    const listings = all.map(({ sheet, ink }, i): Listing => {
      const where = laid[i];
      return {
        name: sheet.name,
        notes: sheet.notes,
        ink,
        where: pagesInWords(where?.pages ?? []),
        ...(where?.grid ? { map: where.grid } : {}),
      };
    });
    return firstPages(name, listings, used, paper, (page) => ({ name, lines: [`page ${page} of ${total}`] }));
  };
  // How many first pages there are does not hang on their number, unless the words grow by a line; two rounds settle it.
  let first = plan.tiled.length > 0 ? cover(1).length : 0;
  let front = first > 0 ? cover(first) : [];
  if (front.length !== first) {
    first = front.length;
    front = cover(first);
  }
  const { laid, total } = laidAfter(first);
  const pages: Page[] = [...front];
  for (const { of, lying, grid } of plan.tiled)
    pages.push(...tiledPages(of, lying, grid, paper, pages.length, total));
  for (const shared of plan.shared) {
    const room = roomOn(paper, shared.lying);
    const { high } = keyInk(used, 0, 0, room.wide);
    const key = keyInk(used, room.left, room.foot - mm(1) - high, room.wide);
    const words: FootWords = { name, lines: [`page ${pages.length + 1} of ${total}`] };
    pages.push({
      ...room.page,
      windows: shared.windows,
      ink: [...shared.ink, ...key.ink, ...footInk(room, words)],
    });
  }
  return { name, paper, pages, first, laid };
}

function tiledPages(
  { sheet, ink }: Sheet,
  lying: boolean,
  grid: Grid,
  paper: Paper,
  before: number,
  total: number,
): readonly Page[] {
  const room = roomOn(paper, lying);
  const joints = jointsOf(grid);
  return grid.tiles.map((tile, i) => {
    const [dx, dy] = [MARGIN - tile.area.left, MARGIN - tile.area.top];
    const area = {
      left: MARGIN,
      top: MARGIN,
      right: nm(MARGIN + room.wide),
      bottom: nm(MARGIN + room.high),
    };
    const over = [frameInk(tile.area), ...jointInk(tile, joints)];
    const lines = [
      `row ${tile.row + 1} of ${grid.rows}, column ${tile.column + 1} of ${grid.columns}`,
      `page ${before + i + 1} of ${total}`,
    ];
    return {
      ...room.page,
      windows: [{ area, ink: inkInBox(ink, tile.area).map((one) => inkMoved(one, dx, dy)) }],
      ink: [
        ...over.map((one) => inkMoved(one, dx, dy)),
        ...footInk(room, { name: sheet.name, lines, map: { grid, tile } }),
      ],
    };
  });
}
