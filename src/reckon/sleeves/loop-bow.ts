import { type BowStrip, bow } from '../../cloth/bows.ts';
import { refusal } from '../../cloth/refusal.ts';
import { geometry } from '../../cloth/source.ts';
import { type Length, nm, times } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { place, ring, sheet } from '../../paper/drawing.ts';
import type { Drawn, PatternSheet } from '../../paper/pattern-sheet.ts';
import { reckoning } from '../reckoning.ts';
import { pieceSheets, type StripPiece } from './strip-piece.ts';

const TITLE: Readonly<Record<BowStrip['part'], string>> = { loops: 'Loops', knot: 'Knot', tail: 'Tail' };

/** A bow of loops, a knot and tails. */
export const loopBow = reckoning({
  id: 'loop-bow',
  name: 'Bow with loops',
  tells: 'The strips to cut for loops, knot and tails, and where they are marked.',
  group: 'Sleeves, bows and cuffs',
  fields: {
    width: {
      kind: 'length',
      label: 'Width of bow',
      means: 'From the end of one loop to the end of the other.',
      start: { in: '6', mm: '150' },
    },
    height: { kind: 'length', label: 'Height of loops', start: { in: '2 1/2', mm: '65' } },
    knot: {
      kind: 'length',
      label: 'Width of knot',
      means: 'As it shows across the bow.',
      start: { in: '1', mm: '25' },
    },
    middle: {
      kind: 'length',
      label: 'Round the middle',
      means: 'Draw a sample together and wrap a tape round it.',
      start: { in: '3', mm: '75' },
    },
    tail: {
      kind: 'length',
      label: 'Length of tails',
      means: 'Along the longer edge; empty for none.',
      start: { in: '8', mm: '200' },
      optional: true,
    },
    tailWidth: {
      kind: 'length',
      label: 'Width of tails',
      means: 'Finished; empty: as wide as the loops are high.',
      start: { in: '1 1/2', mm: '40' },
      optional: true,
    },
    allowance: { kind: 'length', usual: true, label: 'Seam allowance', start: { in: '3/8', mm: '10' } },
  },
  work: ({ tail, tailWidth, ...given }) => {
    const wide = tailWidth ?? given.height;
    if (tail !== undefined && tail <= 0)
      return bad(
        refusal('tail', 'The tails have no length.', 'Give a length above zero, or leave it empty.'),
      );
    if (wide <= 0 && tailWidth !== undefined)
      return bad(refusal('tailWidth', 'The tails have no width.', 'Give a width above zero.'));
    const tails = tail === undefined ? undefined : { length: tail, width: wide };
    const made = bow({ ...given, ...(tails ? { tails } : {}) });
    if (!made.ok) return made;
    const { strips, assumed } = made.value;
    const pieces = strips.map((strip) => pieceOf(strip, given.allowance));
    return good({
      figures: strips.flatMap((strip) => [
        { kind: 'length' as const, name: `${named(strip)}, cut length`, length: strip.length },
        { kind: 'length' as const, name: `${named(strip)}, cut width`, length: strip.width },
      ]),
      strips: strips.flatMap((strip) =>
        strip.marks.length === 0
          ? []
          : [
              {
                name: `${TITLE[strip.part]}, along the strip`,
                from: 'one cut end',
                span: strip.length,
                marks: strip.marks.map((at, i) => ({ at, name: markName(strip, i) })),
              },
            ],
      ),
      drawing: drawn(given, tails),
      sheets: pieceSheets(...pieces),
      advice: [],
      assumed,
      sources: [geometry],
    });
  },
});

const named = ({ part, count }: BowStrip): string =>
  count > 1 ? `${TITLE[part]}, cut ${count}` : TITLE[part];

const markName = ({ part }: BowStrip, i: number): string =>
  part === 'knot' ? 'middle' : i === 1 ? 'front middle' : 'end of a loop';

const pieceOf = (strip: BowStrip, allowance: Length): StripPiece => ({
  name: TITLE[strip.part],
  notes: [`cut ${strip.count}`, 'allowances drawn', 'fold along the middle, right sides together'],
  length: strip.length,
  width: strip.width,
  allowance,
  folds: [times(strip.width, 1 / 2)],
  marks: strip.marks,
});

/** The bow as it is worn. */
function drawn(
  of: { readonly width: Length; readonly height: Length; readonly knot: Length; readonly middle: Length },
  tails: { readonly length: Length; readonly width: Length } | undefined,
): PatternSheet {
  const { width, height, knot, middle } = of;
  const at = (x: number, y: number) => place(nm(x), nm(y));
  // Wrapped flat, the knot shows half of the way round.
  const pinch = middle / 4;
  const loop = (side: 1 | -1): Drawn =>
    ring('body', [
      at((side * knot) / 2, -pinch),
      at((side * width) / 2, -height / 2),
      at((side * width) / 2, height / 2),
      at((side * knot) / 2, pinch),
    ]);
  const hanging = (side: 1 | -1): readonly Drawn[] => {
    if (!tails) return [];
    const [x, w, low] = [(side * knot) / 4, side * tails.width, pinch + tails.length];
    return [ring('body', [at(x, pinch), at(x + w * 0.3, low), at(x + w * 1.3, low), at(x + w, pinch)])];
  };
  return sheet('Bow, finished', [
    ...hanging(-1),
    ...hanging(1),
    loop(-1),
    loop(1),
    ring('body', [at(-knot / 2, -pinch), at(knot / 2, -pinch), at(knot / 2, pinch), at(-knot / 2, pinch)]),
  ]);
}
