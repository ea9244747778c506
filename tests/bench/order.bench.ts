import { readFileSync } from 'node:fs';
import { arrange } from '../../src/order/arrange/arrange.ts';
import type { Arrow, Task } from '../../src/order/arrange/graph.ts';
import { pack } from '../../src/order/arrange/graph.ts';
import { fewestChangeovers } from '../../src/order/arrange/least.ts';
import { changeoversOf, runningOrder, taskOf } from '../../src/order/running.ts';
import type { Running } from '../../src/order/running-types.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { ratio } from './ratio.ts';

/**
 * The least that ordering could cost: first come, first served (Kahn 1962), lean, from the same tasks and arrows by
 * name to names in order.
 */
function plainOrder(tasks: readonly { readonly id: string }[], arrows: readonly Arrow[]): readonly string[] {
  const number = new Map<string, number>();
  const followers: number[][] = [];
  for (const { id } of tasks) {
    number.set(id, followers.length);
    followers.push([]);
  }
  const waiting = new Int32Array(tasks.length);
  for (const { before, after } of arrows) {
    const a = number.get(before);
    const b = number.get(after);
    if (a === undefined || b === undefined) continue;
    followers[a]?.push(b);
    waiting[b] = (waiting[b] ?? 0) + 1;
  }
  const order: number[] = [];
  for (let t = 0; t < tasks.length; t += 1) if (waiting[t] === 0) order.push(t);
  for (let head = 0; head < order.length; head += 1) {
    for (const next of followers[order[head] ?? 0] ?? []) {
      const left = (waiting[next] ?? 0) - 1;
      waiting[next] = left;
      if (left === 0) order.push(next);
    }
  }
  return order.map((t) => tasks[t]?.id ?? '');
}

/** The other plain order: depth first, each step right before what was described first of those that wait for it. */
function depthOrder(tasks: readonly { readonly id: string }[], arrows: readonly Arrow[]): readonly string[] {
  const followers = new Map<string, string[]>(tasks.map(({ id }) => [id, []]));
  for (const { before, after } of arrows) followers.get(before)?.push(after);
  const seen = new Set<string>();
  const order: string[] = [];
  for (const { id } of [...tasks].reverse()) {
    if (seen.has(id)) continue;
    seen.add(id);
    const way = [{ id, left: [...(followers.get(id) ?? [])] }];
    for (let top = way.at(-1); top !== undefined; top = way.at(-1)) {
      const next = top.left.pop();
      if (next === undefined) {
        order.push(top.id);
        way.pop();
      } else if (!seen.has(next)) {
        seen.add(next);
        way.push({ id: next, left: [...(followers.get(next) ?? [])] });
      }
    }
  }
  return order.reverse();
}

const outfitOf = (name: string): Outfit => {
  const read = readOutfit(JSON.parse(readFileSync(`demo-data/${name}.json`, 'utf8')));
  if (!read.ok) throw new Error(`${name} cannot be read`);
  return read.value;
};
const derived = (outfit: Outfit): Running => {
  const running = runningOrder(outfit);
  if (!running.ok) throw new Error(running.error.say);
  return running.value;
};
const less = (ours: number, theirs: number): string => `${(100 * (1 - ours / theirs)).toFixed(0)} % fewer`;

for (const name of ['harbour-clockmaker', 'plain-shirt']) {
  const outfit = outfitOf(name);
  const start = performance.now();
  const running = derived(outfit);
  const cold = performance.now() - start;
  const tasks = [...running.steps.values()].map(taskOf);
  const { constraints, changeovers } = running;
  console.log(
    `  ${name}: ${tasks.length} steps, ${constraints.length} constraints; first run in this process ${cold.toFixed(1)} ms`,
  );
  for (const [way, order] of [
    ['first come, first served', plainOrder(tasks, constraints)],
    ['depth first', depthOrder(tasks, constraints)],
  ] as const) {
    const plain = changeoversOf(order, running.steps);
    console.log(`  ${name}: ${changeovers} changeovers, ${way} ${plain}: ${less(changeovers, plain)}`);
  }
  console.log(
    `  ${name}: no order has fewer than ${fewestChangeovers(pack(tasks, constraints))} changeovers`,
  );
  ratio(
    `${name} derived and arranged, against the plain order of its steps`,
    () => derived(outfit),
    () => plainOrder(tasks, constraints),
  );
}

/** A fixed scatter of whole numbers below `limit` (xorshift). */
function scatter(seed: number): (limit: number) => number {
  let x = seed;
  return (limit) => {
    x ^= x << 13;
    x ^= x >>> 17;
    x ^= x << 5;
    return (x >>> 0) % limit;
  };
}

const stations = ['machine', 'iron', 'hand', 'pin', 'mark', 'overlocker'] as const;

/** Tasks as many outfits would have: each after up to four of the 200 before it. */
function many(size: number): { readonly tasks: readonly Task[]; readonly arrows: readonly Arrow[] } {
  const next = scatter(20_270_529);
  const tasks: Task[] = [];
  const arrows: Arrow[] = [];
  for (let i = 0; i < size; i += 1) {
    const station = stations[next(stations.length)] ?? 'hand';
    tasks.push({
      id: `garment-${i % 7}/subject-${i}/stitch`,
      setUp: { station, thread: station === 'machine' ? `thread ${next(3)}` : '', tool: '' },
      garment: `garment-${i % 7}`,
      gate: i % 997 === 0,
      soon: station === 'pin',
    });
    for (let n = Math.min(i, next(5)); n > 0; n -= 1) {
      const before = tasks[i - 1 - next(Math.min(i, 200))]?.id;
      if (before !== undefined) arrows.push({ before, after: tasks[i]?.id ?? '' });
    }
  }
  return { tasks, arrows };
}

for (const size of [5000, 10_000, 20_000, 40_000]) {
  const { tasks, arrows } = many(size);
  const { oursMs } = ratio(
    `${size} steps arranged, against a bare topological sort of them`,
    () => arrange(tasks, arrows),
    () => plainOrder(tasks, arrows),
  );
  console.log(`  ${size} steps: ${((1e6 * oursMs) / size).toFixed(0)} ns a step`);
}
