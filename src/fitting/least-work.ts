import { type Model, modelOf } from './least-work-model.ts';
import { type Found, isLeftOut, leastFirst } from './least-work-search.ts';
import type { Puzzle, Solution, Solved } from './puzzle.ts';

/**
 * Solves a fitting: the ways and amounts that meet all that is seen and cost fewest minutes, then change fewest pieces,
 * then change them least. Exact: nothing that meets it all costs less.
 *
 * `other` is the cheapest that changes other pieces, or the same in other ways, and nothing that it could do without;
 * or, where there is none, the cheapest that takes what is seen to come from other causes.
 * What cannot be met is left out: as little as possible, and of what is then left the least work is found.
 */
export function leastWork(puzzle: Puzzle): Solved {
  if (puzzle.always.some(({ least, most }) => least > most))
    return { unmet: puzzle.seen.map(({ id }) => ({ seen: id, why: 'alone' })) };
  const unmet: Solved['unmet'][number][] = [];
  let seen = puzzle.seen.filter(({ id, explanations }) => {
    // Without an explanation that could hold, the search need not ask.
    const possible = explanations.some(({ demands }) => demands.every(({ least, most }) => least <= most));
    if (!possible) unmet.push({ seen: id, why: 'alone' });
    return possible;
  });
  let model = modelOf({ ...puzzle, seen });
  let two = twoOf(model);
  if (!two) {
    const alone = seen.filter((one) => !canBeMet({ ...puzzle, seen: [one] }));
    unmet.push(...alone.map(({ id }) => ({ seen: id, why: 'alone' as const })));
    seen = seen.filter((one) => !alone.includes(one));
    model = modelOf({ ...puzzle, seen });
    const [most] = leastFirst(model, true);
    if (!most)
      return { unmet: inOrder(puzzle, unmet.concat(seen.map(({ id }) => ({ seen: id, why: 'alone' })))) };
    const out = seen.filter((_, at) => isLeftOut(most.chosen[at]));
    unmet.push(...out.map(({ id }) => ({ seen: id, why: 'together' as const })));
    seen = seen.filter((one) => !out.includes(one));
    model = modelOf({ ...puzzle, seen });
    two = twoOf(model);
  }
  const none = !two || (seen.length === 0 && puzzle.seen.length > 0);
  return {
    ...(none || !two ? {} : { best: written(model, two.best) }),
    ...(none || !two?.other ? {} : { other: written(model, two.other) }),
    unmet: inOrder(puzzle, unmet),
  };
}

/** Only the cheapest that meets all that is seen; none where not all can be met. */
export function cheapest(puzzle: Puzzle): Solution | undefined {
  if (puzzle.always.some(({ least, most }) => least > most)) return undefined;
  const model = modelOf(puzzle);
  const [best] = leastFirst(model, false);
  return best && written(model, best);
}

/** The cheapest and the cheapest of another kind. */
function twoOf(model: Model): { readonly best: Found; readonly other?: Found } | undefined {
  let best: Found | undefined;
  const kinds = (ways: readonly number[]) => new Set(ways.map((way) => model.ways[way]?.kind));
  let bestKinds = kinds([]);
  const passOver = (ways: readonly number[], added: number): boolean =>
    best !== undefined && added >= best.added && within(bestKinds, kinds(ways));
  let parts = 0;
  let programs = 0;
  const stop = (): boolean => {
    if (best === undefined) programs = model.work.programs;
    else parts += 1;
    return parts > MOST_PARTS || model.work.programs - programs > MOST_PROGRAMS;
  };
  for (const found of leastFirst(model, false, passOver, 'any', stop)) {
    if (best) return { best, other: found };
    best = found;
    bestKinds = kinds(found.ways);
  }
  if (!best) return undefined;
  let looked = 0;
  for (const found of leastFirst(model, false, undefined, 'all', stop)) {
    looked += 1;
    if (looked > MOST_LOOKED_AT) break;
    const now = kinds(found.ways);
    if (within(now, bestKinds) && within(bestKinds, now)) continue;
    const needless = found.ways.some(
      (way) =>
        model.tried(
          found.ways.filter((one) => one !== way),
          found.chosen,
        ).meets,
    );
    if (!needless) return { best, other: found };
  }
  return { best };
}

const within = (some: ReadonlySet<unknown>, all: ReadonlySet<unknown>): boolean =>
  [...some].every((one) => all.has(one));

/** Choices of causes that are looked at for one that does something else, where nothing else is needed. */
const MOST_LOOKED_AT = 200;
/** Parts that are looked at for a runner-up, past which the best stands alone: nobody waits for a second proposal. */
const MOST_PARTS = 1200;

/** Linear programs that are solved for a runner-up. */
const MOST_PROGRAMS = 700;

function canBeMet(puzzle: Puzzle): boolean {
  const [found] = leastFirst(modelOf({ ...puzzle, minutes: () => 0 }), false);
  return found !== undefined;
}

const inOrder = (puzzle: Puzzle, unmet: readonly Solved['unmet'][number][]): Solved['unmet'] =>
  puzzle.seen.flatMap(({ id }) => unmet.filter(({ seen }) => seen === id));

function written(model: Model, found: Found): Solution {
  return {
    ways: found.ways.map((way) => model.ways[way]?.id ?? ''),
    causes: new Map(
      model.seen.map(({ id, explanations }, at) => [id, explanations[found.chosen[at] ?? 0]?.id ?? '']),
    ),
    changes: new Map(
      [...found.changes].sort(([a], [b]) => a - b).map(([at, by]) => [model.unknowns[at] ?? '', by]),
    ),
    minutes: found.minutes,
  };
}
