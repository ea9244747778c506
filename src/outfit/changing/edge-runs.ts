import { edgeName, FOLD, type Looked, spell } from '../chains.ts';
import type { Chain, EdgeRef, Join } from '../outfit.ts';

/** Where along a chain edges meet `ref` at a corner, with the side of the body on which they do. */
function* meetings(looked: Looked, chain: Chain, ref: EdgeRef): Iterable<readonly [string, boolean]> {
  const beside = looked.beside.get(edgeName(ref));
  for (const [i, one] of chain.entries()) {
    if (one.piece !== ref.piece || !beside?.includes(one.edge)) continue;
    if (i === 0) yield ['first', one.other];
    if (i === chain.length - 1) yield ['last', one.other];
    if (i > 0 && i < chain.length - 1) yield ['between', one.other];
  }
}

/** Does a join lay one edge's end against the other's, each on the side that it is on? A join of a pair is sewn on both. */
const ties = (looked: Looked, join: Join, a: EdgeRef, b: EdgeRef): boolean => {
  const single = [a, b].some((ref) => looked.pieces.get(ref.piece)?.cut === 'one');
  for (const [here, there] of [
    [join.this, join.to],
    [join.to, join.this],
  ] as const) {
    for (const [place, side] of meetings(looked, here, a)) {
      for (const [other, otherSide] of meetings(looked, there, b)) {
        if (place !== other) continue;
        const asSaid = side === a.other && otherSide === b.other;
        const mirrored = !single && side !== a.other && otherSide !== b.other;
        if (asSaid || mirrored) return true;
      }
    }
  }
  return false;
};

/** Do two edges lie end to end, on the sides they are on? */
function endToEnd(looked: Looked, a: EdgeRef, b: EdgeRef): boolean {
  if (a.piece === b.piece) {
    const beside: readonly string[] = looked.beside.get(edgeName(a)) ?? [];
    if (a.other === b.other) return beside.includes(b.edge);
    const folded = looked.pieces.get(a.piece)?.cut === 'fold' && beside.includes(FOLD);
    if (a.edge === b.edge && folded) return true;
  }
  return looked.garment.joins.some((join) => ties(looked, join, a, b));
}

/**
 * Edges put together to runs that lie end to end, following the seams that are sewn: `front.neck`, `back.neck`. With
 * `both`, a run also goes on over the other side of the body. Each run begins at an end of its own, on this side.
 */
export function edgeRuns(looked: Looked, edges: readonly EdgeRef[], both: boolean): readonly Chain[] {
  const all = edges.flatMap((ref): readonly EdgeRef[] =>
    both && looked.pieces.get(ref.piece)?.cut !== 'one' ? [ref, { ...ref, other: true }] : [ref],
  );
  const beside = new Map(
    all.map((ref) => {
      const near = all.filter((one) => one !== ref && endToEnd(looked, ref, one));
      // On the same side first, so that a closed run goes round and not to and fro.
      return [ref, near.toSorted((a, b) => Number(a.other !== ref.other) - Number(b.other !== ref.other))];
    }),
  );
  const ends = all.filter((ref) => (beside.get(ref)?.length ?? 0) < 2);
  const runs: Chain[] = [];
  const taken = new Set<EdgeRef>();
  for (const start of [...ends, ...all].toSorted((a, b) => Number(a.other) - Number(b.other))) {
    if (taken.has(start)) continue;
    const run: EdgeRef[] = [];
    for (let at: EdgeRef | undefined = start; at; at = beside.get(at)?.find((one) => !taken.has(one))) {
      taken.add(at);
      run.push(at);
    }
    // What is on the other side alone is the mirror image of a run on this side.
    if (run.some((ref) => !ref.other)) runs.push(run);
  }
  return runs;
}

/** Does a run come back to where it began? One of two edges does where they meet at both their ends. */
export function isClosed(looked: Looked, run: Chain): boolean {
  const [first, last] = [run[0], run.at(-1)];
  if (!first || !last || run.length < 2) return false;
  if (run.length > 2) return endToEnd(looked, last, first);
  const folded = first.piece === last.piece ? 1 : 0;
  return looked.garment.joins.filter((join) => ties(looked, join, first, last)).length + folded > 1;
}

/** A run as a description spells it. */
export const spellRun = (run: Chain): readonly string[] => run.map(spell);
