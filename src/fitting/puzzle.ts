/**
 * A fitting as a puzzle of plain numbers (millimetres, minutes), without cloth: what may change, by how much, what must
 * come out of it, and what changing costs.
 */

/** A sum of changes that must lie between two bounds, mm. */
export interface Demand {
  readonly terms: readonly { readonly unknown: string; readonly factor: number }[];
  /** `-Infinity` for none. */
  readonly least: number;
  /** `Infinity` for none. */
  readonly most: number;
}

/** One way in which a piece may change. What it does not name stays as it is (0). */
export interface Way {
  /** Unique within the puzzle. */
  readonly id: string;
  /** Ways of one kind (the same piece let out at either side) do not make two solutions differ; its id where there is none. */
  readonly kind?: string;
  readonly bounds: ReadonlyMap<string, { readonly least: number; readonly most: number }>;
}

/** One explanation of what is seen. */
export interface Explanation {
  /** Id of the cause. */
  readonly id: string;
  /** All of them hold if it is this. */
  readonly demands: readonly Demand[];
  /** Minutes of what is added for it, beside what its pieces cost. */
  readonly minutes: number;
}

/** A fitting to be solved. */
export interface Puzzle {
  /** Pieces that may change, each in one of its ways or not at all. */
  readonly pieces: readonly { readonly piece: string; readonly ways: readonly Way[] }[];
  /** Each must have one of its explanations met. */
  readonly seen: readonly { readonly id: string; readonly explanations: readonly Explanation[] }[];
  /** Hold whatever is chosen: two sides of a seam stay equally long. */
  readonly always: readonly Demand[];
  /**
   * Minutes that these ways cost together. Never less for more ways; changes that share an opened seam may cost less
   * together than the sum of each alone.
   */
  readonly minutes: (ways: readonly string[]) => number;
  /** Minutes that a way adds at least, whatever others it comes to; nothing where it is not known. Makes the search quicker. */
  readonly surely?: ReadonlyMap<string, number>;
}

/** A solution: which ways, which explanation for each thing seen, and by how much everything changes. */
export interface Solution {
  readonly ways: readonly string[];
  /** Cause by id of what is seen. */
  readonly causes: ReadonlyMap<string, string>;
  /** Change of each unknown that changes, mm. */
  readonly changes: ReadonlyMap<string, number>;
  readonly minutes: number;
}

/** What came of a puzzle. */
export interface Solved {
  /** The one that costs fewest minutes; then fewest pieces, then the smallest changes. None where nothing at all can be met. */
  readonly best?: Solution;
  /**
   * The cheapest of another kind: it changes other pieces, or the same in another way, and nothing needlessly. Where there
   * is none, the cheapest that takes what is seen to come from other causes and does something else besides.
   */
  readonly other?: Solution;
  /** What had to be left out, for it cannot be met together with the rest; with the reason as far as it is known. */
  readonly unmet: readonly { readonly seen: string; readonly why: 'alone' | 'together' }[];
}
