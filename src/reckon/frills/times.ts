/** A number of times as a maker reads it, to two places: `2.5 times`. */
export const writeTimes = (k: number): string => `${writeNumber(k)} times`;

/** A number to two places, without zeros at its end. */
export const writeNumber = (k: number): string => String(Math.round(k * 100) / 100);

/** So many of a thing: `1 strip`, `3 strips`. */
export const count = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`;
