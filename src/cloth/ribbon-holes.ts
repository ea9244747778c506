import { inBothRules } from '../length/both-rules.ts';
import { add, type Length, mm, nm, shorter, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory } from './source.ts';

/** A hole for a ribbon is longer than the ribbon is wide by this much. */
export const RIBBON_EASE: Sourced<Length> = { value: mm(2), source: memory };

/** Rows of buttonholes round a tube, such as a cuff or a stocking top, for ribbons to run in and out. */
export interface RibbonHolesInput {
  /** Finished way round the tube, and where the holes are. */
  readonly round: Length;
  /** Wanted distance from hole to hole along a row. */
  readonly apart: Length;
  readonly ribbon: Length;
  /** Cloth to keep free on each side of the seam: its allowance and the width of the foot. */
  readonly free: Length;
  /** Levels of the rows, from the edge of the tube to the middle of the holes. */
  readonly levels: readonly Length[];
  /** Length of ribbon to tie, at each end. */
  readonly tie: Length;
}

/** What {@link ribbonHoles} gives back. Places round the tube are from its seam. */
export interface RibbonHolesMade {
  /** Holes in one row; always an even number, so that both ends of the ribbon come out. */
  readonly count: number;
  /** Distance from hole to hole. */
  readonly apart: Length;
  /** Length of a hole, across the row. */
  readonly hole: Length;
  /** Places of the holes of a row, from the seam. */
  readonly at: readonly Length[];
  /** Each row's two ends of a hole, from the edge of the tube. */
  readonly rows: readonly { readonly from: Length; readonly to: Length }[];
  /** Where the ribbon is tied: opposite the seam, between two holes. */
  readonly tieAt: Length;
  /** Does the ribbon lie outside where it passes the seam? */
  readonly overSeam: boolean;
  /** Ribbon to cut for one row. */
  readonly ribbonLength: Length;
  readonly assumed: readonly string[];
}

/**
 * Even rows of an even number of holes; the seam lies midway between the last hole and the first. The number is the
 * even one that brings the distance closest to the wanted one and keeps the seam free. Follows from the measures.
 *
 * Refused: no way round, distance, ribbon or row; free cloth or ties below zero; a seam that two holes cannot keep free;
 * holes closer than 1 mm; more than 1000 holes; rows that run into each other or over the edge of the tube.
 */
export function ribbonHoles(input: RibbonHolesInput): Result<RibbonHolesMade, Refusal> {
  const { round, apart, ribbon, free, levels, tie } = input;
  if (round <= 0) return bad(refusal('round', 'The tube has no width.', 'Give a way round above zero.'));
  if (shorter(apart, mm(1)))
    return bad(
      refusal('apart', 'The holes have no cloth between them.', `Give ${inBothRules(mm(1), 'up')} or more.`),
    );
  if (ribbon <= 0) return bad(refusal('ribbon', 'The ribbon has no width.', 'Give a width above zero.'));
  if (free < 0) return bad(refusal('free', 'The free cloth is below zero.', 'Give zero or more.'));
  if (tie < 0) return bad(refusal('tie', 'The ribbon to tie is below zero.', 'Give zero or more.'));
  if (levels.length === 0) return bad(refusal('levels', 'There is no row.', 'Give one level or more.'));
  const most = 2 * Math.floor(free > 0 ? round / (4 * free) : Number.MAX_SAFE_INTEGER);
  if (most < 2) {
    const cure = 'Keep less cloth free, or make the tube wider.';
    return bad(refusal('free', 'Even two holes would come too near the seam.', cure));
  }
  const low = Math.max(2, 2 * Math.floor(round / apart / 2));
  const near = Math.abs(round / low - apart) <= Math.abs(round / (low + 2) - apart) ? low : low + 2;
  if (near > 1000) return bad(refusal('apart', 'This is more than 1000 holes.', 'Give a longer distance.'));
  const count = Math.min(near, most);
  const hole = add(ribbon, RIBBON_EASE.value);
  const sorted = [...levels].sort((a, b) => a - b);
  const rows = sorted.map((level) => ({ from: nm(level - hole / 2), to: nm(level + hole / 2) }));
  if (rows.some(({ from }) => from <= 0)) {
    const cure = 'Move the row further from the edge.';
    return bad(refusal('levels', 'A hole would run over the edge of the tube.', cure));
  }
  if (rows.some(({ from }, i) => i > 0 && from <= (rows[i - 1]?.to ?? 0))) {
    const cure = 'Set the rows further apart, or take a narrower ribbon.';
    return bad(refusal('levels', 'Two rows would run into each other.', cure));
  }
  return good({
    count,
    apart: nm(round / count),
    hole,
    at: Array.from({ length: count }, (_, i) => nm((round * (i + 0.5)) / count)),
    rows,
    tieAt: times(round, 1 / 2),
    overSeam: count % 4 === 0,
    ribbonLength: add(round, times(tie, 2)),
    assumed: [
      `A hole is ${inBothRules(RIBBON_EASE.value)} longer than the ribbon is wide.`,
      ...(count < near ? ['The holes are further apart than wanted, to keep the seam free.'] : []),
    ],
  });
}
