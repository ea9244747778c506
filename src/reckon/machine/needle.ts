import { BALL_POINT, NEEDLE_BY_WEIGHT, needleFor } from '../../cloth/needles.ts';
import { good } from '../../length/result.ts';
import { sheet } from '../../paper/drawing.ts';
import { reckoning } from '../reckoning.ts';
import {
  MAKE_FIELD,
  OTHER_MAKE_FIELD,
  OTHER_WEIGHT_FIELD,
  sewnCloths,
  WEIGHT_FIELD,
} from './cloth-fields.ts';
import { needleDrawn } from './needle-drawing.ts';

/** The needle for the cloths of one seam. */
export const needle = reckoning({
  id: 'needle',
  name: 'Needle for a cloth',
  tells: 'Which size of needle, by both of its numbers, and with which point.',
  group: 'Machine and iron',
  fields: {
    weight: WEIGHT_FIELD,
    make: MAKE_FIELD,
    otherWeight: OTHER_WEIGHT_FIELD,
    otherMake: OTHER_MAKE_FIELD,
  },
  blame: { cloths: 'weight' },
  work: (chosen) => {
    const made = needleFor(sewnCloths(chosen));
    if (!made.ok) return made;
    const { metric, other, point, assumed } = made.value;
    return good({
      figures: [
        { kind: 'words', name: 'Needle', words: `${metric}/${other}` },
        {
          kind: 'words',
          name: 'Point',
          words: point === 'ball' ? 'ball point, for knits' : 'round point',
        },
        { kind: 'words', name: 'Thickness of the blade', words: `${metric / 100} mm` },
      ],
      strips: [],
      drawing: sheet('Needle', needleDrawn(made.value)),
      sheets: [],
      advice: [],
      assumed: [...assumed, 'The eye is drawn two fifths as wide as the blade.'],
      sources: [NEEDLE_BY_WEIGHT.source, ...(point === 'ball' ? [BALL_POINT] : [])],
    });
  },
});
