import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runningOrder } from '../../../src/order/running.ts';
import type { Running } from '../../../src/order/running-types.ts';
import { costOfFindingLate, type Misfit } from '../../../src/order/undoing/late.ts';
import { prepareUndoing, undoing, undoingMinutes } from '../../../src/order/undoing/undoing.ts';
import type { Alteration } from '../../../src/order/undoing/undoing-types.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { demo, demos } from '../../outfit/demo-files.ts';
import { anyAlterations, anyGarment } from './any-garment.ts';

const orderOf = (outfit: Outfit): Running => {
  const found = runningOrder(outfit);
  if (!found.ok) throw new Error(found.error.say);
  return found.value;
};

const known = demos.map((name) => {
  const outfit = demo(name);
  return { name, outfit, prepared: prepareUndoing(outfit, orderOf(outfit)) };
});

/** Any alteration of any piece: cut anew, or moved at some of its edges, on both sides or on one. */
const alterationsOf = (outfit: Outfit): fc.Arbitrary<Alteration> =>
  fc
    .constantFrom(...outfit.garments.flatMap((g) => g.pieces.map((piece) => ({ garment: g.id, piece }))))
    .chain(({ garment, piece }) =>
      fc.record({
        garment: fc.constant(garment),
        piece: fc.constant(piece.id),
        how: fc.constantFrom('anew', 'edges'),
        edges: fc.subarray(
          piece.outline.edges.map(({ name }) => name),
          { minLength: 1 },
        ),
        side: piece.cut === 'pair' ? fc.constantFrom('both', 'left', 'right') : fc.constant('both' as const),
        say: fc.constant(''),
      }),
    );

const misfitOf = (alterations: readonly Alteration[], id = 'one', chance = 1): Misfit => ({
  id,
  name: id,
  chance,
  alterations,
});

describe.each(known)('what finding out late costs in the $name', ({ outfit, prepared }) => {
  const { sequence } = prepared.running;

  it('is at every point what undoing says there, with whatever times of her own', () => {
    fc.assert(
      fc.property(
        fc.array(alterationsOf(outfit), { minLength: 1, maxLength: 3 }),
        fc.array(fc.integer({ min: 1, max: sequence.length }), { minLength: 6, maxLength: 6 }),
        fc.array(fc.tuple(fc.constantFrom(...sequence), fc.integer({ min: 1, max: 90 })), { maxLength: 5 }),
        (alterations, places, times) => {
          const own = new Map(times);
          const { points } = costOfFindingLate(prepared, [misfitOf(alterations)], own);
          expect(points.map(({ step }) => step)).toEqual(sequence);
          for (const done of places) {
            const direct = undoing(prepared, alterations, {
              done: sequence.slice(0, done),
              own,
              id: 'late',
              say: '',
            });
            expect(points[done - 1]).toMatchObject({ done, minutes: direct.minutes.total });
          }
        },
      ),
      { numRuns: 60, seed: 20270529 },
    );
  });
});

describe('what finding out late costs in any garment', () => {
  it('is at every point what undoing says there', () => {
    fc.assert(
      fc.property(
        anyGarment.chain((outfit) => fc.tuple(fc.constant(outfit), anyAlterations(outfit))),
        ([outfit, alterations]) => {
          const running = orderOf(outfit);
          const prepared = prepareUndoing(outfit, running);
          for (const { done, minutes } of costOfFindingLate(prepared, [misfitOf(alterations)]).points) {
            const at = { done: running.sequence.slice(0, done), id: 'late', say: '' };
            expect([done, minutes]).toEqual([done, undoing(prepared, alterations, at).minutes.total]);
          }
        },
      ),
      { numRuns: 60, seed: 20270529 },
    );
  });
});

describe('the curve', () => {
  const { outfit, prepared } = known.find(({ name }) => name === 'harbour-clockmaker')!;
  const { sequence } = prepared.running;
  const anew = (garment: string, piece: string): Alteration => ({
    garment,
    piece,
    how: 'anew',
    edges: [],
    side: 'both',
    say: '',
  });
  const pieces = outfit.garments.flatMap((g) => g.pieces.map((piece) => anew(g.id, piece.id)));

  it('adds misfits up by their chance, and names the one that would cost most whatever its chance', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...pieces), fc.double({ min: 0, max: 1, noNaN: true })), {
          minLength: 1,
          maxLength: 5,
        }),
        (chosen) => {
          const misfits = chosen.map(([one, chance], i) => misfitOf([one], `m${i}`, chance));
          const { points, costs } = costOfFindingLate(prepared, misfits);
          for (const { done, minutes, worst, worstMinutes } of points) {
            const each = misfits.map(({ id, chance }) => ({ id, chance, cost: costs.get(id)![done]! }));
            expect(minutes).toBeCloseTo(
              each.reduce((sum, { chance, cost }) => sum + chance * cost, 0),
              6,
            );
            expect(worstMinutes).toBe(Math.max(...each.map(({ cost }) => cost)));
            expect(worst).toBe(worstMinutes > 0 ? each.find(({ cost }) => cost === worstMinutes)!.id : '');
          }
        },
      ),
      { numRuns: 30, seed: 20270529 },
    );
  });

  it('costs nothing before a piece is cut, and much once it is worked and sewn in', () => {
    const { costs } = costOfFindingLate(prepared, [misfitOf([anew('shirt', 'centre-front')])]);
    const cost = costs.get('one')!;
    const cut = sequence.findIndex((id) => {
      const step = prepared.running.steps.get(id)!;
      return step.garment === 'shirt' && step.action === 'cut' && step.pieces.includes('centre-front');
    });
    expect([...cost.slice(0, cut + 1)].every((minutes) => minutes === 0)).toBe(true);
    expect(cost[cut + 1]).toBeGreaterThan(0);
    const tucks = 'shirt/front-tucks/';
    const tucked = sequence.findLastIndex((id) => id.startsWith(tucks)) + 1;
    const minutes = sequence
      .filter((id) => id.startsWith(tucks))
      .reduce((sum, id) => sum + prepared.running.steps.get(id)!.minutes, 0);
    expect(cost[tucked]).toBeGreaterThan(minutes);
    expect(cost[sequence.length]).toBeGreaterThan(cost[tucked]!);
  });

  it('is flat where nothing may go wrong, and empty where nothing is made', () => {
    expect(costOfFindingLate(prepared, []).points.every(({ minutes }) => minutes === 0)).toBe(true);
    const none = { ...outfit, garments: [] };
    expect(costOfFindingLate(prepareUndoing(none, orderOf(none)), [misfitOf(pieces)]).points).toEqual([]);
  });
});

describe('what finding out late costs once something was taken back', () => {
  it('goes by how long unpicking took', () => {
    const outfit = demo('harbour-clockmaker');
    const first = orderOf(outfit);
    const alter = (piece: string): Alteration => ({
      garment: 'shirt',
      piece,
      how: 'anew',
      edges: [],
      side: 'both',
      say: '',
    });
    const { rework } = undoing(prepareUndoing(outfit, first), [alter('side-front')], {
      done: first.sequence,
      id: 'r1',
      say: '',
    });
    const again = new Set(rework.again.map(({ step }) => step));
    const then = runningOrder(outfit, {
      done: first.sequence.filter((step) => !again.has(step)),
      added: [],
      waived: new Set(),
      reworks: [rework],
    });
    if (!then.ok) throw new Error(then.error.say);
    const prepared = prepareUndoing(outfit, then.value);
    const own = new Map(prepared.unpicked.map(({ id, minutes }) => [id, 4 * minutes]));
    expect(own.size).toBeGreaterThan(1);
    const asked = [alter('back')];
    const { costs } = costOfFindingLate(prepared, [misfitOf(asked)], own);
    const { sequence } = then.value;
    const quick = costOfFindingLate(prepared, [misfitOf(asked)]).costs.get('one');
    sequence.forEach((_, i) => {
      const done = sequence.slice(0, i + 1);
      expect(costs.get('one')?.[i + 1]).toBe(undoingMinutes(prepared, asked, { done, own }));
    });
    expect(costs.get('one')?.at(-1)).toBeGreaterThan(quick?.at(-1) ?? 0);
  });
});
