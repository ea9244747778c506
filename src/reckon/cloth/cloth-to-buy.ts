import { inMetres, inYards } from '../../cloth/cloth-bought.ts';
import { type ClothPiece, clothNeeded, SOLD_BY } from '../../cloth/cloth-needed.ts';
import { refusal } from '../../cloth/refusal.ts';
import { geometry, published } from '../../cloth/source.ts';
import { mm, nm, toMm } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { sheet } from '../../paper/drawing.ts';
import { type ReckonedFigure, reckoning } from '../reckoning.ts';
import { layoutDrawn } from './layout-drawing.ts';
import { laidPieces, readPieces } from './piece-lines.ts';

/**
 * How long the layout is searched, in slices compared: it is searched at every touch of a key. Eleven lists of boxes
 * took a quarter of the time of the whole search on the mean, and lay 0.7 % longer.
 */
const SEARCHED = 600_000;
/** A layout larger than this in square metres is not laid out in paper. */
const MOST_PAPER = 6;
/** No cloth is wider. */
const WIDEST = mm(10_000);
const percent = (part: number): string => `${Math.round(part * 100)} %`;

/** How much cloth pieces take, and where each lies. */
export const clothToBuy = reckoning({
  id: 'cloth-to-buy',
  name: 'Cloth to buy',
  tells: 'How much cloth the pieces of a pattern take, and how to lay them.',
  group: 'Cloth and measures',
  fields: {
    width: {
      kind: 'length',
      label: 'Width of the cloth',
      means: 'From selvage to selvage.',
      start: { in: '54', mm: '1400' },
    },
    pieces: {
      kind: 'lines',
      label: 'Pieces',
      means:
        'One a line: how many x across x along, a name, then fold or bias if it lies so; with allowances.',
      start: {
        in: '2 x 12 x 24 front\n1 x 24 x 25 back, fold\n2 x 16 x 24 sleeve\n2 x 4 x 20 collar',
        mm: '2 x 300 x 600 front\n1 x 600 x 630 back, fold\n2 x 400 x 600 sleeve\n2 x 100 x 500 collar',
      },
    },
    laid: {
      kind: 'choice',
      label: 'The cloth lies',
      options: [
        { value: 'doubled', label: 'folded lengthwise' },
        { value: 'single', label: 'single' },
      ],
      start: 'doubled',
    },
    nap: {
      kind: 'choice',
      label: 'Nap or figure',
      means: 'A nap, a shine or a figure that has an up.',
      options: [
        { value: 'no', label: 'none' },
        { value: 'yes', label: 'all pieces lie one way' },
      ],
      start: 'no',
    },
    grain: {
      kind: 'choice',
      usual: true,
      label: 'Grain',
      options: [
        { value: 'along', label: 'along the cloth only' },
        { value: 'any', label: 'pieces may lie crosswise' },
      ],
      start: 'along',
    },
    shrinks: {
      kind: 'number',
      usual: true,
      label: 'Shrinks by',
      means: 'Of its length, when washed before cutting.',
      unit: '%',
      start: '0',
    },
    step: {
      kind: 'length',
      usual: true,
      label: 'Sold by',
      means: 'What is bought is rounded up to this.',
      start: { in: '4 1/2', mm: '50' },
    },
    gap: {
      kind: 'length',
      usual: true,
      label: 'Between pieces',
      means: 'Least room from one to the next.',
      start: { in: '1/4', mm: '5' },
    },
    selvage: {
      kind: 'length',
      usual: true,
      label: 'Left at each selvage',
      start: { in: '1/2', mm: '10' },
    },
  },
  blame: { shrinkage: 'shrinks', turns: 'grain', grain: 'pieces', count: 'pieces', shape: 'pieces' },
  work: ({ width, pieces: written, laid, nap, grain, shrinks, step, gap, selvage }, unit) => {
    const read = readPieces(written, unit);
    if (!read.ok) return read;
    if (width <= 0 || width > WIDEST) {
      const cure = 'Give a width above zero and at most 10 m, which is 11 yd.';
      return bad(refusal('width', 'This is not the width of a cloth.', cure));
    }
    if (!(shrinks >= 0 && shrinks < 50)) {
      return bad(refusal('shrinks', 'Cloth does not shrink by this.', 'Give 0 or more and less than 50 %.'));
    }
    const doubled = laid === 'doubled';
    const room = doubled ? nm(Math.floor(width / 2) - selvage - Math.ceil(gap / 2)) : undefined;
    const lineOf: number[] = [];
    const pieces: ClothPiece[] = [];
    for (const piece of read.value) {
      for (const one of laidPieces(piece, room, grain === 'any')) {
        pieces.push(one);
        lineOf.push(piece.line);
      }
    }
    const made = clothNeeded({
      pieces,
      width,
      laid,
      oneWay: nap === 'yes',
      gap,
      selvage,
      shrinkage: shrinks / 100,
      step,
      search: SEARCHED,
    });
    if (!made.ok) return made;
    const { buy, length, unshrunk, areaBound, efficiency, parts, advice, assumed } = made.value;
    const layoutNotes = [
      doubled ? 'Lay the left side on the fold.' : 'Lay both sides on the selvages.',
      'The numbers are those of the lines.',
    ];
    const many = read.value.reduce((sum, { count }) => sum + count, 0);
    return good({
      figures: [
        { kind: 'length', name: 'Length to buy', length: buy },
        unit === 'in'
          ? { kind: 'words', name: 'By the yard', words: inYards(buy) }
          : { kind: 'words', name: 'By the metre', words: inMetres(buy) },
        { kind: 'length', name: 'Length that the pieces take', length },
        ...(shrinks > 0
          ? ([{ kind: 'length', name: 'Before it shrinks', length: unshrunk }] satisfies ReckonedFigure[])
          : []),
        { kind: 'words', name: 'Cloth that is used', words: percent(efficiency) },
        { kind: 'length', name: 'No layout is shorter than', length: areaBound },
        { kind: 'number', name: 'Pieces', number: many },
      ],
      strips: [],
      drawing: sheet('Layout', layoutDrawn(parts, lineOf)),
      sheets:
        toMm(length) * toMm(width) <= MOST_PAPER * 1e6
          ? [sheet('Layout', layoutDrawn(parts, lineOf), layoutNotes)]
          : [],
      advice,
      assumed: [...assumed, 'Every piece takes the room of a box round it.'],
      sources: [
        geometry,
        SOLD_BY.source,
        published(
          'NIMI Dress Making, Trade Theory',
          'about 2024',
          'p. 32, use of the cloth; seen as an excerpt',
        ),
      ],
    });
  },
});
