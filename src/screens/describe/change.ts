import { batch, signal } from '@preact/signals';
import { type Effect, effectOf } from '../../order/effect.ts';
import { runningOrder } from '../../order/running.ts';
import type { Outfit } from '../../outfit/outfit.ts';
import { writeProblem } from '../../outfit/problem.ts';
import { readOutfit } from '../../outfit/reading.ts';
import { writeOutfit } from '../../outfit/writing.ts';
import { changesBetween } from '../../store/changes-between.ts';
import type { Change } from '../../store/describe-change.ts';
import type { Session } from '../session.ts';

/** Why the last change was refused, in words; empty where it was not. The bar at the foot of each page says it. */
export const problem = signal('');

/** A change that touches work in hand, while the maker makes up her mind. */
export interface Asked {
  readonly session: Session;
  readonly say: string;
  readonly changes: readonly Change[];
  readonly effect: Effect;
  readonly then: (() => void) | undefined;
}

/** The change that the effect sheet asks about; undefined where there is none. */
export const asked = signal<Asked | undefined>(undefined);

function write({ session, say, changes, then }: Omit<Asked, 'effect'>): void {
  batch(() => {
    asked.value = undefined;
    session.act({ kind: 'redescribed', say, changes });
    then?.();
  });
}

/**
 * The one way to change the description. Before the first step is done it is written at once; later, what it touches is
 * shown first and the maker decides. A change that could not be read back, or that no order of making obeys, is refused
 * in {@link problem}. `say` is what she did, as undo says it: `put on the collar`. `then` is run once it is written.
 */
export function ask(session: Session, after: Outfit, say: string, then?: () => void): void {
  problem.value = '';
  const now = writeOutfit(after);
  const read = readOutfit(now);
  if (!read.ok) {
    problem.value = read.error.map(writeProblem).join('. ');
    return;
  }
  const { description, done, added, waived } = session.progress.peek();
  const changes = changesBetween(description, now);
  if (changes.length === 0) {
    then?.();
    return;
  }
  const order = runningOrder(read.value, { done, added, waived });
  const [before, was] = [session.outfit.peek(), session.running.peek()];
  // What had no order before may be mended in more than one step.
  if (!order.ok && session.loop.peek() === undefined) {
    problem.value = `This could not be sewn in any order. ${order.error.say}`;
    return;
  }
  const change = { session, say, changes, then };
  if (done.length === 0 || !order.ok) write(change);
  else {
    const effect = effectOf(
      before && was && { outfit: before, running: was },
      { outfit: read.value, running: order.value },
      done,
    );
    asked.value = { ...change, effect };
  }
}

/** The maker accepts the change in question. */
export function accept(): void {
  const found = asked.peek();
  if (found) write(found);
}

/** The maker leaves it as it was; what she typed stays in its form. */
export function leave(): void {
  asked.value = undefined;
}

/** Takes back the last change to the description; does nothing where something else was done last. */
export function undoLast(session: Session): void {
  problem.value = '';
  if (lastChange(session) !== undefined) session.undo();
}

/** What undo would take back of the description, in words; undefined where something else was done last. */
export function lastChange(session: Session): string | undefined {
  const { undo } = session.progress.value;
  if (undo?.kind === 'redescribed') return undo.say ?? 'the last change';
  return undo?.kind === 'described' ? 'the last change' : undefined;
}
