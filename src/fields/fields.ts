import type { Length } from '../length/length.ts';
import { type ReadingUnit, readLength } from '../length/reading.ts';
import { bad, good, type Result } from '../length/result.ts';

/** What stands on a field. */
interface Label {
  /** One to four words: `depth of a tuck`. */
  readonly label: string;
  /** How it is measured or what it is for, where the label does not say it; one short sentence. */
  readonly means?: string;
  /** Has a usual answer that stands there: asked only when the maker wants another, and named where it is folded away. */
  readonly usual?: true;
  /** What is typed here stands in every field of this name, in whichever form: `leg.knee`, measured once on a body. */
  readonly shared?: string;
}

/** A field that takes a length as people write it; `start` is what stands there first, for either rule. */
export interface LengthField extends Label {
  readonly kind: 'length';
  readonly start: { readonly in: string; readonly mm: string };
  /** May be left empty; `start` is then empty too. */
  readonly optional?: true;
}

/** A field that takes a number. */
export interface NumberField extends Label {
  readonly kind: 'number';
  readonly start: string;
  /** Only whole numbers. */
  readonly whole?: true;
  /** Said after the field: `times`, `%`, `°C`. */
  readonly unit?: string;
  readonly optional?: true;
}

/** A field that takes one of a few things. */
export interface ChoiceField<V extends string = string> extends Label {
  readonly kind: 'choice';
  readonly options: readonly { readonly value: V; readonly label: string }[];
  readonly start: V;
}

/** A field that takes several lines of words, which the form's owner reads itself. */
export interface LinesField extends Label {
  readonly kind: 'lines';
  readonly start: { readonly in: string; readonly mm: string };
}

/** Any field. */
export type Field = LengthField | NumberField | ChoiceField | LinesField;
/** The fields of a form by name, in the order in which they stand. */
export type Fields = Readonly<Record<string, Field>>;

type ValueOf<F extends Field> = F extends LengthField
  ? F extends { optional: true }
    ? Length | undefined
    : Length
  : F extends NumberField
    ? F extends { optional: true }
      ? number | undefined
      : number
    : F extends ChoiceField<infer V>
      ? V
      : string;

/** What a form says, once its fields are read. */
export type Values<F extends Fields> = { readonly [K in keyof F]: ValueOf<F[K]> };

/** What is wrong with one field. */
export interface Fault {
  readonly field: string;
  /** What is wrong and what would do, one or two plain sentences. */
  readonly say: string;
}

/** What was written in the fields, by their names; what is missing counts as what stands there first. */
export type Entries = Readonly<Record<string, string>>;

/** Is it asked at once? Not where it may stay empty or a usual answer stands there. */
export const askedFirst = (field: Field): boolean =>
  field.usual !== true && !('optional' in field && field.optional === true);

/** What stands in a field first. */
export const startOf = (field: Field, unit: ReadingUnit): string =>
  typeof field.start === 'string' ? field.start : field.start[unit];

/** Reads one field. Gives the value, or what is wrong and what would do. */
function read(
  field: Field,
  text: string,
  unit: ReadingUnit,
): Result<Length | number | string | undefined, string> {
  const written = text.trim();
  switch (field.kind) {
    case 'length':
      return written === '' && field.optional
        ? good(undefined)
        : readLength(written, unit, field.start[unit] === '' ? undefined : `${field.start[unit]} ${unit}`);
    case 'number': {
      if (written === '' && field.optional) return good(undefined);
      const example = field.start === '' ? '3' : field.start;
      if (written === '') return bad(`Nothing is written; write a number such as ${example}.`);
      const plain = /^-?(?:\d{1,9}(?:[.,]\d{1,6})?|[.,]\d{1,6})$/.test(written)
        ? Number(written.replace(',', '.'))
        : Number.NaN;
      if (Number.isNaN(plain)) return bad(`“${written}” is not a number; write one such as ${example}.`);
      if (field.whole && !Number.isInteger(plain)) return bad(`Write a whole number such as ${example}.`);
      return good(plain);
    }
    case 'choice':
      return field.options.some(({ value }) => value === written)
        ? good(written)
        : bad('Choose one of these.');
    case 'lines':
      return good(text);
  }
}

/** What stands in a field that nobody has written in, where it is worked out: from measures, from the edge it is sewn to. */
export type Proposed = Readonly<Record<string, Length | number | string>>;

/**
 * Reads every field: what was written, else what is proposed, else what stands there first. Gives the values by name,
 * or every fault that can be found; `unit` is taken for lengths that are written without one.
 */
export function readFields<const F extends Fields>(
  fields: F,
  entries: Entries,
  unit: ReadingUnit,
  proposed: Proposed = {},
): Result<Values<F>, readonly Fault[]> {
  const faults: Fault[] = [];
  const values: Record<string, unknown> = {};
  for (const [name, field] of Object.entries(fields)) {
    const written = entries[name];
    if (written === undefined && proposed[name] !== undefined) {
      values[name] = proposed[name];
      continue;
    }
    const value = read(field, written ?? startOf(field, unit), unit);
    if (value.ok) values[name] = value.value;
    else faults.push({ field: name, say: value.error });
  }
  // Every field was read by its own kind just above, or proposed by its own form.
  return faults.length > 0 ? bad(faults) : good(values as Values<F>);
}
