import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fastenings, lapFor, spacedAtLevels } from '../../src/cloth/fastenings.ts';
import { inches, mm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const row = { first: mm(20), last: mm(500), count: 7 };
const [bust, waist] = [mm(180), mm(360)];

describe('buttons at bust and waist', () => {
  test('both levels are held and the others spaced between', () => {
    const { positions, held } = made(spacedAtLevels(row, [waist, bust]));
    expect(positions).toEqual([20, 100, 180, 270, 360, 430, 500].map(mm));
    expect(held).toBe(2);
  });

  test('holes and buttons follow the levels', () => {
    const front = {
      direction: 'vertical' as const,
      hole: mm(18),
      diameter: mm(15),
      outer: mm(20),
      inner: mm(15),
    };
    const { fastenings: all } = made(fastenings({ ...row, ...front, levels: [bust, waist] }));
    expect(all.map(({ button }) => button.along)).toEqual([20, 100, 180, 270, 360, 430, 500].map(mm));
  });

  test('every level has a button, and one more button never widens the widest space', () => {
    const place = fc.integer({ min: 21, max: 499 });
    fc.assert(
      fc.property(fc.array(place, { maxLength: 5 }), fc.integer({ min: 7, max: 40 }), (at, count) => {
        const levels = at.map(mm);
        const widest = (n: number): number => {
          const { positions } = made(spacedAtLevels({ ...row, count: n }, levels));
          expect(positions).toHaveLength(n);
          for (const level of levels) expect(positions).toContain(level);
          return Math.max(...positions.slice(1).map((p, i) => p - positions[i]!));
        };
        expect(widest(count + 1)).toBeLessThanOrEqual(widest(count) + 1);
      }),
    );
  });

  test.each([
    [{ count: 3 }, [bust, waist], 'count'],
    [{ count: 6.5 }, [bust, waist], 'count'],
    [{ last: mm(20) }, [bust], 'last'],
    [{}, [mm(501)], 'levels'],
    [{ held: bust }, [waist], 'held'],
  ])('refuses %j with %j', (change, levels, field) => {
    expect(spacedAtLevels({ ...row, ...change }, levels)).toMatchObject({ ok: false, error: { field } });
  });
});

describe('lap', () => {
  test('half a button and a quarter to a half inch', () => {
    expect(made(lapFor(inches(1)))).toMatchObject({ least: inches(3, 4), most: inches(1) });
    expect(lapFor(zero)).toMatchObject({ ok: false, error: { field: 'diameter' } });
  });
});
