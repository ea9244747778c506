import { compareCost, costOf, type Graph } from './graph.ts';

/**
 * Improves an order by moving whole sittings up or down to another sitting at the same set-up, as long as every arrow
 * is kept and the cost falls. Ends, because the cost falls each time; at most `rounds` moves.
 */
export function moveBlocks(graph: Graph, order: readonly number[], rounds: number): readonly number[] {
  let best = order;
  let cost = costOf(graph, best);
  for (let round = 0; round < rounds; round += 1) {
    const better = oneMove(graph, best);
    if (better === undefined) return best;
    const less = costOf(graph, better);
    if (compareCost(less, cost) >= 0) return best;
    best = better;
    cost = less;
  }
  return best;
}

function blocksOf(graph: Graph, order: readonly number[]): readonly (readonly number[])[] {
  const blocks: number[][] = [];
  order.forEach((t, i) => {
    const last = order[i - 1];
    if (last === undefined || graph.setUp[last] !== graph.setUp[t]) blocks.push([]);
    blocks.at(-1)?.push(t);
  });
  return blocks;
}

/** The first sitting that can join another at its own set-up, moved there. */
function oneMove(graph: Graph, order: readonly number[]): readonly number[] | undefined {
  const blocks = blocksOf(graph, order);
  const blockOf = new Int32Array(graph.size);
  blocks.forEach((block, b) => {
    for (const t of block) blockOf[t] = b;
  });
  const lastNeed = new Int32Array(blocks.length).fill(-1);
  const firstUser = new Int32Array(blocks.length).fill(blocks.length);
  for (let t = 0; t < graph.size; t += 1) {
    for (let i = graph.start[t] ?? 0; i < (graph.start[t + 1] ?? 0); i += 1) {
      const from = blockOf[t] ?? 0;
      const to = blockOf[graph.to[i] ?? 0] ?? 0;
      if (from === to) continue;
      lastNeed[to] = Math.max(lastNeed[to] ?? -1, from);
      firstUser[from] = Math.min(firstUser[from] ?? 0, to);
    }
  }
  const setUpOf = (b: number): number => graph.setUp[blocks[b]?.[0] ?? 0] ?? -1;
  for (let b = 0; b < blocks.length; b += 1) {
    for (let other = b - 1; other >= Math.max(0, lastNeed[b] ?? 0); other -= 1) {
      if (setUpOf(other) === setUpOf(b)) return joined(blocks, b, other);
    }
    for (let other = b + 1; other <= Math.min(blocks.length - 1, firstUser[b] ?? 0); other += 1) {
      if (setUpOf(other) === setUpOf(b)) return joined(blocks, b, other);
    }
  }
  return undefined;
}

const joined = (blocks: readonly (readonly number[])[], moved: number, onto: number): readonly number[] =>
  blocks.flatMap((block, b) => {
    if (b === moved) return [];
    if (b !== onto) return block;
    const extra = blocks[moved] ?? [];
    return moved > onto ? [...block, ...extra] : [...extra, ...block];
  });
