import { inBothRules } from '../length/both-rules.ts';
import { add, inches, type Length, longer, nm, shorter, subtract, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Advice, advise, type Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { published, type Source } from './source.ts';
import { type Spaced, type SpacingInput, spaced } from './spacing.ts';

/** A horizontal buttonhole begins this far past the centre line, so that the button rests on the line. */
export const PAST_CENTRE: Sourced<Length> = {
  value: inches(1, 8),
  source: published(
    'Buttons and Buttonholes, Extension Bulletin 576',
    '1965',
    'markings; seen as an excerpt',
  ),
};
/** In a vertical buttonhole the button rests this far below the top at the most. */
export const BELOW_TOP: Sourced<Length> = {
  value: inches(1, 8),
  source: published(
    'Standards of Quality for Custom Clothing, Association of Sewing and Design Professionals',
    '2008',
    'Closures; seen as an excerpt',
  ),
};
/** Cloth should reach beyond the centre line by half the button and at least this much. */
export const BEYOND_BUTTON: Sourced<Length> = { value: inches(1, 4), source: BELOW_TOP.source };
/** Cloth need not reach beyond the centre line by half the button and more than this. */
export const MOST_BEYOND_BUTTON: Sourced<Length> = { value: inches(1, 2), source: PAST_CENTRE.source };

/** Holes and buttons on a band. `along` counts down the opening from its top, `across` outwards from the centre line. */
export interface FasteningsInput extends SpacingInput {
  readonly direction: 'vertical' | 'horizontal';
  /** Length of a hole; see `buttonholeLength`. */
  readonly hole: Length;
  readonly diameter: Length;
  /** The band: from the centre line out to the finished edge, and in to the stitching or the inner fold. */
  readonly outer: Length;
  readonly inner: Length;
  /** Length of the opening, if holes must stay on it. */
  readonly opening?: Length;
  /** Levels that each must have a button, such as bust and waist, from the datum; instead of `held`. */
  readonly levels?: readonly Length[];
}

/** One hole and its button. */
export interface Fastening {
  readonly hole: {
    readonly from: { readonly along: Length; readonly across: Length };
    readonly to: { readonly along: Length; readonly across: Length };
  };
  /** Middle of the button, on the centre line of the other front. */
  readonly button: { readonly along: Length; readonly across: Length };
}

/** What {@link fastenings} gives back. */
export interface FasteningsMade {
  readonly spacing: Spaced;
  readonly fastenings: readonly Fastening[];
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
}

/** How far the cloth should reach beyond the centre line for a button: half of it and 1/4 to 1/2 in. */
export interface LapMade {
  readonly least: Length;
  readonly most: Length;
  readonly source: Source;
}

/**
 * Lap beyond the centre line, on both fronts (Buttons and Buttonholes, Extension Bulletin 576, 1965, seen as an
 * excerpt, its lower figure garbled; the least agrees with {@link BEYOND_BUTTON}).
 * Refused: a button of no size.
 */
export function lapFor(diameter: Length): Result<LapMade, Refusal> {
  if (diameter <= 0)
    return bad(refusal('diameter', 'The button has no size.', 'Give a diameter above zero.'));
  const half = times(diameter, 1 / 2);
  return good({
    least: add(half, BEYOND_BUTTON.value),
    most: add(half, MOST_BEYOND_BUTTON.value),
    source: PAST_CENTRE.source,
  });
}

/**
 * Spaces `count` things from the first to the last with one at every held level (one at the natural waist and one at
 * about the fullest part of the bust: Extension Bulletin 576, 1965, seen as an excerpt). Between the levels they are even, and the widest
 * space is as narrow as the count allows.
 *
 * Refused: a count that is not whole, over 1000, or too small for the first, the last and the levels; a last not below
 * the first; a level outside them; `held` and levels at once.
 */
export function spacedAtLevels(input: SpacingInput, levels: readonly Length[]): Result<Spaced, Refusal> {
  const { first, last, count, held } = input;
  if (held !== undefined) {
    const cure = 'Put the single held level among the levels.';
    return bad(refusal('held', 'Levels are held, and a single one besides.', cure));
  }
  if (last <= first)
    return bad(
      refusal('last', 'The last is not below the first.', 'Give a last that is further from the datum.'),
    );
  if (levels.some((level) => level < first || level > last)) {
    const cure = 'Give levels between them, or move the first or the last.';
    return bad(refusal('levels', 'A level is not between the first and the last.', cure));
  }
  const fixed = [...new Set([first, ...levels, last])].sort((a, b) => a - b);
  if (!Number.isInteger(count) || count > 1000 || count < fixed.length) {
    const cure = `Give a whole number from ${fixed.length} to 1000.`;
    return bad(refusal('count', 'This number does not serve the first, the last and every level.', cure));
  }
  const parts = fixed.slice(1).map((to, i) => ({ from: fixed[i] ?? first, to, spaces: 1 }));
  const gap = ({ from, to, spaces }: { from: Length; to: Length; spaces: number }) => (to - from) / spaces;
  for (let left = count - fixed.length; left > 0; left--) {
    const widest = parts.reduce((a, b) => (gap(b) > gap(a) ? b : a));
    widest.spaces++;
  }
  const positions = parts.flatMap((part) =>
    Array.from({ length: part.spaces }, (_, i) => nm(part.from + gap(part) * i)),
  );
  positions.push(last);
  const [top, bottom] = [parts[0], parts.at(-1)];
  return good({
    positions,
    above: nm(top ? gap(top) : 0),
    below: nm(bottom ? gap(bottom) : 0),
    held: levels.length === 0 ? undefined : levels.includes(first) ? 0 : (top?.spaces ?? 0),
    assumed: [],
  });
}

/**
 * Places holes and buttons at even spacing, one held at a level if wanted. A position is where the button rests.
 *
 * Refused: what `spaced` refuses; a hole shorter than the button's diameter or of no length; a hole that reaches past
 * the band on either side or past the ends of the opening; vertical holes that run into each other; buttons that overlap.
 */
export function fastenings(input: FasteningsInput): Result<FasteningsMade, Refusal> {
  const { direction, hole, diameter, outer, inner, opening } = input;
  if (diameter <= 0)
    return bad(refusal('diameter', 'The button has no size.', 'Give a diameter above zero.'));
  if (shorter(hole, diameter)) {
    return bad(
      refusal(
        'hole',
        'The hole is shorter than the button is wide.',
        'Give a hole at least as long as the diameter.',
      ),
    );
  }
  const spacing = input.levels === undefined ? spaced(input) : spacedAtLevels(input, input.levels);
  if (!spacing.ok) return spacing;

  const zero = nm(0);
  const level = direction === 'horizontal';
  const start = { along: level ? zero : nm(-BELOW_TOP.value), across: level ? PAST_CENTRE.value : zero };
  const end = {
    along: level ? zero : add(start.along, hole),
    across: level ? subtract(start.across, hole) : zero,
  };
  if (!shorter(start.across, outer)) {
    return bad(
      refusal(
        'outer',
        'The hole would reach the finished edge.',
        `Make the lap wider than ${inBothRules(PAST_CENTRE.value, 'up')} beyond the centre line.`,
      ),
    );
  }
  if (!longer(end.across, nm(-inner))) {
    const cure = level
      ? 'Make the band wider inside the centre line, the button smaller, or the holes vertical.'
      : 'Make the band wider.';
    return bad(refusal('inner', 'The hole would reach past the band.', cure));
  }
  const { positions } = spacing.value;
  const gaps = positions.slice(1).map((p, i) => subtract(p, positions[i] ?? zero));
  const need = level ? diameter : hole;
  if (gaps.some((gap) => !longer(gap, need))) {
    const wrong = level ? 'The buttons would overlap.' : 'The holes would run into each other.';
    return bad(refusal('count', wrong, 'Give fewer, or a longer distance from the first to the last.'));
  }
  const [top, bottom] = [positions[0] ?? zero, positions.at(-1) ?? zero];
  if (opening !== undefined && (add(top, start.along) < 0 || longer(add(bottom, end.along), opening))) {
    return bad(
      refusal(
        'opening',
        'A hole would reach past the end of the opening.',
        'Move the first or the last further in.',
      ),
    );
  }
  const advice = shorter(outer, add(times(diameter, 1 / 2), BEYOND_BUTTON.value))
    ? [
        advise(
          `The cloth beyond the centre line is less than half a button and ${inBothRules(BEYOND_BUTTON.value)}.`,
          BEYOND_BUTTON.source,
        ),
      ]
    : [];
  return good({
    spacing: spacing.value,
    fastenings: positions.map((position) => ({
      hole: {
        from: { along: add(position, start.along), across: start.across },
        to: { along: add(position, end.along), across: end.across },
      },
      button: { along: position, across: zero },
    })),
    advice,
    assumed: [...spacing.value.assumed, ...(opening === undefined ? ['The holes stay on the opening.'] : [])],
  });
}
