import { crossings, type Looked, timesOf } from '../outfit/chains.ts';
import type { EdgeRef, Join } from '../outfit/outfit.ts';
import { bundles } from './bundles.ts';

/**
 * Which joins close a part into a tube. Pieces are nodes (a pair is two), joins are edges; a join between pieces that
 * hang together already closes a ring of cloth. Joins that others run over are taken first, those that the maker
 * wants last are taken last, else the order of the description decides; so exactly one join of every ring closes it.
 * Joins that lay layers on each other (turned, ends, covered, laid on) make no tube. Near-linear (union-find).
 */
export function closingJoins(looked: Looked): ReadonlySet<string> {
  const { root, tie } = bundles();
  const node = (ref: EdgeRef, side: 'left' | 'right'): string => {
    const pair = looked.pieces.get(ref.piece)?.cut === 'pair';
    return pair ? `${ref.piece} ${ref.other === (side === 'left') ? 'right' : 'left'}` : ref.piece;
  };

  const closing = new Set<string>();
  for (const join of inOrder(looked)) {
    const layered = join.seam !== 'plain' && join.seam !== 'stretch' && join.seam !== 'bound';
    const sides =
      timesOf(looked, join.this, join.to) === 2 ? (['left', 'right'] as const) : (['left'] as const);
    for (const side of sides) {
      const these = join.this.map((ref) => node(ref, side));
      const those = join.to.map((ref) => node(ref, side));
      if (!layered && these.some((a) => those.some((b) => root(a) === root(b)))) closing.add(join.id);
      tie([...these, ...those]);
    }
  }
  return closing;
}

/**
 * Joins with those first that other joins run over, each after what it runs over itself, and those last that the maker
 * wants to close with.
 */
function inOrder(looked: Looked): readonly Join[] {
  const { joins } = looked.garment;
  const over = new Map<string, readonly Join[]>(
    joins.map((join) => [
      join.id,
      [join.this, join.to].flatMap((chain) =>
        crossings(looked, chain, join.ring, join.id).flatMap((crossing) => crossing.over),
      ),
    ]),
  );
  const carried = new Set([...over.values()].flat().map((under) => under.id));
  const rank = (join: Join): number => (join.closes ? 2 : carried.has(join.id) ? 0 : 1);
  const ranked = joins
    .map((join, i) => ({ join, i }))
    .sort((a, b) => rank(a.join) - rank(b.join) || a.i - b.i)
    .map(({ join }) => join);
  const seen = new Set<string>();
  const ordered: Join[] = [];
  for (const first of ranked) {
    const open: { join: Join; entered: boolean }[] = [{ join: first, entered: false }];
    for (let top = open.at(-1); top !== undefined; top = open.at(-1)) {
      if (top.entered || seen.has(top.join.id)) {
        open.pop();
        if (top.entered) ordered.push(top.join);
        continue;
      }
      top.entered = true;
      seen.add(top.join.id);
      // A seam that the maker closes with stays last, even where another runs over it.
      for (const under of over.get(top.join.id) ?? []) {
        if (!seen.has(under.id) && rank(under) <= rank(top.join)) open.push({ join: under, entered: false });
      }
    }
  }
  return ordered;
}
