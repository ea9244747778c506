import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  finishedOf,
  finishedPoint,
  flatOf,
  flatPoint,
  layersOver,
  openMap,
  type TuckFamily,
} from '../../src/cloth/fold-map.ts';
import { inches, type Length, mm, nm, zero } from '../../src/length/index.ts';
import { at } from '../shape/shapes.ts';
import { anyFamily } from './families.ts';

const mapOf = (family: TuckFamily) => {
  const map = openMap(family);
  if (!map.ok) throw new Error(map.error.wrong);
  return map.value;
};
const one: TuckFamily = {
  datum: at(0, 0),
  across: 0,
  tucks: [{ at: mm(50), depth: mm(10) }],
  pressed: 'away',
};

const distance = fc.integer({ min: -100_000_000, max: 900_000_000 }).map(nm);

describe('the fold map', () => {
  test('before the tuck nothing moves, after it twice the depth is gone', () => {
    const map = mapOf(one);
    expect(finishedOf(map, mm(30))).toBe(mm(30));
    expect(finishedOf(map, mm(100))).toBe(mm(80));
    expect(flatOf(map, mm(80))).toBe(mm(100));
    expect(map.takeUp).toBe(mm(20));
  });

  test('a place inside the tuck lies where it is folded to', () => {
    const map = mapOf(one);
    expect(finishedOf(map, mm(54))).toBe(mm(54));
    expect(finishedOf(map, mm(60))).toBe(mm(60));
    expect(finishedOf(map, mm(66))).toBe(mm(54));
    expect(finishedOf(map, mm(70))).toBe(mm(50));
    const toward = mapOf({ ...one, pressed: 'toward' });
    expect(finishedOf(toward, mm(54))).toBe(mm(46));
    expect(finishedOf(toward, mm(66))).toBe(mm(46));
  });

  test('three layers lie under the eye where a tuck lies, one elsewhere', () => {
    const map = mapOf(one);
    expect(layersOver(map, mm(54))).toEqual([mm(54), mm(66), mm(74)]);
    expect(layersOver(map, mm(61))).toEqual([mm(81)]);
    expect(layersOver(map, mm(50))).toEqual([mm(50), mm(70)]);
    expect(layersOver(mapOf({ ...one, pressed: 'toward' }), mm(46))).toEqual([mm(46), mm(54), mm(66)]);
  });

  test('points move straight across the tucks and not along them', () => {
    const map = mapOf({ ...one, datum: at(10, 20), across: 90 });
    expect(finishedPoint(map, at(33, 120))).toEqual(at(33, 100));
    expect(flatPoint(map, at(33, 100))).toEqual(at(33, 120));
  });

  test('is refused where the tucks are', () => {
    expect(openMap({ ...one, tucks: [] })).toMatchObject({ ok: false });
    expect(openMap({ ...one, tucks: [{ at: zero, depth: zero }] })).toMatchObject({
      ok: false,
      error: { field: 'depth' },
    });
    const close = [
      { at: zero, depth: inches(1) },
      { at: inches(1, 2), depth: inches(1, 8) },
    ];
    expect(openMap({ ...one, tucks: close })).toMatchObject({ ok: false, error: { field: 'depth' } });
  });

  test('finished to flat to finished is where it was', () => {
    fc.assert(
      fc.property(anyFamily, distance, (family, finished) => {
        const map = mapOf(family);
        expect(finishedOf(map, flatOf(map, finished))).toBe(finished);
      }),
    );
  });

  test('every layer over a place folds to that place, and the base cloth is one of them', () => {
    fc.assert(
      fc.property(anyFamily, distance, (family, finished) => {
        const map = mapOf(family);
        const flats: Length[] = layersOver(map, finished);
        for (const flat of flats) expect(finishedOf(map, flat)).toBe(finished);
        expect(flats).toContain(flatOf(map, finished));
        const sorted = flats.toSorted((a, b) => a - b);
        expect(flats).toEqual(sorted);
      }),
    );
  });

  test('folding never stretches: two flat places come no further apart', () => {
    fc.assert(
      fc.property(anyFamily, distance, distance, (family, a, b) => {
        const map = mapOf(family);
        expect(Math.abs(finishedOf(map, a) - finishedOf(map, b))).toBeLessThanOrEqual(Math.abs(a - b));
      }),
    );
  });

  test('points there and back at any angle, to the nanometre', () => {
    fc.assert(
      fc.property(
        anyFamily,
        fc.integer({ min: -300, max: 600 }),
        fc.integer({ min: -300, max: 600 }),
        (family, x, y) => {
          const map = mapOf(family);
          const back = finishedPoint(map, flatPoint(map, at(x, y)));
          expect(Math.hypot(back.x - mm(x), back.y - mm(y))).toBeLessThanOrEqual(4);
        },
      ),
    );
  });
});
