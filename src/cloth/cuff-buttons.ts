import { inBothRules } from '../length/both-rules.ts';
import { type Length, nm, subtract, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Advice } from './advice.ts';
import { buttonholeLength } from './buttonhole.ts';
import { BEYOND_BUTTON, fastenings, PAST_CENTRE } from './fastenings.ts';
import { type Refusal, refusal } from './refusal.ts';
import type { Source } from './source.ts';

/** Buttons on a cuff, one below the other. */
export interface CuffButtonsInput {
  /** Finished depth of the cuff, how far its ends lie over each other, and the way round it without the overlap. */
  readonly depth: Length;
  readonly overlap: Length;
  readonly round: Length;
  readonly buttons: number;
  readonly diameter: Length;
  readonly thickness: Length;
}

/** One buttonhole and its button. */
export interface CuffButton {
  /** From the sleeve seam, down the cuff. */
  readonly down: Length;
  /** The two ends of the hole, from the finished end that lies on top. */
  readonly hole: readonly [from: Length, to: Length];
  /** Middle of the button, from the finished end that lies below. */
  readonly button: Length;
}

/** What {@link cuffButtons} gives back. */
export interface CuffButtonsMade {
  readonly buttons: readonly CuffButton[];
  readonly hole: Length;
  readonly holeFrom: Source;
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
}

/**
 * Holes along the cuff, the buttons resting on the middle of the overlap and even in the depth. Hole length: `buttonholeLength`
 * of a flat button; place of the hole: `fastenings`. Follows from the measures.
 *
 * Refused: buttons not whole, under 1 or over 100, or too large for the depth; an overlap that the holes would reach past; what
 * `buttonholeLength` refuses.
 */
export function cuffButtons(input: CuffButtonsInput): Result<CuffButtonsMade, Refusal> {
  const { depth, overlap, round, buttons, diameter, thickness } = input;
  if (!Number.isInteger(buttons) || buttons < 1 || buttons > 100)
    return bad(refusal('buttons', 'This is not a number of buttons.', 'Give a whole number from 1 to 100.'));
  const hole = buttonholeLength({ rule: 'flat', diameter, thickness });
  if (!hole.ok) return hole;
  if (diameter * buttons >= depth) {
    const cure = 'Give fewer or smaller buttons, or a deeper cuff.';
    return bad(refusal('buttons', 'The buttons would not fit in the depth of the cuff.', cure));
  }
  const first = times(depth, 1 / (2 * buttons));
  const centre = times(overlap, 1 / 2);
  const made = fastenings({
    direction: 'horizontal',
    first,
    last: subtract(depth, first),
    count: buttons,
    hole: hole.value.length,
    diameter,
    outer: centre,
    inner: round,
    opening: depth,
  });
  if (!made.ok) {
    const { field, wrong, cure } = made.error;
    if (field === 'outer') {
      const wider = `Give an overlap of more than ${inBothRules(times(PAST_CENTRE.value, 2), 'up')}; a button and ${inBothRules(times(BEYOND_BUTTON.value, 2))} is better.`;
      return bad(refusal('overlap', wrong, wider));
    }
    return bad(refusal(field === 'inner' ? 'diameter' : 'buttons', wrong, cure));
  }
  const fromEnd = (across: Length) => nm(centre - across);
  return good({
    buttons: made.value.fastenings.map((one) => ({
      down: one.button.along,
      hole: [fromEnd(one.hole.from.across), fromEnd(one.hole.to.across)],
      button: centre,
    })),
    hole: hole.value.length,
    holeFrom: hole.value.source,
    advice: made.value.advice,
    assumed: ['The buttons rest on the middle of the overlap, even in the depth.'],
  });
}
