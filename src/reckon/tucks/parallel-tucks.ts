import { published } from '../../cloth/source.ts';
import { EASY_TUCK, tucks } from '../../cloth/tucks.ts';
import { add, mm, nm, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { box, line, place, sheet } from '../../paper/drawing.ts';
import { reckoning } from '../reckoning.ts';

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
    first: {
      kind: 'length',
      label: 'First stitching line',
      means: 'From the edge that you measure from, finished.',
      start: { in: '1', mm: '25' },
    },
    pressed: {
      kind: 'choice',
      label: 'Pressed',
      options: [
        { value: 'away', label: 'away from the edge' },
        { value: 'toward', label: 'towards the edge' },
      ],
      start: 'away',
    },
  },
  work: (given) => {
    const made = tucks(given);
    if (!made.ok) return made;
    const marks = made.value.tucks;
    const last = marks.at(-1);
    const span = add(last?.secondStitching ?? zero, given.first);
    const high = nm(Math.max(span / 2, mm(40)));
    const down = (x: typeof span) => [place(x, zero), place(x, high)] as const;
    return good({
      figures: [
        { kind: 'length', name: 'Cloth that the tucks take', length: made.value.takeUp },
        ...marks.map((tuck, i) => ({
          kind: 'length' as const,
          name: `Fold ${i + 1}, on the flat cloth`,
          length: tuck.fold,
        })),
      ],
      strips: [
        {
          name: 'Tucks, on the flat cloth',
          from: 'the edge',
          span,
          marks: marks.flatMap((tuck, i) => [
            { at: tuck.firstStitching, name: `tuck ${i + 1}, stitch`, stroke: 'stitch' as const },
            { at: tuck.fold, name: `tuck ${i + 1}, fold`, stroke: 'fold' as const },
            { at: tuck.secondStitching, name: `tuck ${i + 1}, stitch`, stroke: 'stitch' as const },
          ]),
        },
      ],
      drawing: sheet('Tucks, flat', [
        box('body', zero, zero, span, high),
        ...marks.flatMap((tuck) => [
          line('stitch', ...down(tuck.firstStitching)),
          line('fold', ...down(tuck.fold)),
          line('stitch', ...down(tuck.secondStitching)),
        ]),
      ]),
      sheets: [],
      advice: made.value.advice,
      assumed: made.value.assumed,
      sources: [
        published('Clothing for Women, Baldt', '1916', 'p. 400; seen as an excerpt'),
        EASY_TUCK.source,
      ],
    });
  },
});
