import fc from 'fast-check';
import { DirectedGraph } from 'graphology';
import { hasCycle, topologicalSort } from 'graphology-dag';
import { describe, expect, it } from 'vitest';
import { practice } from '../../src/cloth/source.ts';
import { arrange } from '../../src/order/arrange/arrange.ts';
import { exactOrder } from '../../src/order/arrange/exact.ts';
import {
  type Arrow,
  compareCost,
  costOf,
  type Graph,
  pack,
  type Task,
} from '../../src/order/arrange/graph.ts';
import { findLoop, heldUp } from '../../src/order/loop.ts';
import type { Constraint } from '../../src/order/step.ts';
import { weave } from '../../src/order/web.ts';
import { arranged, brokenBy, costOfIds, webs } from '../order/arrange/tasks.ts';

// Compared with graphology and graphology-dag, a general graph library. Ours is given names that JavaScript knows too;
// the library, which labels by plain objects, is given the same steps under plain names.
const ids = Array.from({ length: 24 }, (_, i) => ['constructor', '__proto__'][i] ?? `step-${i}`);

/** Any arrows at all among a few steps: many have loops, some even lead from a step to itself. */
const anyArrows: fc.Arbitrary<readonly Arrow[]> = fc.array(
  fc.record({ before: fc.constantFrom(...ids), after: fc.constantFrom(...ids) }),
  { maxLength: 40 },
);
const tasks: readonly Task[] = ids.map((id, i) => ({
  id,
  setUp: { station: i % 3 === 0 ? 'hand' : 'iron', thread: '', tool: '' },
  garment: 'g',
  gate: false,
  soon: false,
}));
const constraints = (arrows: readonly Arrow[]): readonly Constraint[] =>
  arrows.map((arrow) => ({ ...arrow, rule: 'r', because: 'b', source: practice, waivable: true }));

const plainName = (id: string): string => `n${ids.indexOf(id)}`;

function library(arrows: readonly Arrow[]): DirectedGraph {
  const graph = new DirectedGraph();
  for (const id of ids) graph.addNode(plainName(id));
  for (const { before, after } of arrows) graph.mergeEdge(plainName(before), plainName(after));
  return graph;
}

/** Everything that can be reached from a step, by the library's own neighbours. */
function reach(graph: DirectedGraph, from: string, way: 'out' | 'in'): readonly string[] {
  const seen = new Set<string>();
  const open = [plainName(from)];
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    for (const next of way === 'out' ? graph.outNeighbors(at) : graph.inNeighbors(at)) {
      if (seen.has(next)) continue;
      seen.add(next);
      open.push(next);
    }
  }
  return ids.filter((id) => seen.has(plainName(id))).sort();
}

describe('a general graph library agrees', () => {
  it('about which constraints have a loop', () => {
    let loops = 0;
    fc.assert(
      fc.property(anyArrows, (arrows) => {
        const theirs = hasCycle(library(arrows));
        if (theirs) loops += 1;
        expect(arrange(tasks, arrows).ok).toBe(!theirs);
        const held = heldUp(ids, weave(constraints(arrows)));
        expect(held.size > 0).toBe(theirs);
      }),
      { numRuns: 150 },
    );
    // Both verdicts must have been met, or the agreement would say little.
    expect(loops).toBeGreaterThan(15);
    expect(loops).toBeLessThan(135);
  });

  it('that the loop we name is one', () => {
    fc.assert(
      fc.property(anyArrows, (arrows) => {
        const graph = library(arrows);
        if (!hasCycle(graph)) return;
        const web = weave(constraints(arrows));
        const { ring } = findLoop(heldUp(ids, web), web, new Map());
        expect(ring.length).toBeGreaterThan(0);
        ring.forEach((link, i) => {
          expect(graph.hasEdge(plainName(link.before), plainName(link.after))).toBe(true);
          expect(link.after).toBe(ring[(i + 1) % ring.length]?.before);
        });
      }),
    );
  });

  it('that its own topological order keeps the arrows that ours keeps', () => {
    fc.assert(
      fc.property(webs(24), (web) => {
        const graph = new DirectedGraph();
        for (const { id } of web.tasks) graph.addNode(id);
        for (const { before, after } of web.arrows) graph.mergeEdge(before, after);
        const theirs = topologicalSort(graph);
        const ours = arranged(web);
        expect(brokenBy(web.arrows, theirs)).toEqual([]);
        expect(brokenBy(web.arrows, ours)).toEqual([]);
        expect([...ours].sort()).toEqual([...theirs].sort());
        expect(costOfIds(web, ours).changeovers).toBeLessThanOrEqual(costOfIds(web, theirs).changeovers);
      }),
    );
  });

  it('about what comes before and after each step', () => {
    fc.assert(
      fc.property(anyArrows, fc.constantFrom(...ids), fc.constantFrom(...ids), (arrows, a, b) => {
        const graph = library(arrows);
        const web = weave(constraints(arrows));
        expect([...web.after(a)].sort()).toEqual(reach(graph, a, 'out'));
        expect([...web.before(a)].sort()).toEqual(reach(graph, a, 'in'));
        expect(web.leads(a, b)).toBe(reach(graph, a, 'out').includes(b));
      }),
    );
  });
});

/** Every order that keeps the arrows, one by one. */
function* allOrders(graph: Graph): Generator<readonly number[]> {
  const waiting = graph.into.slice();
  const order: number[] = [];
  const taken = new Set<number>();
  yield* go();

  function* go(): Generator<readonly number[]> {
    if (order.length === graph.size) {
      yield order;
      return;
    }
    for (let t = 0; t < graph.size; t += 1) {
      if (taken.has(t) || waiting[t] !== 0) continue;
      taken.add(t);
      order.push(t);
      for (let i = graph.start[t] ?? 0; i < (graph.start[t + 1] ?? 0); i += 1)
        waiting[graph.to[i] ?? 0]! -= 1;
      yield* go();
      for (let i = graph.start[t] ?? 0; i < (graph.start[t + 1] ?? 0); i += 1)
        waiting[graph.to[i] ?? 0]! += 1;
      order.pop();
      taken.delete(t);
    }
  }
}

describe('the proven optimum', () => {
  it('of eight steps, found by trying every order, is what is arranged', () => {
    fc.assert(
      fc.property(webs(8, 4), (web) => {
        const graph = pack(web.tasks, web.arrows);
        let best = costOf(graph, exactOrder(graph) ?? []);
        let tried = 0;
        for (const order of allOrders(graph)) {
          const cost = costOf(graph, order);
          if (tried === 0 || compareCost(cost, best) < 0) best = cost;
          tried += 1;
        }
        expect(tried).toBeGreaterThan(0);
        expect(costOf(graph, exactOrder(graph) ?? [])).toEqual(best);
        expect(costOfIds(web, arranged(web))).toEqual(best);
      }),
      { numRuns: 100 },
    );
  });
});
