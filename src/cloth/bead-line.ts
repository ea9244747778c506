import { add, type Length, nm, subtract, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type BeadWay, FASTENING, NEEDLEFUL, segmentBeads } from './beads.ts';
import { type Refusal, refusal } from './refusal.ts';

/** Beads along one line. */
export interface BeadLineInput {
  readonly length: Length;
  readonly bead: Length;
  /** Least cloth to show between beads and at both ends; evened over the line. */
  readonly gap: Length;
  /** Sewn two at a time, so that the number is even. */
  readonly pairs: boolean;
}

/** What {@link beadLine} gives back. */
export interface BeadLineMade {
  readonly count: number;
  /** Before the first bead, between beads and after the last. */
  readonly gap: Length;
  /** Where each bead begins, each from the beginning of the line. */
  readonly at: readonly Length[];
  /** Thread along its path: the line once, and each bead once more. */
  readonly thread: Length;
  /** Of {@link NEEDLEFUL}, less {@link FASTENING} each. */
  readonly needlefuls: number;
  readonly assumed: readonly string[];
}

const MOST = 20_000;

/**
 * How many beads lie on a line with at least the wanted gap, the remainder spread evenly. A gap and a bead together
 * are counted as `segmentBeads` counts beads, on the line less the gap at its end.
 *
 * Refused: no line; a gap below zero; more than 20 000 beads; what `segmentBeads` refuses.
 */
export function beadLine({ length, bead, gap, pairs }: BeadLineInput): Result<BeadLineMade, Refusal> {
  if (length <= 0) return bad(refusal('length', 'The line has no length.', 'Give a length above zero.'));
  if (gap < 0) return bad(refusal('gap', 'The beads would overlap.', 'Give zero or more.'));
  if (bead <= 0) {
    return bad(refusal('bead', 'The bead has no length.', 'Measure ten beads in a row and give a tenth.'));
  }
  const way: BeadWay = { bead: add(bead, gap), pairs, clear: nm(0) };
  if (subtract(length, gap) / way.bead > MOST) {
    return bad(refusal('bead', 'This is more than 20 000 beads.', 'Give a shorter line or a longer bead.'));
  }
  const fit = segmentBeads(subtract(length, gap), way);
  if (!fit.ok) {
    const { field } = fit.error;
    return field === 'pairs'
      ? fit
      : bad(
          refusal(
            'bead',
            'The bead is longer than the line has room for.',
            'Give a shorter bead or a smaller gap.',
          ),
        );
  }
  const { count } = fit.value;
  const room = (length - count * bead) / (count + 1);
  const thread = nm(length + count * bead);
  const useful = subtract(times(add(...NEEDLEFUL.value), 1 / 2), FASTENING.value);
  return good({
    count,
    gap: nm(Math.floor(room)),
    at: Array.from({ length: count }, (_, i) => nm(room * (i + 1) + bead * i)),
    thread,
    needlefuls: Math.ceil(thread / useful),
    assumed: ['A needleful of 45 cm, of which fastening on and off takes 8 cm.'],
  });
}
