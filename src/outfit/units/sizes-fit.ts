import { type Refusal, refusal } from '../../cloth/refusal.ts';
import type { Fault, Fields } from '../../fields/fields.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { mm } from '../../length/length.ts';

/** Nothing that is worn measures more than this one way; it is a slip of the finger. */
const MOST = mm(10_000);
const TOO_LONG = `This is more than ${inBothRules(MOST)}.`;
const AGAIN = 'Look at the figure once more.';

/** Every length of a form that is more than anything worn measures. */
export const tooLong = (fields: Fields, values: Readonly<Record<string, unknown>>): readonly Fault[] =>
  Object.entries(fields).flatMap(([field, { kind }]) => {
    const size = values[field];
    return kind === 'length' && typeof size === 'number' && size > MOST
      ? [{ field, say: `${TOO_LONG} ${AGAIN}` }]
      : [];
  });

/**
 * What is wrong with the sizes of a unit by their fields: those that must be above zero, and those that may be zero.
 * Nothing where all will do.
 */
export function sizesFit(
  values: Readonly<Record<string, unknown>>,
  above: readonly string[],
  orZero: readonly string[] = [],
): Refusal | undefined {
  for (const field of [...above, ...orZero]) {
    const size = values[field];
    if (typeof size !== 'number') continue;
    const may = orZero.includes(field);
    if (size < 0 || (size === 0 && !may))
      return may
        ? refusal(field, 'This is below zero.', 'Give zero or more.')
        : refusal(field, 'This has no size.', 'Give a measure above zero.');
    if (size > MOST) return refusal(field, TOO_LONG, AGAIN);
  }
  return undefined;
}

/** What is wrong with how many times something a gathered edge is to be long; nothing from 1 to 6. */
export const fullnessFits = (fullness: number, field = 'fullness'): Refusal | undefined =>
  fullness >= 1 && fullness <= 6
    ? undefined
    : refusal(field, 'Cloth cannot be gathered so.', 'Give 1 to 6; 1 1/2 to 2 is usual.');
