import { cuffButtons } from '../../cloth/cuff-buttons.ts';
import { cuff } from '../../cloth/cuffs.ts';
import { PAST_CENTRE } from '../../cloth/fastenings.ts';
import { geometry, practice } from '../../cloth/source.ts';
import { good } from '../../length/result.ts';
import { writeTimes } from '../frills/times.ts';
import { reckoning } from '../reckoning.ts';
import { buttonMarks, cuffDrawing, cuffFigures, cuffMarks, cuffPiece, cuffSheets } from './cuff-pattern.ts';

/** A straight cuff that buttons. */
export const buttonedCuff = reckoning({
  id: 'buttoned-cuff',
  name: 'Cuff with buttons',
  tells: 'The cuff to cut, its fold, the marks that meet the sleeve, and where holes and buttons sit.',
  group: 'Sleeves, bows and cuffs',
  fields: {
    wrist: { kind: 'length', label: 'Wrist', start: { in: '6 1/2', mm: '165' } },
    ease: {
      kind: 'length',
      usual: true,
      label: 'Ease',
      means: 'Room round the wrist.',
      start: { in: '1', mm: '25' },
    },
    depth: { kind: 'length', label: 'Finished depth', start: { in: '2 1/2', mm: '65' } },
    sleeve: {
      kind: 'length',
      label: 'Sleeve, lower edge',
      means: 'What is gathered or eased into the cuff, without allowances.',
      start: { in: '14', mm: '360' },
    },
    overlap: {
      kind: 'length',
      usual: true,
      label: 'Overlap',
      means: 'How far one end lies over the other.',
      start: { in: '1 1/4', mm: '30' },
    },
    buttons: { kind: 'number', label: 'Buttons', whole: true, start: '1' },
    diameter: { kind: 'length', label: 'Width of button', start: { in: '1/2', mm: '12' } },
    thickness: { kind: 'length', label: 'Height of button', start: { in: '1/8', mm: '3' } },
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
  blame: { closes: 'overlap' },
  work: ({ wrist, ease, depth, sleeve, overlap, buttons, diameter, thickness, pieces, allowance }) => {
    const made = cuff({
      wrist,
      ease,
      depth,
      sleeve,
      allowance,
      closes: { by: 'buttons', overlap },
      pieces: pieces === '1' ? 1 : 2,
    });
    if (!made.ok) return made;
    const { round, fullness, assumed } = made.value;
    const placed = cuffButtons({ depth, overlap, round, buttons, diameter, thickness });
    if (!placed.ok) return placed;
    const buttoned = { made: placed.value, diameter };
    const piece = cuffPiece(made.value, allowance, buttoned);
    return good({
      figures: [
        ...cuffFigures(made.value, writeTimes(fullness)),
        { kind: 'length', name: 'Buttonhole', length: placed.value.hole },
      ],
      strips: [
        ...cuffMarks(made.value, sleeve, 'the finished end that lies below'),
        ...buttonMarks(made.value, depth, buttoned),
      ],
      drawing: cuffDrawing(piece),
      sheets: cuffSheets(piece),
      advice: placed.value.advice,
      assumed: [...assumed, ...placed.value.assumed, 'The grain lies along the cuff.'],
      sources: [geometry, placed.value.holeFrom, PAST_CENTRE.source, practice],
    });
  },
});
