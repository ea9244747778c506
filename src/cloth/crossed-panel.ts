import { add, type Length, nm, zero } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { directionOf } from '../shape/clip.ts';
import type { Sourced } from './advice.ts';
import { type FoldMap, openMap, type TuckFamily } from './fold-map.ts';
import { liftedLines } from './lifted-lines.ts';
import { panelOutline } from './panel.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory } from './source.ts';
import { type MarkedLine, straightLines } from './tuck-lines.ts';
import { spreadTucks } from './tuck-spread.ts';

/**
 * Tucks of two directions cross at an angle within these.
 * @unit degrees
 */
export const CROSSED_ANGLE: Sourced<readonly [least: number, most: number]> = {
  value: [30, 90],
  source: memory,
};

/** A finished rectangle filled with tucks that cross. */
export interface CrossedPanelInput {
  readonly width: Length;
  readonly height: Length;
  readonly depth: Length;
  /** Finished, from stitching line to stitching line, in both directions. */
  readonly spacing: Length;
  /** Between the two directions, in degrees: 90 is square. */
  readonly angle: number;
}

/** What {@link crossedPanel} gives back. Places count from the left upper corner. */
export interface CrossedPanelMade {
  /** Size of the rectangle of flat cloth to mark and tuck. */
  readonly clothWidth: Length;
  readonly clothHeight: Length;
  /** The tucks that run down, sewn first; marks from the left edge. */
  readonly first: FoldMap;
  /** The tucks across them, sewn second; marks square to them from the left upper corner, with the first tucks pressed. */
  readonly second: FoldMap;
  /** Lines of both on the flat cloth before anything is sewn; the second lie in zigzag where the two cross aslant. */
  readonly firstLines: readonly MarkedLine[];
  readonly secondLines: readonly MarkedLine[];
  /** True where the two cross at right angles, so that both can be marked with a ruler beforehand. */
  readonly square: boolean;
  readonly assumed: readonly string[];
}

const corner = { x: zero, y: zero };

const rectangle = (wide: Length, high: Length) => [
  corner,
  { x: wide, y: zero },
  { x: wide, y: high },
  { x: zero, y: high },
];

/**
 * Fills a rectangle with two directions of tucks, each group in its middle, and gives the flat cloth that folds to
 * it. The first run from top to bottom and are pressed to the right; the second, across them, downwards. Aslant, the
 * second tucks draw the cloth in both ways, so the cloth is larger both ways and the panel is cut from it when tucked.
 * Source for the order: NIMI Dress Making, trade practical, p. 207 (c. 2024), seen as an excerpt; sizes follow from the measures.
 *
 * Refused: an angle not from 30 to 90 degrees (turn the cloth over for the other way); more than 20 000 crossings;
 * what `panelOutline` and `spreadTucks` refuse.
 */
export function crossedPanel(input: CrossedPanelInput): Result<CrossedPanelMade, Refusal> {
  const { width, height, depth, spacing, angle } = input;
  const [least, most] = CROSSED_ANGLE.value;
  if (!(angle >= least && angle <= most)) {
    const cure = 'Give from 30 to 90 degrees; 90 is square. For the other way, turn the cloth over.';
    return bad(refusal('angle', 'Tucks at this angle cannot be marked here.', cure));
  }
  const outline = panelOutline({ top: width, bottom: width, height });
  if (!outline.ok) {
    const { field, wrong, cure } = outline.error;
    return bad(refusal(field === 'height' ? 'height' : 'width', wrong, cure));
  }
  const place = (over: Length, across: number): Result<FoldMap, Refusal> => {
    const tucks = spreadTucks({ over, depth, spacing, pressed: 'away' });
    if (!tucks.ok) return tucks;
    const family: TuckFamily = { datum: corner, across, tucks: tucks.value, pressed: 'away' };
    return openMap(family);
  };
  const { x, y } = directionOf(angle);
  const second = place(nm(width * x + height * y), angle);
  if (!second.ok) return second;
  const [wide, high] = [nm(width + second.value.takeUp * x), nm(height + second.value.takeUp * y)];
  const first = place(wide, 0);
  if (!first.ok) return first;
  if (first.value.marks.length * second.value.marks.length > 20_000) {
    return bad(refusal('spacing', 'The tucks cross more than 20 000 times.', 'Give a wider spacing.'));
  }
  const flat = rectangle(add(wide, first.value.takeUp), high);
  const square = angle === 90;
  return good({
    clothWidth: add(wide, first.value.takeUp),
    clothHeight: high,
    first: first.value,
    second: second.value,
    firstLines: straightLines(first.value, flat),
    secondLines: liftedLines(first.value, second.value, rectangle(wide, high)),
    square,
    assumed: [
      'Each group of tucks sits in the middle of the panel.',
      'The tucks that run down are sewn first and pressed to the right; the others are pressed downwards.',
      ...(square
        ? []
        : [
            'The panel is cut out after tucking; the lines of the second tucks are marked then, with a ruler.',
          ]),
    ],
  });
}
