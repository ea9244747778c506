/** Fields of whatever is buttoned in front. */
export const BUTTON_FIELDS = {
  thickness: { kind: 'length', usual: true, label: 'Thickness of a button', start: { in: '1/8', mm: '2.5' } },
  top: {
    kind: 'choice',
    usual: true,
    label: 'On top',
    options: [
      { value: 'left', label: 'the left front' },
      { value: 'right', label: 'the right front' },
    ],
    start: 'left',
  },
} as const;
