/** What a function gives back when the request may not be possible: a value, or what is wrong. */
export type Result<T, E> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: E };

/** A value that was possible. */
export const good = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });

/** A request that was refused, with what is wrong. */
export const bad = <E>(error: E): { readonly ok: false; readonly error: E } => ({ ok: false, error });
