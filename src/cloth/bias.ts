import { inBothRules } from '../length/both-rules.ts';
import { inches, type Length, nm, shortest, subtract, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory, published, type Source } from './source.ts';

/** Each turning of a bias band, facing or piping, unless said otherwise. */
export const BAND_TURN: Sourced<Length> = {
  value: inches(1, 4),
  source: published('Clothing for Women, Baldt', '1916', 'constructive processes 4; seen as an excerpt'),
};

/** The turns of a single or double binding are as wide as the binding, unless said otherwise. */
export const OWN_TURN: Source = memory;

/**
 * How far to measure along the selvage, and as far along the cut end, for a bias strip of this width: the width times
 * the root of two. Follows from the measures.
 * Refused: a width of zero or less.
 */
export function selvageLength(width: Length): Result<Length, Refusal> {
  if (width <= 0) return bad(refusal('width', 'The strip has no width.', 'Give a width above zero.'));
  return good(times(width, Math.SQRT2));
}

/** A single strip wanted from a piece of cloth, without a join. */
export interface LongestBiasInput {
  /** The two sides of the rectangle, along the threads. */
  readonly across: Length;
  readonly along: Length;
  /** Cut width of the strip. */
  readonly strip: Length;
}

/**
 * Length of the longest strip with square ends that a rectangle gives at 45 degrees: the shorter side times the root
 * of two, less the strip's width. Follows from the measures.
 * Refused: no size, or a strip too wide to lie in the rectangle.
 */
export function longestBias({ across, along, strip }: LongestBiasInput): Result<Length, Refusal> {
  if (across <= 0) return bad(refusal('across', 'The cloth has no width.', 'Give a width above zero.'));
  if (along <= 0) return bad(refusal('along', 'The cloth has no length.', 'Give a length above zero.'));
  if (strip <= 0) return bad(refusal('strip', 'The strip has no width.', 'Give a width above zero.'));
  const length = subtract(times(shortest(across, along), Math.SQRT2), strip);
  return length > 0
    ? good(length)
    : bad(
        refusal(
          'strip',
          'The strip is too wide to lie on the bias of this cloth.',
          'Give a narrower strip, or a larger piece of cloth.',
        ),
      );
}

/** What the strip is for. All widths are finished ones. */
export type Binding =
  /** Once round the raw edge, each edge of the strip turned in. The turns are as wide as the binding if not given. */
  | { readonly kind: 'single'; readonly width: Length; readonly turn?: Length }
  /** Folded in half first, both edges sewn to the raw edge. The seam is as wide as the binding if not given. */
  | { readonly kind: 'double'; readonly width: Length; readonly turn?: Length }
  /** A folded band sewn to an edge and reaching beyond it. Turns of 1/4 in if not given. */
  | { readonly kind: 'band'; readonly width: Length; readonly turn?: Length }
  /** On the wrong side only. Turns of 1/4 in if not given. */
  | { readonly kind: 'facing'; readonly width: Length; readonly turn?: Length }
  /** Round a cord; `width` is the cord's thickness and `turn` the seam allowance, 1/4 in if not given. */
  | { readonly kind: 'piping'; readonly width: Length; readonly turn?: Length };

/** What {@link bindingWidth} gives back. */
export interface BindingMade {
  /** Width to cut the strip, at right angles to its edge. */
  readonly cut: Length;
  /** Lines to press as folds, from one cut edge of the strip. */
  readonly folds: readonly Length[];
  /** Along the selvage from line to line. */
  readonly selvage: Length;
  readonly source: Source;
  readonly assumed: readonly string[];
}

/**
 * The width to cut a bias strip, and its folds.
 *
 * Band: twice the depth and two turnings (Baldt, Clothing for Women, 1916; Butterick, The New Dressmaker, 1921,
 * ch. 26; both seen as excerpts). The others follow from the layers, with turns as wide as the binding from memory.
 *
 * Refused: a width or turn of zero or less; a turn wider than the single binding or band, which would double up in its fold;
 * turns of a facing that would meet.
 */
export function bindingWidth(binding: Binding): Result<BindingMade, Refusal> {
  const { kind, width } = binding;
  const own = kind === 'single' || kind === 'double';
  const turn = binding.turn ?? (own ? width : BAND_TURN.value);
  if (width <= 0) return bad(refusal('width', 'The binding has no width.', 'Give a width above zero.'));
  if (turn <= 0) return bad(refusal('turn', 'The cut edge would show.', 'Give a turn above zero.'));
  if ((kind === 'single' || kind === 'band') && turn > width) {
    return bad(
      refusal(
        'turn',
        'The turn is wider than the binding and would double up in its fold.',
        'Give a turn no wider than the binding.',
      ),
    );
  }
  if (kind === 'facing' && turn * 2 > width) {
    return bad(
      refusal(
        'turn',
        'The two turns of the facing would lie over each other.',
        'Give a turn of half the facing or less.',
      ),
    );
  }
  const { cut, folds } = layers(kind, width, turn);
  const says = own ? 'The turns are as wide as the binding.' : `Turns of ${inBothRules(BAND_TURN.value)}.`;
  return good({
    cut,
    folds,
    selvage: times(cut, Math.SQRT2),
    source: kind === 'band' ? BAND_TURN.source : OWN_TURN,
    assumed: [
      ...(binding.turn === undefined ? [says] : []),
      ...(kind === 'piping' ? ['The cloth has no thickness of its own.'] : []),
    ],
  });
}

function layers(kind: Binding['kind'], width: Length, turn: Length): { cut: Length; folds: Length[] } {
  switch (kind) {
    case 'single':
    case 'band':
      return { cut: nm(2 * width + 2 * turn), folds: [turn, nm(turn + width), nm(turn + 2 * width)] };
    case 'double':
      return { cut: nm(4 * width + 2 * turn), folds: [nm(2 * width + turn)] };
    case 'facing':
      return { cut: nm(width + 2 * turn), folds: [turn, nm(turn + width)] };
    case 'piping': {
      const half = nm((Math.PI * width) / 2 + turn);
      return { cut: nm(2 * half), folds: [half] };
    }
  }
}
