import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runningOrder } from '../../../src/order/running.ts';
import type { Running } from '../../../src/order/running-types.ts';
import { prepareUndoing, undoing, undoingMinutes } from '../../../src/order/undoing/undoing.ts';
import type { Alteration, Undoing } from '../../../src/order/undoing/undoing-types.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { order } from '../make.ts';
import { anyAlterations, anyGarment } from './any-garment.ts';
import { demo } from './demo.ts';
import { againPlainly } from './plainly.ts';

const named = { id: 'r1', say: 'Made to fit' };

/** The standing in which a rework has been accepted. */
function accepted(outfit: Outfit, done: readonly string[], undone: Undoing) {
  const again = new Set(undone.rework.again.map(({ step }) => step));
  const left = done.filter((step) => !again.has(step));
  return { left, after: order(outfit, { done: left, reworks: [undone.rework] }) };
}

/** What is wrong with an order after undoing, in words; nothing where all holds. */
function faults(
  before: Running,
  done: readonly string[],
  undone: Undoing,
  left: readonly string[],
  after: Running,
) {
  const found: string[] = [];
  const again = new Map(undone.rework.again.map((one) => [one.step, one]));
  const isDone = new Set(done);
  for (const step of again.keys()) if (!isDone.has(step)) found.push(`${step} was not done`);
  for (const [id, was] of before.steps) {
    const now = after.steps.get(id);
    if (!now) found.push(`${id} is gone`);
    else if (!again.has(id) && JSON.stringify(now) !== JSON.stringify(was)) found.push(`${id} has changed`);
  }
  const added = [...after.steps.keys()].filter((id) => !before.steps.has(id));
  if (added.length !== undone.rework.undo.length) found.push(`${added.length} steps came in`);
  if (after.sequence.slice(0, after.doneCount).join() !== left.join()) found.push('other steps are done');
  // Step by step to the end: nothing may be reached before what has to come first.
  const through = new Set(left);
  const into = new Map<string, string[]>();
  for (const { before: first, after: then } of after.constraints)
    into.set(then, [...(into.get(then) ?? []), first]);
  for (const id of after.sequence.slice(after.doneCount)) {
    for (const first of into.get(id) ?? []) if (!through.has(first)) found.push(`${id} before ${first}`);
    through.add(id);
  }
  if (through.size !== after.steps.size) found.push('not all is done in the end');
  const places = new Map(after.sequence.map((id, i) => [id, i]));
  const undo = undone.rework.undo.map(
    ({ garment, of, action }) => places.get(`${garment}/${of.id}/${action}-r1`) ?? -1,
  );
  if (undo.some((place, i) => place < left.length || place <= (undo[i - 1] ?? -1)))
    found.push('undone out of turn');
  return found;
}

/** Steps done again for no reason: nothing of theirs is altered or opened. */
function strays(outfit: Outfit, before: Running, undone: Undoing): readonly string[] {
  const altered = new Set(undone.alterations.map(({ garment, piece }) => `${garment}/${piece}`));
  const edges = new Set(
    undone.rework.undo.flatMap(({ garment, edges: own }) => own.map((edge) => `${garment}/${edge}`)),
  );
  return undone.rework.again.flatMap(({ step: id }) => {
    const step = before.steps.get(id);
    if (!step) return [id];
    const looks = outfit.garments
      .find((one) => one.id === step.garment)
      ?.gates.find((one) => one.id === step.of.id);
    const touched =
      step.pieces.some((piece) => altered.has(`${step.garment}/${piece}`)) ||
      step.edges.some((edge) => edges.has(`${step.garment}/${edge}`)) ||
      looks?.after.some((join) => undone.opened.some((one) => one.id === join));
    return touched ? [] : [id];
  });
}

interface Case {
  readonly outfit: Outfit;
  readonly running: Running;
  readonly done: readonly string[];
  readonly alterations: readonly Alteration[];
}

/** Any garment that has an order, with any part of it done, and anything that does not fit. */
const anyCase: fc.Arbitrary<Case> = anyGarment
  .map((outfit) => ({ outfit, found: runningOrder(outfit) }))
  .filter(({ found }) => found.ok)
  .chain(({ outfit, found }) => {
    if (!found.ok) throw new Error('only what has an order');
    const running = found.value;
    return fc.record({
      outfit: fc.constant(outfit),
      running: fc.constant(running),
      done: fc
        .oneof(fc.constant(running.sequence.length), fc.nat(running.sequence.length))
        .map((n) => running.sequence.slice(0, n)),
      alterations: anyAlterations(outfit),
    });
  });

describe('undoing, of any garment', () => {
  it('changes nothing outside what it reaches, and leaves an order that ends', () => {
    let met = 0;
    fc.assert(
      fc.property(anyCase, ({ outfit, running, done, alterations }) => {
        const undone = undoing(prepareUndoing(outfit, running), alterations, { done, ...named });
        const { left, after } = accepted(outfit, done, undone);
        expect(faults(running, done, undone, left, after)).toEqual([]);
        expect(strays(outfit, running, undone)).toEqual([]);
        if (undone.rework.undo.length > 3) met += 1;
      }),
      { numRuns: 300, seed: 5 },
    );
    expect(met).toBeGreaterThan(50);
  });

  it('never costs fewer minutes where more is altered, and costs the same asked without words', () => {
    fc.assert(
      fc.property(anyCase, ({ outfit, running, done, alterations }) => {
        const prepared = prepareUndoing(outfit, running);
        let last = 0;
        for (let n = 0; n <= alterations.length; n += 1) {
          const some = alterations.slice(0, n);
          const minutes = undoingMinutes(prepared, some, { done });
          const { rework, minutes: told } = undoing(prepared, some, { done, ...named });
          expect(minutes).toBe(told.total);
          const sum = [...rework.undo, ...rework.again].reduce((all, one) => all + one.minutes, 0);
          expect(sum).toBeCloseTo(minutes, 6);
          expect(minutes).toBeGreaterThanOrEqual(last - 1e-6);
          last = minutes;
        }
      }),
      { numRuns: 400, seed: 6 },
    );
  });

  it('does again what going through everything again and again finds', () => {
    fc.assert(
      fc.property(anyCase, ({ outfit, running, done, alterations }) => {
        const anew = alterations.map((one) => ({ ...one, how: 'anew', side: 'both' }) as const);
        const undone = undoing(prepareUndoing(outfit, running), anew, { done, ...named });
        const found = new Set(againPlainly(outfit, running, anew, done));
        const rows = (id: string) => id.endsWith('/rows') && !found.has(id);
        expect(
          undone.rework.again
            .map(({ step }) => step)
            .filter((id) => !rows(id))
            .sort(),
        ).toEqual([...found].sort());
      }),
      { numRuns: 300, seed: 9 },
    );
  });

  it('does not depend on the order in which alterations are named', () => {
    fc.assert(
      fc.property(anyCase, ({ outfit, running, done, alterations }) => {
        const prepared = prepareUndoing(outfit, running);
        const [one, other] = [alterations, alterations.toReversed()].map((some) =>
          undoing(prepared, some, { done, ...named }),
        );
        expect(other?.minutes).toEqual(one?.minutes);
        expect(other?.rework.again).toEqual(one?.rework.again);
        expect(other?.rework.undo.map(({ of, action }) => `${of.id} ${action}`)).toEqual(
          one?.rework.undo.map(({ of, action }) => `${of.id} ${action}`),
        );
      }),
      { numRuns: 200, seed: 7 },
    );
  });
});

describe.each(['harbour-clockmaker', 'glasshouse-astronomer', 'plain-shirt'])('undoing, in %s', (name) => {
  const outfit = demo(name);
  const running = order(outfit);
  const prepared = prepareUndoing(outfit, running);
  const pieces = outfit.garments.flatMap((garment) =>
    garment.pieces.map((piece) => ({ garment: garment.id, piece: piece.id })),
  );

  it('is empty where nothing is altered or nothing is done, and whole at every place of the order', () => {
    for (let n = 0; n <= running.sequence.length; n += 1) {
      const done = running.sequence.slice(0, n);
      expect(undoing(prepared, [], { done, ...named }).rework).toEqual({ ...named, undo: [], again: [] });
      const { garment, piece } = pieces[n % pieces.length] ?? { garment: '', piece: '' };
      const undone = undoing(prepared, [{ garment, piece, how: 'anew', edges: [], side: 'both', say: '' }], {
        done,
        ...named,
      });
      const { left, after } = accepted(outfit, done, undone);
      expect(faults(running, done, undone, left, after)).toEqual([]);
      expect(strays(outfit, running, undone)).toEqual([]);
      if (n === 0) expect(undone.minutes.total).toBe(0);
    }
  });

  it('never costs fewer minutes where more is altered', () => {
    fc.assert(
      fc.property(anyAlterations(outfit, 4), fc.nat(running.sequence.length), (alterations, n) => {
        const done = new Set(running.sequence.slice(0, n));
        const minutes = [0, 1, 2, 3, 4].map((k) =>
          undoingMinutes(prepared, alterations.slice(0, k), { done }),
        );
        for (let k = 1; k < minutes.length; k += 1)
          expect(minutes[k]).toBeGreaterThanOrEqual((minutes[k - 1] ?? 0) - 1e-6);
      }),
      { numRuns: 300, seed: 8 },
    );
  });
});
