import { mm, nm } from '../length/length.ts';
import { type Marking, writeLength } from '../length/writing.ts';
import { FOLD } from '../outfit/chains.ts';
import type { Cloth, Garment, Outfit, Piece } from '../outfit/outfit.ts';
import { flattenOutline } from '../shape/flatten.ts';
import { boundingBox } from '../shape/measure.ts';
import { addAllowance } from '../shape/offset.ts';
import type { Point } from '../shape/outline.ts';
import { box, FLAT, line, ring, words } from './drawing.ts';
import { type EdgeUse, edgeUses } from './edge-allowances.ts';
import { insideOf } from './parallel-edge.ts';
import type { Drawn, PatternSheet, Stroke } from './pattern-sheet.ts';
import {
  edgeLines,
  edgeRuns,
  edgeWords,
  flatThrough,
  gatherNotches,
  grainLine,
  holesDrawn,
  latticeDrawn,
  placesMarked,
} from './piece-marks.ts';
import { familiesOn, openedPiece } from './tucked-piece.ts';

/** The sheets of one piece. */
export interface PieceSheets {
  /** `garment/piece`: one name within the outfit. */
  readonly key: string;
  readonly garment: string;
  readonly name: string;
  readonly sheets: readonly PatternSheet[];
}

/** A block that is tucked before it is cut to shape is larger than the opened shape by this much all round. Common practice, no source. */
export const BLOCK_MORE = mm(25);

const CUT: Readonly<Record<Piece['cut'], string>> = {
  one: 'Cut 1.',
  pair: 'Cut 2, one a mirror image.',
  fold: 'Cut 1 on the fold: half is drawn.',
};

/** What stands on the piece itself: short, for narrow pieces. */
const CUT_SHORT: Readonly<Record<Piece['cut'], string>> = {
  one: 'cut 1',
  pair: 'cut 2, mirrored',
  fold: 'cut 1 on the fold',
};

const edgeSaid = (edge: string): string => edge.replaceAll('-', ' ');

/** The allowances in words: the commonest first, then the edges that differ. */
export function allowanceWords(uses: readonly EdgeUse[], marking: Marking): string {
  const write = ({ allowance }: EdgeUse): string =>
    allowance === 0 ? 'none' : writeLength(allowance, marking).text;
  const edges = new Map<string, string[]>();
  for (const use of uses) {
    if (use.how === 'fold') continue;
    const said = write(use);
    edges.set(said, [...(edges.get(said) ?? []), edgeSaid(use.edge)]);
  }
  const [usual, ...others] = [...edges].sort((a, b) => b[1].length - a[1].length);
  if (!usual) return '';
  const more = others.map(([said, names]) => `${names.join(', ')} ${said}`);
  return `Allowance drawn: ${[usual[0], ...more].join('; ')}.`;
}

/** Everything about a piece that its sheets need. */
interface Subject {
  readonly garment: Garment;
  readonly piece: Piece;
  readonly uses: readonly EdgeUse[];
  readonly notes: readonly string[];
}

function nameOnPiece({ garment, piece }: Subject, at: Point): readonly Drawn[] {
  const side = { x: nm(at.x + mm(4)), y: at.y };
  return [
    words(piece.name, side, mm(6)),
    words(garment.name, { x: side.x, y: nm(side.y + mm(6)) }, mm(4)),
    words(CUT_SHORT[piece.cut], { x: side.x, y: nm(side.y + mm(11.5)) }, mm(4)),
  ];
}

const saidOf = (piece: Piece): ReadonlyMap<string, string> =>
  new Map(piece.cut === 'fold' ? [[FOLD, 'place on the fold']] : []);

const ON_FOLD = 1000; // the fold of a half piece lies on x = 0; within a micrometre is on it

/** A ring that is cut along; where a half piece lies on the fold it is not cut. */
function cutRing(piece: Piece, stroke: Stroke, points: readonly Point[]): readonly Drawn[] {
  if (piece.cut !== 'fold') return [ring(stroke, points)];
  const onFold = (p: Point | undefined): boolean => p !== undefined && Math.abs(p.x) <= ON_FOLD;
  const begins = points.findIndex(
    (p, i) => onFold(points.at(i - 1)) && onFold(p) && !onFold(points[(i + 1) % points.length]),
  );
  if (begins < 0) return [ring(stroke, points)];
  const turned = [...points.slice(begins), ...points.slice(0, begins)];
  const ends = turned.findIndex((p, i) => i > 0 && onFold(p));
  return [line(stroke, ...(ends < 0 ? turned : turned.slice(0, ends + 1)))];
}

/** The piece as it is when its tucks are sewn; a piece without tucks is cut from this. */
function finishedSheet(of: Subject, name: string, extra: readonly string[]): PatternSheet {
  const { garment, piece, uses } = of;
  const outline = flattenOutline(piece.outline, FLAT);
  const inside = insideOf(outline);
  const runs = edgeRuns(piece.outline);
  const drawn: Drawn[] = [];
  const notes = [...of.notes, ...extra];
  const cut = addAllowance(
    piece.outline,
    new Map(uses.map((use) => [use.edge, use.allowance])),
    piece.allowance,
    FLAT,
  );
  if (cut.ok) drawn.push(...cutRing(piece, 'cut', cut.value));
  else notes.push(`The allowance is not drawn: ${cut.error}`);
  for (const use of uses) {
    const run = runs.get(use.edge) ?? [];
    // A bound edge is the cut edge already.
    if (use.how !== 'bound')
      drawn.push(line(use.how === 'sewn' || use.how === 'free' ? 'seam' : 'fold', ...run));
    drawn.push(...edgeLines(piece, garment, use, run, inside));
  }
  for (const work of garment.works) {
    if (work.on !== piece.id) continue;
    if (work.kind === 'gather') {
      const use = uses.find(({ edge }) => edge === work.edge);
      drawn.push(
        ...gatherNotches(work, runs.get(work.edge) ?? [], use?.allowance ?? piece.allowance, inside),
      );
    }
    if (work.kind === 'buttonholes') {
      const holes = holesDrawn(garment, work, runs.get(work.along) ?? [], inside);
      drawn.push(...holes.drawn);
      notes.push(holes.note);
    }
    if (work.kind === 'lattice-beads') {
      const made = latticeDrawn(piece, work);
      drawn.push(...made.drawn);
      notes.push(made.note);
    }
  }
  drawn.push(...edgeWords(runs, inside, (p) => p, saidOf(piece)));
  drawn.push(...placesMarked(piece, (p) => p));
  const grain = grainLine(outline, piece.grain);
  if (grain) drawn.push(grain.drawn, ...nameOnPiece(of, grain.middle));
  return { name, notes: notes.filter(Boolean), drawn };
}

/** The piece spread flat through its tucks, or why it is not. */
function openedSheet(of: Subject): PatternSheet | string {
  const { garment, piece, uses } = of;
  const families = familiesOn(garment, piece);
  const seam = flattenOutline(piece.outline, FLAT);
  const cut = addAllowance(
    piece.outline,
    new Map(uses.map((use) => [use.edge, use.allowance])),
    piece.allowance,
    FLAT,
  );
  if (!cut.ok) return cut.error;
  const opened = openedPiece(cut.value, seam, families);
  if (!opened.ok) return `${opened.error.wrong} ${opened.error.cure}`;
  const block = piece.cutAfterWork;
  const drawn: Drawn[] = [
    ...cutRing(piece, block ? 'body' : 'cut', opened.value.cut),
    ...opened.value.seams.flatMap((one) => cutRing(piece, 'seam', one)),
    ...opened.value.lines.flatMap(({ line: which, runs }) =>
      runs.map((run) => line(which === 'fold' ? 'fold' : 'stitch', ...run)),
    ),
  ];
  const runs = edgeRuns(piece.outline);
  const inside = insideOf(seam);
  const flat = (p: Point): Point => flatThrough(families, p);
  if (block) {
    const { left, top, right, bottom } = boundingBox(opened.value.cut);
    // Nothing is added beyond the fold that a half piece is laid on.
    const fold = piece.cut === 'fold' ? 0 : BLOCK_MORE;
    const [wide, high] = [nm(right - left + fold + BLOCK_MORE), nm(bottom - top + 2 * BLOCK_MORE)];
    const around = box('cut', nm(left - fold), nm(top - BLOCK_MORE), wide, high);
    if (around.kind === 'path') drawn.unshift(...cutRing(piece, 'cut', around.points));
  }
  if (piece.cut === 'fold') {
    const run = runs.get(FOLD) ?? [];
    drawn.push(line('fold', ...run.map(flat)));
  }
  for (const work of garment.works) {
    if (work.kind !== 'gather' || work.on !== piece.id) continue;
    const use = uses.find(({ edge }) => edge === work.edge);
    for (const one of gatherNotches(
      work,
      runs.get(work.edge) ?? [],
      use?.allowance ?? piece.allowance,
      inside,
    )) {
      if (one.kind === 'path') drawn.push({ ...one, points: one.points.map(flat) });
    }
  }
  drawn.push(...edgeWords(runs, inside, flat, saidOf(piece)));
  drawn.push(...placesMarked(piece, flat));
  const grain = grainLine(opened.value.seams[0] ?? opened.value.cut, piece.grain);
  if (grain) drawn.push(grain.drawn, ...nameOnPiece(of, grain.middle));
  const notes = [
    ...of.notes,
    ...(opened.value.seams.length > 0
      ? []
      : ['The seam line is not drawn; measure the allowance from the cut edge.']),
    'Opened through its tucks: fold each on its fold line, stitch its two stitching lines together.',
    block
      ? 'Cut the block along the outer line, sew and press the tucks, then cut it to shape by the other sheet.'
      : 'The small points and notches of the edge lie inside the tucks when they are sewn.',
  ];
  return { name: `${piece.name}, ${block ? 'block to tuck' : 'opened'}`, notes, drawn };
}

function sheetsOf(of: Subject): readonly PatternSheet[] {
  const { garment, piece } = of;
  if (familiesOn(garment, piece).length === 0) return [finishedSheet(of, piece.name, [])];
  const opened = openedSheet(of);
  if (typeof opened === 'string') {
    return [finishedSheet(of, `${piece.name}, finished size`, [`Not opened through its tucks. ${opened}`])];
  }
  if (piece.cutAfterWork) {
    return [
      opened,
      finishedSheet(of, `${piece.name}, to cut after the tucks`, ['Lay it on the tucked cloth.']),
    ];
  }
  const beaded = garment.works.some((work) => work.on === piece.id && work.kind === 'lattice-beads');
  if (!beaded) return [opened];
  return [
    opened,
    finishedSheet(of, `${piece.name}, lattice`, [
      'Do not cut by this sheet: it shows the piece with its tucks sewn.',
    ]),
  ];
}

function notesOf(
  garment: Garment,
  piece: Piece,
  uses: readonly EdgeUse[],
  cloth: Cloth | undefined,
  marking: Marking,
): readonly string[] {
  const linings = garment.works.flatMap((work) =>
    work.on === piece.id && work.kind === 'interfacing'
      ? [`Interface with ${work.material.toLowerCase()}.`]
      : [],
  );
  return [
    `${garment.name}${cloth ? `, ${cloth.name.toLowerCase()}` : ''}. ${CUT[piece.cut]}`,
    allowanceWords(uses, marking),
    ...linings,
  ];
}

/**
 * Pattern sheets of every piece of an outfit, at true size: the cutting line with the allowance of each edge, the seam
 * line, folds, grain, and the marks of its works. A piece with tucks is opened through them. Where that cannot be done
 * the sheet shows the finished piece and says why.
 */
export function outfitSheets(outfit: Outfit, marking: Marking): readonly PieceSheets[] {
  return outfit.garments.flatMap((garment) =>
    garment.pieces.map((piece): PieceSheets => {
      const uses = edgeUses(garment, piece);
      const cloth = outfit.cloths.find(({ id }) => id === piece.cloth);
      const notes = notesOf(garment, piece, uses, cloth, marking);
      return {
        key: `${garment.id}/${piece.id}`,
        garment: garment.name,
        name: piece.name,
        sheets: sheetsOf({ garment, piece, uses, notes }),
      };
    }),
  );
}
