import { COVER, coveredButton as cover, LINES_PER_INCH } from '../../cloth/covered-button.ts';
import { nm, times, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { arc, line, place, sheet } from '../../paper/drawing.ts';
import { reckoning } from '../reckoning.ts';

/** The circle of cloth for a button known by its lines. */
export const coveredButton = reckoning({
  id: 'covered-button',
  name: 'Covered button',
  tells: 'The circle of cloth to cut, and how wide the button is with its cover.',
  group: 'Buttons and holes',
  fields: {
    lines: { kind: 'number', label: 'Size in lines', means: '40 lines is 1 in.', start: '24' },
    cloth: {
      kind: 'length',
      label: 'Thickness of cloth',
      means: 'Counts on bulky cloth; may be left empty.',
      start: { in: '', mm: '' },
      optional: true,
    },
  },
  work: ({ lines, cloth }) => {
    const made = cover(cloth === undefined ? { lines } : { lines, cloth });
    if (!made.ok) return made;
    const { form, diameter, circle, advice, assumed } = made.value;
    const middle = place(zero, zero);
    const r = times(circle, 1 / 2);
    const drawn = [
      arc('cut', middle, r),
      arc('fold', middle, times(diameter, 1 / 2)),
      line('grain', place(zero, nm(-r * 0.7)), place(zero, nm(r * 0.7))),
    ];
    return good({
      figures: [
        { kind: 'length', name: 'Circle of cloth, across', length: circle },
        { kind: 'length', name: 'Form, across', length: form },
        { kind: 'length', name: 'Covered button, across', length: diameter },
      ],
      strips: [],
      drawing: sheet('Circle and button', drawn),
      sheets: [
        sheet('Cover of a button', drawn, [
          `${lines} lines.`,
          'Cut one for each button.',
          'The inner ring is the covered button.',
        ]),
      ],
      advice,
      assumed,
      sources: [LINES_PER_INCH.source, COVER.source],
    });
  },
});
