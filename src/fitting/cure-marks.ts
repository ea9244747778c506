import type { Demand, Puzzle, Solution } from './puzzle.ts';

/** A sum of changes with the span it must lie in, or an unknown with its own. */
type Held = Demand;

/** So little is nothing, in mm. */
const NOTHING = 1e-6;

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
  const asked = puzzle.seen.flatMap(
    ({ id, explanations }) => explanations.find((one) => one.id === solution.causes.get(id))?.demands ?? [],
  );
  const bounds = puzzle.pieces.flatMap(({ ways }) =>
    ways
      .filter(({ id }) => solution.ways.includes(id))
      .flatMap((way) =>
        [...way.bounds].map(([unknown, span]): Demand => ({ terms: [{ unknown, factor: 1 }], ...span })),
      ),
  );
  return [...asked, ...puzzle.always, ...bounds];
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
