import fc from 'fast-check';
import type { TuckFamily } from '../../src/cloth/fold-map.ts';
import { mm } from '../../src/length/index.ts';
import { at } from '../shape/shapes.ts';

/** Up to eight tucks that do not overlap whichever way they are pressed, at any angle. */
export const anyFamily = fc
  .record({
    steps: fc.array(fc.tuple(fc.integer({ min: 20, max: 60 }), fc.integer({ min: 1, max: 18 })), {
      minLength: 1,
      maxLength: 8,
    }),
    across: fc.oneof(fc.constantFrom(0, 90, 180, 270), fc.integer({ min: 0, max: 359 })),
    pressed: fc.constantFrom('away' as const, 'toward' as const),
  })
  .map(({ steps, across, pressed }): TuckFamily => {
    let place = 0;
    const tucks = steps.map(([gap, depth]) => {
      place += gap;
      return { at: mm(place), depth: mm(depth) };
    });
    return { datum: at(0, 0), across, tucks, pressed };
  });
