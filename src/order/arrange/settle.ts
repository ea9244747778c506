import { drawUp } from './draw-up.ts';
import { compareCost, costOf, type Graph } from './graph.ts';

/**
 * Lets what can wait, wait: a seam is pinned, a mark is made at the last sitting before it is used, and what a try-on
 * does not need goes to a sitting after it. Then sittings at which nothing else is done are put right before the sitting
 * that follows them up, and each sitting right after what it needs, where that is better. The result never costs more
 * than the order given. About (tasks + arrows) × sittings.
 */
export function settle(graph: Graph, order: readonly number[]): readonly number[] {
  const { start, to, setUp, gate, soon } = graph;
  const blockOf = new Int32Array(graph.size);
  const setUpOf: number[] = [];
  const gatesUpTo: number[] = [];
  let last = -1;
  let gates = 0;
  for (const t of order) {
    const here = setUp[t] ?? 0;
    if (here !== last) setUpOf.push(here);
    last = here;
    blockOf[t] = setUpOf.length - 1;
    if (gate[t] === 1) gates += 1;
    gatesUpTo[setUpOf.length - 1] = gates;
  }
  for (let place = order.length - 1; place >= 0; place -= 1) {
    const t = order[place] ?? 0;
    if (gate[t] === 1) continue;
    const own = blockOf[t] ?? 0;
    let latest = setUpOf.length - 1;
    for (let i = start[t] ?? 0; i < (start[t + 1] ?? 0); i += 1) {
      latest = Math.min(latest, blockOf[to[i] ?? 0] ?? 0);
    }
    let best = own;
    for (let block = own + 1; block <= latest; block += 1) {
      if (setUpOf[block] !== setUp[t]) continue;
      // The nearest sitting after the last try-on it can leave before it; for what should not lie about, the last.
      if (soon[t] === 1 || (gatesUpTo[block - 1] ?? 0) > (gatesUpTo[best] ?? 0)) best = block;
    }
    blockOf[t] = best;
  }
  const settled = inSittings(graph, order, blockOf, setUpOf.length);
  const closer = inSittings(graph, order, closeUp(graph, settled, blockOf, setUpOf.length), setUpOf.length);
  let best = order;
  let cost = costOf(graph, order);
  for (const way of [settled, closer]) {
    const less = costOf(graph, way);
    if (compareCost(less, cost) >= 0) continue;
    best = way;
    cost = less;
  }
  return drawUp(graph, best);
}

/**
 * Sittings renumbered so that those that hold nothing but what should not lie about come right before the first sitting
 * that follows one of them up.
 */
function closeUp(graph: Graph, order: readonly number[], blockOf: Int32Array, blocks: number): Int32Array {
  const { start, to, soon } = graph;
  const users: Set<number>[] = Array.from({ length: blocks }, () => new Set());
  const firm = new Uint8Array(blocks);
  for (const t of order) {
    const own = blockOf[t] ?? 0;
    if (soon[t] !== 1) firm[own] = 1;
    for (let i = start[t] ?? 0; i < (start[t + 1] ?? 0); i += 1) {
      const after = blockOf[to[i] ?? 0] ?? 0;
      if (after !== own) users[own]?.add(after);
    }
  }
  // From the last sitting to the first, so that those that follow one up already stand where they will.
  const row: number[] = [];
  for (let block = blocks - 1; block >= 0; block -= 1) {
    const first = row.findIndex((other) => users[block]?.has(other));
    row.splice(firm[block] === 1 || first < 0 ? 0 : first, 0, block);
  }
  const place = new Int32Array(blocks);
  for (const [i, block] of row.entries()) place[block] = i;
  return blockOf.map((block) => place[block] ?? 0);
}

/** The tasks sitting by sitting; in one sitting the try-on first, then the garment in hand, then as described. */
function inSittings(
  graph: Graph,
  order: readonly number[],
  blockOf: Int32Array,
  blocks: number,
): readonly number[] {
  const { start, to, garment, gate } = graph;
  const members: number[][] = Array.from({ length: blocks }, () => []);
  for (const t of order) members[blockOf[t] ?? 0]?.push(t);
  const waiting = graph.into.slice();
  const settled: number[] = [];
  for (const [block, tasks] of members.entries()) {
    const ready = tasks.filter((t) => waiting[t] === 0);
    while (ready.length > 0) {
      const hand = garment[settled.at(-1) ?? -1];
      let pick = 0;
      for (let i = 1; i < ready.length; i += 1) {
        if (rank(ready[i] ?? 0, hand) < rank(ready[pick] ?? 0, hand)) pick = i;
      }
      const [t = 0] = ready.splice(pick, 1);
      settled.push(t);
      for (let i = start[t] ?? 0; i < (start[t + 1] ?? 0); i += 1) {
        const after = to[i] ?? 0;
        waiting[after] = (waiting[after] ?? 0) - 1;
        if (waiting[after] === 0 && blockOf[after] === block) ready.push(after);
      }
    }
  }
  return settled;

  function rank(t: number, hand: number | undefined): number {
    return (gate[t] === 1 ? 0 : 2 * graph.size) + (garment[t] === hand ? 0 : graph.size) + t;
  }
}
