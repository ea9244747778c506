import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { horsehair, roll, sleeveSupport } from '../../src/cloth/support.ts';
import { mm, toMm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const sleeve = {
  detached: true,
  beaded: true,
  top: mm(320),
  bottom: mm(520),
  length: mm(400),
  allowance: mm(10),
};

describe('a stuffed roll', () => {
  test('as short as it is thick it is a ball', () => {
    const ball = made(roll({ length: mm(100), thick: mm(100), allowance: zero, gramsPerLitre: 50 }));
    expect(ball.litres).toBeCloseTo((4 / 3) * Math.PI * 0.5 ** 3, 6);
    expect(ball.grams).toBeCloseTo(ball.litres * 50, 9);
  });

  test('its volume is what thin slices add up to', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 200 }), fc.integer({ min: 0, max: 900 }), (thick, more) => {
        const { litres } = made(roll({ length: mm(thick + more), thick: mm(thick), allowance: zero }));
        const r = thick / 2;
        let ends = 0;
        for (let i = 0; i < 1000; i++) ends += Math.PI * (r * r - (((i + 0.5) / 1000) * r) ** 2) * (r / 1000);
        expect(litres / ((2 * ends + Math.PI * r * r * more) * 1e-6)).toBeCloseTo(1, 4);
      }),
    );
  });

  test.each([
    [{ thick: zero }, 'thick'],
    [{ length: mm(50) }, 'length'],
    [{ allowance: mm(-1) }, 'allowance'],
    [{ gramsPerLitre: 0 }, 'gramsPerLitre'],
  ])('refuses %j', (change, field) => {
    const round = { length: mm(300), thick: mm(60), allowance: mm(10) };
    expect(roll({ ...round, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});

describe('horsehair', () => {
  test('once round and over itself for each row', () => {
    expect(made(horsehair(mm(1000), 3))).toEqual({ each: mm(1025), whole: mm(3075) });
  });

  test('refuses no hem and no rows', () => {
    expect(horsehair(zero)).toMatchObject({ ok: false, error: { field: 'hem' } });
    expect(horsehair(mm(1000), 0)).toMatchObject({ ok: false, error: { field: 'rows' } });
  });
});

describe('support inside a sleeve', () => {
  // Common practice, no source: detached sleeves laden with beads need support inside.
  test('needed only where the sleeve is both detached and laden', () => {
    const needed = (detached: boolean, beaded: boolean) =>
      made(sleeveSupport({ ...sleeve, detached, beaded })).needed;
    expect([needed(true, true), needed(true, false), needed(false, true)]).toEqual([true, false, false]);
  });

  test('rings from the top to the lower edge', () => {
    const { cut, rings } = made(sleeveSupport(sleeve));
    expect(cut).toEqual({ top: mm(340), bottom: mm(540), length: mm(420) });
    expect(rings.map(({ at, horsehair }) => [toMm(at), toMm(horsehair)])).toEqual([
      [0, 345],
      [200, 445],
      [400, 545],
    ]);
  });

  test.each([
    [{ top: zero }, 'top'],
    [{ bottom: zero }, 'bottom'],
    [{ length: zero }, 'length'],
    [{ allowance: mm(-1) }, 'allowance'],
    [{ rings: 1 }, 'rings'],
  ])('refuses %j', (change, field) => {
    expect(sleeveSupport({ ...sleeve, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
