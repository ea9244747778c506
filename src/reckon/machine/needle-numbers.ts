import { metricNumber } from '../../cloth/needle-numbers.ts';
import { NEEDLE_BY_WEIGHT, otherNumber } from '../../cloth/needles.ts';
import { good } from '../../length/result.ts';
import { sheet } from '../../paper/drawing.ts';
import { reckoning } from '../reckoning.ts';
import { needleDrawn } from './needle-drawing.ts';

/** One number of a needle from the other. */
export const needleNumbers = reckoning({
  id: 'needle-numbers',
  name: 'Needle numbers',
  tells: 'The other number of a needle, and how thick its blade is.',
  group: 'Machine and iron',
  fields: {
    number: { kind: 'number', label: 'Number', whole: true, start: '80' },
    which: {
      kind: 'choice',
      label: 'Which number',
      options: [
        { value: 'metric', label: 'metric, such as 80' },
        { value: 'other', label: 'the other, such as 12' },
      ],
      start: 'metric',
    },
  },
  blame: { metric: 'number', other: 'number' },
  work: ({ number, which }) => {
    const metric = which === 'metric' ? good(number) : metricNumber(number);
    if (!metric.ok) return metric;
    const other = otherNumber(metric.value);
    if (!other.ok) return other;
    return good({
      figures: [
        { kind: 'words', name: 'Both numbers', words: `${metric.value}/${other.value}` },
        { kind: 'words', name: 'Thickness of the blade', words: `${metric.value / 100} mm` },
      ],
      strips: [],
      drawing: sheet('Needle', needleDrawn({ metric: metric.value, point: 'round' })),
      sheets: [],
      advice: [],
      assumed: ['The eye is drawn two fifths as wide as the blade.'],
      sources: [NEEDLE_BY_WEIGHT.source],
    });
  },
});
