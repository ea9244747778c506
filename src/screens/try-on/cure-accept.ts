import type { Cure } from '../../fitting/cure-types.ts';
import { runningOrder } from '../../order/running.ts';
import { undoId } from '../../order/step.ts';
import { garmentIn, ownsToo, withGarment } from '../../outfit/changing/part-lists.ts';
import type { Outfit } from '../../outfit/outfit.ts';
import { writeProblem } from '../../outfit/problem.ts';
import { readOutfit } from '../../outfit/reading.ts';
import { writeOutfit } from '../../outfit/writing.ts';
import { changesBetween } from '../../store/changes-between.ts';
import type { ReworkWritten } from '../../store/deed.ts';
import type { Seen } from '../../store/progress-types.ts';
import { noOrder } from '../describe/change.ts';
import type { Session } from '../session.ts';
import { unkept } from './cure-notes.ts';

/** The changed pieces and gathers as the maker's own, so that the unit that brought them leaves them as they are now. */
export function ownPieces(
  after: Outfit,
  { changes, gathers = [] }: Pick<Cure, 'changes' | 'gathers'>,
): Outfit {
  const works = gathers.map(({ work }) => work);
  let outfit = after;
  for (const { garment, piece } of changes) {
    const here = garmentIn(outfit, garment);
    if (!here) continue;
    const units = here.units.map((use) =>
      ownsToo(
        use,
        [piece, ...works].filter((id) => use.brought.includes(id)),
      ),
    );
    outfit = withGarment(outfit, { ...here, units });
  }
  return outfit;
}

/** The card of a cure to begin with: the first that undoes, else the first that is done again. */
export function firstStep(rework: ReworkWritten, done: readonly string[] = []): string | undefined {
  const over = new Set(done);
  return [
    ...rework.undo.map((step) => undoId(rework.id, step)),
    ...rework.again.map(({ step }) => step),
  ].find((step) => !over.has(step));
}

/**
 * Puts a cure on the cards, in one deed; the notes that it meets are cured with it. Returns why it is refused, in words; nothing where
 * it was written. A description that could not be read back, or that no order of making obeys, is refused.
 */
export function acceptCure(session: Session, cure: Cure, notes: readonly Seen[]): string | undefined {
  const met = new Set(cure.taken.map(({ observation }) => observation));
  const cures = notes.filter(({ deed }) => met.has(deed));
  if (cures.some(unkept)) return 'Your notes are still being kept. Touch it again in a moment.';
  const outfit = session.outfit.peek();
  if (!outfit) return 'The description cannot be read just now. Look at it first.';
  const now = writeOutfit(ownPieces(cure.after, cure));
  const read = readOutfit(now);
  if (!read.ok) return read.error.map(writeProblem).join('. ');
  const { rework } = cure.undoing;
  const { description, done, added, waived, reworks } = session.progress.peek();
  const again = new Set(rework.again.map(({ step }) => step));
  const order = runningOrder(read.value, {
    done: done.filter((step) => !again.has(step)),
    added,
    waived,
    reworks: [...reworks, rework],
  });
  if (!order.ok) return noOrder(order.error, read.value);
  session.act({
    kind: 'reworked',
    say: rework.say,
    changes: changesBetween(description, now),
    rework,
    cures: cures.map(({ deed }) => deed),
  });
  const first = firstStep(rework);
  if (first !== undefined && order.value.steps.has(first)) session.openStep(first);
  return undefined;
}
