import { practice, published } from '../../src/cloth/source.ts';
import { tucks } from '../../src/cloth/tucks.ts';
import { add, mm, nm, zero } from '../../src/length/length.ts';
import { good } from '../../src/length/result.ts';
import { box, line, place, sheet } from '../../src/paper/drawing.ts';
import { type Reckoning, reckoning } from '../../src/reckon/reckoning.ts';

/** Two reckonings for tests of the screen, so that a better choice of figures in the real ones breaks nothing here. */
const parallel = reckoning({
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
    spacing: { kind: 'length', label: 'Spacing, finished', start: { in: '3/4', mm: '20' } },
    first: { kind: 'length', label: 'First stitching line', start: { in: '1', mm: '25' } },
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
    const span = add(marks.at(-1)?.secondStitching ?? zero, given.first);
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
            { at: tuck.firstStitching, name: `tuck ${i + 1}, stitch` },
            { at: tuck.fold, name: `tuck ${i + 1}, fold` },
            { at: tuck.secondStitching, name: `tuck ${i + 1}, stitch` },
          ]),
        },
      ],
      drawing: sheet('Tucks, flat', [
        box('body', zero, zero, span, mm(40)),
        ...marks.map(({ fold }) => line('fold', place(fold, zero), place(fold, mm(40)))),
      ]),
      sheets: [],
      advice: made.value.advice,
      assumed: made.value.assumed,
      sources: [published('Clothing for Women, Baldt', '1916', 'p. 400; seen as an excerpt')],
    });
  },
});

const buttons = reckoning({
  id: 'a-buttonhole',
  name: 'A buttonhole',
  tells: 'How long to cut it.',
  group: 'Buttons and holes',
  fields: {
    wide: { kind: 'length', label: 'Button across', start: { in: '1/2', mm: '12' } },
    thick: { kind: 'length', label: 'Thickness', start: { in: '1/8', mm: '3' } },
  },
  work: ({ wide, thick }) =>
    good({
      figures: [{ kind: 'length', name: 'Slit', length: nm(wide + thick) }],
      strips: [],
      drawing: sheet('Slit', [line('cut', place(zero, zero), place(nm(wide + thick), zero))]),
      sheets: [],
      advice: [],
      assumed: [],
      sources: [practice],
    }),
});

/** Stands in for the list of the app. */
export const RECKONINGS: readonly Reckoning[] = [parallel, buttons];

/** As the app's own. */
export const reckoningOf = (id: string): Reckoning | undefined => RECKONINGS.find((one) => one.id === id);
