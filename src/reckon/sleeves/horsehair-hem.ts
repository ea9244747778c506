import { geometry } from '../../cloth/source.ts';
import { HORSEHAIR_LAP, horsehair } from '../../cloth/support.ts';
import { type Length, nm, subtract, times, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { box, line, place, sheet } from '../../paper/drawing.ts';
import type { Drawn, PatternSheet } from '../../paper/pattern-sheet.ts';
import { reckoning } from '../reckoning.ts';

/** Horsehair braid in a hem. */
export const horsehairHem = reckoning({
  id: 'horsehair-in-a-hem',
  name: 'Horsehair in a hem',
  tells: 'How long to cut each row of horsehair braid, and how much to buy.',
  group: 'Sleeves, bows and cuffs',
  fields: {
    hem: {
      kind: 'length',
      label: 'Hem, all round',
      means: 'Along the finished edge.',
      start: { in: '60', mm: '1500' },
    },
    rows: { kind: 'number', label: 'Rows', whole: true, start: '1' },
  },
  work: ({ hem, rows }) => {
    const made = horsehair(hem, rows);
    if (!made.ok) return made;
    const { each, whole } = made.value;
    return good({
      figures: [
        { kind: 'length', name: 'Cut length of a row', length: each },
        { kind: 'length', name: 'All rows together', length: whole },
        { kind: 'length', name: 'The ends lie over each other', length: HORSEHAIR_LAP.value },
      ],
      strips: [
        {
          name: 'A row of horsehair',
          from: 'one cut end',
          span: each,
          marks: [{ at: hem, name: 'the other end lies up to here' }],
        },
      ],
      drawing: drawn(hem, each, rows),
      sheets: [],
      advice: [],
      assumed: ['Every row is as long as the hem.'],
      sources: [HORSEHAIR_LAP.source, geometry],
    });
  },
});

/** Rows of braid laid out flat, its mesh sketched, the part that lies over itself set off. */
function drawn(hem: Length, each: Length, rows: number): PatternSheet {
  const high = times(each, 1 / 14);
  const mesh = 28;
  const row = (top: Length): readonly Drawn[] => {
    const low = nm(top + high);
    return [
      box('body', zero, top, each, high),
      ...Array.from({ length: mesh }, (_, i) => {
        const [x, next] = [times(each, i / mesh), times(each, (i + 1) / mesh)];
        return [line('thin', place(x, top), place(next, low)), line('thin', place(x, low), place(next, top))];
      }).flat(),
      line('seam', place(hem, subtract(top, times(high, 0.2))), place(hem, nm(low + high * 0.2))),
    ];
  };
  return sheet(
    'Horsehair, laid flat',
    Array.from({ length: rows }, (_, i) => row(times(high, 1.6 * i))).flat(),
  );
}
