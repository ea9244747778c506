import { add, type Length, zero } from '../../length/length.ts';
import type { Outline } from '../../shape/outline.ts';
import { point, straight } from './rectangle.ts';

/**
 * A straight cuff: its `upper` edge is as long as the way round, where the sleeve is set in; beyond it the `lap`, which
 * lies over the other end.
 */
export const cuffOutline = (round: Length, overlap: Length, deep: Length): Outline => {
  const long = add(round, overlap);
  return {
    start: point(zero, zero),
    edges: [
      straight('upper', point(round, zero)),
      straight('lap', point(long, zero)),
      straight('front-end', point(long, deep)),
      straight('lower', point(zero, deep)),
      straight('back-end', point(zero, zero)),
    ],
  };
};
