import { band, FIRST_TURN, STITCH_IN } from '../../cloth/bands.ts';
import { add, type Length, longest, nm, subtract, times, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { line, place, sheet, words } from '../../paper/drawing.ts';
import { reckoning } from '../reckoning.ts';

/** A band made by folding the edge of a front over twice. */
export const foldedBand = reckoning({
  id: 'folded-band',
  name: 'Folded band',
  tells: 'Folds, stitching and centre front from the cut edge, and what to add when cutting.',
  group: 'Tucks and bands',
  fields: {
    firstTurn: {
      kind: 'length',
      label: 'First turn',
      means: 'Hides the cut edge.',
      start: { in: '1/2', mm: '12' },
    },
    secondTurn: {
      kind: 'length',
      label: 'Second turn',
      means: 'The width of the finished band.',
      start: { in: '1', mm: '25' },
    },
    stitchIn: {
      kind: 'length',
      label: 'Stitched in',
      means: 'From the inner fold to the stitching.',
      start: { in: '1/8', mm: '3' },
    },
    lap: {
      kind: 'length',
      label: 'Beyond centre front',
      means: 'From centre front to the finished edge; half the band if left empty.',
      start: { in: '', mm: '' },
      optional: true,
    },
  },
  work: ({ lap, ...given }) => {
    const made = band(lap === undefined ? given : { ...given, lap });
    if (!made.ok) return made;
    const { width, finishedEdge, firstFold, cutEdge, innerFold, stitching, addition, overlap } = made.value;
    const fromCut = (at: Length) => subtract(cutEdge, at);
    // The section: the cloth comes from the left, folds back under itself at the finished edge, and turns in.
    const thick = times(width, 1 / 7);
    const left = nm(innerFold - width * 0.8);
    const [high, middle, low] = [zero, thick, times(thick, 2)];
    const turnBack = add(innerFold, given.firstTurn);
    const letters = times(longest(width, given.firstTurn), 1 / 13);
    const tick = (x: Length, says: string, row: number, back = 0) => [
      line('thin', place(x, nm(low + thick * 0.6)), place(x, nm(low + thick + letters * 1.6 * row))),
      words(
        says,
        place(nm(x - letters * (0.3 + back)), nm(low + thick + letters * (1.6 * row + 1))),
        letters,
      ),
    ];
    return good({
      figures: [
        { kind: 'length', name: 'Add beyond the finished edge', length: addition },
        { kind: 'length', name: 'Cut edge to centre front', length: cutEdge },
        { kind: 'length', name: 'Finished band', length: width },
        { kind: 'length', name: 'Fronts lie over each other', length: overlap },
        { kind: 'length', name: 'Centre front to stitching', length: subtract(zero, stitching) },
      ],
      strips: [
        {
          name: 'Folded band, flat',
          from: 'the cut edge',
          span: fromCut(nm(innerFold - width / 2)),
          marks: [
            { at: fromCut(firstFold), name: 'first fold', stroke: 'fold' },
            { at: fromCut(finishedEdge), name: 'second fold, the finished edge', stroke: 'fold' },
            { at: fromCut(zero), name: 'centre front' },
            { at: fromCut(stitching), name: 'stitching', stroke: 'stitch' },
            { at: fromCut(innerFold), name: 'where the inner fold lies' },
          ],
        },
      ],
      drawing: sheet('Folded band, from its end', [
        line(
          'body',
          place(left, high),
          place(finishedEdge, high),
          place(nm(finishedEdge + thick * 0.5), nm(thick * 0.5)),
          place(nm(finishedEdge + thick * 0.5), nm(thick * 1.5)),
          place(finishedEdge, low),
          place(innerFold, low),
          place(nm(innerFold - thick * 0.4), nm(thick * 1.5)),
          place(innerFold, middle),
          place(turnBack, middle),
        ),
        line('stitch', place(stitching, nm(-thick)), place(stitching, add(low, thick))),
        line('mark', place(zero, nm(-thick * 2)), place(zero, add(low, thick))),
        words('centre front', place(nm(letters * 0.4), nm(-thick)), letters),
        ...tick(innerFold, 'inner fold', 1),
        ...tick(turnBack, 'cut edge', 2),
        ...tick(finishedEdge, 'finished edge', 1, 6),
      ]),
      sheets: [],
      advice: [],
      assumed: ['Press the first turn, then the second; stitch through all layers.', ...made.value.assumed],
      sources: [STITCH_IN.source, FIRST_TURN.source],
    });
  },
});
