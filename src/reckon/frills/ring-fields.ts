import type { Fields } from '../../fields/fields.ts';

/** What is asked about any frill cut from rings: its ends and its allowances. */
export const RING_FIELDS = {
  ends: {
    kind: 'choice',
    usual: true,
    label: 'Ends',
    options: [
      { value: 'closed', label: 'joined into a ring' },
      { value: 'open', label: 'left open' },
    ],
    start: 'closed',
  },
  allowance: {
    kind: 'length',
    usual: true,
    label: 'Allowance at the seam',
    start: { in: '3/8', mm: '10' },
  },
  hem: {
    kind: 'length',
    usual: true,
    label: 'Hem allowance',
    means: 'At the outer edge; 0 where it is bound or left.',
    start: { in: '1/4', mm: '6' },
  },
  slit: {
    kind: 'length',
    usual: true,
    label: 'Allowance at slits',
    means: 'On each side of the slit in each ring, where rings are joined or hemmed.',
    start: { in: '3/8', mm: '10' },
  },
} as const satisfies Fields;
