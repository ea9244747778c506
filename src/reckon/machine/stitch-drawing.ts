import type { StitchMade } from '../../cloth/stitches.ts';
import { type Length, mm, nm, times, zero } from '../../length/length.ts';
import { arc, box, line, place } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import type { Point } from '../../shape/outline.ts';

/** An overedge is drawn this wide; the machine sets it. */
export const OVEREDGE_DRAWN: Length = mm(5);
/** Of a stitch, this much of the thread shows; the rest dives into the holes. */
const SHOWS = 0.84;

/** One stitch from hole to hole. */
function one(from: Point, to: Point): Drawn {
  const at = (part: number): Point =>
    place(nm(from.x + (to.x - from.x) * part), nm(from.y + (to.y - from.y) * part));
  return line('body', at((1 - SHOWS) / 2), at((1 + SHOWS) / 2));
}

/**
 * A row of stitches on its cloth, true to their length and width, each hole as wide as the needle. Of an overedge the
 * needle thread runs along and the loopers' threads go to the cut edge and back.
 */
export function stitchRow(made: StitchMade, count: number): Drawn[] {
  const { type, length, width = zero, needle } = made;
  const over = type === 503 || type === 504;
  const half = nm(width / 2);
  const rim = nm(Math.max(mm(3), width));
  const bottom = over ? OVEREDGE_DRAWN : rim;
  const hole = nm((mm(1) * needle.metric) / 200);
  const holes = Array.from({ length: count + 1 }, (_, i) =>
    place(times(length, i), i % 2 === 0 ? nm(-half) : half),
  );
  const drawn: Drawn[] = [
    box('thin', nm(-length), nm(-rim), times(length, count + 2), nm(bottom + rim)),
    ...holes.map((at) => arc('thin', at, hole)),
  ];
  for (const [i, from] of holes.entries()) {
    const to = holes[i + 1];
    if (!to) continue;
    drawn.push(one(from, to));
    if (over) {
      const edge = place(nm(from.x + length / 2), bottom);
      drawn.push(line('thin', from, edge, to));
    }
  }
  if (over) {
    const right = times(length, count + 1);
    drawn.push(line('cut', place(nm(-length), bottom), place(right, bottom)));
  }
  return drawn;
}
