import { edgeWords, listWords } from './edge-words.ts';
import type { Chain, Garment, Join } from './outfit.ts';

/** A name within a sentence: `Sleeve` as `sleeve`, but `CB panel` as it is. */
const lower = (name: string): string =>
  /^\p{Lu}\p{Ll}/u.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name;

/** More edges than this are not named one by one. */
const NAMED = 2;

/** One side of a seam as a maker names it: `the cap of the sleeve`, `the neck`; nothing where that would be a long list. */
function nameOf(garment: Garment, chain: Chain): string | undefined {
  const pieces = [...new Set(chain.map(({ piece }) => piece))];
  const edges = [...new Set(chain.map(({ edge }) => edgeWords(edge)))];
  const called = (id: string): string => lower(garment.pieces.find((piece) => piece.id === id)?.name ?? id);
  const [piece = ''] = pieces;
  if (pieces.length === 1)
    return edges.length <= NAMED ? `the ${listWords(edges)} of the ${called(piece)}` : undefined;
  if (edges.length === 1) return `the ${edges[0] ?? ''}`;
  if (chain.length > NAMED) return undefined;
  return listWords(chain.map((ref) => `the ${edgeWords(ref.edge)} of the ${called(ref.piece)}`));
}

/** Both sides of a seam as a maker names them, told apart. */
export function namesOf(garment: Garment, join: Join, one: Chain, to: Chain): readonly [string, string] {
  const seam = lower(join.name);
  const [first, second] = [nameOf(garment, one), nameOf(garment, to)];
  const same = first !== undefined && first === second;
  return [
    first === undefined || same ? `one side of the ${seam}` : first,
    second === undefined || same ? `the other side of the ${seam}` : second,
  ];
}
