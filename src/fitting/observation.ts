import type { Length } from '../length/length.ts';

/** Something seen at a try-on, as the maker noted it. */
export interface Observation {
  /** Name of its deed. */
  readonly id: string;
  readonly garment: string;
  /** Id of the {@link Entry}. */
  readonly entry: string;
  readonly side: 'both' | 'left' | 'right';
  /** What was measured, as the entry asks for it; none where it was not measured. */
  readonly amount?: Length;
  /** Id of the cause that a test has shown to be the one. */
  readonly sure?: string;
  /** Ids of causes that tests have ruled out. */
  readonly out: readonly string[];
}
