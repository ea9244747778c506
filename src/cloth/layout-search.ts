import { type Layout, layInOrder, type Strip, type ToLay } from './layout.ts';
import { separate } from './layout-separate.ts';

/** Orders that often lay well: the largest, longest or widest first. */
const sizes: readonly ((thing: ToLay) => number)[] = [
  ({ ways: [way] }) => (way ? way.width * way.height : 0),
  ({ ways: [way] }) => (way ? way.height : 0),
  ({ ways: [way] }) => (way ? way.width : 0),
  ({ ways: [way] }) => (way ? way.width + way.height : 0),
];

/** Whole numbers below a limit that look thrown but are always the same for a seed (xorshift, Marsaglia 2003, from memory). */
function thrown(seed: number): (limit: number) => number {
  let x = Math.imul(seed + 1, 0x9e3779b1) | 1;
  return (limit) => {
    x ^= x << 13;
    x ^= x >>> 17;
    x ^= x << 5;
    return (x >>> 0) % limit;
  };
}

// An order this much longer than the best may be gone on from, to get out of a corner. Measured on the demonstration shirt
// over 16 seeds and 5 cloths: 0, 0.3 and 1 % laid a little longer on the mean.
const SLACK = 1.03;

const FIRST = 300_000; // of the budget, for orders; the rest is for laying closer what they gave

const better = (a: Layout, b: Layout): boolean =>
  a.length < b.length || (a.length === b.length && a.spread < b.spread);

/**
 * The shortest layout found: from several orders of size, then from the best of them by exchanging two pieces or moving
 * one, then by pressing the best of these together, until the budget is used up or no shorter one is possible. The same input always gives the same layout.
 *
 * @param shortest a length below which no layout can be; the search ends there
 * @param budget how many slices to compare, besides the first few orders, which are always tried
 * @param seed which exchanges are tried
 */
export function findLayout(
  things: readonly ToLay[],
  strip: Strip,
  shortest: number,
  budget: number,
  seed: number,
): Layout {
  const numbers = [...things.keys()];
  const sorted = sizes.map((size) => {
    const of = things.map(size);
    // What lies on the fold has no choice of place, so it goes first.
    const fold = (n: number): number => (things[n]?.onFold ? 1 : 0);
    return numbers.toSorted((a, b) => fold(b) - fold(a) || (of[b] ?? 0) - (of[a] ?? 0) || a - b);
  });
  let order = numbers;
  let best: Layout | undefined;
  let used = 0;
  for (const one of sorted) {
    const layout = layInOrder(things, one, strip);
    used += layout.steps;
    if (best && !better(layout, best)) continue;
    best = layout;
    order = one;
  }
  if (!best) return layInOrder(things, numbers, strip);
  const next = thrown(seed);
  const many = numbers.length;
  let here = best;
  const first = Math.min(budget, FIRST);
  while (used < first && best.length > shortest && many > 1) {
    const tried = [...order];
    const [i, j] = [next(many), next(many)];
    const [a, b] = [tried[i] ?? 0, tried[j] ?? 0];
    if (next(2) === 0) {
      [tried[i], tried[j]] = [b, a];
    } else {
      tried.splice(i, 1);
      tried.splice(j, 0, a);
    }
    used += 1;
    if (i === j || things[a] === things[b]) continue;
    const layout = layInOrder(things, tried, strip);
    used += layout.steps;
    if (better(here, layout) && layout.length > best.length * SLACK) continue;
    here = layout;
    order = tried;
    if (better(layout, best)) best = layout;
  }
  return used < budget && many > 1 ? separate(things, strip, best, shortest, budget - used, next) : best;
}
