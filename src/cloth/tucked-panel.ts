import { type Length, longer, nm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Polygon } from '../shape/flatten.ts';
import { addAllowance } from '../shape/offset.ts';
import { type FoldMap, openMap, type TuckFamily } from './fold-map.ts';
import { openOutline } from './open-outline.ts';
import { type PanelSize, panelOutline } from './panel.ts';
import { type Refusal, refusal } from './refusal.ts';
import { type MarkedLine, straightLines } from './tuck-lines.ts';
import { spreadTucks } from './tuck-spread.ts';
import type { Pressed } from './tucks.ts';

/** A finished panel and the tucks in its middle. */
export interface TuckedPanelInput extends PanelSize {
  /** `across`: the tucks run from side to side; `down`: from top to bottom. */
  readonly run: 'across' | 'down';
  /** `away`: folds lie downwards, or to the right; `toward`: upwards, or to the left. */
  readonly pressed: Pressed;
  readonly count: number;
  readonly depth: Length;
  readonly spacing: Length;
  /** Seam allowance on all sides, as it is once the tucks are sewn. */
  readonly allowance: Length;
}

/** What {@link tuckedPanel} gives back. Places count from the left upper corner of the finished panel's frame. */
export interface TuckedPanelMade {
  /** Outline of the finished panel. */
  readonly finished: Polygon;
  /** The seam line on the flat cloth. */
  readonly seam: Polygon;
  /** The outline to cut. */
  readonly cut: Polygon;
  /** Marks from the top for tucks across, from the widest left edge for tucks down. */
  readonly map: FoldMap;
  /** Stitching lines and folds as far as the cut cloth reaches. */
  readonly lines: readonly MarkedLine[];
  readonly takeUp: Length;
  readonly assumed: readonly string[];
}

const MOST_TUCKS = 300;

/**
 * Opens a panel through its tucks. The allowance is put round the finished panel first and then opened with it, so
 * that the cut edge too lies true when the tucks are folded.
 *
 * Refused: what `panelOutline`, `spreadTucks` and `openOutline` refuse; an allowance below zero or over
 * 10 cm; more than 300 tucks.
 */
export function tuckedPanel(input: TuckedPanelInput): Result<TuckedPanelMade, Refusal> {
  const { run, pressed, count, depth, spacing, allowance } = input;
  const outline = panelOutline(input);
  if (!outline.ok) return outline;
  const finished = outline.value;
  if (allowance < 0 || allowance > 100_000_000) {
    return bad(refusal('allowance', 'This is not a seam allowance.', 'Give from 0 to 10 cm.'));
  }
  if (count > MOST_TUCKS) {
    return bad(refusal('count', 'So many tucks are too much for one panel.', 'Give 300 or fewer.'));
  }
  const wide = longer(input.top, input.bottom) ? input.top : input.bottom;
  const over = run === 'across' ? input.height : wide;
  const placed = spreadTucks({ over, depth, spacing, pressed, count });
  if (!placed.ok) return placed;
  const family: TuckFamily = {
    datum: { x: nm(0), y: nm(0) },
    across: run === 'across' ? 90 : 0,
    tucks: placed.value,
    pressed,
  };
  const map = openMap(family);
  if (!map.ok) return map;
  const seam = openOutline(finished, [family]);
  if (!seam.ok) return seam;
  const [start, ...rest] = finished;
  if (!start) return bad(refusal('top', 'The panel has no corners.', 'Give its measures.'));
  const wider = addAllowance(
    {
      start,
      edges: [...rest, start].map((to, i) => ({ name: String(i), segments: [{ kind: 'line', to }] })),
    },
    new Map(),
    allowance,
  );
  if (!wider.ok) return bad(refusal('allowance', wider.error, 'Give a smaller allowance.'));
  const cut = openOutline(wider.value, [family]);
  if (!cut.ok) return cut;
  return good({
    finished,
    seam: seam.value,
    cut: cut.value,
    map: map.value,
    lines: straightLines(map.value, cut.value),
    takeUp: map.value.takeUp,
    assumed: ['The tucks sit in the middle of the panel.'],
  });
}
