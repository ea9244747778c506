declare const nanometres: unique symbol;

/**
 * A length, as a whole number of nanometres. 1/64 in is 396 875 nm, so inches down to sixty-fourths and millimetres
 * are both exact and sums never drift. May be negative where it is a position or a difference.
 */
export type Length = number & { readonly [nanometres]: true };

/**
 * Nanometres in one inch. An inch is 25.4 mm exactly, by definition.
 * Source: NIST Special Publication 811 (2008), Guide for the Use of the International System of Units, appendix B (from memory).
 * @unit nanometres
 */
export const NM_PER_INCH = 25_400_000;

/** Nanometres in one millimetre. */
export const NM_PER_MM = 1_000_000;

/**
 * A length from nanometres, rounded to the nearest whole one.
 * @throws RangeError for a value that is not a number or is past about 9 000 km: that is a slip in the program, not in the sewing.
 */
export function nm(value: number): Length {
  const whole = Math.round(value) + 0; // the sum turns -0 into 0
  if (!Number.isSafeInteger(whole)) throw new RangeError(`${value} nm is not a length`);
  return whole as Length;
}

/** A length from millimetres, rounded to whole nanometres. */
export const mm = (value: number): Length => nm(value * NM_PER_MM);

/** A length from inches: `inches(35, 8)` is 4 3/8 in, `inches(2)` is 2 in. Exact for any denominator up to 64. */
export const inches = (n: number, d = 1): Length => nm((n * NM_PER_INCH) / d);

/** No length at all; the datum itself. */
export const zero: Length = nm(0);

/** The sum of any number of lengths; of none, zero. */
export function add(...lengths: readonly Length[]): Length {
  let sum = 0;
  for (const length of lengths) sum += length;
  return nm(sum);
}

/** `a` less `b`. */
export const subtract = (a: Length, b: Length): Length => nm(a - b);

/** A length taken `k` times, rounded to whole nanometres. */
export const times = (length: Length, k: number): Length => nm(length * k);

/** How many times `b` goes into `a`, not rounded. `b` must not be zero: dividing by it gives infinity. */
export const ratio = (a: Length, b: Length): number => a / b;

/** Below zero when `a` is shorter than `b`, zero when equal, above zero when longer: an order for sorting. */
export const compare = (a: Length, b: Length): number => a - b;

/** Is `a` longer than `b`? */
export const longer = (a: Length, b: Length): boolean => a > b;

/** Is `a` shorter than `b`? */
export const shorter = (a: Length, b: Length): boolean => a < b;

/** The longest of one or more lengths. */
export const longest = (first: Length, ...rest: readonly Length[]): Length =>
  rest.reduce((best, next) => nm(Math.max(best, next)), first);

/** The shortest of one or more lengths. */
export const shortest = (first: Length, ...rest: readonly Length[]): Length =>
  rest.reduce((best, next) => nm(Math.min(best, next)), first);

/** The size of a length without its sign. */
export const size = (length: Length): Length => nm(Math.abs(length));

/** In millimetres, for a formula or a drawing; not for showing (see `writeLength`). */
export const toMm = (length: Length): number => length / NM_PER_MM;

/** In inches, for a formula or a drawing; not for showing (see `writeLength`). */
export const toInches = (length: Length): number => length / NM_PER_INCH;
