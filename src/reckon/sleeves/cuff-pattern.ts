import type { CuffButtonsMade } from '../../cloth/cuff-buttons.ts';
import type { CuffMade } from '../../cloth/cuffs.ts';
import { add, type Length, nm, subtract, times, zero } from '../../length/length.ts';
import { arc, line, place, sheet } from '../../paper/drawing.ts';
import type { StripMarks } from '../../paper/marking-strip.ts';
import type { Drawn, PatternSheet } from '../../paper/pattern-sheet.ts';
import type { ReckonedFigure } from '../reckoning.ts';
import { pieceLines, pieceSheets, type StripPiece } from './strip-piece.ts';

/** The buttons of a cuff and how wide they are. */
export interface Buttoned {
  readonly made: CuffButtonsMade;
  readonly diameter: Length;
}

/** What a cuff tells, buttoned or closed. */
export const cuffFigures = (made: CuffMade, fullness: string): readonly ReckonedFigure[] => [
  { kind: 'length', name: 'Cut length', length: made.cut.length },
  { kind: 'length', name: 'Cut width', length: made.cut.width },
  { kind: 'number', name: 'Pieces for each cuff', number: made.cut.count },
  ...(made.fold === undefined
    ? []
    : [{ kind: 'length' as const, name: 'Fold, from the cut edge', length: made.fold }]),
  { kind: 'length', name: 'Finished length', length: made.length },
  { kind: 'words', name: 'Sleeve gathered to its place', words: fullness },
];

/** Quarters of cuff and sleeve; equal numbers are pinned together. */
export function cuffMarks(made: CuffMade, sleeve: Length, from: string): readonly StripMarks[] {
  const names = ['start', '1 of 4', '2 of 4', '3 of 4', 'end'];
  const on = (side: 'cuff' | 'sleeve') =>
    made.marks.map((mark, k) => ({ at: mark[side], name: names[k] ?? `${k} of 4` }));
  return [
    { name: 'Cuff, along its seam line', from, span: made.length, marks: on('cuff') },
    {
      name: 'Sleeve, along its lower edge',
      from: 'the start of the sleeve',
      span: sleeve,
      marks: on('sleeve'),
    },
  ];
}

/** The pattern with allowances; the end that lies below is on the left. */
export function cuffPiece(made: CuffMade, allowance: Length, buttoned?: Buttoned): StripPiece {
  return {
    name: 'Cuff',
    notes: [
      `cut ${made.cut.count} for each cuff`,
      'the other cuff is a mirror image',
      'allowances drawn',
      ...(made.fold === undefined ? [] : ['fold along the middle']),
    ],
    length: made.cut.length,
    width: made.cut.width,
    allowance,
    folds: made.fold === undefined ? [] : [made.fold],
    notches: made.marks.map(({ cuff }) => add(allowance, cuff)),
    more: buttoned ? holes(made, allowance, buttoned) : [],
  };
}

/** Holes on the right end with a bar at each of their ends, buttons as rings on the left. */
function holes(made: CuffMade, allowance: Length, { made: buttons, diameter }: Buttoned): readonly Drawn[] {
  const end = add(allowance, made.length);
  const bar = times(diameter, 1 / 6);
  return buttons.buttons.flatMap(({ down, hole, button }) => {
    const y = add(allowance, down);
    const [from, to] = [subtract(end, hole[0]), subtract(end, hole[1])];
    const upright = (x: Length) => line('mark', place(x, nm(y - bar)), place(x, nm(y + bar)));
    return [
      line('mark', place(from, y), place(to, y)),
      upright(from),
      upright(to),
      arc('mark', place(add(allowance, button), y), times(diameter, 1 / 2)),
    ];
  });
}

/** The cuff as it is cut. */
export const cuffDrawing = (piece: StripPiece): PatternSheet => sheet('Cuff, cut', pieceLines(piece, false));

/** Its pattern, where it is not too long to print. */
export const cuffSheets = (piece: StripPiece): readonly PatternSheet[] => pieceSheets(piece);

/** Buttonholes and buttons, each from its own finished end; empty without buttons. */
export function buttonMarks(
  made: CuffMade,
  depth: Length,
  { made: buttons }: Buttoned,
): readonly StripMarks[] {
  const [first] = buttons.buttons;
  if (!first) return [];
  return [
    {
      name: 'Buttonholes, along the cuff',
      from: 'the finished end that lies on top',
      span: made.length,
      marks: first.hole.map((at, i) => ({ at, name: i === 0 ? 'hole, outer end' : 'hole, inner end' })),
    },
    {
      name: 'Buttons, along the cuff',
      from: 'the finished end that lies below',
      span: made.length,
      marks: [{ at: first.button, name: 'button' }],
    },
    {
      name: 'Buttons and holes, down the cuff',
      from: 'the seam of the sleeve',
      span: nm(Math.max(depth, zero)),
      marks: buttons.buttons.map(({ down }, i) => ({ at: down, name: `button ${i + 1}` })),
    },
  ];
}
