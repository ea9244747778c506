import { type Length, nm, subtract } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Refusal, refusal } from './refusal.ts';

/** Places in a row. Each is reckoned from the datum, so rounding one does not move the next. */
export interface Spaced {
  readonly positions: readonly Length[];
  /** From place to place, above the held one. */
  readonly above: Length;
  /** From place to place, below the held one; the same where none is held. */
  readonly below: Length;
  /** Number of the one that is held at its level, from 0. */
  readonly held: number | undefined;
  readonly assumed: readonly string[];
}

/** A row of things (buttons, holes, hooks) between a first and a last. */
export interface SpacingInput {
  /** From the datum to the first, and to the last; the datum is the top of the opening, as a rule. */
  readonly first: Length;
  readonly last: Length;
  readonly count: number;
  /** From the datum to a level where one must sit (the fullest part of the bust, the waist). */
  readonly held?: Length;
}

const part = (from: Length, to: Length, k: number, of: number): Length =>
  nm(from + (subtract(to, from) * k) / of);

/**
 * Spaces `count` things evenly between the first and the last: so many spaces as there are things, less one
 * (Butterick, The New Dressmaker, 1921, p. 112, seen as an excerpt). With one held at a level, the others are even
 * above it and even below it, and it is that one which brings the two spacings closest.
 *
 * Refused: a count that is not a whole number from 1 to 1000; a last that is not below the first; a held level
 * outside them; two things with a third level held.
 */
export function spaced(input: SpacingInput): Result<Spaced, Refusal> {
  const { first, last, count, held } = input;
  if (!Number.isInteger(count) || count < 1 || count > 1000) {
    return bad(
      refusal('count', 'This is not a number of things to space.', 'Give a whole number from 1 to 1000.'),
    );
  }
  if (count === 1) {
    const assumed = held === undefined && first !== last ? ['A single one sits at the first place.'] : [];
    const at = held ?? first;
    return good({
      positions: [at],
      above: nm(0),
      below: nm(0),
      held: held === undefined ? undefined : 0,
      assumed,
    });
  }
  if (last <= first)
    return bad(
      refusal('last', 'The last is not below the first.', 'Give a last that is further from the datum.'),
    );
  if (held === undefined || held === first || held === last) {
    const gap = part(nm(0), subtract(last, first), 1, count - 1);
    const positions = Array.from({ length: count }, (_, i) => part(first, last, i, count - 1));
    const which = held === undefined ? undefined : held === first ? 0 : count - 1;
    return good({ positions, above: gap, below: gap, held: which, assumed: [] });
  }
  if (held < first || held > last) {
    return bad(
      refusal(
        'held',
        'The held level is not between the first and the last.',
        'Give a level between them, or move the first or the last.',
      ),
    );
  }
  if (count === 2) {
    return bad(
      refusal(
        'count',
        'Two are taken by the first and the last, and none is left for the held level.',
        'Give three or more.',
      ),
    );
  }
  let which = 1;
  let closest = Number.POSITIVE_INFINITY;
  for (let k = 1; k < count - 1; k++) {
    const apart = Math.abs((held - first) / k - (last - held) / (count - 1 - k));
    if (apart < closest) [which, closest] = [k, apart];
  }
  const after = count - 1 - which;
  const positions = Array.from({ length: count }, (_, i) =>
    i <= which ? part(first, held, i, which) : part(held, last, i - which, after),
  );
  return good({
    positions,
    above: part(nm(0), subtract(held, first), 1, which),
    below: part(nm(0), subtract(last, held), 1, after),
    held: which,
    assumed: [],
  });
}
