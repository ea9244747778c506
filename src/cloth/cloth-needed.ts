import { add, type Length, mm, nm, subtract, times, zero } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Polygon } from '../shape/flatten.ts';
import { pointOf } from '../shape/flatten.ts';
import type { Point } from '../shape/outline.ts';
import { type Advice, advise, type Sourced } from './advice.ts';
import { type Checked, type ClothPiece, checkPiece } from './cloth-needed-pieces.ts';
import type { Turn } from './laid-piece.ts';
import { findLayout } from './layout-search.ts';
import { type Refusal, refusal } from './refusal.ts';
import { MOST_SHRINKAGE } from './shrinkage.ts';
import { memory, practice, published, type Source } from './source.ts';

export type { ClothPiece } from './cloth-needed-pieces.ts';

/** Cloth is sold in multiples of this length, unless said otherwise. */
export const SOLD_BY: Sourced<Length> = { value: mm(50), source: practice };
/** How long the search goes on, in slices compared: 60 to 100 ms for a dozen pieces where it was measured. */
const SEARCH = 5_000_000;

/** A nap runs down the garment, that of velvet and velveteen up, and all pieces lie one way. */
export const NAP: Source = published(
  'Textiles and Clothing, Watson',
  '1907',
  'Cutting: nap down, velvet and velveteen up; all one way',
);
/** Figures that must match at the seams take more cloth. */
export const MATCHING: Source = published(
  'The New Dressmaker, Butterick',
  '1921',
  'p. 35, matching figures, seen as an excerpt',
);

/** Pieces and the cloth that they are to be cut from. */
export interface ClothNeededInput {
  readonly pieces: readonly ClothPiece[];
  /** Full width of the cloth, selvages included. */
  readonly width: Length;
  /**
   * `single`: opened out, right side up; each of a pair is laid by itself and a folded piece opened. `doubled`: folded lengthwise,
   * selvage to selvage; pairs are cut through both layers, folded pieces on the fold, and single ones after them from cloth opened out.
   */
  readonly laid: 'single' | 'doubled';
  /** True for cloth with a nap, a shine or a figure that has an up: all pieces lie the same way. */
  readonly oneWay: boolean;
  /** Least distance between pieces; none if not given. */
  readonly gap?: Length;
  /** Cloth at each selvage that is left out; none if not given. */
  readonly selvage?: Length;
  /** Part of its length that the cloth loses before it is cut, 0.05 for 5 %; none if not given. */
  readonly shrinkage?: number;
  /** What is bought is a multiple of this; 5 cm if not given. */
  readonly step?: Length;
  /** How long to search, in slices compared; more may lay closer and never lays worse. */
  readonly search?: number;
  /** Which exchanges the search tries; 0 if not given. The same number always gives the same layout. */
  readonly seed?: number;
}

/** Where one piece lies. */
export interface PiecePlace {
  /** Number of the piece in the input, from 0, and which of its copies this is, from 0. */
  readonly piece: number;
  readonly copy: number;
  readonly name: string;
  /** What to draw. On doubled cloth a folded piece is its half, with the fold at x = 0. */
  readonly outline: Polygon;
  /** The same from the drawing of the piece: mirrored about its upright, then turned off its grain, clockwise, then moved by `at`. */
  readonly mirrored: boolean;
  readonly turned: Turn;
  readonly at: Point;
  readonly onFold: boolean;
}

/** A stretch of cloth that is laid at once: doubled or single. Drawn with x across and y along it. */
export interface ClothPart {
  readonly layers: 1 | 2;
  /** As it lies: half the cloth where it is doubled, with the fold at x = 0. */
  readonly width: Length;
  readonly length: Length;
  readonly places: readonly PiecePlace[];
}

/** What {@link clothNeeded} gives back. */
export interface ClothNeededMade {
  /** One part, or two where single pieces are cut after doubled ones. Laid one after the other along the cloth. */
  readonly parts: readonly ClothPart[];
  /** Length that the pieces take, all parts together. */
  readonly length: Length;
  /** The same before shrinking. */
  readonly unshrunk: Length;
  /** What to buy: unshrunk, rounded up to the step. */
  readonly buy: Length;
  /** Area of all pieces, in mm². */
  readonly area: number;
  /** Area of the pieces divided by that of the cloth laid: 0.8 means that a fifth is left over. */
  readonly efficiency: number;
  /** No layout is shorter than this: the area of the pieces over the width between the selvage margins. */
  readonly areaBound: Length;
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
}

/**
 * How much cloth pieces need, and where each lies. The layout keeps the grain and the gap and never overlaps; it is a
 * good one, not always the shortest.
 *
 * Efficiency: pattern area over laid area (NIMI Dress Making, Trade Theory, p. 32, c. 2024, seen as an excerpt).
 * A length that loses the part s when washed must be bought 1 / (1 − s) times as long: follows from the measures.
 *
 * Refused: no pieces, or more than 300; a gap, selvage or step below zero; shrinkage below 0 or from a half up; a piece
 * without area, wider than its cloth, or turned where the cloth lies one way.
 */
export function clothNeeded(input: ClothNeededInput): Result<ClothNeededMade, Refusal> {
  const {
    pieces,
    width,
    laid,
    oneWay,
    gap = zero,
    selvage = zero,
    shrinkage = 0,
    step = SOLD_BY.value,
  } = input;
  const wrong = checkCloth(input);
  if (wrong) return bad(wrong);
  const doubled = laid === 'doubled';
  const usable = subtract(width, times(selvage, 2));
  const half = nm(Math.floor(width / 2));
  // Beside the fold a piece meets its own other layer, so half the gap is enough.
  const byFold = nm(Math.ceil(gap / 2));
  const strips = {
    single: { left: selvage, right: subtract(width, selvage), gap },
    double: { left: byFold, right: subtract(half, selvage), gap },
  };
  const checked: { readonly single: Checked[]; readonly double: Checked[] } = { single: [], double: [] };
  for (const [i, piece] of pieces.entries()) {
    const both = doubled && piece.cut !== 'one';
    const strip = both ? strips.double : strips.single;
    const room = { free: nm(strip.right - strip.left), onFold: nm(Math.max(0, strips.double.right)) };
    const ways = checkPiece(piece, i, { doubled: both, oneWay, gap }, room);
    if (!ways.ok) return ways;
    (both ? checked.double : checked.single).push(...ways.value);
  }
  const many = checked.single.length + checked.double.length;
  if (many > 300)
    return bad(refusal('pieces', `There are ${many} pieces to lay.`, 'Give no more than 300 at once.'));

  const copies = new Map<number, number>();
  const part = (things: readonly Checked[], layers: 1 | 2): ClothPart => {
    const strip = layers === 2 ? strips.double : strips.single;
    const area = things.reduce((sum, thing) => sum + thing.area, 0);
    const least = Math.max(
      (area * 1e12) / usable,
      ...things.map(({ ways }) => Math.min(...ways.map((way) => way.height))),
    );
    const budget = ((input.search ?? SEARCH) * things.length) / many;
    const found = findLayout(things, strip, least, budget, input.seed ?? 0);
    const places = things.map(({ piece, onFold }, n): PiecePlace | undefined => {
      const put = found.laid[n];
      if (!put) return undefined;
      const copy = copies.get(piece) ?? 0;
      copies.set(piece, copy + 1);
      return {
        piece,
        copy,
        name: pieces[piece]?.name ?? '',
        outline: put.way.outline.map((p) => pointOf(p.x + put.x, p.y + put.y)),
        mirrored: put.way.mirrored,
        turned: put.way.turn,
        at: pointOf(put.way.moved.x + put.x, put.way.moved.y + put.y),
        onFold,
      };
    });
    return {
      layers,
      width: layers === 2 ? half : width,
      length: nm(found.length),
      places: places.filter((place) => place !== undefined),
    };
  };
  const parts: ClothPart[] = [];
  if (checked.double.length > 0) parts.push(part(checked.double, 2));
  if (checked.single.length > 0) parts.push(part(checked.single, 1));

  const between = parts.length > 1 ? gap : zero;
  const length = add(between, ...parts.map((one) => one.length));
  const area = [...checked.single, ...checked.double].reduce((sum, thing) => sum + thing.area, 0);
  const unshrunk = nm(length / (1 - shrinkage));
  return good({
    parts,
    length,
    unshrunk,
    buy: times(step, Math.ceil(unshrunk / step)),
    area,
    efficiency: (area * 1e12) / (length * width),
    areaBound: nm(Math.ceil((area * 1e12) / usable)),
    advice: adviceFor(oneWay, doubled),
    assumed: assumedIn(input, parts),
  });
}

/** What is wrong with the cloth itself, if anything. */
function checkCloth(input: ClothNeededInput): Refusal | undefined {
  const { pieces, width, gap = zero, selvage = zero, shrinkage = 0, step = SOLD_BY.value } = input;
  if (pieces.length === 0) return refusal('pieces', 'There are no pieces.', 'Give one piece or more.');
  if (gap < 0) return refusal('gap', 'The gap between pieces is below zero.', 'Give zero or more.');
  if (selvage < 0)
    return refusal('selvage', 'The margin at the selvage is below zero.', 'Give zero or more.');
  if (width <= selvage * 2)
    return refusal(
      'width',
      'No cloth is left between the selvages.',
      'Give a wider cloth or a smaller margin.',
    );
  if (!(shrinkage >= 0 && shrinkage < MOST_SHRINKAGE.value))
    return refusal(
      'shrinkage',
      'Cloth does not shrink by this.',
      'Give 0 or more and less than 0.5; 0.05 is 5 %.',
    );
  if (step <= 0)
    return refusal('step', 'Cloth is not sold by nothing.', 'Give a step above zero, such as 5 cm.');
  return undefined;
}

function adviceFor(oneWay: boolean, doubled: boolean): Advice[] {
  const advice = [
    advise(
      'Lay out every piece before you cut the first, and look for pairs that are not mirrored.',
      practice,
    ),
  ];
  if (oneWay) {
    advice.push(advise('Lay a nap to run down the garment; that of velvet and velveteen runs up.', NAP));
    advice.push(advise('A figure that must match at the seams takes more cloth than this.', MATCHING));
    if (doubled)
      advice.push(advise('Fold one-way cloth lengthwise only: folded across, one layer runs up.', NAP));
  }
  if (doubled) advice.push(advise('Slippery or sheer cloth creeps when doubled; cut it single.', memory));
  return advice;
}

function assumedIn(input: ClothNeededInput, parts: readonly ClothPart[]): string[] {
  const assumed: string[] = [];
  if (input.gap === undefined) assumed.push('Pieces may touch.');
  if (input.selvage === undefined) assumed.push('The cloth can be used up to its edges.');
  if (input.shrinkage === undefined) assumed.push('The cloth does not shrink.');
  else if (input.shrinkage > 0) assumed.push('The width is that of the cloth once shrunk.');
  if (input.step === undefined) assumed.push('Cloth is sold by 5 cm.');
  if (parts.length > 1) assumed.push('Single pieces are cut after the doubled ones, from cloth opened out.');
  return assumed;
}
