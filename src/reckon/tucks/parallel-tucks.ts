import { published } from '../../cloth/source.ts';
import { tuckedWidth } from '../../cloth/tucked-width.ts';
import { EASY_TUCK, tucks } from '../../cloth/tucks.ts';
import { good } from '../../length/result.ts';
import { reckoning } from '../reckoning.ts';
import { apartFigures } from './apart-figures.ts';
import { ROW_FIELDS } from './row-fields.ts';
import { doneStrip, flatAndFinished, tuckStrip } from './tuck-drawing.ts';

/** Parallel tucks of one depth, from their finished places. */
export const parallelTucks = reckoning({
  id: 'parallel-tucks',
  name: 'Parallel tucks',
  tells: 'Where to fold and stitch on the flat cloth, and how much cloth the tucks take.',
  group: 'Tucks and bands',
  fields: {
    count: { kind: 'number', label: 'How many', whole: true, start: '5' },
    depth: {
      kind: 'length',
      label: 'Depth of a tuck',
      means: 'From the stitching to the fold.',
      start: { in: '1/4', mm: '6' },
    },
    spacing: {
      kind: 'length',
      label: 'Spacing, finished',
      means: 'From one stitching line to the next.',
      start: { in: '3/4', mm: '20' },
    },
    ...ROW_FIELDS,
    after: {
      kind: 'length',
      label: 'After the last',
      means: 'From the last stitching to the far edge, finished; as before the first if left empty.',
      start: { in: '', mm: '' },
      optional: true,
    },
  },
  work: (given) => {
    const made = tucks(given);
    if (!made.ok) return made;
    const width = tuckedWidth(made.value, given.after);
    if (!width.ok) return width;
    const { finished, flat } = width.value;
    const marks = made.value.tucks;
    return good({
      figures: [
        { kind: 'length', name: 'Cloth to cut, without allowances', length: flat },
        { kind: 'length', name: 'Cloth that the tucks take', length: made.value.takeUp },
        { kind: 'length', name: 'Finished width', length: finished },
        ...apartFigures(marks),
      ],
      strips: [
        tuckStrip('Tucks, on the flat cloth', 'the edge', flat, marks),
        doneStrip('the edge', finished, marks),
      ],
      drawing: flatAndFinished(marks, flat, finished),
      sheets: [],
      advice: made.value.advice,
      assumed: [...made.value.assumed, ...width.value.assumed],
      sources: [
        published('Clothing for Women, Baldt', '1916', 'p. 400; seen as an excerpt'),
        EASY_TUCK.source,
      ],
    });
  },
});
