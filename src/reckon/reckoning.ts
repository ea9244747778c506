import type { Advice } from '../cloth/advice.ts';
import type { Refusal } from '../cloth/refusal.ts';
import type { Source } from '../cloth/source.ts';
import { type Entries, type Fault, type Fields, readFields, type Values } from '../fields/fields.ts';
import type { Length } from '../length/length.ts';
import type { ReadingUnit } from '../length/reading.ts';
import { bad, type Result } from '../length/result.ts';
import type { StripMarks } from '../paper/marking-strip.ts';
import type { PatternSheet } from '../paper/pattern-sheet.ts';

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
      const values = readFields(fields, entries, unit);
      if (!values.ok) return values;
      const worked = work(values.value, unit);
      if (worked.ok) return worked;
      const { field, wrong, cure } = worked.error;
      const at = names.includes(field) ? field : (blame[field] ?? names[0] ?? field);
      return bad([{ field: at, say: `${wrong} ${cure}` }]);
    },
  };
}
