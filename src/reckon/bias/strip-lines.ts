import type { BiasPiece, BiasStripsMade, OnCloth } from '../../cloth/bias-strips.ts';
import { type Length, nm, times, zero } from '../../length/length.ts';
import { box, line, middleWords, place, sheet } from '../../paper/drawing.ts';
import type { StripMarks } from '../../paper/marking-strip.ts';
import type { PatternSheet } from '../../paper/pattern-sheet.ts';
import type { ReckonedFigure } from '../reckoning.ts';

/** More strips than this cannot be drawn or marked one by one. */
export const MOST_LINES = 1000;

/** The lines to cut, once each, from the corner on; each from its end on the top or right edge to its other end. */
function linesOf(made: BiasStripsMade): readonly (readonly [OnCloth, OnCloth])[] {
  const lines = new Map<number, readonly [OnCloth, OnCloth]>();
  for (const piece of made.pieces)
    for (const ends of piece.lines) lines.set(ends[0].across + ends[0].along, ends);
  return [...lines].sort(([a], [b]) => a - b).map(([, ends]) => ends);
}

/** Where the lines meet the four edges of the cloth; a line has the same number at both its ends. */
export function edgeMarks(made: BiasStripsMade, across: Length, along: Length): readonly StripMarks[] {
  const lines = linesOf(made).map((ends, i) => ({ ends, name: `line ${i + 1}` }));
  const top = lines.filter(({ ends }) => ends[0].along === 0);
  const right = lines.filter(({ ends }) => ends[0].along > 0);
  const left = lines.filter(({ ends }) => ends[1].across === 0);
  const bottom = lines.filter(({ ends }) => ends[1].across > 0);
  const on = (
    name: string,
    from: string,
    span: Length,
    of: typeof lines,
    at: (ends: readonly [OnCloth, OnCloth]) => Length,
  ): readonly StripMarks[] =>
    of.length === 0
      ? []
      : [{ name, from, span, marks: of.map((one) => ({ at: at(one.ends), name: one.name })) }];
  return [
    ...on('Top edge', 'the left top corner', across, top, ([a]) => a.across),
    ...on('Left edge', 'the left top corner', along, left, ([, b]) => b.along),
    ...on('Right edge', 'the right top corner', along, right, ([a]) => a.along),
    ...on('Bottom edge', 'the left bottom corner', across, bottom, ([, b]) => b.across),
  ];
}

/** The cloth with its selvages at the sides, every line to cut, and the strips numbered from the corner on. */
export function stripsDrawing(made: BiasStripsMade, across: Length, along: Length): PatternSheet {
  const at = (p: OnCloth) => place(p.across, p.along);
  const lines = linesOf(made);
  const sum = ({ lines: [[end]] }: BiasPiece) => end.across + end.along;
  const fromCorner = [...made.pieces].sort((a, b) => sum(a) - sum(b));
  const high = times(nm(Math.max(across, along)), 1 / 22);
  const room = made.step > 1.6 * high;
  return sheet('Strips on the cloth', [
    box('body', zero, zero, across, along),
    ...lines.map(([a, b]) => line('cut', at(a), at(b))),
    ...(room
      ? fromCorner.map(({ lines: [near, far] }, i) => {
          const ends = [...near, ...far];
          const middle = (side: keyof OnCloth) => nm(ends.reduce((sum, end) => sum + end[side], 0) / 4);
          return middleWords(String(i + 1), place(middle('across'), nm(middle('along') + high / 3)), high);
        })
      : []),
    line('grain', place(nm(across + high), nm(along * 0.25)), place(nm(across + high), nm(along * 0.75))),
  ]);
}

/** Figures that any layout of strips has. */
export function stripFigures(made: BiasStripsMade): readonly ReckonedFigure[] {
  const lengths = made.pieces.map(({ middle }) => middle);
  const many = (n: number, one: string) => `${n} ${one}${n === 1 ? '' : 's'}`;
  return [
    {
      kind: 'words',
      name: 'Strips and joins',
      words: `${many(made.pieces.length, 'strip')}, ${many(made.joins, 'join')}`,
    },
    ...firstLine(made),
    { kind: 'length', name: 'From line to line, along the edges', length: made.step },
    { kind: 'length', name: 'Longest piece, along its middle', length: nm(Math.max(...lengths)) },
    { kind: 'length', name: 'Shortest piece, along its middle', length: nm(Math.min(...lengths)) },
  ];
}

/** The first line, where it cuts off a corner; where only some strips are needed it may lie further on. */
function firstLine(made: BiasStripsMade): readonly ReckonedFigure[] {
  const [a, b] = linesOf(made)[0] ?? [];
  return a?.along === 0 && b?.across === 0
    ? [{ kind: 'length', name: 'First line, from the corner both ways', length: a.across }]
    : [];
}
