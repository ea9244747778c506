import type { SetUp, StepId } from '../step.ts';

/** What arranging needs to know of a step. */
export interface Task {
  readonly id: StepId;
  readonly setUp: SetUp;
  readonly garment: string;
  /** True for a try-on, which should come early. */
  readonly gate: boolean;
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
}

/** Packs tasks and arrows. Linear in both. */
export function pack(tasks: readonly Task[], arrows: readonly Arrow[]): Graph {
  const size = tasks.length;
  const number = new Map<StepId, number>();
  const setUp = new Int32Array(size);
  const garment = new Int32Array(size);
  const gate = new Uint8Array(size);
  const setUps = new Map<string, number>();
  const garments = new Map<string, number>();
  let gates = 0;
  for (let t = 0; t < size; t += 1) {
    const task = tasks[t];
    if (!task) continue;
    number.set(task.id, t);
    setUp[t] = numbered(setUps, `${task.setUp.station}|${task.setUp.thread}|${task.setUp.tool}`);
    garment[t] = numbered(garments, task.garment);
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
  return { size, start, to, into, setUp, setUps: setUps.size, garment, gate, gates };
}

function numbered(names: Map<string, number>, name: string): number {
  const known = names.get(name);
  if (known !== undefined) return known;
  names.set(name, names.size);
  return names.size - 1;
}

/** What an order costs: the fewest changeovers first, then the earliest try-ons, then the fewest changes of garment. */
export interface Cost {
  readonly changeovers: number;
  /** Sum of the places of the try-ons. */
  readonly gatePlaces: number;
  readonly garmentChanges: number;
}

/** The cost of an order. Linear. */
export function costOf(graph: Graph, order: ArrayLike<number>): Cost {
  let changeovers = 0;
  let gatePlaces = 0;
  let garmentChanges = 0;
  for (let i = 0; i < order.length; i += 1) {
    const t = order[i] ?? 0;
    if (graph.gate[t] === 1) gatePlaces += i;
    if (i === 0) continue;
    const last = order[i - 1] ?? 0;
    if (graph.setUp[t] !== graph.setUp[last]) changeovers += 1;
    if (graph.garment[t] !== graph.garment[last]) garmentChanges += 1;
  }
  return { changeovers, gatePlaces, garmentChanges };
}

/** Which of two costs is less: negative for `a`. */
export const compareCost = (a: Cost, b: Cost): number =>
  a.changeovers - b.changeovers || a.gatePlaces - b.gatePlaces || a.garmentChanges - b.garmentChanges;
