import fc from 'fast-check';
import { arrange } from '../../../src/order/arrange/arrange.ts';
import { type Arrow, costOf, pack, type Task } from '../../../src/order/arrange/graph.ts';

/** Tasks and arrows for arranging. */
export interface Web {
  readonly tasks: readonly Task[];
  readonly arrows: readonly Arrow[];
}

const stations = ['machine', 'iron', 'hand', 'pin', 'cut'] as const;

/**
 * Webs without a loop: every arrow leads from an earlier task of a hidden order to a later one, and the tasks are given
 * in another order than that. `most` tasks, up to `setUps` set-ups.
 */
export const webs = (most: number, setUps = 5): fc.Arbitrary<Web> =>
  fc
    .integer({ min: 1, max: most })
    .chain((size) =>
      fc.tuple(
        fc.array(
          fc.record({
            setUp: fc.integer({ min: 0, max: setUps - 1 }),
            garment: fc.integer({ min: 0, max: 2 }),
            rest: fc.integer({ min: 0, max: 9 }),
          }),
          { minLength: size, maxLength: size },
        ),
        fc.shuffledSubarray(
          Array.from({ length: size }, (_, i) => i),
          { minLength: size, maxLength: size },
        ),
        fc.array(fc.tuple(fc.nat(size - 1), fc.nat(size - 1)), { maxLength: 3 * size }),
      ),
    )
    .map(([kinds, hidden, ties]) => ({
      tasks: kinds.map(
        ({ setUp, garment, rest }, i): Task => ({
          id: `t${i}`,
          setUp: { station: stations[setUp % 5] ?? 'hand', thread: `${Math.floor(setUp / 5)}`, tool: '' },
          garment: `g${garment}`,
          gate: rest === 0,
          soon: rest > 6,
        }),
      ),
      arrows: ties
        .filter(([a, b]) => a !== b)
        .map(([a, b]) => ({
          before: `t${hidden[Math.min(a, b)]}`,
          after: `t${hidden[Math.max(a, b)]}`,
        })),
    }));

/** The order that `arrange` finds, by task ids; throws where it finds a loop. */
export function arranged({ tasks, arrows }: Web): readonly string[] {
  const found = arrange(tasks, arrows);
  if (!found.ok) throw new Error(`held up: ${found.held.map((task) => task.id).join(' ')}`);
  return found.order.map((task) => task.id);
}

/** What an order of task ids costs. */
export function costOfIds({ tasks, arrows }: Web, order: readonly string[]) {
  const number = new Map(tasks.map((task, t) => [task.id, t]));
  return costOf(
    pack(tasks, arrows),
    order.map((id) => number.get(id) ?? -1),
  );
}

/** Arrows that an order does not keep. */
export function brokenBy(arrows: readonly Arrow[], order: readonly string[]): readonly Arrow[] {
  const place = new Map(order.map((id, i) => [id, i]));
  return arrows.filter((a) => (place.get(a.before) ?? -1) >= (place.get(a.after) ?? -1));
}

/** The plain topological order: first come, first served, in the order in which the tasks are given. */
export function plainOrder({ tasks, arrows }: Web): readonly string[] {
  const waiting = new Map(tasks.map((task) => [task.id, 0]));
  const followers = new Map<string, string[]>(tasks.map((task) => [task.id, []]));
  for (const { before, after } of arrows) {
    followers.get(before)?.push(after);
    waiting.set(after, (waiting.get(after) ?? 0) + 1);
  }
  const order = tasks.map((task) => task.id).filter((id) => waiting.get(id) === 0);
  for (const id of order) {
    for (const next of followers.get(id) ?? []) {
      const left = (waiting.get(next) ?? 0) - 1;
      waiting.set(next, left);
      if (left === 0) order.push(next);
    }
  }
  return order;
}
