import { type Known, type Lacks, lacksOf } from './least-work-lacks.ts';
import { leastChange, type Span, type Sum } from './linear.ts';
import type { Puzzle } from './puzzle.ts';

/** One way of one piece, by numbers. */
export interface WayHere {
  readonly id: string;
  readonly kind: string;
  /** Place of its piece. */
  readonly piece: number;
  /** Minutes that it adds at least. */
  readonly surely: number;
  /** Unknown, least, most. */
  readonly spans: readonly (readonly [number, number, number])[];
}

/** One explanation, by numbers; those that contradict themselves are not there. */
export interface ExplanationHere {
  readonly id: string;
  readonly minutes: number;
  readonly sums: readonly Sum[];
}

/** Why some ways do not do: a sum of changes that would have to come to `need`, and can only if another way gives to it. */
export interface Lack {
  /** What each unknown gives to it. */
  readonly factors: ReadonlyMap<number, number>;
  readonly need: number;
  /** The explanations that it comes from: what is seen, and the place of the explanation. */
  readonly uses: readonly (readonly [seen: number, cause: number])[];
}

/** What came of trying some ways with some explanations. */
export type Tried =
  | { readonly meets: true; readonly changes: ReadonlyMap<number, number>; readonly total: number }
  | { readonly meets: false; readonly lack: Known };

/** A puzzle by numbers, with what was found out about it so far. */
export interface Model {
  readonly unknowns: readonly string[];
  readonly ways: readonly WayHere[];
  readonly seen: readonly {
    readonly id: string;
    readonly explanations: readonly ExplanationHere[];
    /** Minutes of the explanation that adds least. */
    readonly cheapest: number;
  }[];
  /** What was found lacking so far. */
  readonly lacks: Lacks;
  /** Work done so far: linear programs solved, and times that minutes were asked for. */
  readonly work: { programs: number; asked: number };
  readonly minutes: (ways: readonly number[]) => number;
  /** Tries ways (in rising order) with an explanation for each thing seen, or none of it where it is below nought. */
  readonly tried: (ways: readonly number[], chosen: readonly number[]) => Tried;
  /** The ways, not yet decided upon, that give something to what is lacking; none where all together are not enough. */
  readonly helping: (lack: Known, ways: readonly number[], without: ReadonlySet<number>) => readonly number[];
}

/** So little is nothing, in mm. */
const NOTHING = 1e-7;
/** What does not change. */
const STILL: Span = { least: 0, most: 0 };

/** Turns a puzzle into numbers. An unknown belongs to one piece. */
export function modelOf(puzzle: Puzzle): Model {
  const names = new Map<string, number>();
  const unknown = (name: string): number => {
    const known = names.get(name);
    if (known !== undefined) return known;
    names.set(name, names.size);
    return names.size - 1;
  };
  const sumOf = ({ terms, least, most }: Puzzle['always'][number]): Sum => {
    const factors = new Map<number, number>();
    for (const { unknown: name, factor } of terms)
      factors.set(unknown(name), (factors.get(unknown(name)) ?? 0) + factor);
    return { terms: [...factors].filter(([, factor]) => factor !== 0), least, most };
  };
  const ways = puzzle.pieces.flatMap(({ ways: own }, piece) =>
    own.map(({ id, kind = id, bounds }): WayHere => {
      const spans = [...bounds].map(([name, { least, most }]) => [unknown(name), least, most] as const);
      return { id, kind, piece, surely: puzzle.surely?.get(id) ?? 0, spans };
    }),
  );
  const seen = puzzle.seen.map(({ id, explanations: all }) => {
    const explanations = all
      .map((one): ExplanationHere => ({ id: one.id, minutes: one.minutes, sums: one.demands.map(sumOf) }))
      .filter(({ sums }) => sums.every(({ least, most }) => least <= most));
    return { id, explanations, cheapest: Math.min(...explanations.map(({ minutes }) => minutes)) };
  });
  const lacks = lacksOf(ways);
  const work = { programs: 0, asked: 0 };
  const always = puzzle.always.map(sumOf);
  const still: readonly Span[] = Array.from(names, () => STILL);

  const costs = new Map<string, number>();
  const minutes = (chosen: readonly number[]): number => {
    const key = chosen.join();
    const known = costs.get(key);
    if (known !== undefined) return known;
    work.asked += 1;
    const cost = puzzle.minutes(chosen.map((way) => ways[way]?.id ?? ''));
    costs.set(key, cost);
    return cost;
  };

  const results = new Map<string, Tried>();
  const tried: Model['tried'] = (chosen, causes) => {
    const key = `${chosen.join()}|${causes.join()}`;
    const known = results.get(key);
    if (known) return known;
    const result = tryOut(chosen, causes);
    results.set(key, result);
    return result;
  };

  function tryOut(chosen: readonly number[], causes: readonly number[]): Tried {
    const lacking = (sums: readonly Sum[], weights: readonly number[], from: readonly number[]): Known => {
      const uses = new Set(from.filter((at, i) => at >= 0 && weights[i] !== 0));
      return lacks.keep({ ...lackOf(sums, weights), uses: [...uses].map((at) => [at, causes[at] ?? 0]) });
    };
    const spans = [...still];
    for (const way of chosen)
      for (const [at, least, most] of ways[way]?.spans ?? []) spans[at] = { least, most };
    const sums: Sum[] = [];
    /** What each of them comes from; -1 where it always holds. */
    const from: number[] = [];
    for (const [at, cause] of causes.entries())
      for (const sum of seen[at]?.explanations[cause]?.sums ?? []) {
        // What one sum shows by itself is plainer than what many show together.
        const by = outOfReach(sum, spans);
        if (by !== 0) return { meets: false, lack: lacking([sum], [by], [at]) };
        sums.push(sum);
        from.push(at);
      }
    for (const sum of always) {
      sums.push(sum);
      from.push(-1);
    }
    work.programs += 1;
    const least = leastChange(spans, sums);
    if (!least.meets) return { meets: false, lack: lacking(sums, least.weights, from) };
    const changes = new Map<number, number>();
    for (const way of chosen)
      for (const [at] of ways[way]?.spans ?? []) {
        const by = least.values[at] ?? 0;
        if (by !== 0) changes.set(at, by);
      }
    return { meets: true, changes, total: least.total };
  }

  const helping: Model['helping'] = (lack, chosen, without) => {
    const decided = new Set(chosen.map((way) => ways[way]?.piece));
    let has = 0;
    for (const way of chosen) has += lack.gives[way] ?? 0;
    // Rounding has blurred the reason: every way that is left may be the one.
    const blurred = has >= lack.need - NOTHING / 100;
    const best = new Map<number, number>();
    const found: number[] = [];
    for (const [i, way] of ways.entries()) {
      if (decided.has(way.piece) || without.has(i)) continue;
      const more = lack.gives[i] ?? 0;
      if (!blurred && more < NOTHING / 100) continue;
      found.push(i);
      best.set(way.piece, Math.max(best.get(way.piece) ?? 0, more));
    }
    let most = has;
    for (const more of best.values()) most += more;
    return blurred || most >= lack.need - NOTHING ? found : [];
  };

  return { unknowns: [...names.keys()], ways, seen, lacks, work, minutes, tried, helping };
}

/** 1 where a sum cannot come to as much as it must, -1 where it cannot come to as little, else 0. */
function outOfReach({ terms, least, most }: Sum, spans: readonly Span[]): number {
  let [low, high] = [0, 0];
  for (const [at, factor] of terms) {
    const span = spans[at] ?? STILL;
    low += Math.min(factor * span.least, factor * span.most);
    high += Math.max(factor * span.least, factor * span.most);
  }
  return high < least - NOTHING ? 1 : low > most + NOTHING ? -1 : 0;
}

/** Whether changes meet a sum. */
export function meets(sum: Sum, changes: ReadonlyMap<number, number>): boolean {
  let comes = 0;
  for (const [at, factor] of sum.terms) comes += factor * (changes.get(at) ?? 0);
  return comes >= sum.least - NOTHING && comes <= sum.most + NOTHING;
}

function lackOf(sums: readonly Sum[], weights: readonly number[]): Omit<Lack, 'uses'> {
  const factors = new Map<number, number>();
  let need = 0;
  sums.forEach(({ terms, least, most }, i) => {
    const weight = weights[i] ?? 0;
    if (weight === 0) return;
    need += weight * (weight > 0 ? least : most);
    for (const [at, factor] of terms) factors.set(at, (factors.get(at) ?? 0) + weight * factor);
  });
  for (const [at, factor] of factors) if (Math.abs(factor) < 1e-9) factors.delete(at);
  return { factors, need };
}
