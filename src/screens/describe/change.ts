import { batch, signal } from '@preact/signals';
import { type Effect, effectOf } from '../../order/effect.ts';
import { runningOrder } from '../../order/running.ts';
import type { Loop } from '../../order/running-types.ts';
import { namedAs } from '../../outfit/changing/named-as.ts';
import type { Outfit } from '../../outfit/outfit.ts';
import { writeProblem } from '../../outfit/problem.ts';
import { readOutfit } from '../../outfit/reading.ts';
import { writeOutfit } from '../../outfit/writing.ts';
import { changesBetween } from '../../store/changes-between.ts';
import type { Change } from '../../store/describe-change.ts';
import { undoName } from '../bench/undo-name.ts';
import type { Session } from '../session.ts';
import { begun } from './words.ts';

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

/** What is new for the maker: nothing is where a change only calls something otherwise, or says more of the outfit. */
const isNothing = ({ added, gone, changed, doneGone, doneChanged, doneBack }: Effect): boolean =>
  [added, gone, changed, doneGone, doneChanged, doneBack].every((list) => list.length === 0);

/** Why no order obeys, from one part of the garment to the next, and what would help. */
export function noOrder({ ring }: Loop, outfit: Outfit): string {
  const parts = new Map<string, string>(
    outfit.garments.flatMap((garment) =>
      [garment.pieces, garment.works, garment.joins, garment.gates].flatMap((list) =>
        list.map(({ id, name }) => [`${garment.id}/${id}`, name] satisfies [string, string]),
      ),
    ),
  );
  const partOf = (step: string): string => parts.get(step.split('/', 2).join('/')) ?? '';
  const names = [...new Set(ring.map(({ before }) => partOf(before)))].filter((name) => name !== '');
  const reasons = new Set(
    ring.filter((one) => partOf(one.before) !== partOf(one.after)).map(({ because }) => begun(because)),
  );
  const wait =
    names.length > 1 ? `${names.map((name) => `“${name}”`).join(' and ')} would wait for each other` : '';
  return [
    `This could not be sewn in any order${wait && `: ${wait}`}.`,
    ...[...reasons].map((because) => `${because}.`),
    names.length > 1 ? 'Change or take out one of them first.' : '',
  ]
    .filter(Boolean)
    .join(' ');
}

/**
 * The one way to change the description. Before the first step is done it is written at once, and so is what touches no
 * step; otherwise what it touches is shown first and the maker decides. A change that could not be read back, or that no order of making obeys, is refused
 * in {@link problem}. `say` is what she did, as undo says it: `put on the collar`. `then` is run once it is written.
 */
export function ask(session: Session, after: Outfit, say: string, then?: () => void): void {
  askWritten(session, writeOutfit(after), say, then);
}

/** As {@link ask}, of a description as somebody wrote it; what is spelled otherwise stays so. */
export function askWritten(session: Session, now: unknown, say: string, then?: () => void): void {
  problem.value = '';
  const read = readOutfit(now);
  if (!read.ok) {
    problem.value = read.error.map(writeProblem).join('. ');
    return;
  }
  const { description, done, added, waived, reworks } = session.progress.peek();
  const changes = changesBetween(description, now);
  if (changes.length === 0) {
    then?.();
    return;
  }
  const standing = { done, added, waived, reworks };
  const order = runningOrder(read.value, standing);
  // What had no order before may be mended in more than one step.
  if (!order.ok && session.loop.peek() === undefined) {
    problem.value = noOrder(order.error, read.value);
    return;
  }
  const change = { session, say, changes, then };
  const was = done.length > 0 && order.ok ? session.outfit.peek() : undefined;
  const before = was && namedAs(was, read.value);
  const running = before && runningOrder(before, standing);
  // Nothing done yet, or no order that this one could be compared with.
  if (!order.ok || !before || !running?.ok) {
    write(change);
    return;
  }
  const effect = effectOf(
    { outfit: before, running: running.value },
    { outfit: read.value, running: order.value },
    done,
  );
  if (isNothing(effect)) write(change);
  else asked.value = { ...change, effect };
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

/** Takes back the last change to the description, a cure as well; does nothing where something else was done last. */
export function undoLast(session: Session): void {
  problem.value = '';
  if (lastChange(session) !== undefined) session.undo();
}

/** What undo would take back of the description, in words; undefined where something else was done last. */
export function lastChange(session: Session): string | undefined {
  const { undo } = session.progress.value;
  if (undo?.kind === 'redescribed') return undo.say ?? 'the last change';
  if (undo?.kind === 'reworked') return undoName(undo, undefined);
  return undo?.kind === 'described' ? 'the last change' : undefined;
}
