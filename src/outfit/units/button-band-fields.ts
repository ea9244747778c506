import { BUTTON_FIELDS } from './button-fields.ts';

/** Figures of a button band, those that every front needs first. */
export const BAND_FIELDS = {
  buttons: { kind: 'number', whole: true, label: 'How many buttons', start: '7' },
  diameter: { kind: 'length', label: 'Diameter of a button', start: { in: '1/2', mm: '11.5' } },
  width: {
    kind: 'length',
    label: 'Width of the band',
    means: 'Finished; this is the second turn.',
    start: { in: '1', mm: '25' },
  },
  first: {
    kind: 'length',
    label: 'First button',
    means: 'From the top of the opening down.',
    start: { in: '5/8', mm: '15' },
  },
  last: {
    kind: 'length',
    label: 'Last button',
    means: 'From the top of the opening down.',
    start: { in: '15', mm: '380' },
  },
  held: {
    kind: 'length',
    optional: true,
    label: 'One at the chest',
    means: 'From the top of the opening to the level where it pulls most; the others are spaced from it.',
    start: { in: '', mm: '' },
  },
  firstTurn: {
    kind: 'length',
    usual: true,
    label: 'First turn',
    means: 'Narrow; hides the cut edge.',
    start: { in: '1/2', mm: '10' },
  },
  thickness: BUTTON_FIELDS.thickness,
  direction: {
    kind: 'choice',
    usual: true,
    label: 'Buttonholes',
    options: [
      { value: 'along', label: 'along the band' },
      { value: 'across', label: 'across the band' },
    ],
    start: 'along',
  },
  top: BUTTON_FIELDS.top,
  end: {
    kind: 'choice',
    usual: true,
    label: 'Top of the band',
    options: [
      { value: 'closed', label: 'closed, as far as the centre front' },
      { value: 'open', label: 'left for a stand, a facing or a binding' },
    ],
    start: 'closed',
  },
} as const;
