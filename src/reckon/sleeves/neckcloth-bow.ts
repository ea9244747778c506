import { geometry, practice } from '../../cloth/source.ts';
import { KNOT_TAKES, tiedBow } from '../../cloth/tied-bow.ts';
import { type Length, nm, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { box, line, middleWords, place, sheet } from '../../paper/drawing.ts';
import type { PatternSheet } from '../../paper/pattern-sheet.ts';
import { reckoning } from '../reckoning.ts';
import { pieceSheets } from './strip-piece.ts';

/** A neckcloth or sash that is tied in a bow. */
export const neckclothBow = reckoning({
  id: 'neckcloth-bow',
  name: 'Neckcloth tied in a bow',
  tells: 'How long and wide to cut the tie, and where loops, knot and centre back come.',
  group: 'Sleeves, bows and cuffs',
  fields: {
    round: {
      kind: 'length',
      label: 'Round the neck',
      means: 'Where it lies, over the collar if it is worn so.',
      start: { in: '16', mm: '400' },
    },
    bow: {
      kind: 'length',
      label: 'Width of bow',
      means: 'From the end of one loop to the end of the other.',
      start: { in: '7', mm: '180' },
    },
    tail: {
      kind: 'length',
      label: 'Length of a tail',
      means: 'From the knot to its end.',
      start: { in: '8', mm: '200' },
    },
    width: { kind: 'length', label: 'Width of the tie', means: 'Lying flat.', start: { in: '3', mm: '75' } },
    longest: {
      kind: 'length',
      label: 'Length of the cloth',
      means: 'A longer tie is cut in halves; empty: long enough.',
      start: { in: '', mm: '' },
      optional: true,
    },
    knot: {
      kind: 'length',
      label: 'Taken by the knot',
      means: 'Tie a sample and measure what it lost; empty: twice the width.',
      start: { in: '', mm: '' },
      optional: true,
    },
    allowance: { kind: 'length', usual: true, label: 'Seam allowance', start: { in: '3/8', mm: '10' } },
  },
  work: ({ longest, knot, ...given }) => {
    const made = tiedBow({
      ...given,
      ...(longest ? { longest } : {}),
      ...(knot === undefined ? {} : { knot }),
    });
    if (!made.ok) return made;
    const { length, cut, fold, marks, advice, assumed } = made.value;
    const whole = cut.count === 1;
    const places = [
      { at: marks.loops[0], name: 'end of a loop' },
      { at: marks.knot[0], name: 'knot' },
      { at: marks.centreBack, name: 'centre back' },
      { at: marks.knot[1], name: 'knot' },
      { at: marks.loops[1], name: 'end of a loop' },
    ];
    return good({
      figures: [
        { kind: 'length', name: whole ? 'Cut length' : 'Cut length of each half', length: cut.length },
        { kind: 'length', name: 'Cut width', length: cut.width },
        { kind: 'number', name: 'Strips to cut', number: cut.count },
        { kind: 'length', name: 'Finished, from end to end', length },
        { kind: 'length', name: 'Fold, from one cut edge', length: fold },
      ],
      strips: [{ name: 'Tie, finished', from: 'one end', span: length, marks: places }],
      drawing: tied(length, given.width, places),
      sheets: pieceSheets({
        name: whole ? 'Tie' : 'Half of the tie',
        notes: [`cut ${cut.count}`, 'allowances drawn', 'fold along the middle, right sides together'],
        length: cut.length,
        width: cut.width,
        allowance: given.allowance,
        folds: [fold],
        marks: (whole ? places : places.slice(0, 2)).map(({ at }) => nm(at + given.allowance)),
      }),
      advice,
      assumed,
      sources: knot === undefined ? [geometry, practice, KNOT_TAKES.source] : [geometry, practice],
    });
  },
});

/** The tie lying flat, with the places that meet when it is tied. */
function tied(
  length: Length,
  width: Length,
  places: readonly { readonly at: Length; readonly name: string }[],
): PatternSheet {
  const letters = nm(length / 28);
  return sheet('Tie, finished', [
    box('body', zero, zero, length, width),
    ...places.map(({ at, name }) =>
      line(name === 'end of a loop' ? 'fold' : 'mark', place(at, zero), place(at, width)),
    ),
    ...places
      .slice(0, 3)
      .map(({ at, name }, i) =>
        middleWords(name, place(at, nm(width + letters * (i === 1 ? 2.4 : 1.2))), letters),
      ),
  ]);
}
