import { FOOT_ROOM, type LatticeMade, lattice } from '../cloth/lattice.ts';
import type { Refusal } from '../cloth/refusal.ts';
import type { Result } from '../length/result.ts';
import { flattenOutline, type Polygon, pointOf } from '../shape/flatten.ts';
import { boundingBox } from '../shape/measure.ts';
import type { Piece, Work } from './outfit.ts';

/** The lattice of a work on the real outline of its piece, less the room for the foot. */
export function latticeOf(
  piece: Piece,
  work: Extract<Work, { kind: 'lattice-beads' }>,
): Result<LatticeMade, Refusal> {
  const outline: Polygon = flattenOutline(piece.outline);
  const box = boundingBox(outline);
  const through = pointOf((box.left + box.right) / 2, (box.top + box.bottom) / 2);
  const [a, b] = work.families;
  return lattice({
    outline,
    clear: FOOT_ROOM.value,
    families: [
      { angle: a.angle + 90, spacing: a.spacing, through },
      { angle: b.angle + 90, spacing: b.spacing, through },
    ],
  });
}
