import { type Cost, compareCost, type Graph } from './graph.ts';

/** States looked at before giving up; a few milliseconds. */
const BUDGET = 40_000;
/** Sets of done tasks are kept as the bits of one number. */
const MOST = 30;

interface State extends Cost {
  readonly done: number;
  readonly last: number;
  readonly from: State | undefined;
}

/**
 * The order of least cost, proven: dynamic programming over the sets of tasks that can be done so far, one layer for
 * each number done. Nothing where the graph has a loop, is too big, or would take too long; exponential in the worst
 * case, held by a budget.
 */
export function exactOrder(graph: Graph, budget: number = BUDGET): readonly number[] | undefined {
  const { size } = graph;
  if (size > MOST) return undefined;
  const needs = new Int32Array(size);
  const users = new Int32Array(size);
  for (let t = 0; t < size; t += 1) {
    for (let i = graph.start[t] ?? 0; i < (graph.start[t + 1] ?? 0); i += 1) {
      const after = graph.to[i] ?? 0;
      needs[after] = (needs[after] ?? 0) | (1 << t);
      users[t] = (users[t] ?? 0) | (1 << after);
    }
  }
  const soon: number[] = [];
  for (let t = 0; t < size; t += 1) if (graph.soon[t] === 1 && users[t] !== 0) soon.push(t);
  /** How many of what is done lie about, waiting for their first follower. */
  const lyingIn = (done: number): number => {
    let n = 0;
    for (const t of soon) if (done & (1 << t) && !(done & (users[t] ?? 0))) n += 1;
    return n;
  };
  let layer: State[] = [
    { done: 0, last: -1, changeovers: 0, gatePlaces: 0, lying: 0, garmentChanges: 0, from: undefined },
  ];
  let seen = 0;
  for (let place = 0; place < size; place += 1) {
    const next = new Map<string, State>();
    for (const state of layer) {
      const lying = state.lying + lyingIn(state.done);
      for (let t = 0; t < size; t += 1) {
        const bit = 1 << t;
        if (state.done & bit || (needs[t] ?? 0) & ~state.done) continue;
        const changes = state.last >= 0 && graph.setUp[t] !== graph.setUp[state.last] ? 1 : 0;
        const moves = state.last >= 0 && graph.garment[t] !== graph.garment[state.last] ? 1 : 0;
        const reached: State = {
          done: state.done | bit,
          last: t,
          changeovers: state.changeovers + changes,
          gatePlaces: state.gatePlaces + (graph.gate[t] === 1 ? place : 0),
          lying,
          garmentChanges: state.garmentChanges + moves,
          from: state,
        };
        const key = `${reached.done} ${graph.setUp[t]} ${graph.garment[t]}`;
        const rival = next.get(key);
        if (rival === undefined || compareCost(reached, rival) < 0) next.set(key, reached);
        seen += 1;
        if (seen > budget) return undefined;
      }
    }
    layer = [...next.values()];
  }
  let best: State | undefined;
  for (const state of layer) if (best === undefined || compareCost(state, best) < 0) best = state;
  if (best === undefined) return undefined;
  const order: number[] = [];
  for (let state: State | undefined = best; state && state.last >= 0; state = state.from)
    order.push(state.last);
  return order.reverse();
}
