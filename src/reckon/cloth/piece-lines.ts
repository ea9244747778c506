import type { ClothPiece } from '../../cloth/cloth-needed.ts';
import { type Refusal, refusal } from '../../cloth/refusal.ts';
import { inches, type Length, nm } from '../../length/length.ts';
import { type ReadingUnit, readLength } from '../../length/reading.ts';
import { bad, good, type Result } from '../../length/result.ts';

/** A piece as it was written on a line. */
export interface PieceLine {
  /** Number of its line, from 1; empty lines count. */
  readonly line: number;
  readonly count: number;
  readonly across: Length;
  readonly along: Length;
  /** As it was written, or empty. */
  readonly name: string;
  readonly onFold: boolean;
  readonly onBias: boolean;
}

/** Most pieces on all lines together. */
export const MOST_PIECES = 60;
/** No piece of an outfit is larger. */
const LARGEST = inches(800);

const examples = { in: '2 x 12 x 24 front', mm: '2 x 300 x 600 front' } as const;

/** `fold`, `on the fold`, `bias` or `on the bias` at the end of a line, with or without a comma before it. */
const LAID = /(?:^|[\s,;]+)(?:on the )?(fold|bias)$/i;

interface Written {
  readonly length: Length;
  readonly rest: string;
}

/** The longest beginning of some words that is a length, and what is left of them. */
function lengthFirst(text: string, unit: ReadingUnit): Result<Written, string> {
  const parts = text.split(/\s+/);
  for (let n = parts.length; n > 0; n--) {
    const head = parts
      .slice(0, n)
      .join(' ')
      .replace(/[,;:]$/, '');
    const read = readLength(head, unit);
    if (read.ok) return good({ length: read.value, rest: parts.slice(n).join(' ') });
  }
  const alone = readLength(parts[0] ?? '', unit);
  return alone.ok ? good({ length: alone.value, rest: parts.slice(1).join(' ') }) : alone;
}

function readLine(text: string, line: number, unit: ReadingUnit): Result<PieceLine, Refusal> {
  const at = (wrong: string, cure = `Write it such as ${examples[unit]}.`) =>
    bad(refusal('pieces', `Line ${line}: ${wrong}`, cure));
  const found = /^(\S+?)(?:\s*[x×*]\s*|\s+by\s+)(.+?)(?:\s*[x×*]\s*|\s+by\s+)(.+)$/i.exec(text);
  const [, many, across, rest] = found ?? [];
  if (many === undefined || across === undefined || rest === undefined)
    return at('three numbers with an x between them are missing: how many, across, along.');
  const count = /^\d{1,4}$/.test(many) ? Number(many) : 0;
  if (count < 1) return at(`“${many}” is not a number of pieces.`);
  const wide = readLength(across, unit);
  if (!wide.ok) return at('the size across cannot be read.', wide.error);
  const long = lengthFirst(rest, unit);
  if (!long.ok) return at('the size along cannot be read.', long.error);
  for (const size of [wide.value, long.value.length]) {
    if (size <= 0) return at('a piece has no size.', 'Give sizes above zero.');
    if (size > LARGEST) return at('this is larger than any piece.', 'Give at most 20 m, which is 22 yd.');
  }
  let name = long.value.rest.replace(/^[\s,;:]+/, '').trim();
  let [onFold, onBias] = [false, false];
  for (let laid = LAID.exec(name); laid; laid = LAID.exec(name)) {
    if (laid[1]?.toLowerCase() === 'fold') onFold = true;
    else onBias = true;
    name = name.slice(0, laid.index).trim();
  }
  if (onFold && onBias)
    return at('a piece on the bias cannot lie on the fold too.', 'Leave one of the two out.');
  if (name.length > 40) return at('the name is too long.', 'Give a name of at most 40 letters.');
  return good({ line, count, across: wide.value, along: long.value.length, name, onFold, onBias });
}

/**
 * Reads pieces, one a line: how many, across and along the grain, then a name if there is one, and `fold` or `bias`
 * where it is to lie so: `2 x 12 x 24 front`, `1 × 30 cm × 60 cm back, on the fold`. Sizes are those of the whole
 * piece, allowances included.
 *
 * Refused at `pieces`, with the number of the line: what cannot be read, no size, too large a size or number.
 */
export function readPieces(text: string, unit: ReadingUnit): Result<readonly PieceLine[], Refusal> {
  const pieces: PieceLine[] = [];
  let many = 0;
  for (const [i, written] of text.split(/\r?\n/).entries()) {
    const trimmed = written.trim();
    if (trimmed === '') continue;
    const read = readLine(trimmed, i + 1, unit);
    if (!read.ok) return read;
    many += read.value.count;
    if (many > MOST_PIECES) {
      const say = `Line ${i + 1}: with it there are more than ${MOST_PIECES} pieces.`;
      return bad(refusal('pieces', say, `Give at most ${MOST_PIECES} in all.`));
    }
    pieces.push(read.value);
  }
  return pieces.length > 0
    ? good(pieces)
    : bad(refusal('pieces', 'There are no pieces.', `Write one a line, such as ${examples[unit]}.`));
}

/** How the pieces of a line are named in a message. */
export const nameOf = ({ line, name }: PieceLine): string =>
  name === '' ? `Line ${line}` : `“${name}” in line ${line}`;

/**
 * The pieces of a line as they are laid. A box is its own mirror image, so on doubled cloth two alike are cut at once
 * where there is room for them, and an odd one after them.
 * @param room how wide a piece may be on the doubled cloth, or nothing where the cloth lies single
 */
export function laidPieces(piece: PieceLine, room: Length | undefined, crosswise: boolean): ClothPiece[] {
  const { count, across, along, onFold, onBias } = piece;
  const base = {
    name: nameOf(piece),
    shape: { across, along },
    ...(onBias && { grain: 45 }),
    ...(crosswise && { turns: 'quarter' as const }),
  };
  if (onFold) return [{ ...base, cut: 'fold', count, shape: { across: nm(Math.ceil(across / 2)), along } }];
  const wide = onBias ? (across + along) / Math.SQRT2 : crosswise ? Math.min(across, along) : across;
  const pairs = room !== undefined && wide <= room ? Math.floor(count / 2) : 0;
  const single = count - 2 * pairs;
  return [
    ...(pairs > 0 ? [{ ...base, cut: 'pair' as const, count: pairs }] : []),
    ...(single > 0 ? [{ ...base, cut: 'one' as const, count: single }] : []),
  ];
}
