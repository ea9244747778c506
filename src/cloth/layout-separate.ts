import type { Lying } from './laid-piece.ts';
import { clash, type Laid, type Layout, type Strip, slideUp, type ToLay } from './layout.ts';

const GRID = 4_000_000; // 4 mm: places across the cloth that are compared
const SAMPLES = 10; // places across that are tried at each move, besides finer ones round the best of them
const TIGHTER = 0.02; // how much shorter the cloth is made each time that all lie apart
const LEAST_TIGHTER = 0.002;
const PATIENCE = 20; // rounds without coming nearer, before two pieces are exchanged
const NEARER = 0.99; // less overlap than this part of the least counts as coming nearer
// A pair that overlaps weighs more after each round, the deeper the more; one that does not weighs less again.
const HEAVIER: readonly [number, number] = [1.2, 0.8];
const LIGHTER = 0.95;
const MOST_WAYS = 120; // with more the tables would take too much memory; such a cloth is laid by orders alone

/** Between which places down the cloth two ways overlap, for each place across, reckoned once and kept. */
function clashTable(ways: readonly Lying[], gap: number) {
  const many = ways.length;
  const kept: (Float64Array | undefined)[] = new Array(many * many);
  const widths = Float64Array.from(ways, (way) => way.width + gap);
  const found = { from: 0, to: 0, steps: 0 };
  const tableOf = (a: number, b: number): Float64Array => {
    const length = 2 * Math.ceil(((widths[a] ?? 0) + (widths[b] ?? 0)) / GRID + 3);
    const table = new Float64Array(length).fill(Number.NaN);
    kept[a * many + b] = table;
    return table;
  };
  /** Looks a pair up, with `b` lying `dx` to the right of `a`; false where they pass each other at any height. */
  const look = (a: number, b: number, dx: number): boolean => {
    const before = widths[b] ?? 0;
    if (dx >= (widths[a] ?? 0) || -dx >= before) return false;
    const table = kept[a * many + b] ?? tableOf(a, b);
    const at = 2 * (Math.floor(dx / GRID) + Math.ceil(before / GRID) + 1);
    let from = table[at] ?? 0;
    if (Number.isNaN(from)) {
      const [one, two] = [ways[a], ways[b]];
      if (!one || !two) return false;
      const [start, end] = clash(one.wide, two.slices, dx);
      table[at] = start;
      table[at + 1] = end;
      from = start;
      found.steps += one.wide.to.length + two.slices.to.length;
    }
    found.from = from;
    found.to = table[at + 1] ?? 0;
    return from < found.to;
  };
  return { look, found };
}

/**
 * Lays closer what was laid before: makes the cloth a little shorter, lets the pieces overlap, and moves one after the
 * other to where it overlaps least, minding those pairs most that would not come apart, until all lie apart. Then again.
 * What is given back never overlaps and is never longer than what was given. The same input gives the same layout.
 *
 * Source: overlap minimisation with weights that grow, as in guided local search for nesting (Egeblad, Nielsen and
 * Odgaard, European Journal of Operational Research 183(3), 2007, from memory).
 * @param shortest a length below which no layout can be; the search ends there
 * @param budget how many slices to compare, or work that takes as long
 * @param next whole numbers below a limit that look thrown
 */
export function separate(
  things: readonly ToLay[],
  strip: Strip,
  start: Layout,
  shortest: number,
  budget: number,
  next: (limit: number) => number,
): Layout {
  const many = things.length;
  const all = [...new Set(things.flatMap(({ ways }) => ways))];
  if (all.length > MOST_WAYS) return start;
  const numbers = new Map(all.map((way, w) => [way, w]));
  const choices = things.map(({ ways }) => ways.map((way) => numbers.get(way) ?? 0));
  const { look, found } = clashTable(all, strip.gap);
  const widths = Float64Array.from(all, (way) => way.width);
  const heights = Float64Array.from(all, (way) => way.height);
  /** Of each piece its way, and its place across and down. */
  const lies = new Int32Array(many);
  const x = new Float64Array(many);
  const y = new Float64Array(many);
  const weight = new Float64Array(many * many).fill(1);

  const starts = Float64Array.from(things, ({ onFold }) => (onFold ? 0 : strip.left));
  /** How many places across there are for a way, and which is nearest to one. */
  const places = (n: number, way: number): number =>
    things[n]?.onFold ? 0 : Math.floor((strip.right - (widths[way] ?? 0) - strip.left) / GRID);
  const nearest = (n: number, way: number, at: number): number =>
    Math.max(0, Math.min(Math.round((at - (starts[n] ?? 0)) / GRID), places(n, way)));
  const across = (n: number, k: number): number => (starts[n] ?? 0) + k * GRID;

  /** How deep two overlap, down or across, whichever is less. */
  const depth = (i: number, j: number): number => {
    const [a, b] = [lies[i] ?? 0, lies[j] ?? 0];
    const dx = (x[j] ?? 0) - (x[i] ?? 0);
    if (!look(a, b, dx)) return 0;
    const dy = (y[j] ?? 0) - (y[i] ?? 0);
    const down = Math.min(dy - found.from, found.to - dy);
    return down <= 0
      ? 0
      : Math.min(down, (widths[a] ?? 0) + strip.gap - dx, (widths[b] ?? 0) + strip.gap + dx);
  };

  const low = new Float64Array(many);
  const high = new Float64Array(many);
  const cap = new Float64Array(many);
  const much = new Float64Array(many);
  /** The least overlap of a way at a place across, below `most`, and how far down; what is nearer the beginning wins. */
  const best = { cost: 0, y: 0 };
  const leastAt = (n: number, way: number, at: number, room: number, most: number): boolean => {
    let count = 0;
    for (let j = 0; j < many; j++) {
      if (j === n) continue;
      const other = lies[j] ?? 0;
      const dx = at - (x[j] ?? 0);
      const mine = n < j;
      if (!(mine ? look(way, other, -dx) : look(other, way, dx))) continue;
      const lo = (y[j] ?? 0) + (mine ? -found.to : found.from);
      const hi = (y[j] ?? 0) + (mine ? -found.from : found.to);
      if (hi <= 0 || lo >= room) continue;
      low[count] = lo;
      high[count] = hi;
      cap[count] = strip.gap + Math.min((widths[other] ?? 0) - dx, (widths[way] ?? 0) + dx);
      much[count] = weight[n * many + j] ?? 1;
      count++;
    }
    let better = false;
    best.cost = most;
    const costAt = (place: number): void => {
      let cost = 0;
      for (let j = 0; j < count && cost < best.cost; j++) {
        const down = Math.min(place - (low[j] ?? 0), (high[j] ?? 0) - place);
        if (down > 0) cost += (much[j] ?? 1) * Math.min(down, cap[j] ?? 0);
      }
      if (cost >= best.cost) return;
      better = true;
      best.cost = cost;
      best.y = place;
    };
    costAt(0);
    for (let j = 0; j < count; j++) {
      const [lo, hi] = [low[j] ?? 0, high[j] ?? 0];
      if (hi <= room) costAt(hi);
      if (lo >= 0) costAt(lo);
    }
    costAt(room);
    found.steps += 4 + many + 3 * count;
    return better;
  };

  /** Moves one piece to where it overlaps least on a cloth of a length. */
  const move = (n: number, length: number): void => {
    const now = lies[n] ?? 0;
    let cost = Number.POSITIVE_INFINITY;
    let to = { way: now, k: 0, y: y[n] ?? 0 };
    const offer = (way: number, k: number): void => {
      const room = length - (heights[way] ?? 0);
      if (room < 0 || k < 0 || k > places(n, way)) return;
      if (!leastAt(n, way, across(n, k), room, cost)) return;
      cost = best.cost;
      to = { way, k, y: best.y };
    };
    offer(now, nearest(n, now, x[n] ?? 0));
    for (const way of choices[n] ?? []) {
      const most = places(n, way);
      const samples = Math.min(SAMPLES, most + 1);
      for (let s = 0; s < samples; s++) {
        const [from, end] = [
          Math.floor(((most + 1) * s) / samples),
          Math.floor(((most + 1) * (s + 1)) / samples),
        ];
        offer(way, from + next(end - from));
      }
    }
    for (
      let by = Math.max(1, Math.floor(places(n, to.way) / SAMPLES / 2));
      by >= 1;
      by = Math.floor(by / 2)
    ) {
      const { k, way } = to;
      offer(way, k - by);
      offer(way, k + by);
    }
    lies[n] = to.way;
    x[n] = across(n, to.k);
    y[n] = to.y;
  };

  const put = (n: number, at: number, down: number): void => {
    const way = lies[n] ?? 0;
    x[n] = across(n, nearest(n, way, at));
    y[n] = down;
  };
  const take = ({ laid }: Layout): void => {
    for (const [n, { way, x: at, y: down }] of laid.entries()) {
      lies[n] = numbers.get(way) ?? 0;
      put(n, at, down);
    }
  };
  const exchange = (): void => {
    const [i, j] = [next(many), next(many)];
    const [ax, ay, bx, by] = [x[i] ?? 0, y[i] ?? 0, x[j] ?? 0, y[j] ?? 0];
    put(i, bx, by);
    put(j, ax, ay);
  };
  const within = (length: number): void => {
    for (let n = 0; n < many; n++)
      y[n] = Math.max(0, Math.min(y[n] ?? 0, length - (heights[lies[n] ?? 0] ?? 0)));
  };

  const depths = new Float64Array(many * many);
  /** Measures how deep every two overlap; gives the sum, and the pieces that overlap. */
  const overlapping = (): readonly [sum: number, deepest: number, which: Set<number>] => {
    let [sum, deepest] = [0, 0];
    const which = new Set<number>();
    for (let i = 0; i < many; i++) {
      for (let j = i + 1; j < many; j++) {
        const deep = depth(i, j);
        depths[i * many + j] = deep;
        sum += deep;
        deepest = Math.max(deepest, deep);
        if (deep > 0) which.add(i).add(j);
      }
    }
    found.steps += (many * many) / 2;
    return [sum, deepest, which];
  };
  const weigh = (deepest: number): void => {
    for (let i = 0; i < many; i++) {
      for (let j = i + 1; j < many; j++) {
        const deep = depths[i * many + j] ?? 0;
        const by = deep > 0 ? HEAVIER[0] + (HEAVIER[1] * deep) / deepest : LIGHTER;
        const heavy = Math.max(1, (weight[i * many + j] ?? 1) * by);
        weight[i * many + j] = heavy;
        weight[j * many + i] = heavy;
      }
    }
  };
  /** Moves pieces until all lie apart within a length; false where they would not. */
  const pullApart = (length: number): boolean => {
    within(length);
    weight.fill(1);
    let least = Number.POSITIVE_INFINITY;
    let waited = 0;
    while (found.steps < budget && waited < PATIENCE * 4) {
      const [sum, deepest, which] = overlapping();
      if (sum === 0) return true;
      waited = sum < least * NEARER ? 0 : waited + 1;
      if (waited === 0) least = sum;
      weigh(deepest);
      if (waited > 0 && waited % PATIENCE === 0) {
        exchange();
        within(length);
      }
      const order = [...which];
      for (let k = order.length - 1; k > 0; k--) {
        const other = next(k + 1);
        [order[k], order[other]] = [order[other] ?? 0, order[k] ?? 0];
      }
      for (const n of order) move(n, length);
    }
    return false;
  };

  let done = start;
  let tighter = TIGHTER;
  take(start);
  while (found.steps < budget && done.length > shortest) {
    if (pullApart(Math.max(shortest, Math.floor(done.length * (1 - tighter))))) {
      const laid = [...lies].flatMap((w, n): Laid[] => {
        const way = all[w];
        return way ? [{ way, x: x[n] ?? 0, y: y[n] ?? 0 }] : [];
      });
      const layout = slideUp(laid, strip);
      found.steps += layout.steps;
      if (layout.length < done.length) {
        done = layout;
        continue;
      }
    }
    tighter = tighter > LEAST_TIGHTER ? tighter / 2 : TIGHTER;
    take(done);
    exchange();
  }
  return done;
}
