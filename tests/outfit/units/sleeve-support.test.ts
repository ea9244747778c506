import { describe, expect, test } from 'vitest';
import { plainSleeve } from '../../../src/outfit/units/plain-sleeve.ts';
import { puffedSleeve } from '../../../src/outfit/units/puffed-sleeve.ts';
import { sleeveSupport } from '../../../src/outfit/units/sleeve-support.ts';
import { bare, faults, finished, forcedPairs, measured, put, putting, sleeveless } from './bodies.ts';

const at = { armhole: ['front.armhole', 'back.armhole'] };
const setIn = put(sleeveless(measured), puffedSleeve, { id: 'sleeve', name: 'Sleeve', at }).outfit;
const detached = put(bare(measured), puffedSleeve, { id: 'sleeve', name: 'Sleeve' }).outfit;
const called = { id: 'support', name: 'Support', at: { sleeve: ['sleeve'] }, cloths: { main: 'lawn' } };

describe('a support inside a sleeve', () => {
  test('is a strip over half of the drawn-up cap, twice as long as its place, cut double', () => {
    const { garment } = put(setIn, sleeveSupport, called);
    const armhole = finished(garment, [{ piece: 'sleeve', edge: 'cap', other: false }]);
    expect(finished(garment, [{ piece: 'support', edge: 'seam', other: false }])).toBeCloseTo(armhole / 2, 1);
    const strip = garment.pieces.find(({ id }) => id === 'support')!;
    expect(strip.outline.edges[1]!.segments[0]!.to.y / 1e6).toBeCloseTo(100, 3);
    expect(garment.works.find(({ id }) => id === 'support-gathers')).toMatchObject({ fullness: 2 });
  });

  test('goes in when the sleeve is set in, looked at before it is sewn', () => {
    expect(
      forcedPairs(
        put(setIn, sleeveSupport, called).outfit,
        ['support-fold/own-1', 'support-gathers/mark'],
        ['sleeve-armhole/press', 'support-put-in/own-1'],
        ['support-put-in/own-2', 'support-put-in/own-3'],
      ),
    ).toEqual([]);
  });

  test('is an inner sleeve with rings where there is no cap, sized as the sleeve hangs', () => {
    const { outfit, garment } = put(detached, sleeveSupport, called);
    const lower = finished(garment, [{ piece: 'sleeve', edge: 'lower', other: false }]);
    expect(finished(garment, [{ piece: 'support', edge: 'lower', other: false }])).toBeCloseTo(lower, 1);
    expect(
      forcedPairs(
        outfit,
        ['support-rings/own-2', 'support-seam/pin'],
        ['support-seam/press', 'support-put-in/own-1'],
        ['sleeve-seam/press', 'support-put-in/own-1'],
      ),
    ).toEqual([]);
    const known = { outfit: detached, garment: detached.garments[0]! };
    expect(sleeveSupport.propose(known, putting(sleeveSupport, called)).kind?.value).toBe('inner');
  });

  test('is needed by a detached sleeve laden with beads, and says so', () => {
    const [garment] = detached.garments;
    const family = { angle: 45, spacing: garment!.pieces[0]!.allowance };
    const beads = {
      kind: 'lattice-beads',
      id: 'beads',
      name: 'Beads',
      on: 'sleeve',
      families: [family, { ...family, angle: -45 }],
      line: { name: 'Beads', length: garment!.pieces[0]!.allowance, atATime: 1 },
      marker: 'chalk',
    } as const;
    const laden = { ...detached, garments: [{ ...garment!, works: [...garment!.works, beads] }] };
    expect(put(laden, sleeveSupport, called).built.advice[0]?.say).toContain('laden with beads');
    expect(put(detached, sleeveSupport, called).built.advice).toEqual([]);
  });

  test('says what cannot be sewn', () => {
    const fault = (entries: Readonly<Record<string, string>>, on = setIn) =>
      faults(on, sleeveSupport, { ...called, entries })[0]?.split(':')[0];
    expect(fault({ fullness: '0.5' })).toBe('fullness');
    expect(fault({ depth: '0' })).toBe('depth');
    expect(fault({ kind: 'strip' }, detached)).toBe('at.sleeve');
    expect(fault({ rings: '1' }, detached)).toBe('rings');
    expect(fault({ long: '0' }, detached)).toBe('long');
    const plain = put(sleeveless(), plainSleeve, { id: 'sleeve', name: 'Sleeve', at }).outfit;
    expect(fault({ fullness: '1' }, plain)).toBeUndefined();
  });
});
