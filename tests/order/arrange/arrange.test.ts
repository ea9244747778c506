import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrange } from '../../../src/order/arrange/arrange.ts';
import { beamOrder } from '../../../src/order/arrange/beam.ts';
import { drawUp } from '../../../src/order/arrange/draw-up.ts';
import { exactOrder } from '../../../src/order/arrange/exact.ts';
import { compareCost, costOf, pack, type Task } from '../../../src/order/arrange/graph.ts';
import { fewestChangeovers } from '../../../src/order/arrange/least.ts';
import { moveBlocks } from '../../../src/order/arrange/moves.ts';
import { settle } from '../../../src/order/arrange/settle.ts';
import { sittings } from '../../../src/order/arrange/sittings.ts';
import { arranged, brokenBy, costOfIds, plainOrder, webs } from './tasks.ts';

const task = (id: string, station: Task['setUp']['station'], extra: Partial<Task> = {}): Task => ({
  id,
  setUp: { station, thread: '', tool: '' },
  garment: 'g',
  gate: false,
  soon: false,
  ...extra,
});

/** Numbers of tasks as their ids. */
const named = (order: readonly number[]): readonly string[] => order.map((t) => `t${t}`);

describe('arranging', () => {
  it('takes every task once and keeps every arrow, small and large', () => {
    for (const most of [12, 80]) {
      fc.assert(
        fc.property(webs(most), (web) => {
          const order = arranged(web);
          expect([...order].sort()).toEqual(web.tasks.map((t) => t.id).sort());
          expect(brokenBy(web.arrows, order)).toEqual([]);
        }),
      );
    }
  });

  it('gives the same order for the same input', () => {
    fc.assert(
      fc.property(webs(60), (web) => {
        const copy = structuredClone(web);
        expect(arranged(web)).toEqual(arranged(copy));
      }),
    );
  });

  it('never costs more than the plain order, up to the size where the search is proven', () => {
    fc.assert(
      fc.property(webs(9), (web) => {
        expect(
          compareCost(costOfIds(web, arranged(web)), costOfIds(web, plainOrder(web))),
        ).toBeLessThanOrEqual(0);
      }),
    );
  });

  it('never needs more changeovers than the plain order, also where it only searches', () => {
    fc.assert(
      fc.property(webs(120, 9), (web) => {
        expect(costOfIds(web, arranged(web)).changeovers).toBeLessThanOrEqual(
          costOfIds(web, plainOrder(web)).changeovers,
        );
      }),
    );
  });

  it('names the tasks that a loop holds up, and those behind it', () => {
    const tasks = ['a', 'b', 'c', 'd'].map((id) => task(id, 'hand'));
    const found = arrange(tasks, [
      { before: 'b', after: 'c' },
      { before: 'c', after: 'b' },
      { before: 'c', after: 'd' },
    ]);
    expect(found.ok ? [] : found.held.map((t) => t.id)).toEqual(['b', 'c', 'd']);
  });

  it('sits at the iron once for two things to press', () => {
    const tasks = [
      task('sew-1', 'machine'),
      task('press-1', 'iron'),
      task('sew-2', 'machine'),
      task('press-2', 'iron'),
    ];
    const arrows = [
      { before: 'sew-1', after: 'press-1' },
      { before: 'sew-2', after: 'press-2' },
    ];
    expect(arranged({ tasks, arrows })).toEqual(['sew-1', 'sew-2', 'press-1', 'press-2']);
  });

  it('takes a try-on as early as it can without more changeovers', () => {
    const tasks = [
      task('beads', 'hand'),
      task('more-beads', 'hand'),
      task('fit', 'try-on', { gate: true }),
      task('sew', 'machine'),
    ];
    expect(arranged({ tasks, arrows: [{ before: 'sew', after: 'fit' }] }).slice(0, 2)).toEqual([
      'sew',
      'fit',
    ]);
  });

  it('pins a seam at the last sitting before it is sewn', () => {
    const tasks = [
      task('pin-b', 'pin', { soon: true }),
      task('pin-a', 'pin', { soon: true }),
      task('sew-a', 'machine'),
      task('pin-c', 'pin', { soon: true }),
      task('sew-b', 'machine'),
      task('sew-c', 'machine'),
    ];
    const arrows = [
      { before: 'pin-a', after: 'sew-a' },
      { before: 'sew-a', after: 'pin-c' },
      { before: 'pin-c', after: 'sew-c' },
      { before: 'pin-b', after: 'sew-b' },
      { before: 'sew-a', after: 'sew-b' },
      { before: 'pin-c', after: 'sew-b' },
    ];
    expect(arranged({ tasks, arrows }).indexOf('pin-b')).toBeGreaterThan(1);
  });

  it('takes a chain of 20 000 tasks, in any order of description, quickly and without running out of stack', () => {
    const size = 20_000;
    const tasks = Array.from({ length: size }, (_, i) =>
      task(`t${(i * 7919) % size}`, i % 2 === 0 ? 'hand' : 'iron'),
    );
    const arrows = Array.from({ length: size - 1 }, (_, i) => ({ before: `t${i}`, after: `t${i + 1}` }));
    const start = performance.now();
    const order = arranged({ tasks, arrows });
    expect(performance.now() - start).toBeLessThan(2000);
    expect(order.every((id, i) => id === `t${i}`)).toBe(true);
  });

  it('is not confused by names that JavaScript knows', () => {
    const ids = ['constructor', '__proto__', 'toString', 'hasOwnProperty', 'valueOf'];
    const tasks = ids.map((id, i) => task(id, i % 2 === 0 ? 'hand' : 'iron', { garment: id }));
    const arrows = ids.slice(1).map((id, i) => ({ before: id, after: ids[i] ?? '' }));
    expect(arranged({ tasks, arrows })).toEqual([...ids].reverse());
  });

  it('keeps set-ups apart whose names run together', () => {
    const tasks = [
      task('a', 'hand', { setUp: { station: 'hand', thread: 'a|b', tool: '' } }),
      task('b', 'hand', { setUp: { station: 'hand', thread: 'a', tool: 'b|' } }),
      task('c', 'hand', { setUp: { station: 'hand', thread: 'a', tool: 'b' } }),
    ];
    expect(pack(tasks, []).setUps).toBe(3);
  });

  it('arranges nothing, and one task, and leaves arrows out that name unknown tasks', () => {
    expect(arrange([], [])).toEqual({ ok: true, order: [] });
    expect(arranged({ tasks: [task('a', 'hand')], arrows: [{ before: 'x', after: 'a' }] })).toEqual(['a']);
  });
});

describe('the parts of arranging', () => {
  it('has a bound that no order comes under, and that the proven order often meets', () => {
    let met = 0;
    fc.assert(
      fc.property(webs(9), (web) => {
        const graph = pack(web.tasks, web.arrows);
        const best = costOf(graph, exactOrder(graph, Number.POSITIVE_INFINITY) ?? []).changeovers;
        const bound = fewestChangeovers(graph) ?? Number.NaN;
        expect(bound).toBeLessThanOrEqual(best);
        if (bound === best) met += 1;
      }),
      { numRuns: 100 },
    );
    expect(met).toBeGreaterThan(50);
  });

  it('keeps every arrow in each of its ways', () => {
    fc.assert(
      fc.property(webs(60, 8), (web) => {
        const graph = pack(web.tasks, web.arrows);
        const beam = beamOrder(graph, 4) ?? [];
        const ways = [
          sittings(graph),
          beam,
          moveBlocks(graph, beam, 50),
          settle(graph, beam),
          drawUp(graph, beam),
        ];
        for (const order of ways) {
          expect(new Set(order).size).toBe(graph.size);
          expect(brokenBy(web.arrows, named(order))).toEqual([]);
        }
      }),
    );
  });

  it('never makes an order worse by moving or settling', () => {
    fc.assert(
      fc.property(webs(60, 8), (web) => {
        const graph = pack(web.tasks, web.arrows);
        for (const order of [sittings(graph), beamOrder(graph, 1) ?? []]) {
          const cost = costOf(graph, order);
          expect(compareCost(costOf(graph, moveBlocks(graph, order, 50)), cost)).toBeLessThanOrEqual(0);
          expect(compareCost(costOf(graph, settle(graph, order)), cost)).toBeLessThanOrEqual(0);
          expect(compareCost(costOf(graph, drawUp(graph, order)), cost)).toBeLessThanOrEqual(0);
        }
      }),
    );
  });

  it('counts a cost by hand', () => {
    const tasks = [
      task('pin', 'pin', { soon: true }),
      task('cut', 'cut', { garment: 'h' }),
      task('sew', 'machine'),
      task('fit', 'try-on', { gate: true }),
    ];
    const arrows = [
      { before: 'pin', after: 'sew' },
      { before: 'sew', after: 'fit' },
    ];
    expect(costOf(pack(tasks, arrows), [0, 1, 2, 3])).toEqual({
      changeovers: 3,
      gatePlaces: 3,
      lying: 2,
      garmentChanges: 2,
    });
  });

  it('gives up where there is a loop', () => {
    const graph = pack(
      [task('a', 'hand'), task('b', 'hand')],
      [
        { before: 'a', after: 'b' },
        { before: 'b', after: 'a' },
      ],
    );
    expect(beamOrder(graph, 4)).toBeUndefined();
    expect(exactOrder(graph)).toBeUndefined();
    expect(fewestChangeovers(graph)).toBeUndefined();
    expect(sittings(graph)).toEqual([]);
  });
});
