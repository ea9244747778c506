import type { Advice } from '../cloth/advice.ts';
import type { Refusal } from '../cloth/refusal.ts';
import type { Source } from '../cloth/source.ts';
import type { Length } from '../length/length.ts';
import { type ReadingUnit, readLength } from '../length/reading.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { StripMarks } from '../paper/marking-strip.ts';
import type { PatternSheet } from '../paper/pattern-sheet.ts';

/** What stands on a field of a reckoning. */
interface Label {
  /** One to four words: `depth of a tuck`. */
  readonly label: string;
  /** How it is measured or what it is for, where the label does not say it; one short sentence. */
  readonly means?: string;
  /** Has a usual answer that stands there: asked only when the maker wants another, and named where it is folded away. */
  readonly usual?: true;
  /** What is typed here stands in every field of this name, in whichever reckoning: `leg.knee`, measured once on a body. */
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

/** A field that takes several lines of words, which the reckoning reads itself. */
export interface LinesField extends Label {
  readonly kind: 'lines';
  readonly start: { readonly in: string; readonly mm: string };
}

/** Any field. */
export type Field = LengthField | NumberField | ChoiceField | LinesField;
/** The fields of a reckoning by name, in the order in which they stand. */
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

/** What a reckoning works with, once its fields are read. */
export type Values<F extends Fields> = { readonly [K in keyof F]: ValueOf<F[K]> };

/** One result: a length, a number of things, or words. The first figures are what the maker came for. */
export type ReckonedFigure =
  | { readonly kind: 'length'; readonly name: string; readonly length: Length }
  | { readonly kind: 'number'; readonly name: string; readonly number: number; readonly of?: string }
  | { readonly kind: 'words'; readonly name: string; readonly words: string };

/** What a reckoning gives back. */
export interface Reckoned {
  /** Most wanted first. */
  readonly figures: readonly ReckonedFigure[];
  /** Places to mark, each set from one datum; each can be printed as a marking strip. */
  readonly strips: readonly StripMarks[];
  /** Drawn to scale on the screen. */
  readonly drawing: PatternSheet;
  /** Printed at true size beside the strips; empty where there is nothing to cut or mark by. */
  readonly sheets: readonly PatternSheet[];
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
  readonly sources: readonly Source[];
}

/** What is wrong with one field. */
export interface Fault {
  readonly field: string;
  /** What is wrong and what would do, one or two plain sentences. */
  readonly say: string;
}

/** Under which heading a reckoning is looked for. */
export type ReckoningGroup =
  | 'Tucks and bands'
  | 'Buttons and holes'
  | 'Frills'
  | 'Bias'
  | 'Lattice and beads'
  | 'Sleeves, bows and cuffs'
  | 'Stretch legs'
  | 'Machine and iron'
  | 'Cloth and measures';

/** What was written in the fields, by their names; what is missing counts as what stands there first. */
export type Entries = Readonly<Record<string, string>>;

/** One computation that can be used by itself. */
export interface Reckoning {
  /** Part of the address, lower case with hyphens; never changed once published. */
  readonly id: string;
  /** As a maker would ask for it: `Parallel tucks`. */
  readonly name: string;
  /** What it tells, one short line: `Where to fold and stitch, and the cloth it takes`. */
  readonly tells: string;
  readonly group: ReckoningGroup;
  readonly fields: Fields;
  /** Reads the entries and works it out; `unit` is taken where none is written. Every fault that can be found is given. */
  readonly reckon: (entries: Entries, unit: ReadingUnit) => Result<Reckoned, readonly Fault[]>;
}

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

/**
 * Makes a reckoning from its fields and the function that works it out.
 *
 * `blame` says which field is meant where the arithmetic names an input otherwise; a refusal about an input that is
 * neither a field nor blamed on one stands at the first field.
 */
export function reckoning<const F extends Fields>(told: {
  readonly id: string;
  readonly name: string;
  readonly tells: string;
  readonly group: ReckoningGroup;
  readonly fields: F;
  readonly blame?: Readonly<Record<string, keyof F & string>>;
  /** Works it out; `unit` is the one taken where none is written, for lines that are read here. */
  readonly work: (values: Values<F>, unit: ReadingUnit) => Result<Reckoned, Refusal>;
}): Reckoning {
  const { fields, work, blame = {} } = told;
  const names = Object.keys(fields);
  return {
    id: told.id,
    name: told.name,
    tells: told.tells,
    group: told.group,
    fields,
    reckon: (entries, unit) => {
      const faults: Fault[] = [];
      const values: Record<string, unknown> = {};
      for (const name of names) {
        const field = fields[name];
        if (!field) continue;
        const value = read(field, entries[name] ?? startOf(field, unit), unit);
        if (value.ok) values[name] = value.value;
        else faults.push({ field: name, say: value.error });
      }
      if (faults.length > 0) return bad(faults);
      // Every field was read by its own kind just above.
      const worked = work(values as Values<F>, unit);
      if (worked.ok) return worked;
      const { field, wrong, cure } = worked.error;
      const at = names.includes(field) ? field : (blame[field] ?? names[0] ?? field);
      return bad([{ field: at, say: `${wrong} ${cure}` }]);
    },
  };
}
