import { BUTTON_FIELDS } from './button-fields.ts';

/** Fields of a band that stands round the neck. */
export const STAND_FIELDS = {
  closing: {
    kind: 'choice',
    label: 'In front',
    options: [
      { value: 'meets', label: 'its ends meet at the centre front' },
      { value: 'buttoned', label: 'goes over the lap and is buttoned' },
    ],
    start: 'meets',
  },
  rise: {
    kind: 'length',
    usual: true,
    label: 'Rise in front',
    means: 'How much its ends curve up, so that it leans to the neck; 0 for a straight band.',
    start: { in: '1/2', mm: '12' },
  },
  diameter: {
    kind: 'length',
    usual: true,
    label: 'Diameter of a button',
    means: 'Where it is buttoned.',
    start: { in: '1/2', mm: '11.5' },
  },
  ...BUTTON_FIELDS,
} as const;
