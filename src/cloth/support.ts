import { add, type Length, mm, nm, times, toMm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Advice, advise, type Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory, practice, type Source } from './source.ts';

/** The two ends of a horsehair band lie over each other this far. */
export const HORSEHAIR_LAP: Sourced<Length> = { value: mm(25), source: memory };
/** Detached sleeves laden with beads need support inside. */
export const LADEN_SLEEVES: Source = practice;
/**
 * A sleeve is held out by so many rings of horsehair, unless said otherwise.
 * @unit rings
 */
export const SLEEVE_RINGS: Sourced<number> = { value: 3, source: memory };

/** A stuffed roll with round ends. */
export interface RollInput {
  /** Whole length, ends included, and thickness. */
  readonly length: Length;
  readonly thick: Length;
  readonly allowance: Length;
  /** Grams of stuffing in a litre, as firm as wanted: weigh what a cup of it takes. Weight is left out if not given. */
  readonly gramsPerLitre?: number;
}

/** What {@link roll} gives back. */
export interface RollMade {
  /** Cloth for the tube; its ends are gathered shut. */
  readonly cut: { readonly length: Length; readonly width: Length };
  readonly litres: number;
  readonly grams: number | undefined;
  readonly assumed: readonly string[];
}

/**
 * Cut size and stuffing of a roll: a cylinder with half a ball at each end. Along its middle the cloth goes over both balls.
 * Follows from the measures.
 * Refused: no thickness; a length less than the thickness; an allowance below zero; stuffing of no weight.
 */
export function roll({ length, thick, allowance, gramsPerLitre }: RollInput): Result<RollMade, Refusal> {
  if (thick <= 0) return bad(refusal('thick', 'The roll has no thickness.', 'Give a thickness above zero.'));
  if (length < thick)
    return bad(
      refusal('length', 'The roll is shorter than it is thick.', 'Give a length no less than the thickness.'),
    );
  if (allowance < 0) return bad(refusal('allowance', 'The allowance is below zero.', 'Give zero or more.'));
  if (gramsPerLitre !== undefined && !(gramsPerLitre > 0 && gramsPerLitre <= 2000))
    return bad(
      refusal('gramsPerLitre', 'This is not a weight of stuffing.', 'Give grams above zero, up to 2000.'),
    );
  const straight = toMm(nm(length - thick));
  const t = toMm(thick);
  const litres = ((Math.PI * t * t) / 4) * (straight + (2 * t) / 3) * 1e-6;
  const seams = times(allowance, 2);
  return good({
    cut: {
      length: add(nm(length - thick), times(thick, Math.PI / 2), seams),
      width: add(times(thick, Math.PI), seams),
    },
    litres,
    grams: gramsPerLitre === undefined ? undefined : litres * gramsPerLitre,
    assumed: ['The ends are round, and the cloth does not stretch.'],
  });
}

/**
 * Horsehair for a hem: each row once round and 25 mm over itself.
 * Refused: no hem; rows not whole, from 1 to 50.
 */
export function horsehair(hem: Length, rows = 1): Result<{ each: Length; whole: Length }, Refusal> {
  if (hem <= 0) return bad(refusal('hem', 'The hem has no length.', 'Give a length above zero.'));
  if (!Number.isInteger(rows) || rows < 1 || rows > 50)
    return bad(refusal('rows', 'This is not a number of rows.', 'Give a whole number from 1 to 50.'));
  const each = add(hem, HORSEHAIR_LAP.value);
  return good({ each, whole: times(each, rows) });
}

/** A sleeve and what it must carry. */
export interface SleeveSupportInput {
  readonly detached: boolean;
  readonly beaded: boolean;
  /** Way round the sleeve at its top and at its lower edge, and its length. */
  readonly top: Length;
  readonly bottom: Length;
  readonly length: Length;
  readonly allowance: Length;
  /** Horsehair rings, spread evenly from the top to the lower edge, both included; 3 if not given. */
  readonly rings?: number;
}

/** What {@link sleeveSupport} gives back. */
export interface SleeveSupportMade {
  /** Must it have support inside? */
  readonly needed: boolean;
  /** Inner sleeve of net: width to cut at its top and at its lower edge, and its length. */
  readonly cut: { readonly top: Length; readonly bottom: Length; readonly length: Length };
  /** Rings: how far down from the top seam line, and the length of horsehair for each. */
  readonly rings: readonly { readonly at: Length; readonly horsehair: Length }[];
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
}

/**
 * An inner sleeve with rings that carries a laden one. Whether it is needed: {@link LADEN_SLEEVES}.
 * Refused: sizes of zero or less; an allowance below zero; rings not whole, from 2 to 50.
 */
export function sleeveSupport(input: SleeveSupportInput): Result<SleeveSupportMade, Refusal> {
  const { detached, beaded, top, bottom, length, allowance, rings = SLEEVE_RINGS.value } = input;
  for (const [field, size] of Object.entries({ top, bottom, length }))
    if (size <= 0) return bad(refusal(field, 'The sleeve has no size here.', 'Give a measure above zero.'));
  if (allowance < 0) return bad(refusal('allowance', 'The allowance is below zero.', 'Give zero or more.'));
  if (!Number.isInteger(rings) || rings < 2 || rings > 50)
    return bad(refusal('rings', 'This is not a number of rings.', 'Give a whole number from 2 to 50.'));
  const seams = times(allowance, 2);
  const needed = detached && beaded;
  return good({
    needed,
    cut: { top: add(top, seams), bottom: add(bottom, seams), length: add(length, seams) },
    rings: Array.from({ length: rings }, (_, i) => {
      const down = i / (rings - 1);
      const round = nm(top + (bottom - top) * down);
      return { at: times(length, down), horsehair: add(round, HORSEHAIR_LAP.value) };
    }),
    advice: needed
      ? [advise('Detached sleeves laden with beads need support inside, or they slide down.', LADEN_SLEEVES)]
      : [],
    assumed: [
      'The sleeve tapers evenly from its top to its lower edge.',
      ...(input.rings === undefined ? ['Three rings.'] : []),
    ],
  });
}
