import type { Refusal } from '../../cloth/refusal.ts';
import { add, inches } from '../../length/length.ts';
import { good, type Result } from '../../length/result.ts';
import { holesOf } from '../../outfit/piece-holes.ts';
import type { MarkSet } from '../card-types.ts';
import type { MarksFound, WorkOf } from './marks.ts';
import { type CardSubject, item, onSide, sidesOf } from './subject.ts';

/** Marks of buttonholes: where each begins, from the datum. */
export function holeMarks(on: CardSubject, work: WorkOf<'buttonholes'>): Result<MarksFound, Refusal> {
  const found = holesOf(on.garment, work);
  if (!found.ok) return found;
  const { made } = found.value;
  const sets = sidesOf(on.step).map(
    (side): MarkSet => ({
      name: onSide(
        side,
        on.piece,
        work.direction === 'along' ? 'upper ends of the holes' : 'levels of the holes',
      ),
      from: work.from,
      span: add(work.last, inches(2)),
      marks: made.fastenings.map((fastening, i) => ({
        item: item(side, i + 1),
        at: fastening.hole.from.along,
        name: i === made.spacing.held ? `hole ${i + 1}, held at its level` : `hole ${i + 1}`,
      })),
    }),
  );
  return good({ sets, advice: made.advice });
}
