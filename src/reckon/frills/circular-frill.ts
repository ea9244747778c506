import { circleFrill } from '../../cloth/circles.ts';
import { NOTCHES_APART, SHORT_OF_SEAM } from '../../cloth/ease-notches.ts';
import { ringParts } from '../../cloth/flounce.ts';
import { geometry } from '../../cloth/source.ts';
import { good } from '../../length/result.ts';
import { reckoning } from '../reckoning.ts';
import { RING_FIELDS } from './ring-fields.ts';
import { ringsMade } from './ring-figures.ts';

/** A frill of whole circles or parts of one, from the seam that it is set to. */
export const circularFrill = reckoning({
  id: 'circular-frill',
  name: 'Circular frill',
  tells: 'The radii to cut, the rings and their joins, and the pattern at true size.',
  group: 'Frills',
  fields: {
    seam: {
      kind: 'length',
      label: 'Seam length',
      means: 'The finished edge that the frill is set to.',
      start: { in: '9', mm: '230' },
    },
    depth: {
      kind: 'length',
      label: 'Finished depth',
      means: 'From the seam to the finished lower edge.',
      start: { in: '3', mm: '75' },
    },
    circles: {
      kind: 'number',
      label: 'How many circles',
      means: 'More circles ripple more; half a circle is 0.5.',
      start: '1',
    },
    ...RING_FIELDS,
  },
  work: ({ ends, ...given }) => {
    const made = circleFrill(given);
    if (!made.ok) return made;
    const frill = made.value;
    const { circles } = given;
    const parts = ringParts(circles, frill.cutInside, frill.cutOutside);
    const rings = ringsMade({ ...given, frill, parts, closed: ends === 'closed' });
    if (!rings.ok) return rings;
    return good({
      ...rings.value,
      advice: [],
      assumed: [...frill.assumed, 'Allowances at slits are measured along the seam line.'],
      sources: [geometry, NOTCHES_APART.source, SHORT_OF_SEAM.source],
    });
  },
});
