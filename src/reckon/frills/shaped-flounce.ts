import { NOTCHES_APART, SHORT_OF_SEAM } from '../../cloth/ease-notches.ts';
import { flounce } from '../../cloth/flounce.ts';
import { geometry, published } from '../../cloth/source.ts';
import { good } from '../../length/result.ts';
import { reckoning } from '../reckoning.ts';
import { RING_FIELDS } from './ring-fields.ts';
import { inCircles, ringsMade } from './ring-figures.ts';

/** A flounce known by its two edges and its depth. */
export const shapedFlounce = reckoning({
  id: 'shaped-flounce',
  name: 'Flounce from its edges',
  tells: 'The radii and rings of a flounce whose upper and lower edge you know.',
  group: 'Frills',
  fields: {
    top: {
      kind: 'length',
      label: 'Upper edge',
      means: 'The finished seam that it is set to.',
      start: { in: '24', mm: '600' },
    },
    bottom: {
      kind: 'length',
      label: 'Lower edge',
      means: 'The whole finished lower edge.',
      start: { in: '48', mm: '1200' },
    },
    depth: {
      kind: 'length',
      label: 'Finished depth',
      start: { in: '6', mm: '150' },
    },
    ...RING_FIELDS,
  },
  blame: { seam: 'top', circles: 'bottom' },
  work: ({ ends, ...given }) => {
    const closed = ends === 'closed';
    const made = flounce({ ...given, closed });
    if (!made.ok) return made;
    const { circles, parts } = made.value;
    const rings = ringsMade({ ...given, frill: made.value, circles, parts, seam: given.top, closed });
    if (!rings.ok) return rings;
    const { figures, ...rest } = rings.value;
    return good({
      ...rest,
      figures: [...figures, { kind: 'words', name: 'All together', words: inCircles(circles) }],
      advice: [],
      assumed: [...made.value.assumed, 'Allowances at slits are measured along the seam line.'],
      sources: [
        published(
          'Clothing for Women, Baldt',
          '1916',
          'draft of circular flounce, fig. 56; seen as an excerpt',
        ),
        geometry,
        NOTCHES_APART.source,
        SHORT_OF_SEAM.source,
      ],
    });
  },
});
