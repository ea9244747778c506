import type { SetUp, StepId } from '../step.ts';

/** What arranging needs to know of a step. */
export interface Task {
  readonly id: StepId;
  readonly setUp: SetUp;
  readonly garment: string;
  /** True for a try-on, which should come early. */
  readonly gate: boolean;
  /** True for what should not lie about: a seam that is pinned, a mark that rubs off, a garment that is tacked. */
  readonly soon: boolean;
}

/** An arrow of the order, by the names of its steps. */
export interface Arrow {
  readonly before: StepId;
  readonly after: StepId;
}

/**
 * Tasks and arrows by number, packed for speed: the followers of task t are `to[start[t]] … to[start[t + 1] - 1]`.
 * Arrows that name unknown steps are left out; doubles do no harm.
 */
export interface Graph {
  readonly size: number;
  readonly start: Int32Array;
  readonly to: Int32Array;
  /** How many arrows lead into each task. */
  readonly into: Int32Array;
  /** Number of the set-up of each task; equal numbers need no changeover. */
  readonly setUp: Int32Array;
  readonly setUps: number;
  /** Number of the garment of each task. */
  readonly garment: Int32Array;
  /** 1 for a try-on. */
  readonly gate: Uint8Array;
  readonly gates: number;
  /** 1 for what should be followed up soon. */
  readonly soon: Uint8Array;
}

/** Packs tasks and arrows. Linear in both. */
export function pack(tasks: readonly Task[], arrows: readonly Arrow[]): Graph {
  const size = tasks.length;
  const number = new Map<StepId, number>();
  const setUp = new Int32Array(size);
  const garment = new Int32Array(size);
  const gate = new Uint8Array(size);
  const soon = new Uint8Array(size);
  const setUps: Named = { at: new Map(), count: 0 };
  const garments = new Map<string, number>();
  let gates = 0;
  for (let t = 0; t < size; t += 1) {
    const task = tasks[t];
    if (!task) continue;
    number.set(task.id, t);
    setUp[t] = setUpNumber(setUps, task.setUp);
    garment[t] = numbered(garments, task.garment);
    if (task.soon) soon[t] = 1;
    if (task.gate) {
      gate[t] = 1;
      gates += 1;
    }
  }
  const start = new Int32Array(size + 1);
  const into = new Int32Array(size);
  const from = new Int32Array(arrows.length);
  const onto = new Int32Array(arrows.length);
  let kept = 0;
  for (const arrow of arrows) {
    const a = number.get(arrow.before);
    const b = number.get(arrow.after);
    if (a === undefined || b === undefined) continue;
    from[kept] = a;
    onto[kept] = b;
    kept += 1;
    start[a + 1] = (start[a + 1] ?? 0) + 1;
    into[b] = (into[b] ?? 0) + 1;
  }
  for (let t = 0; t < size; t += 1) start[t + 1] = (start[t + 1] ?? 0) + (start[t] ?? 0);
  const fill = start.slice(0, size);
  const to = new Int32Array(kept);
  for (let i = 0; i < kept; i += 1) {
    const a = from[i] ?? 0;
    const at = fill[a] ?? 0;
    to[at] = onto[i] ?? 0;
    fill[a] = at + 1;
  }
  return { size, start, to, into, setUp, setUps: setUps.count, garment, gate, gates, soon };
}

interface Named {
  readonly at: Map<string, Map<string, Map<string, number>>>;
  count: number;
}

/** Looked up part by part: threads and tools are the maker's words, and joined words could run together. */
function setUpNumber(named: Named, { station, thread, tool }: SetUp): number {
  let threads = named.at.get(station);
  if (threads === undefined) {
    threads = new Map();
    named.at.set(station, threads);
  }
  let tools = threads.get(thread);
  if (tools === undefined) {
    tools = new Map();
    threads.set(thread, tools);
  }
  const known = tools.get(tool);
  if (known !== undefined) return known;
  tools.set(tool, named.count);
  named.count += 1;
  return named.count - 1;
}

function numbered(names: Map<string, number>, name: string): number {
  const known = names.get(name);
  if (known !== undefined) return known;
  names.set(name, names.size);
  return names.size - 1;
}

/** What an order costs, the weightiest first. */
export interface Cost {
  readonly changeovers: number;
  /** Sum of the places of the try-ons: early ones cost less. */
  readonly gatePlaces: number;
  /** For how many steps pinned seams, marks and tackings lie about until the first step that follows them up. */
  readonly lying: number;
  readonly garmentChanges: number;
}

/** The cost of an order. Linear in tasks and arrows. */
export function costOf(graph: Graph, order: ArrayLike<number>): Cost {
  const { start, to, setUp, garment, gate, soon } = graph;
  const place = new Int32Array(graph.size);
  for (let i = 0; i < order.length; i += 1) place[order[i] ?? 0] = i;
  let changeovers = 0;
  let gatePlaces = 0;
  let lying = 0;
  let garmentChanges = 0;
  for (let i = 0; i < order.length; i += 1) {
    const t = order[i] ?? 0;
    if (gate[t] === 1) gatePlaces += i;
    if (soon[t] === 1) {
      let first = -1;
      for (let a = start[t] ?? 0; a < (start[t + 1] ?? 0); a += 1) {
        const after = place[to[a] ?? 0] ?? 0;
        if (first < 0 || after < first) first = after;
      }
      if (first >= 0) lying += first - i;
    }
    if (i === 0) continue;
    const last = order[i - 1] ?? 0;
    if (setUp[t] !== setUp[last]) changeovers += 1;
    if (garment[t] !== garment[last]) garmentChanges += 1;
  }
  return { changeovers, gatePlaces, lying, garmentChanges };
}

/** Which of two costs is less: negative for `a`. */
export const compareCost = (a: Cost, b: Cost): number =>
  a.changeovers - b.changeovers ||
  a.gatePlaces - b.gatePlaces ||
  a.lying - b.lying ||
  a.garmentChanges - b.garmentChanges;
