import { add, type Length, times } from '../../length/length.ts';
import type { Chain, Garment } from '../outfit.ts';
import { chainLength } from './place.ts';

/** How long a run is where it is sewn: along its edges, with those that are gathered drawn up. */
export const sewnLength = (garment: Garment, chain: Chain): Length =>
  add(
    ...chain.map((ref) => {
      const gathers = garment.works.find(
        (work) => work.kind === 'gather' && work.on === ref.piece && work.edge === ref.edge,
      );
      const long = chainLength(garment, [ref]);
      return gathers?.kind === 'gather' ? times(long, 1 / gathers.fullness) : long;
    }),
  );
