import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastWork } from '../../src/fitting/least-work.ts';
import { leastChange } from '../../src/fitting/linear.ts';
import type { Demand, Puzzle, Solution } from '../../src/fitting/puzzle.ts';
import { byBruteForce, leastByLibrary } from '../fitting/brute-force.ts';
import { puzzles } from '../fitting/puzzles.ts';

// Reference library: YALPS 0.6.4 (MIT), a general-purpose linear programming library, which says of every set of ways and
// explanations, one after the other, whether it does and with how small changes.

/** What is wrong with a solution, by the puzzle's own words. */
function faults(puzzle: Puzzle, solution: Solution): string[] {
  const ways = puzzle.pieces.flatMap(({ ways: own }) => own.filter(({ id }) => solution.ways.includes(id)));
  const of = (name: string) => solution.changes.get(name) ?? 0;
  const broken = (demand: Demand) => {
    const comes = demand.terms.reduce((all, { unknown, factor }) => all + factor * of(unknown), 0);
    return comes < demand.least - 1e-6 || comes > demand.most + 1e-6;
  };
  const bounds = new Map(ways.flatMap((way) => [...way.bounds]));
  const chosen = puzzle.seen.map(({ id, explanations }) =>
    explanations.find((one) => one.id === solution.causes.get(id)),
  );
  const demands = [...puzzle.always, ...chosen.flatMap((one) => one?.demands ?? [])];
  const added = chosen.reduce((all, one) => all + (one?.minutes ?? 0), 0);
  return [
    ...[...solution.changes].flatMap(([name, by]) => {
      const span = bounds.get(name);
      return span && by >= span.least - 1e-6 && by <= span.most + 1e-6 ? [] : [`${name} by ${by}`];
    }),
    ...demands.flatMap((demand) => (broken(demand) ? [`not met: ${JSON.stringify(demand)}`] : [])),
    ...(Math.abs(puzzle.minutes(solution.ways) + added - solution.minutes) < 1e-6 ? [] : ['minutes']),
  ];
}

const size = (solution: Solution | undefined) =>
  [...(solution?.changes.values() ?? [])].reduce((all, by) => all + Math.abs(by), 0);

function compare(puzzle: Puzzle): 'met' | 'left out' | 'nothing' {
  const solved = leastWork(puzzle);
  const { best, other } = byBruteForce(puzzle);
  const nothing = !best || (best.left.length === puzzle.seen.length && puzzle.seen.length > 0);
  expect(solved.best === undefined).toBe(nothing);
  if (!best || !solved.best) {
    expect(solved.unmet.length).toBe(puzzle.seen.length);
    return 'nothing';
  }
  expect(solved.unmet.length).toBe(best.left.length);
  expect(faults(puzzle, solved.best)).toEqual([]);
  expect(solved.best.minutes).toBeCloseTo(best.minutes, 6);
  expect(solved.best.ways.length).toBe(best.ways.length);
  expect(size(solved.best)).toBeCloseTo(best.total, 6);
  if (best.left.length > 0) return 'left out';
  expect(solved.other?.minutes ?? -1).toBeCloseTo(other?.minutes ?? -1, 6);
  expect(solved.other?.ways.length).toBe(other?.ways.length);
  expect(size(solved.other)).toBeCloseTo(other?.total ?? 0, 6);
  if (solved.other) expect(faults(puzzle, solved.other)).toEqual([]);
  return 'met';
}

// Compared with the reference library YALPS 0.6.4.
describe('least work, against every choice tried with the reference library', () => {
  it('costs the same, with the same pieces and the same changes', () => {
    const kinds = new Map<string, number>();
    fc.assert(
      fc.property(
        puzzles({ pieces: 4, ways: 2, unknowns: 2, seen: 3, explanations: 2, always: 2 }),
        (puzzle) => {
          const kind = compare(puzzle);
          kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
        },
      ),
      { numRuns: 400, seed: 25 },
    );
    // A comparison that never meets one of them would say nothing of it.
    for (const kind of ['met', 'left out', 'nothing']) expect(kinds.get(kind), kind).toBeGreaterThan(5);
  });

  it('finds the same least changes within spans and sums', () => {
    const counts = { met: 0, not: 0 };
    fc.assert(
      fc.property(
        puzzles({ pieces: 3, ways: 1, unknowns: 3, seen: 4, explanations: 1, always: 3 }),
        (puzzle) => {
          const ways = puzzle.pieces.flatMap((piece) => piece.ways);
          const spans = new Map(ways.flatMap((way) => [...way.bounds]));
          const names = [...spans.keys()];
          const demands = [
            ...puzzle.always,
            ...puzzle.seen.flatMap((one) => one.explanations[0]?.demands ?? []),
          ]
            .map((one) => ({ ...one, terms: one.terms.filter(({ unknown }) => spans.has(unknown)) }))
            .filter(({ terms }) => terms.length > 0);
          const ours = leastChange(
            [...spans.values()],
            demands.map((one) => ({
              terms: one.terms.map(({ unknown, factor }) => [names.indexOf(unknown), factor] as const),
              least: one.least,
              most: one.most,
            })),
          );
          const theirs = leastByLibrary(ways, demands);
          expect(ours.meets).toBe(theirs !== undefined);
          counts[ours.meets ? 'met' : 'not'] += 1;
          if (ours.meets) expect(ours.total).toBeCloseTo(theirs ?? Number.NaN, 6);
        },
      ),
      { numRuns: 1500, seed: 5 },
    );
    expect(Math.min(counts.met, counts.not)).toBeGreaterThan(100);
  });
});
