import { type Length, nm, zero } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Polygon } from '../shape/flatten.ts';
import { signedArea } from '../shape/measure.ts';
import type { Sourced } from './advice.ts';
import { type LatticeFamily, type LatticeMade, lattice } from './lattice.ts';
import { type PanelSize, panelOutline } from './panel.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory } from './source.ts';

/**
 * The lines of a lattice over a panel lie at an angle to the level within these.
 * @unit degrees
 */
export const LATTICE_ANGLE: Sourced<readonly [least: number, most: number]> = {
  value: [5, 85],
  source: memory,
};

/** A lattice over a finished panel. */
export interface LatticePanelInput extends PanelSize {
  /** From line to line, square to them; finished. */
  readonly spacing: Length;
  /** Between a line and the level, in degrees: 45 makes squares on their points. */
  readonly angle: number;
  /** How far the lines stay inside the finished edge. */
  readonly clear: Length;
}

/** What {@link latticePanel} gives back. Places count from the left upper corner of the panel's frame. */
export interface LatticePanelMade {
  readonly lattice: LatticeMade;
  /** Lines that fall to the right, then lines that rise to the right; one of each goes through the middle of the top edge. */
  readonly families: readonly [LatticeFamily, LatticeFamily];
  /** The finished edge. */
  readonly outline: Polygon;
}

/** More than this cannot be sewn in a lifetime of evenings, nor drawn on a phone. */
const MOST_CROSSINGS = 100_000;
const MOST_LINES = 2000;

/**
 * A lattice of two families that mirror each other over a panel, so that it comes out the same on both sides.
 * Refused: an angle not from 5 to 85 degrees; more than 100 000 crossings or 2000 lines one way; what `panelOutline`
 * and `lattice` refuse.
 */
export function latticePanel(input: LatticePanelInput): Result<LatticePanelMade, Refusal> {
  const { spacing, angle, clear } = input;
  const [least, most] = LATTICE_ANGLE.value;
  if (!(angle >= least && angle <= most)) {
    return bad(
      refusal('angle', 'The lines would hardly cross.', 'Give from 5 to 85 degrees; 45 makes squares.'),
    );
  }
  const made = panelOutline(input);
  if (!made.ok) return made;
  const outline = made.value;
  if (spacing <= 0)
    return bad(refusal('spacing', 'The lines have no spacing.', 'Give a spacing above zero.'));
  const wide = Math.max(input.top, input.bottom);
  const turn = (angle * Math.PI) / 180;
  const lines = (wide * Math.sin(turn) + input.height * Math.cos(turn)) / spacing;
  const area = Math.abs(signedArea(outline)) * 1e12; // square millimetres to square nanometres
  const crossings = (area * Math.sin(2 * turn)) / (spacing * spacing);
  if (lines > MOST_LINES || crossings > MOST_CROSSINGS) {
    return bad(refusal('spacing', 'The lines are too close to sew.', 'Give a wider spacing.'));
  }
  const through = { x: nm(wide / 2), y: zero };
  const families = [
    { angle, spacing, through },
    { angle: -angle, spacing, through },
  ] as const;
  const found = lattice({ outline, clear, families });
  return found.ok ? good({ lattice: found.value, families, outline }) : found;
}
