import { BAND_TURN, bindingWidth } from '../../cloth/bias.ts';
import { geometry, memory } from '../../cloth/source.ts';
import { type Length, mm, nm, shorter, times, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { line, place, ring, sheet } from '../../paper/drawing.ts';
import type { PatternSheet } from '../../paper/pattern-sheet.ts';
import { reckoning } from '../reckoning.ts';

/** Long enough to fold a binding round while pressing. */
const CARD_LONG: Length = mm(150);
/** A binding wider than this is measured, not folded round a card. */
const WIDEST_CARD: Length = mm(200);

/** The width to cut a strip for each binding, and its folds. */
export const bindingStrip = reckoning({
  id: 'binding-width',
  name: 'Width of a binding',
  tells: 'How wide to cut the bias strip, where to fold it, and what to measure along the selvage.',
  group: 'Bias',
  fields: {
    kind: {
      kind: 'choice',
      label: 'What it is',
      options: [
        { value: 'single', label: 'single binding' },
        { value: 'double', label: 'double binding, folded in half' },
        { value: 'band', label: 'folded band beyond the edge' },
        { value: 'facing', label: 'facing, on the wrong side only' },
        { value: 'piping', label: 'piping round a cord' },
      ],
      start: 'single',
    },
    width: {
      kind: 'length',
      label: 'Finished width',
      means: 'As it shows; for piping the thickness of the cord.',
      start: { in: '3/8', mm: '10' },
    },
    turn: {
      kind: 'length',
      label: 'Turn or seam',
      means: 'What each edge turns in, or the seam. Empty: as wide as a binding, else 1/4 in.',
      start: { in: '', mm: '' },
      optional: true,
    },
  },
  work: ({ turn, ...given }) => {
    const made = bindingWidth({ ...given, ...(turn === undefined ? {} : { turn }) });
    if (!made.ok) return made;
    const { cut, folds, selvage, source, assumed } = made.value;
    const own = given.kind === 'single' || given.kind === 'double';
    return good({
      figures: [
        { kind: 'length', name: 'Width to cut', length: cut },
        { kind: 'length', name: 'Along the selvage, line to line', length: selvage },
        ...folds.map((fold, i) => ({
          kind: 'length' as const,
          name: folds.length === 1 ? 'Fold, from one cut edge' : `Fold ${i + 1}, from one cut edge`,
          length: fold,
        })),
      ],
      strips: [
        {
          name: 'Folds across the binding',
          from: 'one cut edge',
          span: cut,
          marks: folds.map((fold, i) => ({ at: fold, name: `fold ${i + 1}`, stroke: 'fold' as const })),
        },
      ],
      drawing: slanted(cut, folds),
      sheets: shorter(cut, WIDEST_CARD) ? [card(cut, folds)] : [],
      advice: [],
      assumed,
      sources: [source, ...(own || source === BAND_TURN.source ? [] : [memory]), geometry],
    });
  },
});

/** A piece of the strip, its ends along the threads. */
function slanted(cut: Length, folds: readonly Length[]): PatternSheet {
  const long = times(cut, 5);
  const ends = (y: Length) => [place(nm(cut - y), y), place(nm(long + cut - y), y)] as const;
  const [left, right] = ends(zero);
  const [lowLeft, lowRight] = ends(cut);
  return sheet('Bias strip and its folds', [
    ring('cut', [left, right, lowRight, lowLeft]),
    ...folds.map((fold) => line('fold', ...ends(fold))),
  ]);
}

/** A card to press the folds round. */
function card(cut: Length, folds: readonly Length[]): PatternSheet {
  const level = (y: Length) => [place(zero, y), place(CARD_LONG, y)] as const;
  return sheet(
    'Binding, folding card',
    [
      ring('cut', [...level(zero), ...[...level(cut)].reverse()]),
      ...folds.map((fold) => line('fold', ...level(fold))),
    ],
    ['press the folds over this card'],
  );
}
