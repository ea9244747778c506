import { advise } from '../../cloth/advice.ts';
import { latticeBeads } from '../../cloth/beads.ts';
import type { Refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { type Length, nm, times, zero } from '../../length/length.ts';
import { good, type Result } from '../../length/result.ts';
import type { Piece } from '../../outfit/outfit.ts';
import { latticeOf } from '../../outfit/piece-lattice.ts';
import { flattenOutline } from '../../shape/flatten.ts';
import { boundingBox } from '../../shape/measure.ts';
import type { MarkSet } from '../card-types.ts';
import type { MarksFound, WorkOf } from './marks.ts';
import { type CardSubject, item, onSide, sidesOf } from './subject.ts';

/** Beads along the lattice of a work. */
export function beadsOf(piece: Piece, work: WorkOf<'lattice-beads'>) {
  const made = latticeOf(piece, work);
  if (!made.ok) return made;
  const clear = work.cluster ? work.cluster.bead.length : zero;
  const beads = latticeBeads({
    lattice: made.value,
    bead: work.line.length,
    pairs: work.line.atATime === 2,
    clear,
    cluster: work.cluster?.of ?? 0,
    clusterBead: work.cluster?.bead.length ?? work.line.length,
  });
  return beads.ok ? good({ lattice: made.value, beads: beads.value }) : beads;
}

/** Distances of the lattice lines from the middle line of each family. */
export function latticeMarks(on: CardSubject, work: WorkOf<'lattice-beads'>): Result<MarksFound, Refusal> {
  if (!on.piece) return good({ sets: [], advice: [] });
  const made = latticeOf(on.piece, work);
  if (!made.ok) return made;
  const outline = flattenOutline(on.piece.outline);
  const box = boundingBox(outline);
  const reach = Math.hypot(box.right - box.left, box.bottom - box.top) / 2;
  const sets = sidesOf(on.step).flatMap((side) =>
    work.families.map((family, f): MarkSet => {
      const lines = new Set(
        made.value.lines
          .filter((line) => line.family === f)
          .map((line) => Math.abs(Math.round(offset(line.from, box, family.angle) / family.spacing))),
      );
      const steps = [...lines].filter((k) => k > 0).sort((x, y) => x - y);
      return {
        name: onSide(
          side,
          on.piece,
          `${f === 0 ? 'first' : 'second'} direction, both sides of the middle line`,
        ),
        from: 'the middle line through the centre of the piece',
        span: nm(Math.max(reach, family.spacing)),
        marks: steps.map((k) => ({
          item: item(side, `${f + 1}-${k}`),
          at: times(family.spacing, k),
          name: `line ${k} on each side`,
        })),
      };
    }),
  );
  const say = `The lines run at ${work.families.map((family) => `${Math.abs(family.angle)}° ${family.angle < 0 ? 'left' : 'right'} of upright`).join(' and ')}, and stop 6 mm short of the seam line so that the foot can pass`;
  return good({ sets, advice: [advise(say, practice)] });
}

const offset = (
  p: { x: Length; y: Length },
  box: { left: number; right: number; top: number; bottom: number },
  angle: number,
): number => {
  const radians = (angle * Math.PI) / 180;
  return (
    (p.x - (box.left + box.right) / 2) * Math.cos(radians) +
    (p.y - (box.top + box.bottom) / 2) * Math.sin(radians)
  );
};
