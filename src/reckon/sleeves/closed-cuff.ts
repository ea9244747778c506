import { cuff } from '../../cloth/cuffs.ts';
import { geometry, practice } from '../../cloth/source.ts';
import { good } from '../../length/result.ts';
import { writeTimes } from '../frills/times.ts';
import { reckoning } from '../reckoning.ts';
import { cuffDrawing, cuffFigures, cuffMarks, cuffPiece, cuffSheets } from './cuff-pattern.ts';

/** A straight cuff sewn into a ring that the hand passes. */
export const closedCuff = reckoning({
  id: 'closed-cuff',
  name: 'Cuff without opening',
  tells: 'A cuff sewn into a ring: whether the hand passes, what to cut and where the sleeve is pinned.',
  group: 'Sleeves, bows and cuffs',
  fields: {
    wrist: { kind: 'length', label: 'Wrist', start: { in: '6 1/2', mm: '165' } },
    hand: {
      kind: 'length',
      label: 'Hand',
      means: 'Round the hand at its widest, the thumb laid into the palm.',
      start: { in: '9', mm: '230' },
    },
    ease: {
      kind: 'length',
      usual: true,
      label: 'Ease',
      means: 'How much larger than the wrist the cuff is.',
      start: { in: '2 3/4', mm: '70' },
    },
    depth: { kind: 'length', label: 'Finished depth', start: { in: '2', mm: '50' } },
    sleeve: {
      kind: 'length',
      label: 'Sleeve, lower edge',
      means: 'What is gathered or eased into the cuff, without allowances.',
      start: { in: '14', mm: '360' },
    },
    pieces: {
      kind: 'choice',
      usual: true,
      label: 'Cut',
      options: [
        { value: '1', label: 'in one, folded at its lower edge' },
        { value: '2', label: 'as two pieces' },
      ],
      start: '1',
    },
    allowance: { kind: 'length', usual: true, label: 'Seam allowance', start: { in: '3/8', mm: '10' } },
  },
  work: ({ hand, pieces, ...given }) => {
    const closes = { by: 'ring', hand } as const;
    const made = cuff({ ...given, closes, pieces: pieces === '1' ? 1 : 2 });
    if (!made.ok) return made;
    const piece = cuffPiece(made.value, given.allowance);
    return good({
      figures: cuffFigures(made.value, writeTimes(made.value.fullness)),
      strips: cuffMarks(made.value, given.sleeve, 'the seam of the cuff'),
      drawing: cuffDrawing(piece),
      sheets: cuffSheets(piece),
      advice: [],
      assumed: [...made.value.assumed, 'The grain lies along the cuff.'],
      sources: [geometry, practice],
    });
  },
});
