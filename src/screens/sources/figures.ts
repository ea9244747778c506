import type { Source } from '../../cloth/source.ts';

/** One value of a figure. Lengths are in nanometres. */
export interface Value {
  /** What it is of, where the figure is a table. */
  readonly of?: string;
  /** A number, the least and the most, a list of words, or nothing where the figure is a fact in words. */
  readonly is: readonly number[] | readonly string[];
  readonly source: Source;
}

/** A figure or a fact that the arithmetic goes by. */
export interface Figure {
  /** Its file and name in the program, which never changes the words. */
  readonly id: string;
  readonly technique: string;
  /** What it means, in the words of its doc comment. */
  readonly meaning: string;
  /** `length` for a length in nanometres; else the words after the number, or none. */
  readonly unit: string;
  readonly values: readonly Value[];
}

/** A rule of the order of making. */
export interface RuleShown {
  readonly name: string;
  /** What it asks for; nothing where its reasons say all. */
  readonly meaning: string;
  /** Its sources, each with a reason that was really given for a demonstration outfit, where it gives one. */
  readonly reasons: readonly { readonly because?: string; readonly source: Source }[];
}

/** All that the page lists. */
export interface Figures {
  readonly figures: readonly Figure[];
  readonly rules: readonly RuleShown[];
}
