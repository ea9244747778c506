import { type Length, mm, nm } from '../length/length.ts';
import type { Box } from '../shape/measure.ts';
import { inkInBox } from './clip-box.ts';
import { type Ink, inkMoved, inkWords, type Window } from './ink.ts';
import { wordsWide, wrapped } from './letters.ts';
import { MARGIN, type Room } from './papers.ts';

/** A small sheet, or one row of a strip, that shares its page with others. */
export interface Block {
  /** Number of its sheet. */
  readonly sheet: number;
  readonly name: string;
  readonly notes: readonly string[];
  /** The part of the sheet that it shows, in the sheet's measures. */
  readonly area: Box;
  readonly ink: readonly Ink[];
  /** Frame and signs of a part; stands over the sheet, in the sheet's measures. */
  readonly over: readonly Ink[];
}

const NAME: Length = mm(3.8);
const NOTE: Length = mm(2.8);
const GAP: Length = mm(5);
/** A caption may be wider than a small drawing, up to this. */
const CAPTION: Length = mm(70);

interface Sized {
  readonly block: Block;
  readonly wide: number;
  readonly high: number;
  readonly caption: number;
  readonly name: readonly string[];
  readonly notes: readonly string[];
}

function sized(block: Block, room: Room): Sized {
  const { left, top, right, bottom } = block.area;
  const space = nm(Math.min(room.wide, Math.max(right - left, CAPTION)));
  const name = wrapped(block.name, space, NAME);
  const notes = block.notes.flatMap((note) => wrapped(note, space, NOTE));
  const caption = name.length * mm(4.6) + notes.length * mm(3.6) + mm(1.5);
  const words = Math.max(
    0,
    ...name.map((line) => wordsWide(line, NAME)),
    ...notes.map((line) => wordsWide(line, NOTE)),
  );
  return {
    block,
    name,
    notes,
    caption,
    wide: Math.max(right - left, words),
    high: caption + bottom - top,
  };
}

/** Does a block, with what is written over it, fit on a page at all? */
export function fits(block: Block, room: Room): boolean {
  const { wide, high } = sized(block, room);
  return wide <= room.wide && high <= room.high;
}

/** What one shared page holds. */
export interface SharedPage {
  readonly sheets: readonly number[];
  readonly windows: readonly Window[];
  readonly ink: readonly Ink[];
}

interface Shelf {
  readonly top: number;
  readonly high: number;
  taken: number;
}

/**
 * Lays blocks on as few pages as shelves allow, the highest first: each goes on the first shelf with room for it.
 * Every block must fit on a page, see {@link fits}.
 */
export function sharePages(blocks: readonly Block[], room: Room): readonly SharedPage[] {
  const pages: { shelves: Shelf[]; used: number; sheets: number[]; windows: Window[]; ink: Ink[] }[] = [];
  const all = blocks.map((block) => sized(block, room));
  const highest = new Map<number, number>();
  for (const { block, high } of all) highest.set(block.sheet, Math.max(high, highest.get(block.sheet) ?? 0));
  const highestOf = ({ block }: Sized): number => highest.get(block.sheet) ?? 0;
  // The parts of a strip stay in their order.
  const order = all.toSorted((a, b) => highestOf(b) - highestOf(a) || a.block.sheet - b.block.sheet);
  for (const one of order) {
    const onShelf = (shelf: Shelf): boolean =>
      shelf.high >= one.high && shelf.taken + GAP + one.wide <= room.wide;
    let page = pages.find(
      ({ shelves, used }) => shelves.some(onShelf) || used + (used > 0 ? GAP : 0) + one.high <= room.high,
    );
    if (!page) {
      page = { shelves: [], used: 0, sheets: [], windows: [], ink: [] };
      pages.push(page);
    }
    let shelf = page.shelves.find(onShelf);
    if (!shelf) {
      shelf = { top: page.used + (page.used > 0 ? GAP : 0), high: one.high, taken: -GAP };
      page.shelves.push(shelf);
      page.used = shelf.top + one.high;
    }
    const x = MARGIN + shelf.taken + GAP;
    const y = MARGIN + shelf.top;
    shelf.taken += GAP + one.wide;
    place(one, x, y, page);
  }
  return pages;
}

function place(
  { block, name, notes, caption }: Sized,
  x: number,
  y: number,
  page: { sheets: number[]; windows: Window[]; ink: Ink[] },
): void {
  let line = y;
  for (const words of name) {
    page.ink.push(inkWords(words, { x: nm(x), y: nm(line + NAME) }, NAME, { bold: true }));
    line += mm(4.6);
  }
  for (const words of notes) {
    page.ink.push(inkWords(words, { x: nm(x), y: nm(line + NOTE) }, NOTE));
    line += mm(3.6);
  }
  const { left, top, right, bottom } = block.area;
  const [dx, dy] = [x - left, y + caption - top];
  page.sheets.push(block.sheet);
  page.windows.push({
    area: {
      left: nm(left + dx),
      top: nm(top + dy),
      right: nm(right + dx),
      bottom: nm(bottom + dy),
    },
    ink: [...inkInBox(block.ink, block.area), ...block.over].map((ink) => inkMoved(ink, dx, dy)),
  });
}
