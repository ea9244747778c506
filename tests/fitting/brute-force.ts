import { solve } from 'yalps';
import type { Demand, Puzzle, Way } from '../../src/fitting/puzzle.ts';

/** One choice that meets what it does not leave out. */
export interface Choice {
  readonly ways: readonly string[];
  /** Its explanations, in words. */
  readonly causes: string;
  /** Minutes of the ways and what the explanations add. */
  readonly minutes: number;
  readonly added: number;
  readonly left: readonly string[];
  /** Least sum of the sizes of all changes. */
  readonly total: number;
}

/**
 * The least sum of changes within the bounds of some ways that meets some demands, by the general library; none where
 * there is none. Each unknown is what it is above nought less what it is below.
 */
export function leastByLibrary(ways: readonly Way[], demands: readonly Demand[]): number | undefined {
  const constraints = new Map<string, { min?: number; max?: number }>();
  const variables = new Map<string, Map<string, number>>();
  for (const way of ways)
    for (const [name, { least, most }] of way.bounds) {
      constraints.set(`span ${name}`, limits(least, most));
      for (const sign of [1, -1])
        variables.set(
          `${name} ${sign}`,
          new Map([
            ['size', 1],
            [`span ${name}`, sign],
          ]),
        );
    }
  for (const [i, { terms, least, most }] of demands.entries()) {
    if (least > most) return undefined;
    const factors = new Map<string, number>();
    for (const { unknown, factor } of terms) factors.set(unknown, (factors.get(unknown) ?? 0) + factor);
    let any = false;
    for (const [unknown, factor] of factors)
      for (const sign of [1, -1]) {
        const variable = variables.get(`${unknown} ${sign}`);
        variable?.set(`demand ${i}`, factor * sign);
        any ||= variable !== undefined;
      }
    if (any) constraints.set(`demand ${i}`, limits(least, most));
    else if (least > 1e-7 || most < -1e-7) return undefined;
  }
  if (variables.size === 0) return 0;
  const solved = solve({ direction: 'minimize', objective: 'size', constraints, variables });
  if (solved.status === 'infeasible') return undefined;
  if (solved.status !== 'optimal') throw new Error(`the library came to ${solved.status}`);
  return solved.result;
}

const limits = (least: number, most: number): { min?: number; max?: number } => ({
  ...(least === Number.NEGATIVE_INFINITY ? {} : { min: least }),
  ...(most === Number.POSITIVE_INFINITY ? {} : { max: most }),
});

/** Every way of choosing one of each. */
export function* everyChoice<T>(lists: readonly (readonly T[])[], from = 0): Generator<readonly T[]> {
  const list = lists[from];
  if (!list) {
    yield [];
    return;
  }
  for (const rest of everyChoice(lists, from + 1)) for (const one of list) yield [one, ...rest];
}

/** All choices of ways and explanations that hold, each with its least changes; things may be left out. */
export function* allChoices(puzzle: Puzzle): Generator<Choice> {
  for (const chosen of everyChoice(puzzle.pieces.map(({ ways }) => [undefined, ...ways]))) {
    const ways = chosen.filter((way): way is Way => way !== undefined);
    const ids = ways.map(({ id }) => id);
    const minutes = puzzle.minutes(ids);
    for (const causes of everyChoice(puzzle.seen.map(({ explanations }) => [undefined, ...explanations]))) {
      const demands = [...puzzle.always, ...causes.flatMap((cause) => cause?.demands ?? [])];
      const total = leastByLibrary(ways, demands);
      if (total === undefined) continue;
      const added = causes.reduce((all, cause) => all + (cause?.minutes ?? 0), 0);
      const left = puzzle.seen.flatMap(({ id }, i) => (causes[i] ? [] : [id]));
      yield {
        ways: ids,
        causes: causes.map((one) => one?.id).join(),
        minutes: minutes + added,
        added,
        left,
        total,
      };
    }
  }
}

/** Fewest left out, fewest minutes, fewest pieces, smallest changes. */
export function compareChoices(a: Choice, b: Choice): number {
  for (const by of [
    a.left.length - b.left.length,
    a.minutes - b.minutes,
    a.ways.length - b.ways.length,
    a.total - b.total,
  ])
    if (Math.abs(by) > 1e-6) return by;
  return 0;
}

/** The first of all choices, and the first of those that change other ways and nothing needlessly. */
export function byBruteForce(puzzle: Puzzle): { best?: Choice; other?: Choice } {
  const all = [...allChoices(puzzle)];
  const best = all.reduce<Choice | undefined>((a, b) => (a && compareChoices(a, b) <= 0 ? a : b), undefined);
  if (!best) return {};
  const fitting = all.filter(({ left }) => left.length === best.left.length);
  // Needless: another choice that leaves the same out does with some of the same ways and adds no more.
  const others = fitting.filter(
    (one) =>
      one.ways.join() !== best.ways.join() &&
      one.left.join() === best.left.join() &&
      !fitting.some(
        (less) =>
          less.left.join() === best.left.join() &&
          less.added <= one.added &&
          less.ways.length < one.ways.length &&
          less.ways.every((way) => one.ways.includes(way)),
      ),
  );
  // Where there is none: with other causes, and nothing that these causes could do without.
  const besides = fitting.filter(
    (one) =>
      one.ways.join() !== best.ways.join() &&
      one.left.join() === best.left.join() &&
      !fitting.some(
        (less) =>
          less.causes === one.causes &&
          less.ways.length === one.ways.length - 1 &&
          less.ways.every((way) => one.ways.includes(way)),
      ),
  );
  const other = (others.length > 0 ? others : besides).reduce<Choice | undefined>(
    (a, b) => (a && compareChoices(a, b) <= 0 ? a : b),
    undefined,
  );
  return { best, ...(other ? { other } : {}) };
}
