import type { LengthField } from '../../fields/fields.ts';

/** A field for a length, with what stands there first in either rule. */
export const lengthField = (label: string, inch: string, metric: string, means?: string) =>
  ({
    kind: 'length',
    label,
    start: { in: inch, mm: metric },
    ...(means === undefined ? {} : { means }),
  }) as const satisfies LengthField;

/** The same, with a usual answer that is asked only when the maker wants another. */
export const usualLength = (label: string, inch: string, metric: string, means?: string) =>
  ({ ...lengthField(label, inch, metric, means), usual: true }) as const satisfies LengthField;

/** How a sleeve is held up. */
export const HELD_BY = {
  kind: 'choice',
  label: 'Worn',
  options: [
    { value: 'armhole', label: 'set into an armhole' },
    { value: 'elastic', label: 'detached, elastic at its top' },
    { value: 'head', label: 'detached, its top left for a stretch head' },
  ],
  start: 'elastic',
} as const;

/** Where a sleeve is put; one that is worn detached does without. */
export const ARMHOLE = {
  kind: 'edges',
  label: 'the armhole',
  means: 'Front first, then back. Leave it out for a detached sleeve.',
  like: ['armhole'],
  ring: true,
  optional: true,
} as const;

/** In which state of the garment a sleeve is set in. */
export const SETTING = {
  kind: 'choice',
  label: 'Set in',
  usual: true,
  options: [
    { value: 'round', label: 'in the round, once side and sleeve are closed' },
    { value: 'flat', label: 'flat, before the side seam' },
  ],
  start: 'round',
} as const;

/** Figures that every sleeve has and few makers change. */
export const SLEEVE_USUAL = {
  elastic: usualLength('Width of the elastic', '3/8', '10', 'Where elastic holds it.'),
  cuffDepth: usualLength(
    'Depth of the cuff',
    '2 1/2',
    '65',
    'Where a cuff follows; it is part of the length.',
  ),
  opening: usualLength(
    'Opening above the cuff',
    '2 1/2',
    '65',
    'Left in the sleeve seam, where a cuff follows.',
  ),
  allowance: usualLength('Seam allowance', '1/2', '12'),
} as const;
