import { growingDepths } from '../../cloth/growing-depths.ts';
import { geometry, published } from '../../cloth/source.ts';
import { tuckedWidth } from '../../cloth/tucked-width.ts';
import { EASY_TUCK, tucks } from '../../cloth/tucks.ts';
import { longest, shortest, subtract, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { type ReckonedFigure, reckoning } from '../reckoning.ts';
import { ROW_FIELDS } from './row-fields.ts';
import { doneStrip, flatAndFinished, tuckStrip } from './tuck-drawing.ts';

/** Tucks whose depth grows or shrinks evenly from the first to the last. */
export const growingTucks = reckoning({
  id: 'growing-tucks',
  name: 'Tucks that grow',
  tells: 'Where to fold and stitch tucks that are deeper one than the other.',
  group: 'Tucks and bands',
  fields: {
    count: { kind: 'number', label: 'How many', whole: true, start: '5' },
    firstDepth: {
      kind: 'length',
      label: 'Depth of the first',
      means: 'From the stitching to the fold.',
      start: { in: '1/8', mm: '4' },
    },
    lastDepth: { kind: 'length', label: 'Depth of the last', start: { in: '5/8', mm: '16' } },
    spacing: {
      kind: 'length',
      label: 'Spacing, finished',
      means: 'From one stitching line to the next, the same throughout.',
      start: { in: '1', mm: '25' },
    },
    ...ROW_FIELDS,
  },
  blame: { depth: 'lastDepth' },
  work: ({ count, firstDepth, lastDepth, ...given }) => {
    const depth = growingDepths(firstDepth, lastDepth, count);
    if (!depth.ok) return depth;
    const made = tucks({ ...given, depth: depth.value });
    if (!made.ok) return made;
    const width = tuckedWidth(made.value);
    if (!width.ok) return width;
    const { finished, flat } = width.value;
    const marks = made.value.tucks;
    const showing = marks.flatMap((tuck) => tuck.showing ?? []);
    const figures: ReckonedFigure[] = [
      { kind: 'length', name: 'Cloth to cut, without allowances', length: flat },
      { kind: 'length', name: 'Cloth that the tucks take', length: made.value.takeUp },
      { kind: 'length', name: 'Finished width', length: finished },
      {
        kind: 'length',
        name: lastDepth < firstDepth ? 'Each shallower by' : 'Each deeper by',
        length: subtract(
          longest(depth.value[0] ?? zero, depth.value[1] ?? zero),
          shortest(depth.value[0] ?? zero, depth.value[1] ?? zero),
        ),
      },
      { kind: 'length', name: 'Most that shows between', length: longest(showing[0] ?? zero, ...showing) },
      { kind: 'length', name: 'Least that shows between', length: shortest(showing[0] ?? zero, ...showing) },
    ];
    return good({
      figures,
      strips: [
        tuckStrip('Growing tucks, on the flat cloth', 'the edge', flat, marks),
        doneStrip('the edge', finished, marks),
      ],
      drawing: flatAndFinished(marks, flat, finished),
      sheets: [],
      advice: made.value.advice,
      assumed: [
        'Each differs from the last by the same step.',
        ...made.value.assumed,
        ...width.value.assumed,
      ],
      sources: [
        published('Clothing for Women, Baldt', '1916', 'p. 400; seen as an excerpt'),
        geometry,
        EASY_TUCK.source,
      ],
    });
  },
});
