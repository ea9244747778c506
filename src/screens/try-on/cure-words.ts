import { inMetres, inYards } from '../../cloth/cloth-bought.ts';
import type { Amount, Cure, PieceChange } from '../../fitting/cure-types.ts';
import type { Level } from '../../fitting/entry.ts';
import { inches, type Length, mm, nm, toMm } from '../../length/length.ts';
import { type Marking, type WrittenLength, writeLength } from '../../length/writing.ts';
import type { Opened } from '../../order/undoing/undoing-types.ts';
import type { Garment, Outfit, Piece } from '../../outfit/outfit.ts';
import type { ChangeAt } from '../../ui/before-after-lines.ts';
import { reachAt, spotsRound } from '../../ui/before-after-lines.ts';
import { writeDuration } from '../../ui/duration.ts';

/** Minutes as a maker counts them: `3 h 20 min`; less than half a minute is none. */
export const writeMinutes = (minutes: number): string =>
  Math.round(minutes) === 0 ? '0 min' : writeDuration(Math.round(minutes) * 60);

/** `a`, `a and b`, `a, b and c`. */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** A level in words: `upper arm`. */
export const levelWords = (level: Level): string => level.replaceAll('-', ' ');

const sizeOf = (length: Length, marking: Marking): WrittenLength =>
  writeLength(nm(Math.abs(length)), marking);

/** Which way an amount goes: `wider`. */
export const wayOf = ({ kind, by }: Pick<Amount, 'kind' | 'by'>): string =>
  kind === 'width' ? (by < 0 ? 'narrower' : 'wider') : by < 0 ? 'shorter' : 'longer';

/** Amounts that are the same on the maker's rule, as one figure with where it holds: `wider at the chest and waist`. */
export interface Figure {
  readonly written: WrittenLength;
  readonly words: string;
}

/** The amounts of a change as figures to be read from afar; those that are no mark on the rule are left out. */
export function figuresOf(amounts: readonly Amount[], marking: Marking): readonly Figure[] {
  const found = new Map<string, { amount: Amount; levels: Level[] }>();
  for (const amount of amounts) {
    const { text } = sizeOf(amount.by, marking);
    if (Math.abs(amount.by) < 1 || text.startsWith('0 ')) continue;
    const key = `${text} ${wayOf(amount)}`;
    const same = found.get(key);
    if (same) same.levels.push(amount.level);
    else found.set(key, { amount, levels: [amount.level] });
  }
  return [...found.values()].map(({ amount, levels }) => ({
    written: sizeOf(amount.by, marking),
    words: `${wayOf(amount)} ${amount.kind === 'width' ? 'at' : 'below'} the ${listed(levels.map(levelWords))}`,
  }));
}

/** True where a piece is not cut yet, or only as a change to its pattern: no card has to take anything of it back. */
const isUncut = ({ undoing: { rework } }: Cure, piece: string): boolean =>
  !rework.undo.some(
    ({ action, pieces }) => (action === 'cut-anew' || action === 'lines-anew') && pieces.includes(piece),
  );

/** What is done to a piece: `cut again`, `let out at the side`, or that its pattern changes before it is cut. */
export function howWords(
  { how, edges, amounts, piece }: Pick<PieceChange, 'how' | 'edges' | 'amounts' | 'piece'>,
  cure: Cure,
): string {
  if (isUncut(cure, piece)) return 'changed before it is cut';
  if (how === 'anew') return 'cut again';
  const at = edges.length === 0 ? '' : ` at the ${listed(edges.map((edge) => edge.replaceAll('-', ' ')))}`;
  if (amounts.every(({ by }) => by >= 0)) return `let out${at}`;
  return `${amounts.every(({ by }) => by <= 0) ? 'taken in' : 'moved'}${at}`;
}

/** Which of a pair, or that the figure is for one half; empty for a single piece. */
export function whichWords(piece: Pick<Piece, 'cut'> | undefined, side: PieceChange['side']): string {
  if (side !== 'both') return `the ${side} one only`;
  return piece?.cut === 'pair' ? 'left and right, each' : piece?.cut === 'fold' ? 'each half' : '';
}

/** Names of pieces of a garment. */
export function pieceName(garment: Garment | undefined, id: string): string {
  return garment?.pieces.find((piece) => piece.id === id)?.name ?? id;
}

/** How much of a seam is opened, in words. */
export function extentWords({ extent, length }: Opened, garment: Garment, marking: Marking): string {
  const long = writeLength(
    length,
    marking.unit === 'in' ? { unit: 'in', per: 8 } : { unit: 'mm', step: 1 },
  ).text;
  switch (extent.kind) {
    case 'whole':
      return `all of it, ${long}`;
    case 'along': {
      const edges = extent.edges.map(
        ({ piece, edge }) => `${pieceName(garment, piece)} (${edge.replaceAll('-', ' ')})`,
      );
      return `only along ${listed([...new Set(edges)])}, ${long}`;
    }
    case 'crossing': {
      const joins = extent.joins.map((id) => garment.joins.find((join) => join.id === id)?.name ?? id);
      return `only a little, where ${listed(joins)} ${joins.length === 1 ? 'meets' : 'meet'} it, ${long}`;
    }
  }
}

/** A length of cloth or thread as it is bought. */
export const toBuy = (length: Length, marking: Marking): string =>
  marking.unit === 'in' ? inYards(length) : inMetres(length);

/** Thread, near enough: whole yards or metres, rounded up. */
export const aboutThread = (length: Length, { unit }: Marking): string =>
  unit === 'in' ? `${Math.ceil(length / inches(36))} yd` : `${Math.ceil(length / mm(1000))} m`;

/** True where nothing has been sewn or cut that this would take back. */
export const costsNothing = ({ undoing: { rework } }: Cure): boolean =>
  rework.undo.length === 0 && rework.again.length === 0;

/** Names of the pieces of a garment that stay as they are. */
export function untouchedPieces(garment: Garment, { changes, undoing }: Cure): readonly string[] {
  const touched = new Set([...changes, ...undoing.alterations].map(({ piece }) => piece));
  return garment.pieces.filter(({ id }) => !touched.has(id)).map(({ name }) => name);
}

/** What to write beside the drawing of a changed piece. Levels that the piece is not known to have are left out. */
export function changesAt(
  amounts: readonly Amount[],
  levels: ReadonlyMap<Level, Length> | undefined,
  marking: Marking,
): readonly ChangeAt[] {
  const heights = [...(levels ?? [])].toSorted(([, a], [, b]) => a - b);
  return amounts.flatMap((amount): ChangeAt[] => {
    const i = heights.findIndex(([level]) => level === amount.level);
    const [y, below] = [heights[i]?.[1], heights[i + 1]?.[1]];
    if (y === undefined) return [];
    const words = { size: sizeOf(amount.by, marking).text, way: wayOf(amount) };
    const where = levelWords(amount.level);
    if (amount.kind === 'width') return [{ ...words, where, y }];
    return below === undefined ? [] : [{ ...words, where: `below the ${where}`, y, to: below }];
  });
}

/** What changes on a piece, in sentences: amounts, and how wide it is before and after. */
export function changeSentences(
  change: PieceChange,
  name: string,
  levels: {
    readonly before: ReadonlyMap<Level, Length> | undefined;
    readonly after: ReadonlyMap<Level, Length> | undefined;
  },
  marking: Marking,
): readonly string[] {
  const [old, anew] = [spotsRound(change.before), spotsRound(change.after)];
  const lines = change.amounts.map((amount) => {
    const [before, after] = [levels.before?.get(amount.level), levels.after?.get(amount.level)];
    const [was, is] = [before, after].map((y, i) =>
      y === undefined ? undefined : reachAt(i === 0 ? old : anew, toMm(y)),
    );
    const wide = (reach: readonly [number, number]): string =>
      writeLength(mm(reach[1] - reach[0]), marking).text;
    const place = `${amount.kind === 'width' ? 'at' : 'below'} the ${levelWords(amount.level)}`;
    const becomes = amount.kind === 'width' && was && is ? `: ${wide(was)} wide becomes ${wide(is)}` : '';
    return `${sizeOf(amount.by, marking).text} ${wayOf(amount)} ${place}${becomes}`;
  });
  return lines.length === 0 ? [`${name}: ${change.say}.`] : [`${name}:`, ...lines.map((line) => `${line}.`)];
}

/** The garment as it will be, with the outlines of a cure, also those that only one of a pair gets. */
export function garmentAfter(
  outfit: Outfit,
  garment: string,
  { changes }: Pick<Cure, 'changes'>,
): Garment | undefined {
  const here = outfit.garments.find(({ id }) => id === garment);
  const anew = new Map(
    changes.flatMap((one) => (one.garment === garment ? [[one.piece, one.after] as const] : [])),
  );
  return (
    here && {
      ...here,
      pieces: here.pieces.map((piece) => ({ ...piece, outline: anew.get(piece.id) ?? piece.outline })),
    }
  );
}
