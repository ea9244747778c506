import { published } from '../../cloth/source.ts';
import { TUCK_COUNT_SOURCE, tuckCount } from '../../cloth/tuck-count.ts';
import { EASY_TUCK, tucks } from '../../cloth/tucks.ts';
import { good } from '../../length/result.ts';
import { reckoning } from '../reckoning.ts';
import { apartFigures } from './apart-figures.ts';
import { doneStrip, flatAndFinished, tuckStrip } from './tuck-drawing.ts';

/** How many tucks fill a finished width, evened over it. */
export const tucksInWidth = reckoning({
  id: 'tucks-in-width',
  name: 'Tucks to fit a width',
  tells: 'How many tucks fill a finished width, their spacing evened, and where to mark them.',
  group: 'Tucks and bands',
  fields: {
    width: { kind: 'length', label: 'Finished width', start: { in: '8', mm: '200' } },
    margin: {
      kind: 'length',
      label: 'Plain at each side',
      means: 'From the finished edge to the stitching next to it.',
      start: { in: '3/4', mm: '20' },
    },
    depth: {
      kind: 'length',
      label: 'Depth of a tuck',
      means: 'From the stitching to the fold.',
      start: { in: '1/4', mm: '6' },
    },
    showing: {
      kind: 'length',
      label: 'Showing between',
      means: 'From a fold to the next stitching, about; it is evened.',
      start: { in: '1/2', mm: '12' },
    },
    round: {
      kind: 'choice',
      usual: true,
      label: 'Evened to',
      options: [
        { value: 'nearest', label: 'the nearest number' },
        { value: 'up', label: 'more tucks' },
        { value: 'down', label: 'fewer tucks' },
      ],
      start: 'nearest',
    },
    pressed: {
      kind: 'choice',
      usual: true,
      label: 'Pressed',
      options: [
        { value: 'away', label: 'away from the edge' },
        { value: 'toward', label: 'towards the edge' },
      ],
      start: 'away',
    },
  },
  blame: { count: 'showing', spacing: 'showing', first: 'margin' },
  work: ({ pressed, ...given }) => {
    const found = tuckCount(given);
    if (!found.ok) return found;
    const { count, spacing, takeUp, flat } = found.value;
    const made = tucks({ count, depth: given.depth, spacing, first: given.margin, pressed });
    if (!made.ok) return made;
    const marks = made.value.tucks;
    return good({
      figures: [
        { kind: 'number', name: 'How many', number: count, of: 'tucks' },
        { kind: 'length', name: 'Spacing, finished', length: spacing },
        { kind: 'length', name: 'Cloth to cut, without allowances', length: flat },
        { kind: 'length', name: 'Cloth that the tucks take', length: takeUp },
        ...apartFigures(marks),
      ],
      strips: [
        tuckStrip('Tucks to fit, on the flat cloth', 'the edge', flat, marks),
        doneStrip('the edge', given.width, marks),
      ],
      drawing: flatAndFinished(marks, flat, given.width),
      sheets: [],
      advice: made.value.advice,
      assumed: [
        `Before evening, ${found.value.spacesWanted.toFixed(1)} spaces.`,
        'The same plain cloth at both sides, from edge to stitching.',
        ...made.value.assumed,
      ],
      sources: [
        TUCK_COUNT_SOURCE,
        published('Clothing for Women, Baldt', '1916', 'p. 400; seen as an excerpt'),
        EASY_TUCK.source,
      ],
    });
  },
});
