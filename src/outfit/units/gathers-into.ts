import { lower } from '../lower.ts';
import type { Chain, Garment, Work } from '../outfit.ts';
import { isGathered } from './runs.ts';

/** Less than this many times its place an edge is eased in, not gathered. */
const EASED = 1.03;

/**
 * What gathers the edges of a run into something shorter: nothing where they are gathered already or so little longer
 * that they can be eased in. Marked in eighths where they are very full.
 */
export const gathersInto = (
  garment: Garment,
  chain: Chain,
  fullness: number,
  {
    id,
    name,
    marker,
  }: { readonly id: (part?: string) => string; readonly name: string; readonly marker: string },
): readonly Work[] =>
  fullness < EASED || isGathered(garment, chain)
    ? []
    : chain
        .filter(({ other }) => !other)
        .map(({ piece, edge }, i) => ({
          kind: 'gather',
          id: id(i === 0 ? 'gathers' : `gathers-${i + 1}`),
          name: `Gathers into the ${lower(name)}`,
          on: piece,
          edge,
          fullness,
          divide: fullness > 2 ? 8 : 4,
          marker,
        }));
