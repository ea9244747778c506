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

/** Something that is seen at a try-on, or the checks that come before. */
export interface SeenShown {
  readonly id: string;
  readonly name: string;
  /** Where on the body; empty for the checks. */
  readonly place: string;
  /** What is said of it: what it comes from and what cures it, each with its source. */
  readonly lines: readonly {
    /** A check, or what it comes from; nothing for the source of what is seen itself. */
    readonly words?: string;
    readonly cure?: string;
    readonly source: Source;
  }[];
}

/** What is read from the source files. */
export interface Figures {
  readonly figures: readonly Figure[];
  readonly rules: readonly RuleShown[];
}

/** All that the page lists. */
export interface Listing extends Figures {
  readonly seen: readonly SeenShown[];
}
