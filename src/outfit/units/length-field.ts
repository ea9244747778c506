import type { LengthField } from '../../fields/fields.ts';

/** A length that is asked at once, with what stands there first in either rule. */
export const asked = (label: string, inch: string, mm: string, means?: string): LengthField => ({
  kind: 'length',
  label,
  start: { in: inch, mm },
  ...(means === undefined ? {} : { means }),
});

/** A length with a usual answer, asked only when the maker wants another. */
export const usually = (
  label: string,
  inch: string,
  mm: string,
  means?: string,
): LengthField & { readonly usual: true } => ({ ...asked(label, inch, mm, means), usual: true });

/** A length that may stay empty. */
export const perhaps = (label: string, means: string): LengthField & { readonly optional: true } => ({
  ...asked(label, '', '', means),
  optional: true,
});
