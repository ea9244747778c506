import { type Length, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory, practice } from './source.ts';

/**
 * Wearing uses this part of the stretch measured round the body; the rest is left for moving.
 * @unit part
 */
export const SHARE_ROUND: Sourced<number> = { value: 1 / 3, source: practice };
/**
 * Wearing uses this part of the stretch measured along the body; bending needs nearly all of it.
 * @unit part
 */
export const SHARE_ALONG: Sourced<number> = { value: 1 / 10, source: practice };
/**
 * A girth is made smaller by this part at the most, however far the cloth would go.
 * @unit part
 */
export const MOST_ROUND: Sourced<number> = { value: 0.2, source: memory };
/**
 * A length along the body is made shorter by this part at the most.
 * @unit part
 */
export const MOST_ALONG: Sourced<number> = { value: 0.05, source: memory };
/**
 * A cloth that gives less than this round the body does not count as stretch cloth.
 * @unit part
 */
export const LEAST_STRETCH: Sourced<number> = { value: 0.2, source: practice };

/** A stretch of cloth between two pins: lying still, and drawn out as far as it goes without force. */
export interface Gauge {
  readonly rest: Length;
  readonly stretched: Length;
}

/** The gauge in both directions; `along` may be left out where a cloth was tried one way only. */
export interface ClothGauge {
  /** The direction that goes round the body: usually the one that stretches most. */
  readonly round: Gauge;
  /** The direction that goes along the body. Left out, the cloth is taken not to give that way. */
  readonly along?: Gauge;
}

/**
 * How much a cloth stretches, as a part of its length at rest: 4 in drawn out to 6 in is 0.5, which is 50 percent.
 *
 * Refused: a gauge without length; one that is shorter drawn out than at rest.
 * @param field name of the input, for the refusal
 */
export function stretchOf({ rest, stretched }: Gauge, field = 'stretched'): Result<number, Refusal> {
  if (rest <= 0) {
    const cure = 'Mark 4 in, or 100 mm, on the cloth while it lies still.';
    return bad(refusal(field, 'The gauge has no length.', cure));
  }
  if (stretched < rest) {
    const cure = 'Give the length drawn out; it is the longer of the two.';
    return bad(refusal(field, 'The gauge is shorter drawn out than at rest.', cure));
  }
  return good((stretched - rest) / rest);
}

/** How much smaller a piece is cut than the body, as parts of the measure. */
export interface Reductions {
  /** Stretch of the cloth round and along, as measured. */
  readonly stretch: { readonly round: number; readonly along: number };
  /** Part by which girths are made smaller, from 0 to 1. */
  readonly round: number;
  /** Part by which lengths are made shorter, from 0 to 1. */
  readonly along: number;
  readonly assumed: readonly string[];
}

/** A cloth and how much of its stretch is to be used. */
export interface ReductionInput {
  readonly gauge: ClothGauge;
  /** Share of the stretch round the body that wearing uses, from 0 to 1; a third if not given. */
  readonly shareRound?: number;
  /** Share of the stretch along the body that wearing uses, from 0 to 1; a tenth if not given. */
  readonly shareAlong?: number;
}

/** A part of the body's measure that is left out when the cloth is to be stretched by `used`: cut x (1 + used) = measure. */
export const reductionFor = (used: number): number => used / (1 + used);

/** The measure of a piece that is cut smaller than the body by a part of it. */
export const reduced = (measure: Length, reduction: number): Length => times(measure, 1 - reduction);

/**
 * How much smaller to cut for a cloth: with a share of its stretch used, a piece of `measure / (1 + used)` fills the
 * measure. Held to a fifth round and a twentieth along unless the maker gives a share. The shares are common practice, no source; the most is from memory.
 *
 * Refused: a gauge that {@link stretchOf} refuses; a share outside 0 to 1; a cloth that stretches less than a fifth
 * round the body, because what is cut smaller than the body must stretch to get on.
 */
export function reductions(input: ReductionInput): Result<Reductions, Refusal> {
  const { gauge, shareRound = SHARE_ROUND.value, shareAlong = SHARE_ALONG.value } = input;
  const round = stretchOf(gauge.round, 'gauge.round');
  if (!round.ok) return round;
  const along = gauge.along ? stretchOf(gauge.along, 'gauge.along') : good(0);
  if (!along.ok) return along;
  for (const [field, share] of [
    ['shareRound', shareRound],
    ['shareAlong', shareAlong],
  ] as const) {
    if (!(share >= 0 && share <= 1)) {
      return bad(
        refusal(
          field,
          'This is not a share of the stretch.',
          'Give a share from 0 (none of it) to 1 (all of it).',
        ),
      );
    }
  }
  if (round.value < LEAST_STRETCH.value) {
    return bad(
      refusal(
        'gauge.round',
        'This cloth hardly stretches, and a piece cut smaller than the body would not go on.',
        'Take a cloth of which 4 in stretches to at least 4 3/4 in round the body, or use a draft for woven cloth.',
      ),
    );
  }
  const assumed: string[] = [];
  const held = (share: number | undefined, usual: number, stretch: number, most: number, says: string) => {
    const wanted = reductionFor((share ?? usual) * stretch);
    if (share !== undefined) return wanted;
    assumed.push(wanted > most ? `${says}, held to ${most * 100} % less than the measure.` : `${says}.`);
    return Math.min(wanted, most);
  };
  return good({
    stretch: { round: round.value, along: along.value },
    round: held(
      input.shareRound,
      shareRound,
      round.value,
      MOST_ROUND.value,
      'A third of the stretch round is used',
    ),
    along: held(
      input.shareAlong,
      shareAlong,
      along.value,
      MOST_ALONG.value,
      'A tenth of the stretch along is used',
    ),
    assumed,
  });
}
