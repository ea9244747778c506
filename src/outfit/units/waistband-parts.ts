import { add, type Length, times, zero } from '../../length/length.ts';
import type { Outline } from '../../shape/outline.ts';
import { crossings, lookUp } from '../chains.ts';
import { lower } from '../lower.ts';
import type { Chain, Garment, Work } from '../outfit.ts';
import { stepOf } from './parts.ts';
import { point, straight } from './rectangle.ts';

/** A waist that closes all round begins at the seam that is left open at its top; nothing where no seam is. */
export function fromOpening(garment: Garment, chain: Chain): Chain | undefined {
  const open = crossings(lookUp(garment), chain, true).find(({ over }) =>
    over.some((join) => join.stopsAt !== undefined),
  );
  if (!open) return undefined;
  const at = chain.indexOf(open.to);
  return [...chain.slice(at), ...chain.slice(0, at)];
}

/** A straight band: its `lower` edge is as long as the waist, and goes on as the `lap` that lies over the other end. */
export const bandOutline = (waist: Length, overlap: Length, deep: Length): Outline => {
  const end = add(waist, overlap);
  return {
    start: point(zero, zero),
    edges: [
      straight('upper', point(end, zero)),
      straight('front-end', point(end, deep)),
      straight('lap', point(waist, deep)),
      straight('lower', point(zero, deep)),
      straight('back-end', point(zero, zero)),
    ],
  };
};

/** What a waistband closes with. */
export const closing = (
  by: 'button' | 'hook',
  told: {
    readonly id: (part: string) => string;
    readonly name: string;
    readonly layers: readonly [outer: string, inner: string];
    readonly depth: Length;
    readonly diameter: Length;
    readonly thickness: Length;
    readonly marker: string;
  },
): Work => {
  const { id, name, layers, depth, diameter, thickness, marker } = told;
  const [on, inner] = layers;
  const middle = times(depth, 1 / 2);
  return by === 'button'
    ? {
        kind: 'buttonholes',
        id: id('button'),
        name: `Button of the ${lower(name)}`,
        on,
        through: [inner],
        along: 'front-end',
        count: 1,
        first: middle,
        last: middle,
        from: `the upper edge of the ${lower(name)}`,
        button: { diameter, thickness },
        direction: 'across',
        top: 'each',
        marker,
      }
    : {
        kind: 'own',
        id: id('hook'),
        name: `Hook of the ${lower(name)}`,
        on,
        with: [inner],
        when: 'late',
        steps: [
          stepOf('Sew a hook inside the end of the overlap, a little back from its edge', 'hand', 5),
          stepOf(`Lap the ${lower(name)} as it is worn and sew the bar where the hook lies`, 'hand', 6),
        ],
      };
};
