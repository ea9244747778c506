import type { Lack, WayHere } from './least-work-model.ts';

/** A lack that is remembered, wherever else it may hold. */
export interface Known {
  /** What each way gives to it at most. */
  readonly gives: readonly number[];
  readonly need: number;
  /** The explanations that it comes from: what is seen, and the place of the explanation. */
  readonly uses: readonly (readonly [seen: number, cause: number])[];
}

/** All lacks found so far. What was lacking once is lacking wherever no way gives enough to it, without reckoning again. */
export interface Lacks {
  /** Remembers a lack; the one that is known where it is not new. */
  readonly keep: (lack: Lack) => Known;
  /** Those that hold for the explanations chosen. */
  readonly of: (chosen: readonly number[]) => readonly Known[];
  /** Those that hold for the explanations chosen, with one more. */
  readonly with: (chosen: readonly number[], at: number, cause: number) => readonly Known[];
}

/** Where less than this is lacking (mm) it is reckoned anew, for it may be what rounding left. */
const DOUBTFUL = 1e-5;

/** Is what ways give surely less than is needed? */
export const isShort = (gives: number, need: number): boolean => need - gives > DOUBTFUL;

/** What is still needed where some ways are chosen; nought where they may do. */
export function restOf({ gives, need }: Known, ways: readonly number[]): number {
  let has = 0;
  for (const way of ways) has += gives[way] ?? 0;
  return isShort(has, need) ? need - has : 0;
}

/** Nothing found yet about some ways. */
export function lacksOf(ways: readonly WayHere[]): Lacks {
  const none: Known[] = [];
  /** Of one explanation, and of one with others, by what is seen and by explanation. */
  const by: Known[][][] = [];
  const joint: Known[][][] = [];
  const all = new Map<string, Known>();
  const holds = ({ uses }: Known, chosen: readonly number[], at = -1, cause = -1): boolean =>
    uses.every(([one, its]) => chosen[one] === its || (one === at && its === cause));
  return {
    keep: ({ factors, need, uses }) => {
      const gives = new Array<number>(ways.length).fill(0);
      ways.forEach(({ spans }, i) => {
        let sum = 0;
        for (const [unknown, least, most] of spans) {
          const factor = factors.get(unknown) ?? 0;
          if (factor !== 0) sum += Math.max(factor * least, factor * most);
        }
        gives[i] = sum;
      });
      const key = `${uses.join()}|${Math.round(need * 1e6)}|${gives.map((one) => Math.round(one * 1e6)).join()}`;
      const found = all.get(key);
      if (found) return found;
      const known: Known = { gives, need, uses };
      all.set(key, known);
      if (uses.length === 0) none.push(known);
      const list = uses.length === 1 ? by : joint;
      for (const [at, cause] of uses) {
        const its = list[at] ?? [];
        its[cause] = [...(its[cause] ?? []), known];
        list[at] = its;
      }
      return known;
    },
    of: (chosen) => {
      const found = [...none];
      for (const [at, cause] of chosen.entries()) {
        if (cause < 0) continue;
        found.push(...(by[at]?.[cause] ?? []));
        for (const one of joint[at]?.[cause] ?? [])
          if (one.uses[0]?.[0] === at && holds(one, chosen)) found.push(one);
      }
      return found;
    },
    with: (chosen, at, cause) => [
      ...(by[at]?.[cause] ?? []),
      ...(joint[at]?.[cause] ?? []).filter((one) => holds(one, chosen, at, cause)),
    ],
  };
}
