import { buttonholeLength } from '../../cloth/buttonhole.ts';
import { fastenings } from '../../cloth/fastenings.ts';
import type { Refusal } from '../../cloth/refusal.ts';
import { add, inches, mm, times } from '../../length/length.ts';
import { good, type Result } from '../../length/result.ts';
import type { MarkSet } from '../card-types.ts';
import type { MarksFound, WorkOf } from './marks.ts';
import { type CardSubject, item, onSide, sidesOf } from './subject.ts';

/** Places of buttonholes, with their length. */
export function holes(on: CardSubject, work: WorkOf<'buttonholes'>) {
  const hole = buttonholeLength({ rule: 'flat', ...work.button });
  if (!hole.ok) return hole;
  const folded = on.garment.works.find(
    (w) => w.kind === 'folded-band' && w.on === work.on && w.edge === work.along,
  );
  // Without a folded band nothing says how wide the lap is; then the hole is not held to any.
  const half = folded?.kind === 'folded-band' ? times(folded.secondTurn, 1 / 2) : mm(1000);
  const made = fastenings({
    first: work.first,
    last: work.last,
    count: work.count,
    ...(work.held === undefined ? {} : { held: work.held }),
    direction: work.direction === 'along' ? 'vertical' : 'horizontal',
    hole: hole.value.length,
    diameter: work.button.diameter,
    outer: half,
    inner: half,
  });
  return made.ok ? good({ hole: hole.value, made: made.value }) : made;
}

/** Marks of buttonholes: where each begins, from the datum. */
export function holeMarks(on: CardSubject, work: WorkOf<'buttonholes'>): Result<MarksFound, Refusal> {
  const found = holes(on, work);
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
