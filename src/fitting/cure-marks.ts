import { leastChange, type Span, type Sum } from './linear.ts';
import type { Demand, Puzzle, Solution } from './puzzle.ts';

/** A sum of changes with the span it must lie in, or an unknown with its own. */
type Held = Demand;

/** So little is nothing, in mm. */
const NOTHING = 1e-6;

/** A change that misses the middle of what was measured counts this many times its size; one that pulls at a seam this many. */
const FROM_THE_MIDDLE = 100;
const AT_A_SEAM = 2;
/** The largest of the changes that share what was asked for counts this part of its size besides: they are shared evenly. */
const LARGEST = 0.01;

/**
 * The same solution with the amounts that were measured rather than the least that would pass: as near as can be to the
 * middle of every span asked for, then with seams as they are, then with the least change.
 */
export function inTheMiddle(puzzle: Puzzle, solution: Solution): Solution {
  const bounds = puzzle.pieces.flatMap(({ ways }) =>
    ways.filter(({ id }) => solution.ways.includes(id)).flatMap((way) => [...way.bounds]),
  );
  const names = new Map(bounds.map(([name], i) => [name, i]));
  const spans: Span[] = bounds.map(([, span]) => span);
  const sums: Sum[] = [];
  const take = ({ terms, least, most }: Demand, weight: number, aim: number | undefined) => {
    const here = terms.flatMap(({ unknown, factor }) => {
      const at = names.get(unknown);
      return at === undefined ? [] : [[at, factor] as const];
    });
    if (here.length === 0) return;
    if (aim === undefined) sums.push({ terms: here, least, most });
    else {
      // By how much it is off the aim is a value of its own, which costs its weight.
      sums.push({ terms: [...here, [spans.length, -1 / weight]], least: aim, most: aim });
      spans.push({ least: (least - aim) * weight, most: (most - aim) * weight });
    }
  };
  for (const demand of askedBy(puzzle, solution)) {
    const middle = (demand.least + demand.most) / 2;
    take(demand, FROM_THE_MIDDLE, Number.isFinite(middle) ? middle : undefined);
  }
  for (const { terms } of askedBy(puzzle, solution)) {
    const sharing = terms.flatMap(({ unknown }) => names.get(unknown) ?? []);
    if (sharing.length < 2) continue;
    // The largest of them is a value of its own.
    for (const at of sharing)
      for (const sign of [1, -1])
        sums.push({
          terms: [
            [at, sign],
            [spans.length, -1 / LARGEST],
          ],
          least: Number.NEGATIVE_INFINITY,
          most: 0,
        });
    spans.push({ least: 0, most: Number.POSITIVE_INFINITY });
  }
  for (const demand of puzzle.always)
    take(demand, AT_A_SEAM, demand.least <= 0 && demand.most >= 0 ? 0 : undefined);
  const found = leastChange(spans, sums);
  if (!found.meets) return solution;
  const changes = new Map([...names].map(([name, at]) => [name, found.values[at] ?? 0] as const));
  return { ...solution, changes: new Map([...changes].filter(([, by]) => by !== 0)) };
}

const askedBy = (puzzle: Puzzle, solution: Solution): readonly Demand[] =>
  puzzle.seen.flatMap(
    ({ id, explanations }) => explanations.find((one) => one.id === solution.causes.get(id))?.demands ?? [],
  );

/** By how much all that must hold is missed, mm. */
function missed(held: readonly Held[], changes: ReadonlyMap<string, number>): number {
  let all = 0;
  for (const { terms, least, most } of held) {
    let comes = 0;
    for (const { unknown, factor } of terms) comes += factor * (changes.get(unknown) ?? 0);
    all += Math.max(0, least - comes - NOTHING, comes - most - NOTHING);
  }
  return all;
}

/** Everything that must hold for a solution: what was asked, what always holds, and the bounds of its ways. */
export function heldBy(puzzle: Puzzle, solution: Solution): readonly Demand[] {
  const bounds = puzzle.pieces.flatMap(({ ways }) =>
    ways
      .filter(({ id }) => solution.ways.includes(id))
      .flatMap((way) =>
        [...way.bounds].map(([unknown, span]): Demand => ({ terms: [{ unknown, factor: 1 }], ...span })),
      ),
  );
  return [...askedBy(puzzle, solution), ...puzzle.always, ...bounds];
}

/**
 * The changes of a solution rounded to the marks of a rule (`mark` mm apart), still meeting all that must hold: each is
 * put on the nearest mark, and where that breaks something, moved on by a mark where it helps most. Where that fails too,
 * half marks are tried, and then the changes stay as they are.
 */
export function onMarks(puzzle: Puzzle, solution: Solution, mark: number): ReadonlyMap<string, number> {
  const held = heldBy(puzzle, solution);
  const names = [...solution.changes.keys()];
  for (const step of [mark, mark / 2]) {
    const marks = new Map([...solution.changes].map(([name, by]) => [name, Math.round(by / step)]));
    const lengths = () => new Map([...marks].map(([name, count]) => [name, count * step]));
    let off = missed(held, lengths());
    for (let turn = 0; off > 0 && turn < 200; turn += 1) {
      let best: { name: string; count: number } | undefined;
      for (const name of names) {
        const was = marks.get(name) ?? 0;
        for (const count of [was - 1, was + 1]) {
          marks.set(name, count);
          const now = missed(held, lengths());
          if (now < off - NOTHING) {
            off = now;
            best = { name, count };
          }
        }
        marks.set(name, was);
      }
      if (!best) break;
      marks.set(best.name, best.count);
    }
    if (off === 0) return new Map([...lengths()].filter(([, by]) => by !== 0));
  }
  return solution.changes;
}
