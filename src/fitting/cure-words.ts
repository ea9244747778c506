import { type Length, size } from '../length/length.ts';
import { type Marking, writeLength } from '../length/writing.ts';
import type { Piece } from '../outfit/outfit.ts';
import type { Amount, PieceChange } from './cure-types.ts';
import type { Level } from './entry.ts';

/** How a level is spoken of: `the chest`, `the upper arm`. */
export const sayLevel = (level: Level): string =>
  level === 'hip' ? 'the hips' : level === 'top' ? 'the upper edge' : `the ${level.replace('-', ' ')}`;

/** Words with commas and a last `and`. */
export function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

/** What an amount does: `wider`, `shorter`. */
function does({ kind, by }: Amount): string {
  if (kind === 'width') return by < 0 ? 'narrower' : 'wider';
  return by < 0 ? 'shorter' : 'longer';
}

/**
 * What changes on a piece, for its card: `5/8 in wider at the chest and the waist, 1/2 in shorter below the knee`. Levels
 * that change alike are said together.
 */
export function sayAmounts(
  piece: Pick<Piece, 'cut'>,
  side: PieceChange['side'],
  amounts: readonly Amount[],
  marking: Marking,
): string {
  const groups = new Map<string, { readonly levels: Level[]; readonly kind: Amount['kind'] }>();
  for (const amount of amounts) {
    const what = `${write(amount.by, marking)} ${does(amount)}`;
    const group = groups.get(what) ?? { levels: [], kind: amount.kind };
    group.levels.push(amount.level);
    groups.set(what, group);
  }
  const said = [...groups].map(
    ([what, { levels, kind }]) =>
      `${what} ${kind === 'width' ? 'at' : 'below'} ${listed(levels.map(sayLevel))}`,
  );
  const half = piece.cut === 'fold' && amounts.some(({ kind }) => kind === 'width') ? ' on each half' : '';
  const only = side === 'both' ? '' : `, the ${side} one only`;
  return said.length === 0 ? '' : `${said.join(', ')}${half}${only}`;
}

/** The size of a length, to the mark of the rule. */
export const write = (length: Length, marking: Marking): string => writeLength(size(length), marking).text;
