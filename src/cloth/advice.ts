import type { Source } from './source.ts';

/** A figure together with where it comes from. */
export interface Sourced<T> {
  readonly value: T;
  readonly source: Source;
}

/** Something a maker had better know before starting; never a reason to refuse. */
export interface Advice {
  /** One plain sentence. */
  readonly say: string;
  readonly source: Source;
}

/** Builds an {@link Advice}. */
export const advise = (say: string, source: Source): Advice => ({ say, source });
