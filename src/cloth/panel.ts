import { type Length, mm, nm, zero } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Polygon } from '../shape/flatten.ts';
import { type Refusal, refusal } from './refusal.ts';

/** A panel with a level top and bottom, the same on both sides of its middle. */
export interface PanelSize {
  readonly top: Length;
  readonly bottom: Length;
  readonly height: Length;
}

const WIDEST = mm(10_000);

/**
 * The corners of a panel: top left, top right, bottom right, bottom left; its left and upper sides touch the axes.
 * Refused: a size of zero or less, or over 10 m.
 */
export function panelOutline(size: PanelSize): Result<Polygon, Refusal> {
  for (const field of ['top', 'bottom', 'height'] as const) {
    if (size[field] <= 0)
      return bad(refusal(field, 'The panel has no size there.', 'Give a measure above zero.'));
    if (size[field] > WIDEST)
      return bad(refusal(field, 'This is more than 10 m.', 'Give the measure of one panel.'));
  }
  const wide = Math.max(size.top, size.bottom);
  const [top, bottom] = [(wide - size.top) / 2, (wide - size.bottom) / 2];
  return good([
    { x: nm(top), y: zero },
    { x: nm(top + size.top), y: zero },
    { x: nm(bottom + size.bottom), y: size.height },
    { x: nm(bottom), y: size.height },
  ]);
}
