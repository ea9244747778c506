import { refusal } from '../../cloth/refusal.ts';
import { STITCHES, type StitchType, THREAD_RATIOS } from '../../cloth/stitches.ts';
import { shareThread, THREAD_PARTS } from '../../cloth/thread-shares.ts';
import { THREAD_TAIL, threadUsed, WASTE } from '../../cloth/thread-used.ts';
import { type Length, mm, nm, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { box, line, place, sheet } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import type { Point } from '../../shape/outline.ts';
import { type ReckonedFigure, reckoning } from '../reckoning.ts';

const TYPES = Object.keys(STITCHES).map(Number) as StitchType[];
/** More seams than this is a factory's work. */
const MOST_SEAMS = 10_000;
/** Nobody sews a longer seam. */
const LONGEST: Length = mm(100_000);
/** More windings than this cannot be told apart. */
const MOST_WINDINGS = 40;

/** The seam, and under it the thread of one seam wound to and fro, both to the same scale. */
function wound(seam: Length, thread: Length): Drawn[] {
  const wide = nm(Math.max(seam, thread / MOST_WINDINGS));
  const apart = nm(wide / 30);
  const points: Point[] = [];
  for (let left: number = thread, row = 0; left > 0; left -= wide, row++) {
    const long = Math.min(left, wide);
    const y = nm(apart * (row + 3));
    const [from, to] = row % 2 === 0 ? [0, long] : [wide, wide - long];
    points.push(place(nm(from), y), place(nm(to), y));
  }
  return [
    box('thin', zero, nm(-apart), wide, nm(apart * 2.5)),
    line('stitch', place(zero, zero), place(seam, zero)),
    line('body', ...points),
  ];
}

/** How much thread a seam takes, needles and loopers apart. */
export const threadForASeam = reckoning({
  id: 'thread-for-a-seam',
  name: 'Thread for a seam',
  tells: 'How much thread to have, from the needle and from below, with waste.',
  group: 'Machine and iron',
  fields: {
    type: {
      kind: 'choice',
      label: 'Stitch',
      means: 'With its number in ISO 4915.',
      options: TYPES.map((type) => ({ value: String(type), label: `${STITCHES[type].name}, ${type}` })),
      start: '301',
    },
    length: { kind: 'length', label: 'Length of a seam', start: { in: '20', mm: '500' } },
    count: { kind: 'number', label: 'How many such seams', whole: true, start: '2' },
    waste: {
      kind: 'number',
      usual: true,
      label: 'Waste',
      means: 'Broken, tried out and left over: 10 to 20 % is usual.',
      unit: '%',
      start: String(WASTE.value * 100),
    },
    tail: {
      kind: 'length',
      usual: true,
      label: 'Thread ends',
      means: 'Left at each end of a seam.',
      start: { in: '1 1/4', mm: '30' },
    },
    spool: {
      kind: 'length',
      usual: true,
      label: 'On a spool',
      means: 'To count spools.',
      start: { in: '110 yd', mm: '100 m' },
    },
  },
  blame: { seams: 'length' },
  work: ({ type: written, length, count, waste, tail, spool }) => {
    const type = TYPES.find((one) => String(one) === written) ?? 301;
    if (count < 1 || count > MOST_SEAMS) {
      const cure = `Give a whole number from 1 to ${MOST_SEAMS}.`;
      return bad(refusal('count', 'This is not a number of seams.', cure));
    }
    if (length > LONGEST) {
      return bad(refusal('length', 'No seam is so long.', 'Give at most 100 m, which is 109 yd.'));
    }
    if (!(waste >= 0 && waste <= 100)) {
      return bad(refusal('waste', 'This is not a part of the thread.', 'Give 0 to 100 %; 15 % is usual.'));
    }
    if (tail > mm(1000)) {
      return bad(refusal('tail', 'No thread end is so long.', 'Give at most 1 m, which is 39 in.'));
    }
    const seam = { name: 'seam', type, length, count };
    const made = threadUsed({
      seams: [seam],
      waste: waste / 100,
      tail,
      spool,
    });
    if (!made.ok) return made;
    const { sewn, needed, spools, assumed } = made.value;
    const one = nm(sewn / count);
    const parts = THREAD_PARTS.value[type];
    const shared = shareThread(type, needed);
    const many = (name: string, threads: number): string =>
      threads === 1 ? name : `${name}s, ${threads} together`;
    const below = parts.from === 'bobbin' ? 'Bobbin thread' : many('Looper thread', parts.under);
    return good({
      figures: [
        { kind: 'length', name: 'Thread to have', length: needed },
        ...(shared
          ? [
              {
                kind: 'length' as const,
                name: many('Needle thread', parts.needles),
                length: shared.needles,
              },
              ...(parts.under > 0 ? [{ kind: 'length' as const, name: below, length: shared.under }] : []),
            ]
          : []),
        { kind: 'length', name: 'In the seams and at their ends', length: sewn },
        { kind: 'length', name: 'For one seam', length: one },
        ...(spools === undefined
          ? []
          : ([{ kind: 'number', name: 'Spools', number: spools }] satisfies ReckonedFigure[])),
        { kind: 'number', name: 'Thread to a length of seam', number: STITCHES[type].thread, of: 'times' },
      ],
      strips: [],
      drawing: sheet('The seam, and its thread to and fro', wound(length, one)),
      sheets: [],
      advice: [],
      assumed: [
        ...assumed,
        ...(shared
          ? []
          : ['How this stitch parts its thread between needles and loopers is not known here.']),
      ],
      sources: [THREAD_RATIOS, WASTE.source, THREAD_TAIL.source, THREAD_PARTS.source],
    });
  },
});
