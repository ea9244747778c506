import { compareCost, costOf, type Graph } from './graph.ts';

/**
 * Sittings put right after the last one that they need, one by one, where that costs less. About (tasks + arrows) ×
 * sittings.
 */
export function drawUp(graph: Graph, order: readonly number[]): readonly number[] {
  const { start, to, setUp } = graph;
  const blocks: (readonly number[])[] = [];
  for (const [i, t] of order.entries()) {
    const last = blocks.at(-1);
    if (last && setUp[order[i - 1] ?? 0] === setUp[t]) blocks[blocks.length - 1] = [...last, t];
    else blocks.push([t]);
  }
  let best = order;
  let least = costOf(graph, order);
  for (let b = 1; b < blocks.length; b += 1) {
    const members = new Set(blocks[b]);
    // Back to the nearest sitting that one of these follows.
    let after = b - 1;
    while (after >= 0 && !leadsInto(blocks[after] ?? [], members)) after -= 1;
    if (after === b - 1) continue;
    const moved = blocks[b] ?? [];
    const way = [...blocks.slice(0, after + 1), moved, ...blocks.slice(after + 1, b), ...blocks.slice(b + 1)];
    const less = costOf(graph, way.flat());
    if (compareCost(less, least) >= 0) continue;
    blocks.splice(0, blocks.length, ...way);
    best = way.flat();
    least = less;
  }
  return best;

  function leadsInto(block: readonly number[], members: ReadonlySet<number>): boolean {
    return block.some((t) => {
      for (let i = start[t] ?? 0; i < (start[t + 1] ?? 0); i += 1) if (members.has(to[i] ?? -1)) return true;
      return false;
    });
  }
}
