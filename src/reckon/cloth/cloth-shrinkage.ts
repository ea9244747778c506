import { refusal } from '../../cloth/refusal.ts';
import { beforeShrinking, shrunk } from '../../cloth/shrinkage.ts';
import { geometry } from '../../cloth/source.ts';
import { type Length, mm, nm, subtract, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { box, line, place, sheet, words } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import { reckoning } from '../reckoning.ts';

/** Nobody shrinks more at once. */
const LONGEST = mm(1_000_000);

/** The cloth as it is cut, and what is left of it. */
function drawn(cut: Length, left: Length): Drawn[] {
  const high = nm(cut / 8);
  const size = nm(cut / 25);
  const second = nm(high + size * 3);
  return [
    words('cut', place(zero, nm(-size / 2)), size),
    box('cut', zero, zero, cut, high),
    words('left when it has shrunk', place(zero, nm(second - size / 2)), size),
    box('body', zero, second, left, high),
    line('mark', place(left, zero), place(left, nm(second + high))),
  ];
}

/** How much to cut or buy of a cloth that shrinks. */
export const clothShrinkage = reckoning({
  id: 'cloth-shrinkage',
  name: 'Cloth that shrinks',
  tells: 'How long to cut it, so that enough is left when it has shrunk.',
  group: 'Cloth and measures',
  fields: {
    needed: {
      kind: 'length',
      label: 'Wanted length',
      means: 'When it has shrunk.',
      start: { in: '2 yd', mm: '2000' },
    },
    before: {
      kind: 'length',
      label: 'Sample, before',
      start: { in: '10', mm: '250' },
    },
    after: {
      kind: 'length',
      label: 'Sample, after',
      means: 'Washed and dried as the garment will be.',
      start: { in: '9 1/2', mm: '240' },
    },
    percent: {
      kind: 'number',
      label: 'Or a percentage',
      means: 'Goes before the sample where it is given.',
      unit: '%',
      start: '',
      optional: true,
    },
  },
  work: ({ needed, before, after, percent }) => {
    if (needed > LONGEST) {
      return bad(
        refusal('needed', 'That is a great deal of cloth.', 'Give at most 1000 m, which is 1093 yd.'),
      );
    }
    if (percent !== undefined && !(percent >= 0 && percent <= 50)) {
      return bad(refusal('percent', 'A cloth does not shrink so.', 'Give 0 to 50 %.'));
    }
    const found = percent === undefined ? shrunk(before, after) : good(percent / 100);
    if (!found.ok) return found;
    const part = found.value;
    const cut = beforeShrinking(needed, part);
    if (!cut.ok) return cut;
    return good({
      figures: [
        { kind: 'length', name: 'Cut or buy', length: cut.value },
        { kind: 'words', name: 'It shrinks by', words: `${Math.round(part * 1000) / 10} %` },
        { kind: 'length', name: 'It loses', length: subtract(cut.value, needed) },
      ],
      strips: [],
      drawing: sheet('Before and after shrinking', drawn(cut.value, needed)),
      sheets: [],
      advice: [],
      assumed: ['All of the cloth shrinks as the sample or the percentage says; try both ways of the cloth.'],
      sources: [geometry],
    });
  },
});
