import { geometry } from '../../cloth/source.ts';
import { roll } from '../../cloth/support.ts';
import { add, type Length, nm, times, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { arc, line, place, sheet } from '../../paper/drawing.ts';
import type { PatternSheet } from '../../paper/pattern-sheet.ts';
import { reckoning } from '../reckoning.ts';
import { pieceSheets, type StripPiece, stacked } from './strip-piece.ts';

/** A stuffed roll with round ends, such as props a sleeve or a hip. */
export const stuffedRoll = reckoning({
  id: 'stuffed-roll',
  name: 'Stuffed roll',
  tells: 'The cloth for a roll with round ends, and how much stuffing it takes.',
  group: 'Sleeves, bows and cuffs',
  fields: {
    length: {
      kind: 'length',
      label: 'Whole length',
      means: 'With its round ends.',
      start: { in: '12', mm: '300' },
    },
    thick: { kind: 'length', label: 'Thickness', start: { in: '2 1/2', mm: '60' } },
    allowance: { kind: 'length', usual: true, label: 'Seam allowance', start: { in: '3/8', mm: '10' } },
    gramsPerLitre: {
      kind: 'number',
      label: 'Stuffing, a litre',
      means: 'Weigh what a measure of it takes when as firm as you want; empty if weight does not matter.',
      unit: 'grams',
      start: '',
      optional: true,
    },
  },
  work: ({ gramsPerLitre, ...given }) => {
    const made = roll({ ...given, ...(gramsPerLitre === undefined ? {} : { gramsPerLitre }) });
    if (!made.ok) return made;
    const { cut, litres, grams, assumed } = made.value;
    const piece: StripPiece = {
      name: 'Stuffed roll',
      notes: [
        'cut 1',
        'allowances drawn',
        'sew into a tube; gather both ends shut along the stitching lines',
      ],
      length: cut.length,
      width: cut.width,
      allowance: given.allowance,
      ends: 'stitch',
    };
    return good({
      figures: [
        { kind: 'length', name: 'Cut length', length: cut.length },
        { kind: 'length', name: 'Cut width', length: cut.width },
        { kind: 'number', name: 'Stuffing', number: rounded(litres), of: 'litres' },
        ...(grams === undefined
          ? []
          : [{ kind: 'number' as const, name: 'Weight of stuffing', number: rounded(grams), of: 'grams' }]),
      ],
      strips: [],
      drawing: drawn(given.length, given.thick, piece),
      sheets: pieceSheets(piece),
      advice: [],
      assumed,
      sources: [geometry],
    });
  },
});

/** Three figures are as fine as stuffing is. */
const rounded = (n: number): number => Number(n.toPrecision(3));

/** Above, the roll from the side; below, its cloth at the same scale. */
function drawn(length: Length, thick: Length, piece: StripPiece): PatternSheet {
  const r = times(thick, 1 / 2);
  const left = nm((piece.length - length) / 2);
  const [near, far] = [add(left, r), nm(left + length - r)];
  return sheet('Roll, and its cloth', [
    arc('body', place(near, r), r, 90, 270),
    arc('body', place(far, r), r, -90, 90),
    line('body', place(near, zero), place(far, zero)),
    line('body', place(near, thick), place(far, thick)),
    ...stacked([piece], times(thick, 1.4)),
  ]);
}
