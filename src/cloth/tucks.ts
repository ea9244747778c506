import { inBothRules } from '../length/both-rules.ts';
import { add, inches, type Length, subtract, times, zero } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Advice, advise, type Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { practice } from './source.ts';

/** Which way the folds lie once pressed: away from the datum or back towards it. */
export type Pressed = 'away' | 'toward';

/** One tuck as it is when done: where its stitching line lies and how deep it is. */
export interface FinishedTuck {
  /** From the datum to the stitching line, finished, in the direction in which the tucks follow each other. */
  readonly at: Length;
  /** From the stitching line to the fold; the tuck uses twice as much cloth. */
  readonly depth: Length;
}

/** A tuck as it is marked on the flat cloth. All distances are from the datum, so that errors of marking do not add up. */
export interface TuckMarks {
  /** The stitching line nearer the datum, on the flat cloth. */
  readonly firstStitching: Length;
  /** The fold line, on the flat cloth. */
  readonly fold: Length;
  /** The stitching line further from the datum, on the flat cloth; sewn onto the first. */
  readonly secondStitching: Length;
  /** The stitching line when the tuck is done. */
  readonly finished: Length;
  /** Where the edge of the fold lies when the tuck is done and pressed. */
  readonly foldFinished: Length;
  readonly depth: Length;
  /** Visible cloth between this fold and the next tuck's stitching (pressed away) or the last one's (toward). Zero: they just meet. */
  readonly showing: Length | undefined;
  /** `blind` where the fold just meets the neighbour's stitching line, `spaced` where cloth shows between, `alone` at the end. */
  readonly meets: 'blind' | 'spaced' | 'alone';
}

/** What {@link tucks} gives back. */
export interface TucksMade {
  readonly tucks: readonly TuckMarks[];
  /** Cloth the tucks use: twice the sum of their depths. */
  readonly takeUp: Length;
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
}

/** A tuck less deep than this is a pin tuck and hard to keep even. */
export const EASY_TUCK: Sourced<Length> = { value: inches(1, 8), source: practice };

/** Advice where a tuck is shallower than {@link EASY_TUCK}; else none. */
export const shallowAdvice = (depths: readonly Length[]): readonly Advice[] =>
  depths.some((depth) => depth < EASY_TUCK.value)
    ? [
        advise(
          `A tuck less deep than ${inBothRules(EASY_TUCK.value)} is hard to keep even.`,
          EASY_TUCK.source,
        ),
      ]
    : [];

const say = (which: number): string => `tuck ${which + 1}`;

/** The marks of tucks from their finished places; see {@link tucks} for what is refused. */
export function marksOf(
  finished: readonly FinishedTuck[],
  pressed: Pressed,
): Result<readonly TuckMarks[], Refusal> {
  if (finished.length === 0) return bad(refusal('tucks', 'There are no tucks.', 'Give one tuck or more.'));
  const marks: TuckMarks[] = [];
  let used = zero;
  for (const [i, { at, depth }] of finished.entries()) {
    if (depth <= 0)
      return bad(refusal('depth', `The depth of ${say(i)} is zero or less.`, 'Give a depth above zero.'));
    const [last, next] = [finished[i - 1], finished[i + 1]];
    if (next && next.at <= at) {
      return bad(
        refusal(
          'spacing',
          `The stitching line of ${say(i + 1)} is not past that of ${say(i)}.`,
          'Give a spacing above zero.',
        ),
      );
    }
    const neighbour = pressed === 'away' ? next : last;
    const room =
      neighbour && subtract(pressed === 'away' ? neighbour.at : at, pressed === 'away' ? at : neighbour.at);
    if (room !== undefined && depth > room) {
      return bad(
        refusal(
          'depth',
          `The fold of ${say(i)} would lie over the next stitching line: it is deeper than the spacing.`,
          'Give a depth no more than the spacing, or a wider spacing.',
        ),
      );
    }
    const firstStitching = add(at, used);
    marks.push({
      firstStitching,
      fold: add(firstStitching, depth),
      secondStitching: add(firstStitching, depth, depth),
      finished: at,
      foldFinished: pressed === 'away' ? add(at, depth) : subtract(at, depth),
      depth,
      showing: room === undefined ? undefined : subtract(room, depth),
      meets: room === undefined ? 'alone' : room === depth ? 'blind' : 'spaced',
    });
    used = add(used, depth, depth);
  }
  return good(marks);
}

/** A group of tucks, all as deep as each other or each of its own depth. */
export interface TucksInput {
  /** How many, when all have the same depth; left out when `depth` is a list. */
  readonly count?: number;
  /** From stitching line to fold; a list for graded tucks, in order from the datum. */
  readonly depth: Length | readonly Length[];
  /** Finished, from stitching line to stitching line. */
  readonly spacing: Length;
  /** Finished, from the datum to the first stitching line; zero puts it on the datum. */
  readonly first: Length;
  readonly pressed: Pressed;
}

/**
 * Where to mark a group of parallel tucks, and how much cloth they use.
 *
 * A tuck of depth d is a fold stitched d from its edge, so it uses 2d. Flat positions grow by 2d for every tuck before.
 * Source: Baldt, Clothing for Women (1916), p. 400, seen as an excerpt; also follows from the measures.
 *
 * Refused: no tucks or not a whole number of them; a depth of zero or less; a depth more than the spacing, whose fold
 * would be caught in the neighbour's stitching (equal is a blind tuck and allowed); a first line before the datum.
 */
export function tucks(input: TucksInput): Result<TucksMade, Refusal> {
  const { spacing, first, pressed } = input;
  const graded = typeof input.depth !== 'number';
  const depths = typeof input.depth === 'number' ? fill(input.count ?? 1, input.depth) : input.depth;
  if (
    depths === undefined ||
    depths.length === 0 ||
    (graded && (input.count ?? depths.length) !== depths.length)
  ) {
    const right = graded ? 'Give one depth for every tuck.' : 'Give a whole number from 1 to 1000.';
    return bad(refusal('count', 'The number of tucks is not one that can be sewn.', right));
  }
  if (first < 0)
    return bad(refusal('first', 'The first stitching line lies before the datum.', 'Give zero or more.'));
  const marks = marksOf(
    depths.map((depth, i) => ({ at: add(first, times(spacing, i)), depth })),
    pressed,
  );
  if (!marks.ok) return marks;
  const advice = shallowAdvice(depths);
  const assumed: string[] = [];
  if (input.count === undefined && !graded) assumed.push('One tuck, as no number was given.');
  if (pressed === 'toward' && (depths[0] ?? zero) > first) {
    assumed.push('The fold of the first tuck may reach past the datum.');
  }
  return good({ tucks: marks.value, takeUp: times(add(...depths), 2), advice, assumed });
}

function fill(count: number, depth: Length): Length[] | undefined {
  if (!Number.isInteger(count) || count < 1 || count > 1000) return undefined;
  return Array.from({ length: count }, () => depth);
}
