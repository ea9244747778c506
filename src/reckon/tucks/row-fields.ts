import type { Fields } from '../../fields/fields.ts';

/** Where a row of tucks begins and how it is pressed. */
export const ROW_FIELDS = {
  first: {
    kind: 'length',
    label: 'First stitching line',
    means: 'From the edge that you measure from, finished.',
    start: { in: '1', mm: '25' },
  },
  pressed: {
    kind: 'choice',
    usual: true,
    label: 'Pressed',
    options: [
      { value: 'away', label: 'away from the edge' },
      { value: 'toward', label: 'towards the edge' },
    ],
    start: 'away',
  },
} as const satisfies Fields;
