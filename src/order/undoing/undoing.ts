import type { AgainStep } from '../running-types.ts';
import type { Step, StepId } from '../step.ts';
import { type Closure, closureOf } from './closure.ts';
import { openedOf, sidesOpened, staysOf } from './opened.ts';
import type { Prepared, Sub } from './prepared.ts';
import { type Reckoned, reckon } from './reckon.ts';
import { BOTH, LEFT } from './sides.ts';
import { withStillOpen } from './still-open.ts';
import { outStep, renewedStep } from './undo-steps.ts';
import type { Alteration, Forced, Undoing } from './undoing-types.ts';
import type { Now } from './unpicking.ts';
import { sayOnly } from './words.ts';

export { prepareUndoing } from './prepare.ts';
export type { Prepared } from './prepared.ts';

/** Where things stand: what is done, and the maker's own minutes by step where she has been timed. */
export interface At {
  readonly done: Iterable<StepId>;
  readonly own?: ReadonlyMap<StepId, number>;
}

/** No times of the maker's own. */
const untimed: ReadonlyMap<StepId, number> = new Map();

function nowOf(at: At): Now {
  const done = at.done instanceof Set ? at.done : new Set(at.done);
  // A step that is to be done again in part only still holds where it was left alone.
  return {
    done,
    sewn: (step: Step) => done.has(step.id) || (step.again?.only ?? '') !== '',
    own: at.own ?? untimed,
  };
}

/**
 * Everything that follows from altering some pieces, given what is done: what is opened, what is cut, what is done again,
 * in order and in words. `id` and `say` name the rework.
 */
export function undoing(
  prepared: Prepared,
  alterations: readonly Alteration[],
  at: At & { readonly id: string; readonly say: string },
): Undoing {
  const now = nowOf(at);
  const closure = closureOf(prepared, alterations, now.sewn);
  const reckoned = reckon(prepared, closure, now);
  const out = reckoned.out.toSorted(
    (a, b) => lastSewn(b.open.sub, prepared, now) - lastSewn(a.open.sub, prepared, now),
  );
  const all = allAlterations(alterations, closure);
  const renewed = [...reckoned.renewed].sort((a, b) =>
    a.action < b.action ? -1 : a.action > b.action ? 1 : 0,
  );
  const undo = [...out.map((one) => outStep(one, now)), ...renewed.map((one) => renewedStep(one, all))];
  return {
    alterations: all,
    forced: closure.forced.map(({ piece, because }): Forced => ({ piece, because })),
    opened: out.map(({ open }) => openedOf(open)),
    stays: staysOf(out),
    rework: { id: at.id, say: at.say, undo, again: againOf(prepared, closure, reckoned, now) },
    minutes: { undo: reckoned.undo, again: reckoned.redo, total: totalOf(reckoned) },
  };
}

/** What altering these pieces would cost in minutes, as {@link undoing} reckons it, without its words: for asking often. */
export function undoingMinutes(prepared: Prepared, alterations: readonly Alteration[], at: At): number {
  const now = nowOf(at);
  return totalOf(reckon(prepared, closureOf(prepared, alterations, now.sewn), now));
}

const totalOf = ({ undo, redo }: Reckoned): number => Math.round((undo + redo) * 10) / 10;

function lastSewn(sub: Sub, { places }: Prepared, now: Now): number {
  let last = -1;
  for (const step of sub.steps) if (now.sewn(step)) last = Math.max(last, places.get(step.id) ?? -1);
  return last;
}

function allAlterations(asked: readonly Alteration[], closure: Closure): readonly Alteration[] {
  const all = [...asked];
  for (const { room, piece, sides } of closure.forced) {
    const garment = room.garment.id;
    const there = all.findIndex((one) => one.garment === garment && one.piece === piece);
    const was = all[there];
    const side = sides === BOTH ? 'both' : sides === LEFT ? 'left' : 'right';
    const now: Alteration = { garment, piece, how: 'anew', edges: [], side, say: was?.say ?? '' };
    if (!was) all.push(now);
    else if (was.how === 'edges' || (was.side !== side && was.side !== 'both'))
      all[there] = { ...now, side: was.side === side ? side : 'both' };
  }
  return all;
}

function againOf(prepared: Prepared, closure: Closure, { again }: Reckoned, now: Now): readonly AgainStep[] {
  return again
    .map((one): AgainStep => {
      const { room } = one.sub;
      const isOpen = (id: string): boolean => {
        const sub = room.subs.get(id);
        return sub !== undefined && closure.open.has(sub);
      };
      const only = sayOnly(one, room, isOpen);
      const sides = one.open && one.sub.times === 2 ? sidesOpened(one.open) : BOTH;
      const asked: AgainStep = {
        step: one.step.id,
        ...(only === undefined ? {} : { only }),
        ...(only === undefined || sides === BOTH ? {} : { side: sides === LEFT ? 'left' : 'right' }),
        minutes: one.minutes,
      };
      return now.done.has(one.step.id) ? asked : withStillOpen(asked, one.step);
    })
    .sort((a, b) => (prepared.places.get(a.step) ?? 0) - (prepared.places.get(b.step) ?? 0));
}
