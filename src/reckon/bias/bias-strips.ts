import { longestBias } from '../../cloth/bias.ts';
import { biasStrips } from '../../cloth/bias-strips.ts';
import { refusal } from '../../cloth/refusal.ts';
import { geometry, published, type Source } from '../../cloth/source.ts';
import { bad, good } from '../../length/result.ts';
import { reckoning } from '../reckoning.ts';
import { edgeMarks, MOST_LINES, stripFigures, stripsDrawing } from './strip-lines.ts';

/** How a shortest piece is reckoned with. */
export const SHORTEST_PIECE: Source = published(
  'NIMI Dress Making, trade practical',
  'about 2024',
  'p. 220; seen as an excerpt',
);

/** Strips from a piece of cloth that is at hand. */
export const stripsFromCloth = reckoning({
  id: 'bias-strips',
  name: 'Bias strips from cloth',
  tells: 'How long a joined strip a piece of cloth gives, and where to rule the lines.',
  group: 'Bias',
  fields: {
    across: {
      kind: 'length',
      label: 'Cloth, across',
      means: 'From selvage to selvage, or that way of the threads.',
      start: { in: '20', mm: '500' },
    },
    along: {
      kind: 'length',
      label: 'Cloth, along',
      means: 'Along the selvage.',
      start: { in: '16', mm: '400' },
    },
    strip: {
      kind: 'length',
      label: 'Cut width',
      means: 'Of a strip, at right angles to its edge.',
      start: { in: '1 1/2', mm: '40' },
    },
    needed: {
      kind: 'length',
      label: 'Length you need',
      means: 'Empty for all that the cloth gives.',
      start: { in: '', mm: '' },
      optional: true,
    },
    shortest: {
      kind: 'length',
      usual: true,
      label: 'Shortest piece',
      means: 'Along its shorter edge; shorter ones are left over at the corners.',
      start: { in: '4', mm: '100' },
    },
    join: { kind: 'length', usual: true, label: 'Allowance of joins', start: { in: '1/4', mm: '6' } },
  },
  work: ({ needed, ...given }) => {
    const { across, along, strip } = given;
    const wide = 'Give a wider strip or less cloth.';
    if (strip > 0 && (across + along) / (strip * Math.SQRT2) > MOST_LINES)
      return bad(refusal('strip', `This is more than ${MOST_LINES} strips.`, wide));
    const made = biasStrips({ ...given, ...(needed === undefined ? {} : { needed }) });
    if (!made.ok) return made;
    const single = longestBias({ across, along, strip });
    return good({
      figures: [
        { kind: 'length', name: 'Joined strip', length: made.value.total },
        ...stripFigures(made.value),
        ...(single.ok
          ? [
              {
                kind: 'length' as const,
                name: 'Longest without a join, ends square',
                length: single.value,
              },
            ]
          : []),
      ],
      strips: edgeMarks(made.value, across, along),
      drawing: stripsDrawing(made.value, across, along),
      sheets: [],
      advice: [],
      assumed: made.value.assumed,
      sources: [SHORTEST_PIECE, geometry],
    });
  },
});
