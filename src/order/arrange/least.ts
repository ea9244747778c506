import type { Graph } from './graph.ts';

/** What is known about the fewest sittings, before any order is tried. */
export interface Least {
  /** Tasks in an order that keeps every arrow. */
  readonly plain: Int32Array;
  /** The most separate sittings at set-up s on one path from task t on, at `t * setUps + s`. */
  readonly from: Int32Array;
}

/**
 * For each task and each set-up, how many separate sittings at that set-up some path from there on takes: a sitting
 * never serves two of them. So the sum over the set-ups is a bound that no order of the rest can come under. Nothing
 * where there is a loop. Takes (tasks + arrows) × set-ups.
 */
export function leastSittings(graph: Graph): Least | undefined {
  const { size, start, to, setUp, setUps } = graph;
  const waiting = graph.into.slice();
  const plain = new Int32Array(size);
  let found = 0;
  for (let t = 0; t < size; t += 1) {
    if (waiting[t] !== 0) continue;
    plain[found] = t;
    found += 1;
  }
  for (let head = 0; head < found; head += 1) {
    const t = plain[head] ?? 0;
    for (let i = start[t] ?? 0; i < (start[t + 1] ?? 0); i += 1) {
      const after = to[i] ?? 0;
      const left = (waiting[after] ?? 0) - 1;
      waiting[after] = left;
      if (left !== 0) continue;
      plain[found] = after;
      found += 1;
    }
  }
  if (found < size) return undefined;
  const from = new Int32Array(size * setUps);
  for (let place = size - 1; place >= 0; place -= 1) {
    const t = plain[place] ?? 0;
    const own = setUp[t] ?? 0;
    const row = t * setUps;
    for (let i = start[t] ?? 0; i < (start[t + 1] ?? 0); i += 1) {
      const after = to[i] ?? 0;
      for (let s = 0; s < setUps; s += 1) {
        const begins = s === own && setUp[after] !== own ? 1 : 0;
        const sittings = (from[after * setUps + s] ?? 0) + begins;
        if (sittings > (from[row + s] ?? 0)) from[row + s] = sittings;
      }
    }
    if ((from[row + own] ?? 0) === 0) from[row + own] = 1;
  }
  return { plain, from };
}

/** The most sittings at a set-up on any path from these tasks on. */
export function mostAt(least: Least, setUps: number, tasks: readonly number[], setUp: number): number {
  let most = 0;
  for (const t of tasks) {
    const sittings = least.from[t * setUps + setUp] ?? 0;
    if (sittings > most) most = sittings;
  }
  return most;
}

/** A number of changeovers that no order comes under; nothing where there is a loop. */
export function fewestChangeovers(graph: Graph): number | undefined {
  const least = leastSittings(graph);
  if (least === undefined) return undefined;
  const first: number[] = [];
  for (let t = 0; t < graph.size; t += 1) if (graph.into[t] === 0) first.push(t);
  let sittings = 0;
  for (let s = 0; s < graph.setUps; s += 1) sittings += mostAt(least, graph.setUps, first, s);
  return Math.max(0, sittings - 1);
}
