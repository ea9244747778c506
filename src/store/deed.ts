import type { Change } from './describe-change.ts';

/**
 * The deeds: everything that is done at the bench or to the description, in the past tense. A deed is written once
 * and never changed; taking one back is another deed that names it.
 */

/** Name of a deed: the device and its number in that device's sequence, so that ledgers of two devices merge. */
export type DeedId = `${string}-${number}`;

/** What is undone and done again, as the order of making worked it out when it was accepted. */
export interface ReworkWritten {
  readonly id: string;
  readonly say: string;
  readonly undo: readonly {
    readonly garment: string;
    readonly of: { readonly kind: 'piece' | 'work' | 'join' | 'gate'; readonly id: string };
    readonly action: 'unpick' | 'open' | 'cut-anew' | 'lines-anew';
    readonly say: string;
    readonly pieces: readonly string[];
    readonly edges: readonly string[];
    readonly times: 1 | 2;
    readonly minutes: number;
  }[];
  readonly again: readonly {
    readonly step: string;
    readonly only?: string;
    readonly side?: 'left' | 'right';
    readonly minutes: number;
  }[];
}

/** Something done, with nothing of where and when. */
export type Act =
  /** The outfit was begun; `description` is the whole outfit as its file spells it. */
  | { readonly kind: 'outfit-begun'; readonly description: unknown }
  /** One place in the description was changed. `at` is a JSON Pointer (RFC 6901); `undefined` values are left out. */
  | { readonly kind: 'described'; readonly at: string; readonly was?: unknown; readonly now?: unknown }
  /** Several places in the description were changed at once, in this order; `say` is what the maker did, for undoing it. */
  | { readonly kind: 'redescribed'; readonly say: string; readonly changes: readonly Change[] }
  /** The card was opened at the bench: the place to come back to, and the beginning of the time spent. */
  | { readonly kind: 'step-opened'; readonly step: string }
  | { readonly kind: 'step-done'; readonly step: string }
  /** A tick of a pair, a set mark or a checked line. */
  | { readonly kind: 'item-done'; readonly step: string; readonly item: string }
  /** A touch that counted `add` beads of a line. */
  | { readonly kind: 'tap'; readonly step: string; readonly item: string; readonly add: number }
  /** A counted line was finished with `count`; stands for all taps of that line. */
  | { readonly kind: 'line-closed'; readonly step: string; readonly item: string; readonly count: number }
  | { readonly kind: 'timer-started'; readonly step: string; readonly item: string; readonly seconds: number }
  | { readonly kind: 'timer-stopped'; readonly step: string; readonly item: string }
  /** The maker's own reason for one step before another. */
  | {
      readonly kind: 'reason-added';
      readonly before: string;
      readonly after: string;
      readonly because: string;
    }
  | { readonly kind: 'reason-waived'; readonly key: string }
  | { readonly kind: 'note'; readonly step: string; readonly text: string }
  /** Figures of a reckoning were put on the card of a step; `entries` are what was written in its fields, to open it again, and `unit` is meant where none is written. */
  | {
      readonly kind: 'reckoned';
      readonly step: string;
      readonly reckoning: string;
      readonly title: string;
      readonly unit: 'in' | 'mm';
      readonly entries: Readonly<Record<string, string>>;
      readonly figures: readonly { readonly name: string; readonly figure: string }[];
    }
  /** Something was seen at a try-on. `amount` is in nanometres; `photo` is a small JPEG as a data URL. */
  | {
      readonly kind: 'seen';
      readonly garment: string;
      /** Id of what is seen, from the list of things that can be. */
      readonly entry: string;
      readonly side: 'both' | 'left' | 'right';
      readonly amount?: number;
      /** The cause that a test has shown. */
      readonly sure?: string;
      /** Causes that tests have ruled out. */
      readonly out?: readonly string[];
      readonly words?: string;
      readonly photo?: string;
    }
  /** What was seen may stay as it is. */
  | { readonly kind: 'let-be'; readonly seen: DeedId }
  /**
   * A cure was accepted: the description is changed, and what has to be undone and done again is on the cards. `cures`
   * are the deeds of what was seen.
   */
  | {
      readonly kind: 'reworked';
      readonly say: string;
      readonly changes: readonly Change[];
      readonly rework: ReworkWritten;
      readonly cures: readonly DeedId[];
    }
  /** Another deed of the same outfit is taken back. */
  | { readonly kind: 'undone'; readonly deed: DeedId };

/** A deed as it lies in the ledger. `at` is milliseconds since 1970 UTC by the device's clock. */
export interface Deed {
  readonly id: DeedId;
  readonly device: string;
  readonly seq: number;
  readonly at: number;
  /**
   * Where the deed stands among the others, ms since 1970, when not at `at`: something newer was already in the ledger
   * as it was written, because this device's clock is behind or was set back. `at` stays what the clock said.
   */
  readonly place?: number;
  readonly outfit: string;
  readonly act: Act;
}
