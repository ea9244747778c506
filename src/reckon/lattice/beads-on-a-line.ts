import { beadLine } from '../../cloth/bead-line.ts';
import { FASTENING, NEEDLEFUL } from '../../cloth/beads.ts';
import { geometry, practice } from '../../cloth/source.ts';
import { add, nm, times, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { box, line, middleWords, place, sheet } from '../../paper/drawing.ts';
import { reckoning } from '../reckoning.ts';

/** With more beads than this, every tenth is marked. */
const EACH = 40;

/** Beads along one line, the remainder spread evenly. */
export const beadsOnALine = reckoning({
  id: 'beads-on-a-line',
  name: 'Beads along a line',
  tells: 'How many beads fit, the even gap between them, and the thread.',
  group: 'Lattice and beads',
  fields: {
    length: { kind: 'length', label: 'Length of line', start: { in: '6', mm: '150' } },
    bead: {
      kind: 'length',
      label: 'Length of a bead',
      means: 'Ten in a row, and a tenth of that.',
      start: { in: '1/4', mm: '6' },
    },
    gap: {
      kind: 'length',
      label: 'Gap, at least',
      means: 'Between beads and at both ends; it is evened.',
      start: { in: '1/16', mm: '1' },
    },
    sewn: {
      kind: 'choice',
      usual: true,
      label: 'Sewn',
      options: [
        { value: 'pairs', label: 'two at a time' },
        { value: 'singly', label: 'singly' },
      ],
      start: 'pairs',
    },
  },
  blame: { pairs: 'sewn' },
  work: ({ sewn, ...given }) => {
    const made = beadLine({ ...given, pairs: sewn === 'pairs' });
    if (!made.ok) return made;
    const { count, gap, at, thread, needlefuls, assumed } = made.value;
    const { length, bead } = given;
    const every = count > EACH ? 10 : 1;
    const marks = at.flatMap((x, i) => (i % every === 0 ? [{ at: x, name: `bead ${i + 1} begins` }] : []));
    const high = nm(Math.max(Math.min(bead * 0.5, length / 20), length / 60));
    const letters = times(length, 1 / 25);
    // With very many beads a line says as much as boxes too small to see.
    const beads = at.slice(0, 2000).map((x) => box('body', x, nm(-high / 2), bead, high));
    return good({
      figures: [
        { kind: 'number', name: 'Beads', number: count },
        { kind: 'length', name: 'Gap, evened', length: gap },
        { kind: 'length', name: 'From bead to bead', length: add(bead, gap) },
        { kind: 'length', name: 'Thread', length: thread },
        { kind: 'number', name: 'Needlefuls of 45 cm', number: needlefuls },
      ],
      strips: [
        {
          name: every === 1 ? 'Beads, where each begins' : 'Beads, where every tenth begins',
          from: 'the beginning of the line',
          span: length,
          marks,
        },
      ],
      drawing: sheet('Beads on their line', [
        line('thin', place(zero, zero), place(length, zero)),
        line('mark', place(zero, nm(-letters)), place(zero, letters)),
        line('mark', place(length, nm(-letters)), place(length, letters)),
        ...beads,
        middleWords(`${count}`, place(times(length, 1 / 2), nm(-letters)), letters),
      ]),
      sheets: [],
      advice: [],
      assumed:
        sewn === 'pairs'
          ? ['An even number, with a stitch back through the cloth after every two.', ...assumed]
          : assumed,
      sources: [geometry, practice, NEEDLEFUL.source, FASTENING.source],
    });
  },
});
