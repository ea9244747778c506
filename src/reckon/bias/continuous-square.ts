import { continuousSquare } from '../../cloth/continuous-bias.ts';
import { refusal } from '../../cloth/refusal.ts';
import { geometry } from '../../cloth/source.ts';
import { bad, good } from '../../length/result.ts';
import { reckoning } from '../reckoning.ts';
import { CLOSING, MOST_ROUNDS, tubeDrawing, tubeFigures, tubeMarks } from './tube.ts';
import { TUBE_FIELDS } from './tube-fields.ts';

/** The smallest square for a continuous strip of a wanted length. */
export const squareForStrip = reckoning({
  id: 'square-for-a-strip',
  name: 'Square for a strip',
  tells: 'The smallest square of cloth that gives a continuous strip as long as you need.',
  group: 'Bias',
  fields: {
    needed: { kind: 'length', label: 'Length you need', start: { in: '4 yd', mm: '4 m' } },
    ...TUBE_FIELDS,
  },
  blame: { across: 'needed', along: 'needed' },
  work: (given) => {
    const { needed, strip, join } = given;
    // A square of n rounds gives no less than about 2 n n widths of strip.
    const cure = 'Give a wider strip or a shorter length.';
    if (strip > 0 && needed / strip > MOST_ROUNDS ** 2)
      return bad(refusal('strip', `The strip would go round more than ${MOST_ROUNDS} times.`, cure));
    const made = continuousSquare(given);
    if (!made.ok) return made;
    const { side } = made.value;
    return good({
      figures: [{ kind: 'length', name: 'Side of the square', length: side }, ...tubeFigures(made.value)],
      strips: tubeMarks(made.value, side, side),
      drawing: tubeDrawing(made.value, side, side, join),
      sheets: [],
      advice: CLOSING,
      assumed: made.value.assumed.filter((says) => !says.startsWith('The longer side')),
      sources: [geometry],
    });
  },
});
