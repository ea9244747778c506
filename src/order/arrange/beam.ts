import type { Graph } from './graph.ts';
import { type Least, leastSittings, mostAt } from './least.ts';

/** A beginning of an order, and what is ready after it. */
interface Beginning {
  readonly waiting: Int32Array;
  readonly ready: readonly number[];
  readonly done: number;
  readonly hash: number;
  /** The last sitting, and the beginning before it. */
  readonly block: readonly number[];
  readonly from: Beginning | undefined;
  readonly last: number;
  readonly gatePlaces: number;
  readonly garmentChanges: number;
  /** Sittings that the rest still needs at least. */
  readonly ahead: number;
}

/**
 * A good order by beam search over sittings: a sitting takes everything that can be done at one set-up; after equally
 * many sittings the beginnings that need least ahead (by a bound that no order comes under) and have most done are
 * kept. Ends with the fewest sittings that it met. Nothing where a loop holds tasks up. About width × sittings ×
 * set-ups steps, each as long as the graph.
 */
export function beamOrder(graph: Graph, width: number): readonly number[] | undefined {
  const { size } = graph;
  const least = leastSittings(graph);
  if (least === undefined) return undefined;
  const salt = salts(size);
  const ready: number[] = [];
  for (let t = 0; t < size; t += 1) if (graph.into[t] === 0) ready.push(t);
  let level: Beginning[] = [
    {
      waiting: graph.into,
      ready,
      done: 0,
      hash: 0,
      block: [],
      from: undefined,
      last: -1,
      gatePlaces: 0,
      garmentChanges: 0,
      ahead: 0,
    },
  ];
  while (level.length > 0) {
    const finished = level.filter((b) => b.done === size).sort(byTryOns)[0];
    if (finished) return unwind(finished);
    const next = new Map<number, Beginning>();
    for (const beginning of level) {
      for (const setUp of new Set(beginning.ready.map((t) => graph.setUp[t] ?? 0))) {
        const reached = sit(graph, beginning, setUp, least, salt);
        const rival = next.get(reached.hash);
        if (rival === undefined || byTryOns(reached, rival) < 0) next.set(reached.hash, reached);
      }
    }
    level = [...next.values()].sort(byPromise).slice(0, width);
  }
  return undefined;
}

const byTryOns = (a: Beginning, b: Beginning): number =>
  a.gatePlaces - b.gatePlaces || a.garmentChanges - b.garmentChanges;
const byPromise = (a: Beginning, b: Beginning): number =>
  a.ahead - b.ahead || b.done - a.done || byTryOns(a, b) || a.hash - b.hash;

function unwind(end: Beginning): readonly number[] {
  const blocks: (readonly number[])[] = [];
  for (let b: Beginning | undefined = end; b; b = b.from) blocks.push(b.block);
  return blocks.reverse().flat();
}

/** One sitting: everything that can be done at a set-up, the garment in hand first. */
function sit(graph: Graph, from: Beginning, setUp: number, least: Least, salt: Int32Array): Beginning {
  const waiting = from.waiting.slice();
  const later: number[] = [];
  const here: number[] = [];
  for (const t of from.ready) (graph.setUp[t] === setUp ? here : later).push(t);
  const block: number[] = [];
  let { done, hash, last, gatePlaces, garmentChanges } = from;
  while (here.length > 0) {
    let pick = 0;
    for (let i = 1; i < here.length; i += 1) if (sooner(graph, here[i] ?? 0, here[pick] ?? 0, last)) pick = i;
    const t = here[pick] ?? 0;
    here.splice(pick, 1);
    block.push(t);
    if (graph.gate[t] === 1) gatePlaces += done;
    if (last >= 0 && graph.garment[t] !== graph.garment[last]) garmentChanges += 1;
    done += 1;
    hash ^= salt[t] ?? 0;
    last = t;
    for (let i = graph.start[t] ?? 0; i < (graph.start[t + 1] ?? 0); i += 1) {
      const after = graph.to[i] ?? 0;
      const left = (waiting[after] ?? 0) - 1;
      waiting[after] = left;
      if (left === 0) (graph.setUp[after] === setUp ? here : later).push(after);
    }
  }
  // A sitting changes nothing for other set-ups: what they still need is on the same paths as before.
  const before = mostAt(least, graph.setUps, from.ready, setUp);
  const ahead = from.ahead - before + mostAt(least, graph.setUps, later, setUp);
  return { waiting, ready: later, done, hash, block, from, last, gatePlaces, garmentChanges, ahead };
}

const sooner = (graph: Graph, a: number, b: number, last: number): boolean => {
  const gate = (graph.gate[b] ?? 0) - (graph.gate[a] ?? 0);
  if (gate !== 0) return gate < 0;
  const hand = last < 0 ? -1 : (graph.garment[last] ?? -1);
  const other = (graph.garment[a] === hand ? 0 : 1) - (graph.garment[b] === hand ? 0 : 1);
  return other !== 0 ? other < 0 : a < b;
};

/** A fixed scatter of numbers, one a task, to tell sets of tasks apart (xorshift; Zobrist's way of hashing). */
function salts(size: number): Int32Array {
  const salt = new Int32Array(size);
  let x = 0x2545f491;
  for (let t = 0; t < size; t += 1) {
    x ^= x << 13;
    x ^= x >>> 17;
    x ^= x << 5;
    salt[t] = x;
  }
  return salt;
}
