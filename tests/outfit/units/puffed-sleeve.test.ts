import { describe, expect, test } from 'vitest';
import { elasticCut } from '../../../src/cloth/elastic.ts';
import { puffedSleeve } from '../../../src/outfit/units/puffed-sleeve.ts';
import { bare, faults, forcedPairs, longerTo, measured, put, putting, sleeveless } from './bodies.ts';

const at = { armhole: ['front.armhole', 'back.armhole'] };
const called = { id: 'sleeve', name: 'Sleeve' };
const banded = { ...called, entries: { ends: 'band' } };

describe('a puffed sleeve', () => {
  test.each(['in', 'mm'] as const)('is gathered to its armhole and to its band, in %s', (units) => {
    for (const wearer of [undefined, measured]) {
      const { garment } = put({ ...sleeveless(wearer), units }, puffedSleeve, { ...banded, at });
      expect(Math.abs(longerTo(garment, 'sleeve-armhole'))).toBeLessThan(0.5);
      expect(longerTo(garment, 'sleeve-band-seam')).toBeCloseTo(0, 1);
      expect(longerTo(garment, 'sleeve-seam')).toBeCloseTo(0, 3);
    }
  });

  test('is gathered, banded flat, closed, then set in, and the band sewn down inside at last', () => {
    expect(
      forcedPairs(
        put(sleeveless(), puffedSleeve, { ...banded, at }).outfit,
        ['sleeve-lower-gathers/rows', 'sleeve-band-seam/pin'],
        ['sleeve-band-seam/press', 'sleeve-seam/pin'],
        ['sleeve-seam/press', 'sleeve-armhole/pin'],
        ['sleeve-armhole/baste', 'sleeve-try/fit'],
        ['sleeve-try/fit', 'sleeve-armhole/stitch'],
        ['sleeve-armhole/press', 'sleeve-band-inside/own-1'],
      ),
    ).toEqual([]);
  });

  test('is worn detached where no armhole is chosen, elastic at both its edges', () => {
    const { garment, outfit } = put(bare(measured), puffedSleeve, {
      ...called,
      entries: { ends: 'elastic' },
    });
    expect(garment.joins.map(({ id }) => id)).toEqual(['sleeve-seam']);
    // It says how long each elastic is cut: above for the upper arm, below for where the sleeve ends.
    const arm = measured.measures['upper-arm']!;
    expect(garment.works.flatMap((work) => (work.kind === 'casing' ? [[work.id, work.cut]] : []))).toEqual([
      ['sleeve-lower-casing', elasticCut(arm)],
      ['sleeve-upper-casing', elasticCut(arm)],
    ]);
    expect(garment.pieces[0]?.outline.edges.map(({ name }) => name)).toEqual([
      'upper',
      'front-seam',
      'lower',
      'back-seam',
    ]);
    expect(
      forcedPairs(
        outfit,
        ['sleeve-try/untack', 'sleeve-seam/stitch'],
        ['sleeve-seam/press', 'sleeve-upper-casing/turn'],
        ['sleeve-seam/press', 'sleeve-lower-casing/turn'],
      ),
    ).toEqual([]);
  });

  test('is tried on basted where a band closes its lower edge, before elastic holds its top', () => {
    expect(
      forcedPairs(
        put(bare(measured), puffedSleeve, banded).outfit,
        ['sleeve-band-seam/press', 'sleeve-seam/pin'],
        ['sleeve-seam/baste', 'sleeve-try/fit'],
        ['sleeve-try/fit', 'sleeve-seam/stitch'],
        ['sleeve-seam/press', 'sleeve-upper-casing/turn'],
      ),
    ).toEqual([]);
  });

  test('leaves its top to a stretch head, and its lower edge to a cuff', () => {
    const { garment } = put(bare(), puffedSleeve, { ...called, entries: { held: 'head', ends: 'cuff' } });
    expect(garment.works.map(({ id }) => id)).toEqual(['sleeve-opening']);
    expect(garment.joins[0]?.stopsAt).toContain('opening');
  });

  test('proposes its figures from the wearer and the armhole, each with a reason', () => {
    const outfit = sleeveless(measured);
    const known = { outfit, garment: outfit.garments[0]! };
    expect(puffedSleeve.propose(known, putting(puffedSleeve, { at })).held?.value).toBe('armhole');
    const alone = puffedSleeve.propose(known, putting(puffedSleeve));
    expect(alone.held).toBeUndefined();
    expect(alone.arm?.value).toBe(measured.measures['upper-arm']);
    for (const { because } of Object.values(alone)) expect(because).toMatch(/^[A-Z]/);
  });

  test('says which figure cannot be sewn', () => {
    const fault = (entries: Readonly<Record<string, string>>) =>
      faults(sleeveless(), puffedSleeve, { ...called, at, entries })[0]?.split(':')[0];
    expect(fault({ fullness: '0.5' })).toBe('fullness');
    expect(fault({ lowerFullness: '9' })).toBe('lowerFullness');
    expect(fault({ length: '80' })).toBe('length');
    expect(fault({ ends: 'band', arm: '150' })).toBe('bandEase');
    expect(fault({ bandDepth: '0' })).toBe('bandDepth');
    expect(fault({ arm: '0' })).toBe('arm');
    expect(faults(bare(), puffedSleeve, { ...called, entries: { held: 'armhole' } })[0]).toMatch(
      /^at\.armhole: /,
    );
  });
});
