import { continuousBias } from '../../cloth/continuous-bias.ts';
import { refusal } from '../../cloth/refusal.ts';
import { geometry } from '../../cloth/source.ts';
import { bad, good } from '../../length/result.ts';
import { reckoning } from '../reckoning.ts';
import { CLOSING, MOST_ROUNDS, tubeDrawing, tubeFigures, tubeMarks } from './tube.ts';
import { TUBE_FIELDS } from './tube-fields.ts';

/** One long strip cut round and round a tube. */
export const continuousStrip = reckoning({
  id: 'continuous-strip',
  name: 'Continuous strip',
  tells: 'One long strip cut round a tube of cloth: the triangle, the lines and what it gives.',
  group: 'Bias',
  fields: {
    across: { kind: 'length', label: 'Cloth, across', start: { in: '20', mm: '500' } },
    along: {
      kind: 'length',
      label: 'Cloth, along',
      means: 'Along the selvage.',
      start: { in: '12', mm: '300' },
    },
    ...TUBE_FIELDS,
  },
  work: (given) => {
    const { across, along, strip, join } = given;
    const wide = 'Give a wider strip or a smaller piece of cloth.';
    if (strip > 0 && Math.max(across, along) / strip > MOST_ROUNDS)
      return bad(refusal('strip', `The strip would go round more than ${MOST_ROUNDS} times.`, wide));
    const made = continuousBias(given);
    if (!made.ok) return made;
    return good({
      figures: tubeFigures(made.value),
      strips: tubeMarks(made.value, across, along),
      drawing: tubeDrawing(made.value, across, along, join),
      sheets: [],
      advice: CLOSING,
      assumed: made.value.assumed,
      sources: [geometry],
    });
  },
});
