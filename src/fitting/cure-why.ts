import { mm, toMm } from '../length/length.ts';
import type { Marking } from '../length/writing.ts';
import type { Garment } from '../outfit/outfit.ts';
import { listed, sayLevel, write } from './cure-words.ts';
import { entryCalled } from './entries/all.ts';
import { cheapest } from './least-work.ts';
import type { Observation } from './observation.ts';
import type { Demand, Puzzle, Solved } from './puzzle.ts';
import type { PuzzleOf } from './puzzle-of.ts';

/** Why something seen cannot be met, in a sentence that says what would be needed or what stands against it. */
export function whyNot(
  built: PuzzleOf,
  garment: Garment,
  observations: readonly Observation[],
  unmet: Solved['unmet'][number],
  marking: Marking,
): string {
  const { puzzle } = built;
  const [likeliest] = puzzle.seen.find(({ id }) => id === unmet.seen)?.explanations ?? [];
  if (unmet.why === 'together') {
    const others = puzzle.seen.filter(({ id }) => id !== unmet.seen && !goTogether(puzzle, [id, unmet.seen]));
    const names = others.flatMap(({ id }) => {
      const entry = entryCalled(observations.find((one) => one.id === id)?.entry ?? '');
      return entry ? [`“${entry.seen}”`] : [];
    });
    const against = names.length > 0 ? listed([...new Set(names)]) : 'the rest of what was seen';
    return `It asks for the opposite of ${against}; put that right first, and look at this again at the next try-on.`;
  }
  for (const demand of likeliest?.demands ?? []) {
    const short = tooFar(built, garment, demand, marking);
    if (short !== undefined) return short;
  }
  return 'The pieces would no longer go together at their seams if they changed by so much; a new pattern is needed.';
}

const goTogether = (puzzle: Puzzle, ids: readonly string[]): boolean =>
  cheapest({ ...puzzle, seen: puzzle.seen.filter(({ id }) => ids.includes(id)), minutes: () => 0 }) !==
  undefined;

/** Says of a demand that its pieces cannot give as much; nothing where they can. */
function tooFar(built: PuzzleOf, garment: Garment, demand: Demand, marking: Marking): string | undefined {
  const more = demand.least > 0;
  const need = more ? demand.least : -demand.most;
  if (!(need > 0)) return undefined;
  const named = new Map(demand.terms.map(({ unknown, factor }) => [unknown, more ? factor : -factor]));
  let has = 0;
  const pieces: string[] = [];
  let at = '';
  let moved = false;
  for (const { piece, ways } of built.puzzle.pieces) {
    let best = 0;
    for (const { id, bounds } of ways) {
      let gives = 0;
      for (const [unknown, { least, most }] of bounds) {
        const factor = named.get(unknown);
        if (factor === undefined) continue;
        gives += Math.max(factor * least, factor * most);
        const known = built.unknowns.get(unknown);
        if (known) at = `${known.kind === 'width' ? 'at' : 'below'} ${sayLevel(known.level)}`;
      }
      if (gives > best) moved = built.ways.get(id)?.alteration.how === 'edges';
      best = Math.max(best, gives);
    }
    if (best > 0) pieces.push(garment.pieces.find(({ id }) => id === piece)?.name ?? piece);
    has += best;
  }
  if (has >= need - toMm(mm(0.001))) return undefined;
  if (pieces.length === 0) return 'No piece of this garment can change there.';
  const [most, wanted] = [write(mm(has), marking), write(mm(need), marking)];
  const who = `the ${listed(pieces.map((name) => name.toLowerCase()))}`;
  const gives = moved
    ? `The seams of ${who} have ${most} to give ${at}`
    : `${who.charAt(0).toUpperCase()}${who.slice(1)} can change by ${most} ${at} and keep ${pieces.length > 1 ? 'their' : 'its'} shape`;
  return `${gives}, and ${wanted} would be needed.`;
}
