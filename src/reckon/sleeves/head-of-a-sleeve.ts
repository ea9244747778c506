import { HEAD_PART, type SleeveHeadMade, sleeveHead } from '../../cloth/sleeve-head.ts';
import { geometry } from '../../cloth/source.ts';
import { type Length, longest, nm, subtract, times, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { line, moved, place, sheet } from '../../paper/drawing.ts';
import type { PatternSheet } from '../../paper/pattern-sheet.ts';
import { reckoning } from '../reckoning.ts';
import { pieceLines, pieceSheets, type StripPiece } from './strip-piece.ts';

/** A folded strip that holds the cap of a sleeve up. */
export const headOfASleeve = reckoning({
  id: 'sleeve-head',
  name: 'Sleeve head',
  tells: 'The strip inside the top of a sleeve: its cut size, and where it begins and ends on the cap.',
  group: 'Sleeves, bows and cuffs',
  fields: {
    cap: {
      kind: 'length',
      label: 'Seam of the cap',
      means: 'From underarm to underarm, along the seam line.',
      start: { in: '19', mm: '480' },
    },
    toShoulder: {
      kind: 'length',
      label: 'Underarm to shoulder',
      means: 'Along the front of the cap, from the underarm to the shoulder mark.',
      start: { in: '9 1/4', mm: '235' },
    },
    depth: {
      kind: 'length',
      label: 'Finished depth',
      means: 'From the seam to the fold.',
      start: { in: '1 1/2', mm: '40' },
    },
    fullness: {
      kind: 'number',
      label: 'Fullness',
      means: '1 for a flat strip; more for a gathered one of net.',
      unit: 'times',
      start: '1',
    },
    part: {
      kind: 'number',
      label: 'Part of the seam',
      means: 'How much of the cap it reaches over; empty for half, 0.5.',
      start: '',
      optional: true,
    },
    allowance: { kind: 'length', usual: true, label: 'Seam allowance', start: { in: '3/8', mm: '10' } },
  },
  work: ({ part, ...given }) => {
    const made = sleeveHead({ ...given, ...(part === undefined ? {} : { part }) });
    if (!made.ok) return made;
    const { cut, fold, shoulder, from, to, advice, assumed } = made.value;
    const piece: StripPiece = {
      name: 'Sleeve head',
      notes: [
        'cut 2, one for each sleeve',
        'allowances drawn',
        'fold along its length, wrong sides together',
      ],
      length: cut.length,
      width: cut.width,
      allowance: given.allowance,
      folds: [fold],
      marks: [shoulder],
    };
    return good({
      figures: [
        { kind: 'length', name: 'Cut length', length: cut.length },
        { kind: 'length', name: 'Cut width', length: cut.width },
        { kind: 'length', name: 'Fold, from one cut edge', length: fold },
        { kind: 'length', name: 'Shoulder mark, from the front end', length: shoulder },
        { kind: 'length', name: 'Begins on the cap, from the front underarm', length: from },
        { kind: 'length', name: 'Ends on the cap, from the front underarm', length: to },
      ],
      strips: [
        {
          name: 'Cap of the sleeve, along its seam line',
          from: 'the front underarm',
          span: given.cap,
          marks: [
            { at: from, name: 'head begins' },
            { at: given.toShoulder, name: 'shoulder' },
            { at: to, name: 'head ends' },
          ],
        },
      ],
      drawing: drawn(made.value, given.cap, given.toShoulder, piece),
      sheets: pieceSheets(piece),
      advice,
      assumed,
      sources: [geometry, ...(part === undefined ? [HEAD_PART.source] : [])],
    });
  },
});

/** The seam of the cap laid straight, the strip below it, and thin lines where the two meet. */
function drawn(made: SleeveHeadMade, cap: Length, shoulder: Length, piece: StripPiece): PatternSheet {
  const left = subtract(shoulder, made.shoulder);
  const top = longest(times(cap, 1 / 7), times(piece.width, 0.6));
  const inside = (x: Length) => nm(left + x);
  const meets = [
    [made.from, inside(piece.allowance)],
    [shoulder, inside(made.shoulder)],
    [made.to, inside(subtract(piece.length, piece.allowance))],
  ] as const;
  return sheet('Cap and sleeve head', [
    line('seam', place(zero, zero), place(cap, zero)),
    ...meets.map(([x]) => line('mark', place(x, nm(-top / 8)), place(x, nm(top / 8)))),
    ...meets.map(([a, b]) => line('thin', place(a, zero), place(b, top))),
    ...pieceLines(piece, false).map((one) => moved(one, left, top)),
  ]);
}
