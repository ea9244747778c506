import { refusal } from '../../cloth/refusal.ts';
import { ribbonHoles as holes, RIBBON_EASE } from '../../cloth/ribbon-holes.ts';
import { geometry } from '../../cloth/source.ts';
import { add, nm, times, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { box, line, place, sheet } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import { reckoning } from '../reckoning.ts';
import { slot } from './slot-drawing.ts';

/** More than this is neither sewn nor drawn. */
const MOST_HOLES = 3000;

/** Rows of holes round a tube, for ribbons to run in and out. */
export const ribbonHoles = reckoning({
  id: 'ribbon-holes',
  name: 'Ribbon holes round a tube',
  tells: 'Even rows of buttonholes for ribbon, with the seam kept free, and the ribbon to cut.',
  group: 'Buttons and holes',
  fields: {
    round: {
      kind: 'length',
      label: 'Way round, finished',
      means: 'Where the holes are, from seam to seam.',
      start: { in: '9', mm: '230' },
    },
    apart: { kind: 'length', label: 'Holes apart, about', start: { in: '1', mm: '25' } },
    ribbon: { kind: 'length', label: 'Ribbon, width', start: { in: '3/8', mm: '10' } },
    rows: { kind: 'number', usual: true, label: 'Rows', whole: true, start: '1' },
    level: {
      kind: 'length',
      label: 'First row, from edge',
      means: 'To the middle of its holes; further rows lie as far apart again.',
      start: { in: '1', mm: '25' },
    },
    free: {
      kind: 'length',
      usual: true,
      label: 'Free beside the seam',
      means: 'On each side: the allowance and the width of the foot.',
      start: { in: '3/8', mm: '10' },
    },
    tie: { kind: 'length', label: 'Ribbon to tie', means: 'At each end.', start: { in: '10', mm: '250' } },
  },
  blame: { levels: 'level' },
  work: ({ rows, level, ...given }) => {
    if (rows < 1 || rows > 50) {
      return bad(refusal('rows', 'This is not a number of rows.', 'Give a whole number from 1 to 50.'));
    }
    const levels = Array.from({ length: rows }, (_, i) => times(level, i + 1));
    const made = holes({ ...given, levels });
    if (!made.ok) return made;
    if (made.value.count * rows > MOST_HOLES) {
      return bad(
        refusal('apart', 'This is more than 3000 holes.', 'Set them further apart, or in fewer rows.'),
      );
    }
    const { count, apart, hole, at, tieAt, overSeam, ribbonLength, assumed } = made.value;
    const { round } = given;
    const high = add(levels.at(-1) ?? level, level);
    const wide = nm(Math.min(apart * 0.18, hole * 0.3));
    const drawn: Drawn[] = made.value.rows.flatMap(({ from, to }) =>
      at.flatMap((x) => slot(place(x, from), place(x, to), wide)),
    );
    // The ribbon shows outside every other stretch; it passes the seam outside where the number says so.
    const shows = made.value.rows.flatMap(({ from, to }) => {
      const [top, tall] = [nm(from + (to - from) * 0.1), nm((to - from) * 0.8)];
      return at.slice(1).flatMap((x, i) => {
        const outside = (i % 2 === 0) !== overSeam;
        const start = at[i] ?? zero;
        return outside ? [box('thin', start, top, nm(x - start), tall)] : [];
      });
    });
    return good({
      figures: [
        { kind: 'number', name: 'Holes in a row', number: count },
        { kind: 'length', name: 'From hole to hole', length: apart },
        { kind: 'length', name: 'Length of a hole', length: hole },
        { kind: 'length', name: 'First hole, from the seam', length: at[0] ?? zero },
        { kind: 'length', name: 'Ribbon for a row', length: ribbonLength },
        { kind: 'length', name: 'Ties, from the seam', length: tieAt },
        {
          kind: 'words',
          name: 'Over the seam',
          words: overSeam ? 'the ribbon lies outside' : 'the ribbon lies inside',
        },
      ],
      strips: [
        {
          name: 'Ribbon holes, along a row',
          from: 'the seam',
          span: round,
          marks: at.map((x, i) => ({ at: x, name: `hole ${i + 1}`, stroke: 'stitch' as const })),
        },
        {
          name: 'Ribbon holes, from the edge',
          from: 'the edge',
          span: high,
          marks: made.value.rows.flatMap(({ from, to }, i) => [
            { at: from, name: `row ${i + 1}, near end`, stroke: 'stitch' as const },
            { at: to, name: `row ${i + 1}, far end`, stroke: 'stitch' as const },
          ]),
        },
      ],
      drawing: sheet('Tube, laid flat', [
        box('body', zero, zero, round, high),
        line('mark', place(tieAt, zero), place(tieAt, high)),
        ...shows,
        ...drawn,
      ]),
      sheets: [
        sheet(
          'Ribbon holes, true size',
          [
            line('seam', place(zero, zero), place(zero, high)),
            line('seam', place(round, zero), place(round, high)),
            line(
              'cut',
              place(zero, zero),
              place(round, zero),
              place(round, high),
              place(zero, high),
              place(zero, zero),
            ),
            line('mark', place(tieAt, zero), place(tieAt, high)),
            ...drawn,
          ],
          ['Both ends lie on the seam, the long side on the edge.', 'Tie at the line in the middle.'],
        ),
      ],
      advice: [],
      assumed,
      sources: [RIBBON_EASE.source, geometry],
    });
  },
});
