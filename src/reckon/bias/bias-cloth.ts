import { biasCloth } from '../../cloth/bias-strips.ts';
import { refusal } from '../../cloth/refusal.ts';
import { geometry } from '../../cloth/source.ts';
import { bad, good } from '../../length/result.ts';
import { reckoning } from '../reckoning.ts';
import { SHORTEST_PIECE } from './bias-strips.ts';
import { edgeMarks, MOST_LINES, stripFigures, stripsDrawing } from './strip-lines.ts';

/** The cloth that a wanted length of strip takes. */
export const clothForStrips = reckoning({
  id: 'cloth-for-bias-strips',
  name: 'Cloth for bias strips',
  tells: 'The shortest length of cloth that gives the strip you need, and where to rule the lines.',
  group: 'Bias',
  fields: {
    needed: { kind: 'length', label: 'Length you need', start: { in: '3 yd', mm: '3 m' } },
    strip: {
      kind: 'length',
      label: 'Cut width',
      means: 'Of a strip, at right angles to its edge.',
      start: { in: '1 1/2', mm: '40' },
    },
    across: {
      kind: 'length',
      label: 'Cloth width',
      means: 'Between the selvages.',
      start: { in: '45', mm: '1150' },
    },
    shortest: {
      kind: 'length',
      usual: true,
      label: 'Shortest piece',
      means: 'Along its shorter edge; longer ones take more cloth and fewer joins.',
      start: { in: '10', mm: '250' },
    },
    join: { kind: 'length', usual: true, label: 'Allowance of joins', start: { in: '1/4', mm: '6' } },
  },
  blame: { along: 'needed' },
  work: (given) => {
    const made = biasCloth(given);
    if (!made.ok) return made;
    const { along, total, pieces, assumed } = made.value;
    const cure = 'Give a length for one piece of work.';
    if (pieces.length > MOST_LINES)
      return bad(refusal('needed', `This is more than ${MOST_LINES} strips.`, cure));
    return good({
      figures: [
        { kind: 'length', name: 'Length of cloth', length: along },
        { kind: 'length', name: 'Joined strip', length: total },
        ...stripFigures(made.value),
      ],
      strips: edgeMarks(made.value, given.across, along),
      drawing: stripsDrawing(made.value, given.across, along),
      sheets: [],
      advice: [],
      assumed,
      sources: [SHORTEST_PIECE, geometry],
    });
  },
});
