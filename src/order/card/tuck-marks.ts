import { type Advice, advise } from '../../cloth/advice.ts';
import type { Refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { tucks } from '../../cloth/tucks.ts';
import { add, zero } from '../../length/length.ts';
import { good, type Result } from '../../length/result.ts';
import type { TuckFamily } from '../../outfit/outfit.ts';
import { tuckDatum } from '../../outfit/tuck-datum.ts';
import type { MarkSet } from '../card-types.ts';
import type { MarksFound, WorkOf } from './marks.ts';
import { type CardSubject, item, onSide, sidesOf } from './subject.ts';

/** Fold lines of tucks on the flat cloth, from the edge that they are measured from. */
export function tuckMarks(
  on: CardSubject,
  families: readonly TuckFamily[],
  from: string,
): Result<MarksFound, Refusal> {
  const sets: MarkSet[] = [];
  const advice = new Map<string, Advice>();
  for (const side of sidesOf(on.step)) {
    for (const [f, family] of families.entries()) {
      const made = tucks({
        depth: family.depths,
        spacing: family.spacing,
        first: family.first,
        pressed: family.pressed,
      });
      if (!made.ok) return made;
      for (const a of made.value.advice) advice.set(a.say, a);
      const last = made.value.tucks.at(-1);
      const direction = families.length > 1 ? (f === 0 ? 'first direction, ' : 'second direction, ') : '';
      const halves = on.piece?.cut === 'fold' ? ', on both sides' : '';
      sets.push({
        name: onSide(side, on.piece, `${direction}tuck folds${halves}`),
        from: on.piece ? tuckDatum(on.piece, family.angle, from).say : from,
        span: add(last?.secondStitching ?? zero, family.spacing),
        marks: made.value.tucks.map((tuck, i) => ({
          item: item(side, `${f + 1}-${i + 1}`),
          at: tuck.fold,
          name: `fold ${i + 1}`,
        })),
      });
    }
  }
  return good({ sets, advice: [...advice.values()] });
}

/** Tucks of a work, in the direction or directions that this step marks. */
export function tuckMarksOf(
  on: CardSubject,
  work: WorkOf<'tucks' | 'crossed-tucks'>,
): Result<MarksFound, Refusal> {
  if (work.kind === 'tucks') return tuckMarks(on, [work.family], work.from);
  const again = on.step.action === 'mark-again';
  const made = tuckMarks(on, again ? work.families.slice(1) : work.families, work.from);
  if (!made.ok || again) return made;
  const [a, b] = work.families;
  const aslant = Math.abs(Math.abs(a.angle - b.angle) - 90) > 0.01;
  if (!aslant) return made;
  const say =
    'These directions cross aslant: the second lines are straight only after the first tucks are pressed, so mark them then.';
  return good({ ...made.value, advice: [...made.value.advice, advise(say, practice)] });
}
