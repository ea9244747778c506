/** Why a request cannot be sewn: which input is at fault, what is wrong, and what would do instead. */
export interface Refusal {
  /** Name of the input at fault, as the function's own input type spells it. */
  readonly field: string;
  /** What is wrong, one plain sentence. */
  readonly wrong: string;
  /** What would be right, one plain sentence. */
  readonly cure: string;
}

/** Builds a {@link Refusal}. */
export const refusal = (field: string, wrong: string, cure: string): Refusal => ({ field, wrong, cure });
