import { describe, expect, test } from 'vitest';
import { stretchLeg } from '../../../src/outfit/units/stretch-leg.ts';
import { bare, faults, finished, forcedPairs, longerTo, measured, put, putting } from './bodies.ts';

const called = { id: 'leg', name: 'Leg', cloths: { main: 'velvet', lower: 'jersey' } };
const two = { of: 'two', footed: 'foot' };

describe('stretch legs', () => {
  test.each(['in', 'mm'] as const)('have seams whose edges are as long as each other, in %s', (units) => {
    for (const outfit of [bare(measured), bare()]) {
      for (const entries of [{}, { footed: 'foot' }, { of: 'two' }, two] as Record<string, string>[]) {
        const { garment } = put({ ...outfit, units }, stretchLeg, { ...called, entries });
        expect(longerTo(garment, 'leg-inseam')).toBeCloseTo(0, 1);
        expect(longerTo(garment, 'leg-front-rise')).toBeCloseTo(0, 3);
      }
    }
  });

  test('are as much smaller round the waist as the cloth lets, and no edge of two cloths is stretched far', () => {
    const { garment } = put(bare(measured), stretchLeg, { ...called, entries: two });
    const waist = 2 * finished(garment, [{ piece: 'leg', edge: 'waist', other: false }]);
    // The velvet gives 45 %, and the waist has to pass the hip.
    expect(waist).toBeCloseTo(1000 / 1.45, 0);
    const knee = finished(garment, [{ piece: 'leg', edge: 'knee', other: false }]);
    expect(Math.abs(longerTo(garment, 'leg-knee'))).toBeLessThan(knee * 0.1);
  });

  test('are joined at the knee, then the rises, tried on basted, closed, then cased and hemmed', () => {
    const { outfit } = put(bare(measured), stretchLeg, { ...called, entries: { of: 'two' } });
    expect(
      forcedPairs(
        outfit,
        ['leg-knee/press', 'leg-inseam/pin'],
        ['leg-front-rise/press', 'leg-inseam/pin'],
        ['leg-back-rise/press', 'leg-inseam/pin'],
        ['leg-inseam/baste', 'leg-try/fit'],
        ['leg-try/fit', 'leg-inseam/stitch'],
        ['leg-inseam/press', 'leg-casing/turn'],
        ['leg-inseam/press', 'leg-hem/level'],
      ),
    ).toEqual([]);
    const foot = put(bare(measured), stretchLeg, { ...called, entries: two }).garment;
    expect(foot.works.map(({ id }) => id)).toEqual(['leg-casing']);
  });

  test('have a slit where the cloth would not pass the heel', () => {
    const high = { heel: '345' };
    const little = {
      ...bare(measured),
      cloths: [{ ...bare().cloths.find(({ id }) => id === 'velvet')!, stretch: { across: 45, along: 20 } }],
    };
    const told = { ...called, cloths: { main: 'velvet', lower: 'velvet' } };
    expect(faults(little, stretchLeg, { ...told, entries: high })[0]).toMatch(/^ankle: /);
    const { outfit, garment } = put(little, stretchLeg, { ...told, entries: { ...high, footed: 'slit' } });
    expect(garment.joins.find(({ id }) => id === 'leg-inseam')?.stopsAt).toContain('130 mm');
    expect(
      forcedPairs(outfit, ['leg-opening/own-2', 'leg-inseam/pin'], ['leg-inseam/press', 'leg-hem/level']),
    ).toEqual([]);
  });

  test('take every measure from the wearer, and say so where there is none', () => {
    const known = (outfit: ReturnType<typeof bare>) => ({ outfit, garment: outfit.garments[0]! });
    const proposed = stretchLeg.propose(known(bare(measured)), putting(stretchLeg));
    expect(Object.keys(proposed)).toHaveLength(13);
    expect(proposed['crotch-to-knee']?.value).toBe(measured.measures['crotch-to-knee']);
    expect(put(bare(), stretchLeg, called).built.assumed.join()).toContain('No wearer is chosen');
    expect(put(bare(measured), stretchLeg, called).built.assumed.join()).not.toContain('No wearer');
  });

  test('say which figure or cloth cannot be sewn', () => {
    const fault = (entries: Readonly<Record<string, string>>, told: object = {}) =>
      faults(bare(measured), stretchLeg, { ...called, entries, ...told })[0]?.split(':')[0];
    expect(fault({ thigh: '300' })).toBe('thigh');
    expect(fault({ 'knee-to-floor': '0' })).toBe('knee-to-floor');
    expect(fault({ rise: '200' })).toBe('rise');
    expect(fault({ heel: '600' })).toBe('ankle');
    expect(fault({ footed: 'foot', ball: '0' })).toBe('foot-length');
    expect(fault({ of: 'two', 'above-knee': '900' })).toBe('above-knee');
    expect(fault({ elastic: '0' })).toBe('elastic');
    expect(fault({}, { cloths: { main: 'taffeta' } })).toBe('cloth.main');
    const weak = { ...bare(measured) };
    const cloths = weak.cloths.map((cloth) =>
      cloth.id === 'jersey' ? { ...cloth, stretch: { across: 10, along: 0 } } : cloth,
    );
    const [below] = faults({ ...weak, cloths }, stretchLeg, { ...called, entries: { of: 'two' } });
    expect(below?.split(':')[0]).toBe('cloth.lower');
  });
});
