import { add, type Length, nm, shorter, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type BiasLay, biasLengths, biasLinesFrom, biasStarts } from './bias-start.ts';
import { type Refusal, refusal } from './refusal.ts';

/** Strips cut side by side from a rectangle at 45 degrees to its threads. */
export interface BiasStripsInput {
  /** The two sides of the rectangle, along the threads: across from selvage to selvage, and along the selvage. */
  readonly across: Length;
  readonly along: Length;
  /** Cut width of a strip. */
  readonly strip: Length;
  /** Seam allowance of a join, measured at right angles to the seam. */
  readonly join: Length;
  /** The shortest piece to use, along its shorter edge. Shorter ones, at two corners, are left over. */
  readonly shortest: Length;
  /** Length of joined strip that is wanted. All that the cloth gives if left out. */
  readonly needed?: Length;
}

/** A place on the rectangle, from one of its corners. */
export interface OnCloth {
  readonly across: Length;
  readonly along: Length;
}

/** One strip between two neighbouring lines. */
export interface BiasPiece {
  /** The two lines to cut; each from one edge of the cloth to another. */
  readonly lines: readonly [near: readonly [OnCloth, OnCloth], far: readonly [OnCloth, OnCloth]];
  /** Length along its middle when both ends are trimmed to a thread. */
  readonly middle: Length;
  /** Length of its shorter edge. */
  readonly short: Length;
}

/** What {@link biasStrips} gives back. */
export interface BiasStripsMade {
  /** The strips to use, the longest first. */
  readonly pieces: readonly BiasPiece[];
  /** Length of the joined strip along its middle, its two ends slanted. */
  readonly total: Length;
  readonly joins: number;
  /** From the corner to the first line, along both edges. */
  readonly first: Length;
  /** From line to line, along both edges. */
  readonly step: Length;
  readonly assumed: readonly string[];
}

/** No more strips than this are laid out in one go. */
const MOST = 10_000;

/** Two seams of a join lie along a thread, so it takes this many allowances along the strip. */
const JOIN_TAKES = 2 * Math.SQRT2;

const layOf = ({ across, along, strip, shortest }: BiasStripsInput): BiasLay => ({
  across,
  along,
  strip,
  step: strip * Math.SQRT2,
  shortest,
});

/** The longest strip the cloth gives, joined; zero where no piece is long enough. */
function mostFrom(input: BiasStripsInput): number {
  const lay = layOf(input);
  let most = 0;
  for (const start of biasStarts(lay)) {
    let total = 0;
    for (const near of biasLinesFrom(start, lay)) {
      total += biasLengths(near, lay).middle - (total > 0 ? JOIN_TAKES * input.join : 0);
    }
    most = Math.max(most, total);
  }
  return most;
}

/**
 * Lays bias strips over a rectangle, side by side, beginning where they come to the longest strip; where a length is
 * needed, where the fewest pieces give it. A strip that lies over a corner of the cloth loses a little, for its ends are
 * trimmed to a thread. Ends meet along a thread, so a join takes its two allowances times the root of two. Follows from the
 * measures; the shortest piece as in NIMI Dress Making, trade practical, p. 220 (c. 2024, seen as an excerpt).
 *
 * Refused: no size; a shortest piece that its own joins use up; no piece long enough; more strips than 10 000;
 * cloth that gives less than what is needed.
 */
export function biasStrips(input: BiasStripsInput): Result<BiasStripsMade, Refusal> {
  const { join, needed } = input;
  const wrong = checked(input);
  if (wrong) return bad(wrong);
  const lay = layOf(input);
  let best: { readonly used: readonly number[]; readonly total: number; readonly start: number } | undefined;
  let some = false;
  for (const start of biasStarts(lay)) {
    const all = biasLinesFrom(start, lay)
      .map((near) => ({ near, middle: biasLengths(near, lay).middle }))
      .sort((a, b) => b.middle - a.middle);
    some ||= all.length > 0;
    const used: number[] = [];
    let total = 0;
    for (const { near, middle } of all) {
      if (needed !== undefined && total >= needed) break;
      total += middle - (used.length > 0 ? JOIN_TAKES * join : 0);
      used.push(near);
    }
    if (used.length === 0 || (needed !== undefined && total < needed)) continue;
    // A gain of less than a hair is not worth another beginning.
    const better =
      !best || (needed === undefined ? total > best.total + 1000 : used.length < best.used.length);
    if (better) best = { used, total, start };
  }
  const cure = 'Give a larger piece of cloth, a narrower strip, or allow shorter pieces.';
  if (!some) return bad(refusal('shortest', 'No strip from this cloth is long enough.', cure));
  if (!best) return bad(refusal('needed', 'The cloth does not give so long a strip.', cure));
  return good({
    pieces: best.used.map((near) => pieceAt(near, lay)),
    total: nm(best.total),
    joins: best.used.length - 1,
    first: nm(best.start),
    step: nm(lay.step),
    assumed: ['The length is along the middle of the strip; its two ends are slanted.'],
  });
}

/** The shortest length of cloth, of the width given, whose strips come to `needed`. */
export function biasCloth(
  input: Omit<BiasStripsInput, 'along' | 'needed'> & { readonly needed: Length },
): Result<BiasStripsMade & { readonly along: Length }, Refusal> {
  const { across, strip, join, shortest, needed } = input;
  const wrong = checked({ ...input, along: nm(1) });
  if (wrong) return bad(wrong);
  // Every piece brings at least the shortest piece less one join, so this much is always enough.
  const pieces = Math.ceil(needed / (shortest - JOIN_TAKES * join)) + 4;
  let enough = add(across, times(strip, 2 * pieces), times(shortest, 4));
  if ((across + enough) / (strip * Math.SQRT2) > MOST) {
    return bad(refusal('needed', 'This is more than 10 000 strips.', 'Give a length for one piece of work.'));
  }
  const most = biasStrips({ ...input, along: enough });
  if (!most.ok) return most;
  let best = most.value;
  let short = 0;
  while (enough - short > 1) {
    const middle = nm((enough + short) / 2);
    if (mostFrom({ ...input, along: middle }) >= needed) enough = middle;
    else short = middle;
  }
  const made = biasStrips({ ...input, along: enough });
  if (made.ok) best = made.value;
  return good({ ...best, along: enough });
}

function checked(input: BiasStripsInput): Refusal | undefined {
  const { across, along, strip, join, shortest, needed } = input;
  if (across <= 0) return refusal('across', 'The cloth has no width.', 'Give a width above zero.');
  if (along <= 0) return refusal('along', 'The cloth has no length.', 'Give a length above zero.');
  if (strip <= 0) return refusal('strip', 'The strip has no width.', 'Give a width above zero.');
  if (join < 0) return refusal('join', 'The allowance of the joins is below zero.', 'Give zero or more.');
  if (shorter(shortest, nm(1)) || shortest <= JOIN_TAKES * join) {
    return refusal(
      'shortest',
      'The joins would use up the shortest piece.',
      'Give a shortest piece of more than three allowances.',
    );
  }
  if (needed !== undefined && needed <= 0)
    return refusal('needed', 'No strip is wanted.', 'Give a length above zero.');
  if ((across + along) / (strip * Math.SQRT2) > MOST)
    return refusal('strip', 'This is more than 10 000 strips.', 'Give a wider strip or less cloth.');
  return undefined;
}

/** The strip whose first line crosses across + along = `near`, its ends trimmed to a thread. */
function pieceAt(near: number, lay: BiasLay): BiasPiece {
  const { across, along, step } = lay;
  const { middle, short } = biasLengths(near, lay);
  const line = (s: number): readonly [OnCloth, OnCloth] => [
    { across: nm(Math.min(s, across)), along: nm(Math.max(0, s - across)) },
    { across: nm(Math.max(0, s - along)), along: nm(Math.min(s, along)) },
  ];
  return { lines: [line(near), line(near + step)], middle: nm(middle), short: nm(short) };
}
