import type { Fields } from '../../fields/fields.ts';

/** What is asked about any strip cut from a tube of cloth. */
export const TUBE_FIELDS = {
  strip: {
    kind: 'length',
    label: 'Cut width',
    means: 'Of the strip, at right angles to its edge.',
    start: { in: '1 1/2', mm: '40' },
  },
  join: {
    kind: 'length',
    usual: true,
    label: 'Seam allowance',
    means: 'Of both seams.',
    start: { in: '1/4', mm: '6' },
  },
} as const satisfies Fields;
