import { beamOrder } from './beam.ts';
import { exactOrder } from './exact.ts';
import { type Arrow, type Graph, pack, type Task } from './graph.ts';
import { moveBlocks } from './moves.ts';
import { settle } from './settle.ts';
import { sittings } from './sittings.ts';

/** Above this many tasks a beam search would be felt as a pause, and sittings are taken as they come. */
const LARGE = 1500;

/** An order, or the tasks that a loop holds up. */
export type Arranged =
  | { readonly ok: true; readonly order: readonly Task[] }
  | { readonly ok: false; readonly held: readonly Task[] };

/**
 * An order that keeps every arrow and has few changeovers, early try-ons, little that lies about pinned or marked, and
 * few changes of garment, in that order of weight. Proven least on small outfits, by beam search with block moves on larger ones, by plain sittings on huge
 * ones. The same input always gives the same order.
 */
export function arrange(tasks: readonly Task[], arrows: readonly Arrow[]): Arranged {
  const graph = pack(tasks, arrows);
  const order = find(graph);
  if (order.length === tasks.length) return { ok: true, order: order.flatMap((t) => tasks[t] ?? []) };
  const done = new Set(order);
  return { ok: false, held: tasks.filter((_, t) => !done.has(t)) };
}

function find(graph: Graph): readonly number[] {
  if (graph.size > LARGE) return sittings(graph);
  const exact = exactOrder(graph);
  if (exact) return exact;
  const width = Math.max(1, Math.min(8, Math.floor(1200 / graph.size)));
  const beam = beamOrder(graph, width);
  return beam ? settle(graph, moveBlocks(graph, beam, 50)) : sittings(graph);
}
