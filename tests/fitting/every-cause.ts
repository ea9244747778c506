import { meant } from '../../src/fitting/asked.ts';
import { cure } from '../../src/fitting/cure.ts';
import type { Cure } from '../../src/fitting/cure-types.ts';
import type { Cause, Entry } from '../../src/fitting/entry.ts';
import { entriesFor } from '../../src/fitting/here.ts';
import { rolesOf } from '../../src/fitting/roles.ts';
import { type Length, toMm } from '../../src/length/length.ts';
import { runningOrder } from '../../src/order/running.ts';
import type { Running } from '../../src/order/running-types.ts';
import { lengthsFit, MOST_CAP_EASE } from '../../src/outfit/lengths-fit.ts';
import type { Garment, Outfit } from '../../src/outfit/outfit.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { writeOutfit } from '../../src/outfit/writing.ts';
import { flattenOutline } from '../../src/shape/flatten.ts';
import type { Outline, Point } from '../../src/shape/outline.ts';
import { saw } from './at-a-try-on.ts';

const turn = (a: Point, b: Point, c: Point): number =>
  Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));

/** Does an outline cross itself? */
export function crossesItself(outline: Outline): boolean {
  const points = flattenOutline(outline);
  const at = (i: number): Point => points[i % points.length]!;
  for (let i = 0; i < points.length; i += 1)
    for (let k = i + 2; k < points.length; k += 1) {
      if (i === 0 && k === points.length - 1) continue;
      const [a, b, c, d] = [at(i), at(i + 1), at(k), at(k + 1)];
      if (turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0) return true;
    }
  return false;
}

/** A garment and an order of its outfit with everything done. */
export interface Worn {
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly running: Running;
}

/** Every cause of what can be seen on a garment that asks for another shape. */
export const causesOf = (garment: Garment): readonly { readonly entry: Entry; readonly cause: Cause }[] =>
  entriesFor(garment).flatMap((entry) =>
    entry.causes.flatMap((cause) =>
      cause.wants.some(({ kind }) => kind !== 'add') ? [{ entry, cause }] : [],
    ),
  );

/** By how much seams are out that do not go together, mm. */
const misfits = (outfit: Outfit, garment: Garment): ReadonlyMap<string, number> =>
  new Map(
    lengthsFit(outfit, garment, { unit: 'mm', step: 1 }).flatMap(({ join, within, by }) =>
      within ? [] : [[join, toMm(by)] as const],
    ),
  );

/** What is wrong with a cure of one thing seen that is surely of one cause. */
function faults({ outfit, garment }: Worn, cause: Cause, amount: Length, found: Cure): readonly string[] {
  const wrong: string[] = [];
  const most = Math.max(...cause.wants.map((want) => (want.kind === 'add' ? 0 : Math.abs(want.by))));
  for (const { piece, amounts, after, before } of found.changes) {
    for (const { kind, level, by } of amounts) {
      // A change that can be marked is the least there is.
      if (Math.abs(toMm(by)) > 2.5 * Math.max(most * toMm(amount), 3.2) + 1)
        wrong.push(`${piece} ${kind} ${level} by ${toMm(by).toFixed(1)}`);
      for (const want of cause.wants)
        if (
          want.kind === 'width' &&
          kind === 'width' &&
          want.level === level &&
          by * want.by < 0 &&
          meant({ garment, roles: rolesOf(garment) }, want.of).some(({ id }) => id === piece)
        )
          wrong.push(`${piece} ${kind} ${level} the wrong way by ${toMm(by).toFixed(1)}`);
    }
    if (crossesItself(after) && !crossesItself(before)) wrong.push(`${piece} crosses itself`);
  }
  const read = readOutfit(writeOutfit(found.after));
  if (!read.ok) return [...wrong, `cannot be read: ${JSON.stringify(read.error).slice(0, 200)}`];
  const after = found.after.garments.find(({ id }) => id === garment.id)!;
  const before = misfits(outfit, garment);
  for (const [join, by] of misfits(found.after, after)) {
    if (!before.has(join)) wrong.push(`${join} no longer fits`);
    // A cap is eased in by so much; half an inch more could not be eased in by any hand.
    const eased = join.endsWith('armhole') ? toMm(MOST_CAP_EASE.value) : 0;
    if (by > eased + 12.7 && by > (before.get(join) ?? 0) + 3)
      wrong.push(`${join} is out by ${by.toFixed(1)}`);
  }
  return wrong;
}

/** What comes of one cause alone by one amount: why it is not met, or what is wrong with its cure. */
export function alone(worn: Worn, entry: Entry, cause: Cause, amount: Length): readonly string[] {
  const { outfit, garment, running } = worn;
  const seen = [saw(garment.id, entry.id, amount, { sure: cause.id })];
  const done = running.sequence;
  const { best, unmet, left } = cure(outfit, garment.id, running, seen, { done, id: 'cure-1' });
  if (!best) return [...unmet, ...left].map(({ why }) => `not met: ${why}`);
  const again = new Set(best.undoing.rework.again.map(({ step }) => step));
  const order = runningOrder(best.after, {
    done: done.filter((step) => !again.has(step)),
    added: [],
    waived: new Set(),
    reworks: [best.undoing.rework],
  });
  return [...faults(worn, cause, amount, best), ...(order.ok ? [] : [order.error.say])];
}
