import { type Length, mm, nm } from '../length/length.ts';
import type { Result } from '../length/result.ts';
import type { Garment, Piece } from '../outfit/outfit.ts';
import { flattenOutline, type Polygon } from '../shape/flatten.ts';
import { boundingBox } from '../shape/measure.ts';
import { addAllowance } from '../shape/offset.ts';
import type { Outline, Point } from '../shape/outline.ts';
import { FLAT } from './drawing.ts';
import { edgeUses } from './edge-allowances.ts';
import { PENS, type PenName } from './pens.ts';
import { grainLine } from './piece-marks.ts';
import { escaped, num, pair, svg } from './svg.ts';

const GAP: Length = mm(20);
/** A row of pieces goes on until it is this wide. */
const ROW: Length = mm(1200);
const CUT_WORDS: Readonly<Record<Piece['cut'], string>> = {
  one: 'cut 1',
  pair: 'cut 2, one a mirror image',
  fold: 'cut 1 on the fold: half is drawn',
};

const stroke = (pen: PenName): string => {
  const { wide, dash } = PENS[pen];
  const dashes = dash.length === 0 ? '' : ` stroke-dasharray="${dash.map(num).join(' ')}"`;
  return `fill="none" stroke="#000" stroke-width="${num(wide)}"${dashes}`;
};

/** An outline as path data with its own curves; its last stretch ends where it began, so that none is added. */
export function outlineData({ start, edges }: Outline): string {
  const parts = edges.flatMap(({ segments }) =>
    segments.map((one) =>
      one.kind === 'line' ? `L${pair(one.to)}` : `C${pair(one.first)} ${pair(one.second)} ${pair(one.to)}`,
    ),
  );
  return `M${pair(start)}${parts.join('')}Z`;
}

/** What is drawn of one piece, each kind of line in a group of its own. */
function pieceSvg(piece: Piece, cut: Result<Polygon, string>, at: Point): string {
  const { id, outline } = piece;
  const grain = grainLine(flattenOutline(outline, FLAT), piece.grain);
  const edges = outline.edges.map(({ name, segments }) => `${name} ${segments.length}`).join(' ');
  const lies = piece.grain === undefined ? '' : ` data-grain="${piece.grain}"`;
  const body = [
    `<title>${escaped(piece.name)}</title>`,
    ...(cut.ok
      ? [
          `<g id="${id}-cut-line"><path d="M${cut.value.map(pair).join('L')}Z" ${stroke('cut')}><title>${escaped(piece.name)}, cut line</title></path></g>`,
        ]
      : []),
    `<g id="${id}-seam-line"><path id="${id}-outline" data-piece="${id}" data-cut="${piece.cut}" data-edges="${edges}"${lies} d="${outlineData(outline)}" ${stroke('seam')}><title>${escaped(piece.name)}</title></path></g>`,
    ...(grain?.drawn.kind === 'path'
      ? [
          `<g id="${id}-grain"><path d="M${grain.drawn.points.map(pair).join('L')}" ${stroke('grain')}><title>${escaped(piece.name)}, grain</title></path></g>`,
        ]
      : []),
    ...(piece.marks.length > 0
      ? [
          `<g id="${id}-marks">${piece.marks.map((mark) => `<circle cx="${num(mark.at.x)}" cy="${num(mark.at.y)}" r="2" ${stroke('mark')}><title>${escaped(mark.name)}</title></circle>`).join('')}</g>`,
        ]
      : []),
    grain
      ? `<text x="${num(nm(grain.middle.x + mm(4)))}" y="${num(grain.middle.y)}" font-size="6">${escaped(`${piece.name}, ${CUT_WORDS[piece.cut]}`)}</text>`
      : '',
  ];
  return `<g id="${id}" transform="translate(${pair(at)})">\n${body.filter(Boolean).join('\n')}\n</g>`;
}

/**
 * The pieces of a garment for a drawing program, at true size: the seam line with its curves, the cutting line, the grain
 * and the marks, each in a named group. The names of the edges go with the seam line as data, so that a piece comes back
 * with them. Pieces are as they are when their works are done: tucks are not opened.
 */
export function piecesSvg(garment: Garment): string {
  const body: string[] = [];
  let [x, y, high, wide] = [0, 0, 0, 0];
  for (const piece of garment.pieces) {
    const cut = addAllowance(
      piece.outline,
      new Map(edgeUses(garment, piece).map(({ edge, allowance }) => [edge, allowance])),
      piece.allowance,
      FLAT,
    );
    const box = boundingBox(cut.ok ? cut.value : flattenOutline(piece.outline, FLAT));
    if (x > 0 && x + box.right - box.left > ROW) [x, y, high] = [0, y + high + GAP, 0];
    body.push(pieceSvg(piece, cut, { x: nm(x - box.left), y: nm(y - box.top) }));
    x += box.right - box.left + GAP;
    wide = Math.max(wide, x);
    high = Math.max(high, box.bottom - box.top);
  }
  const whole = { left: nm(-GAP), top: nm(-GAP), right: nm(wide), bottom: nm(y + high + GAP) };
  return svg(garment.name, whole, body);
}
