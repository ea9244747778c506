import { isShort, type Known, restOf } from './least-work-lacks.ts';
import type { Model } from './least-work-model.ts';

/** What is surely to come besides some ways. */
export interface Bound {
  /** Minutes besides those of the ways and of the cheapest explanations. */
  readonly minutes: number;
  /** What is lacking by the explanations chosen, and takes most; none where nothing is known to be. */
  readonly lacking: Known | undefined;
  /** For each thing seen that is not decided yet, minutes that it takes by itself and the explanations it may still have. */
  readonly open: readonly Undecided[];
}

/** Something seen whose explanation is not decided yet. */
export interface Undecided {
  readonly at: number;
  readonly takes: number;
  readonly causes: readonly number[];
}

/** One explanation that something seen may still have, with the lack that takes most. */
interface Choice {
  readonly added: number;
  readonly lack: Known | undefined;
  readonly rest: number;
  /** Minutes that it takes by itself. */
  readonly takes: number;
}

/** A choice of which one must be met. */
interface Clause {
  readonly choices: readonly Choice[];
  readonly takes: number;
}

/**
 * What some ways with some explanations need besides at least, by all that was found lacking so far; none where what is
 * left cannot give it.
 *
 * Each lack must be made up by ways not yet decided. The minutes that these surely add are shared out among the lacks, one
 * after the other, a way that gives only a part of what is lacking for that part; so no minute is reckoned twice, and what
 * is shared out is never more than what any choice of ways costs (a feasible solution of the dual linear program).
 */
export function boundOf(
  model: Model,
  ways: readonly number[],
  without: ReadonlySet<number>,
  chosen: readonly number[],
  mayLeaveOut: boolean,
): Bound | undefined {
  const decided = new Set(ways.map((way) => model.ways[way]?.piece));
  const left = new Float64Array(model.ways.length);
  const open: number[] = [];
  for (const [i, { piece, surely }] of model.ways.entries()) {
    if (decided.has(piece) || without.has(i)) continue;
    open.push(i);
    left[i] = Math.max(0, surely);
  }

  /** Minutes that a lack takes by itself; infinite where it cannot be made up. */
  const takes = (lack: Known, rest: number): number => {
    let least = Number.POSITIVE_INFINITY;
    let [has, piece, best] = [0, -1, 0];
    for (const i of open) {
      const gives = lack.gives[i] ?? 0;
      if (gives <= 0) continue;
      const its = model.ways[i]?.piece ?? -1;
      if (its !== piece) {
        has += best;
        [piece, best] = [its, 0];
      }
      best = Math.max(best, gives);
      least = Math.min(least, (left[i] ?? 0) / Math.min(1, gives / rest));
    }
    return isShort(has + best, rest) ? Number.POSITIVE_INFINITY : least;
  };
  const hardest = (lacks: readonly Known[], added: number): Choice => {
    let found: Choice = { added, lack: undefined, rest: 0, takes: 0 };
    for (const lack of lacks) {
      const rest = restOf(lack, ways);
      if (rest === 0) continue;
      const its = takes(lack, rest);
      if (!found.lack || its > found.takes) found = { added, lack, rest, takes: its };
    }
    return found;
  };

  const clauses: Clause[] = [];
  let lacking: Choice | undefined;
  for (const lack of model.lacks.of(chosen)) {
    const rest = restOf(lack, ways);
    if (rest === 0) continue;
    const choice = { added: 0, lack, rest, takes: takes(lack, rest) };
    if (choice.takes === Number.POSITIVE_INFINITY) return undefined;
    if (!lacking || choice.takes > lacking.takes) lacking = choice;
    clauses.push({ choices: [choice], takes: choice.takes });
  }
  const undecided: Undecided[] = [];
  for (const [at, { explanations, cheapest }] of model.seen.entries()) {
    if ((chosen[at] ?? 0) !== -1) continue;
    const choices: Choice[] = [];
    const causes: number[] = [];
    let least = Number.POSITIVE_INFINITY;
    for (const [cause, { minutes }] of explanations.entries()) {
      const choice = hardest(model.lacks.with(chosen, at, cause), minutes - cheapest);
      if (choice.takes === Number.POSITIVE_INFINITY) continue;
      choices.push(choice);
      causes.push(cause);
      least = Math.min(least, choice.added + choice.takes);
    }
    undecided.push({ at, takes: least, causes });
    if (mayLeaveOut) continue;
    if (choices.length === 0) return undefined;
    if (least > 0) clauses.push({ choices, takes: least });
  }

  clauses.sort((a, b) => b.takes - a.takes);
  let minutes = 0;
  const use = new Float64Array(model.ways.length);
  for (const { choices } of clauses) {
    let most = Number.POSITIVE_INFINITY;
    for (const { added, lack, rest } of choices)
      most = Math.min(most, added + (lack ? takes(lack, rest) : 0));
    if (!(most > 0)) continue;
    minutes += most;
    use.fill(0);
    for (const { added, lack, rest } of choices)
      if (lack && most > added)
        for (const i of open) {
          const part = Math.min(1, (lack.gives[i] ?? 0) / rest);
          if (part > 0) use[i] = Math.max(use[i] ?? 0, part * (most - added));
        }
    for (const i of open) left[i] = Math.max(0, (left[i] ?? 0) - (use[i] ?? 0));
  }
  return { minutes, lacking: lacking?.lack, open: undecided };
}
