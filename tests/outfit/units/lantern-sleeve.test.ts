import { describe, expect, test } from 'vitest';
import { lanternSleeve } from '../../../src/outfit/units/lantern-sleeve.ts';
import { flattenOutline } from '../../../src/shape/flatten.ts';
import { signedArea } from '../../../src/shape/measure.ts';
import { bare, faults, forcedPairs, longerTo, measured, put, sleeveless } from './bodies.ts';

const at = { armhole: ['front.armhole', 'back.armhole'] };
const called = { id: 'sleeve', name: 'Sleeve' };

describe('a lantern sleeve', () => {
  test.each(['in', 'mm'] as const)('has seams whose edges are as long as each other, in %s', (units) => {
    for (const [outfit, told] of [
      [sleeveless(measured), { at }],
      [sleeveless(), { at }],
      [bare(measured), {}],
      [bare(), {}],
    ] as const) {
      const { garment } = put({ ...outfit, units }, lanternSleeve, { ...called, ...told });
      expect(longerTo(garment, 'sleeve-widest')).toBeCloseTo(0, 1);
      expect(longerTo(garment, 'sleeve-seam')).toBeCloseTo(0, 2);
      if ('at' in told) expect(Math.abs(longerTo(garment, 'sleeve-armhole') - 19.05)).toBeLessThan(0.5);
      for (const { id, outline } of garment.pieces.filter(({ id }) => id.startsWith('sleeve')))
        expect([id, signedArea(flattenOutline(outline)) > 0]).toEqual([id, true]);
    }
  });

  test('is sewn round its widest, closed, then set in, then hemmed', () => {
    const { outfit } = put(sleeveless(), lanternSleeve, { ...called, at, entries: { ends: 'hem' } });
    expect(
      forcedPairs(
        outfit,
        ['sleeve-widest/press', 'sleeve-seam/pin'],
        ['sleeve-seam/press', 'sleeve-armhole/pin'],
        ['sleeve-armhole/baste', 'sleeve-try/fit'],
        ['sleeve-try/fit', 'sleeve-armhole/stitch'],
        ['sleeve-seam/press', 'sleeve-hem/level'],
      ),
    ).toEqual([]);
  });

  test('says which figure cannot be sewn', () => {
    const fault = (entries: Readonly<Record<string, string>>) =>
      faults(sleeveless(), lanternSleeve, { ...called, at, entries })[0]?.split(':')[0];
    expect(fault({ widest: '300' })).toBe('widest');
    expect(fault({ toSeam: '600' })).toBe('toSeam');
    expect(fault({ toSeam: '60' })).toBe('toSeam');
    expect(fault({ lower: '800' })).toBe('lower');
    expect(fault({ lower: '0' })).toBe('lower');
    expect(fault({ wide: '700', widest: '900' })).toBe('wide');
  });
});
