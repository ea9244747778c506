import type { CircleFrillMade } from '../../cloth/circles.ts';
import type { RingPart } from '../../cloth/flounce.ts';
import { add, type Length, longer, longest, mm, nm, shortest, times, zero } from '../../length/length.ts';
import { arc, line, middleWords, moved, place, ring, sheet } from '../../paper/drawing.ts';
import type { Drawn, PatternSheet } from '../../paper/pattern-sheet.ts';
import type { Point } from '../../shape/outline.ts';
import { LONGEST_SHEET } from '../sleeves/strip-piece.ts';
import { count } from './times.ts';

/** A whole ring wider than this is printed as a quarter, to be laid on cloth folded in four. */
export const WIDE_RING: Length = mm(400);

/** What a ring is drawn from, besides the part of a turn. */
export interface RingToDraw {
  readonly frill: CircleFrillMade;
  readonly slit: Length;
  /** Quarter marks as parts of a whole turn; see `ringMarks`. */
  readonly turns: readonly number[];
}

const on = (radius: number, turn: number): Point => {
  const angle = turn * 2 * Math.PI;
  return place(nm(radius * Math.cos(angle)), nm(radius * Math.sin(angle)));
};
const around = (radius: Length, turn: number): readonly Point[] => {
  const drawn = arc('cut', place(zero, zero), radius, 0, turn * 360);
  return drawn.kind === 'path' ? drawn.points : [];
};

/** The lines of a ring about its middle; its first end lies along the cloth, to the right. */
function lines(part: number, { frill, slit, turns }: RingToDraw): readonly Drawn[] {
  const { radius, cutInside, cutOutside, outside } = frill;
  const middle = place(zero, zero);
  const slitSeam = (end: 0 | 1): Drawn => {
    const back = end === 0 ? 1 : -1;
    const turnAt = (r: Length) => end * part + (back * slit) / (2 * Math.PI * r);
    return line('seam', on(radius, turnAt(radius)), on(outside, turnAt(outside)));
  };
  const cut: readonly Drawn[] =
    part === 1
      ? [
          arc('cut', middle, cutOutside),
          arc('cut', middle, cutInside),
          line('cut', on(cutInside, 0), on(cutOutside, 0)),
        ]
      : [ring('cut', [...around(cutOutside, part), ...[...around(cutInside, part)].reverse()])];
  return [
    ...cut,
    ...(longer(radius, cutInside) ? [arc('seam', middle, radius, 0, part * 360)] : []),
    ...(longer(cutOutside, outside) ? [arc('fold', middle, outside, 0, part * 360)] : []),
    ...(slit > 0 ? [slitSeam(0), slitSeam(1)] : []),
    ...turns.slice(1, -1).map((turn) => line('mark', on(cutInside, turn), on(radius + mm(3), turn))),
    ...named(part, frill),
  ];
}

/** Grain line along the first end, and the name under it, in the middle of the band. */
function named(part: number, { cutInside, cutOutside }: CircleFrillMade): readonly Drawn[] {
  const band = cutOutside - cutInside;
  const at = on((cutInside + cutOutside) / 2, Math.min(part / 2, 0.25));
  const half = nm(band * 0.3);
  return [
    line('grain', place(nm(at.x - half), at.y), place(nm(at.x + half), at.y)),
    middleWords('frill', place(at.x, nm(at.y + band * 0.26)), shortest(mm(8), nm(band * 0.2))),
  ];
}

/** A quarter of a whole ring: both straight edges lie on folds, one of which is cut open for the slit. */
function quarter({ frill, slit }: RingToDraw): readonly Drawn[] {
  const { radius, cutInside, cutOutside, outside } = frill;
  const middle = place(zero, zero);
  const along = (r: Length) => on(r, slit / (2 * Math.PI * r));
  return [
    arc('cut', middle, cutOutside, 0, 90),
    arc('cut', middle, cutInside, 0, 90),
    line('fold', on(cutInside, 0), on(cutOutside, 0)),
    line('fold', on(cutInside, 0.25), on(cutOutside, 0.25)),
    ...(longer(radius, cutInside) ? [arc('seam', middle, radius, 0, 90)] : []),
    ...(longer(cutOutside, outside) ? [arc('fold', middle, outside, 0, 90)] : []),
    ...(slit > 0 ? [line('seam', along(radius), along(outside))] : []),
    ...named(0.25, frill),
  ];
}

/** The same lines with their left upper corner at the datum. */
function toCorner(drawn: readonly Drawn[]): readonly Drawn[] {
  let [left, top] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const one of drawn) {
    if (one.kind !== 'path') continue;
    for (const { x, y } of one.points) [left, top] = [Math.min(left, x), Math.min(top, y)];
  }
  return drawn.map((one) => moved(one, nm(-left), nm(-top)));
}

/** Rings of one size, told once: the part of a turn, how many, and what lies round it. */
export function alike(
  parts: readonly RingPart[],
): readonly { readonly part: RingPart; readonly of: number }[] {
  const whole = parts.filter(({ turn }) => turn === 1);
  const rest = parts.filter(({ turn }) => turn < 1);
  return [whole, rest].flatMap((same) => (same[0] ? [{ part: same[0], of: same.length }] : []));
}

/** The pattern of every ring that differs, at true size; none where it is too large to print. */
export function ringSheets(
  parts: readonly RingPart[],
  toDraw: (part: RingPart) => RingToDraw,
): readonly PatternSheet[] {
  return alike(parts).flatMap(({ part, of }) => {
    const drawn = toDraw(part);
    if (longer(longest(part.along, part.across), LONGEST_SHEET)) return [];
    const wide = part.turn === 1 && longer(times(drawn.frill.cutOutside, 2), WIDE_RING);
    const notes = [
      `cut ${of}`,
      ...(part.turn === 1 ? [] : [`${Math.round(part.turn * 360)} degrees of a ring`]),
      'allowances drawn',
      ...(wide
        ? ['lay both straight edges on cloth folded in four', 'cut one fold open for the slit']
        : ['marks across the inner allowance divide its seam in quarters']),
    ];
    const name =
      part.turn === 1 ? (wide ? 'Frill, quarter of a ring' : 'Frill, ring') : 'Frill, part of a ring';
    return sheet(name, toCorner(wide ? quarter(drawn) : lines(part.turn, drawn)), notes);
  });
}

/** Every ring that differs in the cloth that it is cut from, side by side. */
export function ringDrawing(
  parts: readonly RingPart[],
  toDraw: (part: RingPart) => RingToDraw,
): PatternSheet {
  const drawn: Drawn[] = [];
  let left = zero;
  for (const { part, of } of alike(parts)) {
    const frame = ring('body', [
      place(zero, zero),
      place(part.along, zero),
      place(part.along, part.across),
      place(zero, part.across),
    ]);
    drawn.push(
      ...[frame, ...toCorner(lines(part.turn, toDraw(part)).filter(({ kind }) => kind === 'path'))].map(
        (one) => moved(one, left, zero),
      ),
    );
    if (parts.length > 1) {
      const high = times(part.along, 1 / 14);
      drawn.push(
        middleWords(count(of, 'piece'), place(add(left, times(part.along, 1 / 2)), nm(-high / 2)), high),
      );
    }
    left = add(left, times(part.along, 1.08));
  }
  return sheet('Frill on its cloth', drawn);
}
