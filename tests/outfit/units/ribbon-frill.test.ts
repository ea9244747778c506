import { describe, expect, test } from 'vitest';
import { ribbonFrill } from '../../../src/outfit/units/ribbon-frill.ts';
import { stretchLeg } from '../../../src/outfit/units/stretch-leg.ts';
import { bare, faults, finished, forcedPairs, longerTo, measured, put } from './bodies.ts';

const legs = (units: 'in' | 'mm' = 'mm') =>
  put({ ...bare(measured), units }, stretchLeg, {
    id: 'leg',
    name: 'Leg',
    entries: { of: 'two' },
    cloths: { main: 'velvet', lower: 'jersey' },
  }).outfit;
const called = { id: 'frill', name: 'Knee frill', at: { seam: ['leg-knee'] } };

describe('a ribbon frill', () => {
  test.each(['in', 'mm'] as const)('is gathered to the longer side of its seam, in %s', (units) => {
    const { garment, built } = put(legs(units), ribbonFrill, called);
    expect(longerTo(garment, 'frill-seam')).toBeCloseTo(0, 2);
    const knee = garment.joins.find(({ id }) => id === 'leg-knee')!;
    const most = Math.max(finished(garment, knee.this), finished(garment, knee.to));
    expect(finished(garment, [{ piece: 'frill', edge: 'seam', other: false }])).toBeCloseTo(most, 2);
    const ribbon = garment.works.find(({ kind }) => kind === 'ribbon');
    const tie = units === 'mm' ? 250 : 254;
    expect(ribbon?.kind === 'ribbon' && ribbon.ribbon / 1e6).toBeCloseTo(most + 2 * tie, 2);
    expect(built.advice[0]?.say).toContain('zigzag');
    expect(garment.pieces.find(({ id }) => id === 'frill')?.cut).toBe('pair');
  });

  test('has its channel flat, is laid over the pressed seam, and is threaded last', () => {
    expect(
      forcedPairs(
        put(legs(), ribbonFrill, called).outfit,
        ['frill-channel/own-3', 'frill-gathers/rows'],
        ['frill-gathers/rows', 'frill-seam/pin'],
        ['leg-knee/press', 'frill-seam/pin'],
        ['frill-seam/stitch', 'leg-inseam/pin'],
        ['frill-seam/stitch', 'frill-ribbon/thread'],
      ),
    ).toEqual([]);
  });

  test('says which figure cannot be sewn', () => {
    const fault = (entries: Readonly<Record<string, string>>) =>
      faults(legs(), ribbonFrill, { ...called, entries })[0]?.split(':')[0];
    expect(fault({ depth: '12' })).toBe('depth');
    expect(fault({ ribbon: '0' })).toBe('ribbon');
    expect(fault({ fullness: '0.5' })).toBe('fullness');
    expect(fault({ tie: '-5' })).toBe('tie');
    expect(faults(legs(), ribbonFrill, { ...called, at: { seam: ['leg-knees'] } })[0]).toContain('leg-knee');
  });
});
