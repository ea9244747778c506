import { describe, expect, test } from 'vitest';
import { puffedSleeve } from '../../../src/outfit/units/puffed-sleeve.ts';
import { sleeveHeadStretch } from '../../../src/outfit/units/sleeve-head-stretch.ts';
import { bare, faults, forcedPairs, longerTo, measured, put } from './bodies.ts';

const detached = (held = 'head', wearer = measured) =>
  put(bare(wearer), puffedSleeve, { id: 'sleeve', name: 'Sleeve', entries: { held } }).outfit;
const called = { id: 'head', name: 'Sleeve head', at: { top: ['sleeve.upper'] } };

describe('a stretch head of a sleeve', () => {
  test.each(['in', 'mm'] as const)(
    'is cut smaller than the arm, and the sleeve gathered to it, in %s',
    (units) => {
      const { garment, built } = put({ ...detached(), units }, sleeveHeadStretch, called);
      const round = garment.pieces.find(({ id }) => id === 'head')!.outline.edges[0]!.segments[0]!.to.x / 1e6;
      // The mesh of the demonstration stretches 60 %; a third of that is used.
      expect(round).toBeCloseTo(305 / 1.2, 1);
      expect(longerTo(garment, 'head-seam')).toBeCloseTo(0, 1);
      expect(built.assumed.join()).toContain('smaller than the arm');
    },
  );

  test('is closed like the sleeve, sewn to it in the round, then cased and tried on', () => {
    const { outfit } = put(detached(), sleeveHeadStretch, called);
    expect(
      forcedPairs(
        outfit,
        ['head-gathers/rows', 'head-seam/pin'],
        ['sleeve-seam/press', 'head-seam/pin'],
        ['head-ends/press', 'head-seam/pin'],
        ['head-seam/press', 'head-casing/turn'],
        ['head-casing/elastic', 'head-try/fit'],
      ),
    ).toEqual([]);
  });

  test('says what cannot be sewn', () => {
    const fault = (told: object, on = detached()) => faults(on, sleeveHeadStretch, { ...called, ...told })[0];
    expect(fault({ cloths: { main: 'shirting' } })).toMatch(/^cloth\.main: .*does not stretch/);
    expect(fault({ entries: { arm: '900' } })).toMatch(/^at\.top: /);
    expect(fault({ entries: { depth: '0' } })).toMatch(/^depth: /);
    expect(fault({}, detached('elastic'))).toMatch(/^at\.top: This edge is turned up already/);
    const stiff = detached();
    const little = stiff.cloths.map((cloth) => ({ ...cloth, stretch: { across: 10, along: 0 } }));
    expect(fault({}, { ...stiff, cloths: little })).toMatch(/^cloth\.main: .*hardly stretches/);
  });
});
