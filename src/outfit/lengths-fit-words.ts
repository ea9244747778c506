import type { Chain, Garment, Join } from './outfit.ts';

/** Names of edges that say only on which side of the piece they lie. */
const SIDES = new Set([
  'upper',
  'lower',
  'outer',
  'inner',
  'top',
  'bottom',
  'left',
  'right',
  'front',
  'back',
]);

const edgeWords = (edge: string): string => `${edge.replaceAll('-', ' ')}${SIDES.has(edge) ? ' edge' : ''}`;

/** A name within a sentence: `Sleeve` as `sleeve`, but `CB panel` as it is. */
const lower = (name: string): string =>
  /^\p{Lu}\p{Ll}/u.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name;

const inWords = (names: readonly string[]): string =>
  names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}` : (names[0] ?? '');

/** More edges than this are not named one by one. */
const NAMED = 2;

/** One side of a seam as a maker names it: `the cap of the sleeve`, `the neck`; nothing where that would be a long list. */
function nameOf(garment: Garment, chain: Chain): string | undefined {
  const pieces = [...new Set(chain.map(({ piece }) => piece))];
  const edges = [...new Set(chain.map(({ edge }) => edgeWords(edge)))];
  const called = (id: string): string => lower(garment.pieces.find((piece) => piece.id === id)?.name ?? id);
  const [piece = ''] = pieces;
  if (pieces.length === 1)
    return edges.length <= NAMED ? `the ${inWords(edges)} of the ${called(piece)}` : undefined;
  if (edges.length === 1) return `the ${edges[0] ?? ''}`;
  if (chain.length > NAMED) return undefined;
  return inWords(chain.map((ref) => `the ${edgeWords(ref.edge)} of the ${called(ref.piece)}`));
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
