import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ENTRIES } from '../../src/fitting/entries/all.ts';
import { fitWithin } from '../../src/screens/try-on/photo.ts';
import { BOX, namedSpots, nearestPlace, SPOTS, spread } from '../../src/screens/try-on/places.ts';

const views = ['front', 'back', 'side'] as const;
const [, TOP, , HEIGHT] = BOX;
/** A name is 48 px high and 8 px from the next on a phone of 390 px: 358 px for 155 of the drawing. */
const APART = (56 / 358) * 155;

describe('the places on the body', () => {
  test.each(views)('every entry that shows from the %s has its place there', (view) => {
    const drawn = new Set(SPOTS[view].map(({ place }) => place));
    const missing = ENTRIES.filter(({ views: of, place }) => of.includes(view) && !drawn.has(place));
    expect(missing.map(({ id, place }) => `${id}: ${place}`)).toEqual([]);
  });

  test.each(views)('each stands once in the %s', (view) => {
    const names = SPOTS[view].map(({ place }) => place);
    expect(new Set(names).size).toBe(names.length);
  });

  test('names stay in order, apart and in the drawing, whatever is shown', () => {
    fc.assert(
      fc.property(fc.constantFrom(...views), fc.nat(), (view, choice) => {
        const here = new Set(SPOTS[view].filter((_, i) => (choice >> i) % 2 === 1).map(({ place }) => place));
        const shown = namedSpots(view, here);
        expect(new Set(shown.map(({ place }) => place))).toEqual(here);
        for (const side of ['left', 'right'] as const) {
          const rows = shown.filter((spot) => spot.side === side).map(({ row }) => row);
          for (const [i, row] of rows.entries()) {
            expect(row).toBeGreaterThan(TOP);
            expect(row).toBeLessThan(TOP + HEIGHT);
            if (i > 0 && rows.length <= 8) expect(row - rows[i - 1]!).toBeGreaterThanOrEqual(APART - 1e-6);
          }
        }
      }),
      { seed: 7_301, numRuns: 400 },
    );
  });

  test('a name with room stands at its place, and two that are close share the way', () => {
    expect(spread([30, 90, 150])).toEqual([30, 90, 150]);
    const [upper, lower] = spread([100, 104]);
    expect((upper! + lower!) / 2).toBeCloseTo(102);
    expect(spread([])).toEqual([]);
  });

  test('a finger on a spot means it, and beside the body it means nothing', () => {
    for (const view of views) {
      for (const spot of SPOTS[view]) expect(nearestPlace(SPOTS[view], spot)).toBe(spot.place);
      expect(nearestPlace(SPOTS[view], { x: -27, y: 200 })).toBeUndefined();
    }
    expect(nearestPlace([], { x: 50, y: 50 })).toBeUndefined();
  });
});

test('a photo is scaled down to its longer side, and never up', () => {
  expect(fitWithin({ width: 4000, height: 3000 })).toEqual({ width: 1024, height: 768 });
  expect(fitWithin({ width: 1000, height: 4000 })).toEqual({ width: 256, height: 1024 });
  expect(fitWithin({ width: 640, height: 480 })).toEqual({ width: 640, height: 480 });
  expect(fitWithin({ width: 9000, height: 2 })).toEqual({ width: 1024, height: 1 });
});
