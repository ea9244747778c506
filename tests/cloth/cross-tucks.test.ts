import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crossTucks } from '../../src/cloth/cross-tucks.ts';
import { finishedPoint, openMap, type TuckFamily } from '../../src/cloth/fold-map.ts';
import { mm } from '../../src/length/index.ts';
import { directionOf, signedArea } from '../../src/shape/index.ts';
import { at, rectangle } from '../shape/shapes.ts';
import { made } from './good.ts';

const upright: TuckFamily = {
  datum: at(0, 0),
  across: 0,
  tucks: [
    { at: mm(40), depth: mm(10) },
    { at: mm(80), depth: mm(10) },
  ],
  pressed: 'away',
};
const level: TuckFamily = { ...upright, across: 90 };
const outline = rectangle(200, 160);

describe('crossed tucks', () => {
  test('at right angles both are straight on the flat cloth', () => {
    const { cut, first, second, square } = made(crossTucks({ first: upright, second: level, outline }));
    expect(square).toBe(true);
    expect(signedArea(cut)).toBe(240 * 200);
    expect(first).toHaveLength(6);
    expect(first[0]?.runs).toEqual([[at(40, 0), at(40, 200)]]);
    expect(first[4]).toMatchObject({ tuck: 1, line: 'fold', runs: [[at(110, 0), at(110, 200)]] });
    expect(second[0]?.runs.map((r) => r.length)).toEqual([2]);
    expect(new Set(second[3]?.runs[0]?.map((p) => p.y))).toEqual(new Set([mm(100)]));
    expect(second[3]?.runs[0]?.map((p) => p.x).toSorted((a, b) => a - b)).toEqual([mm(0), mm(240)]);
  });

  test('aslant the second are zigzag before the first are sewn and straight after', () => {
    const aslant: TuckFamily = {
      datum: at(100, 60),
      across: 60,
      tucks: [{ at: mm(10), depth: mm(5) }],
      pressed: 'away',
    };
    const { second, secondAfterPressing, square } = made(
      crossTucks({ first: upright, second: aslant, outline }),
    );
    expect(square).toBe(false);
    expect(second[0]?.runs.some((run) => run.length > 2)).toBe(true);
    expect(secondAfterPressing[0]?.runs.map((r) => r.length)).toEqual([2]);
  });

  test('the same way is refused, and so is a fold that is cut off', () => {
    expect(crossTucks({ first: upright, second: { ...upright, across: 183 }, outline })).toMatchObject({
      ok: false,
      error: { field: 'second' },
    });
    const wrong = (name: string) => ({ ok: false, error: { wrong: expect.stringContaining(name) } });
    expect(crossTucks({ first: upright, second: level, outline: rectangle(85, 160) })).toMatchObject(
      wrong('tuck 2 of group 1'),
    );
    expect(crossTucks({ first: upright, second: level, outline: rectangle(200, 45) })).toMatchObject(
      wrong('tuck 1 of group 2'),
    );
  });

  test('every mark of the second tucks folds onto its own straight line', () => {
    let worked = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 170 }),
        fc.integer({ min: 1, max: 9 }),
        fc.boolean(),
        (across, depth, toward) => {
          const second: TuckFamily = {
            ...level,
            datum: at(100, 50),
            across,
            tucks: [{ at: mm(10), depth: mm(depth) }],
          };
          const first: TuckFamily = { ...upright, pressed: toward ? 'toward' : 'away' };
          const map = made(openMap(first));
          const result = crossTucks({ first, second, outline });
          if (!result.ok) return;
          worked++;
          const n = directionOf(across);
          const flats = { 'first stitching': 10, fold: 10 + depth, 'second stitching': 10 + 2 * depth };
          for (const line of result.value.second) {
            for (const p of line.runs.flat()) {
              const q = finishedPoint(map, p);
              const u = (q.x - mm(100)) * n.x + (q.y - mm(50)) * n.y;
              expect(Math.abs(u - mm(flats[line.line]))).toBeLessThan(5);
            }
          }
        },
      ),
    );
    expect(worked).toBeGreaterThan(20);
  });
});
