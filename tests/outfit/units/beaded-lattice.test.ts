import { describe, expect, test } from 'vitest';
import { latticeBeads } from '../../../src/cloth/beads.ts';
import { latticeOf } from '../../../src/outfit/piece-lattice.ts';
import { beadedLattice } from '../../../src/outfit/units/beaded-lattice.ts';
import { lanternSleeve } from '../../../src/outfit/units/lantern-sleeve.ts';
import { flattenOutline } from '../../../src/shape/flatten.ts';
import { boundingBox } from '../../../src/shape/measure.ts';
import { bare, faults, forcedPairs, measured, put, putting } from './bodies.ts';

const sleeve = put(bare(measured), lanternSleeve, { id: 'sleeve', name: 'Sleeve' }).outfit;
const called = { id: 'beads', name: 'Beads', at: { piece: ['sleeve'] } };

describe('a beaded lattice', () => {
  test.each(['in', 'mm'] as const)('counts the beads that its lines and crossings take, in %s', (units) => {
    const { garment, built } = put({ ...sleeve, units }, beadedLattice, called);
    const work = garment.works.find(({ id }) => id === 'beads');
    if (work?.kind !== 'lattice-beads') throw new Error('no lattice');
    const lattice = latticeOf(garment.pieces[0]!, work);
    if (!lattice.ok) throw new Error(lattice.error.wrong);
    const { length: bead } = work.line;
    const counted = latticeBeads({
      lattice: lattice.value,
      bead,
      pairs: true,
      clear: bead,
      cluster: 3,
      clusterBead: work.cluster!.bead.length,
    });
    if (!counted.ok) throw new Error(counted.error.wrong);
    const said = Number(/^[\d ]+/.exec(built.advice[0]!.say)?.[0]?.replaceAll(' ', ''));
    expect(said).toBe(2 * counted.value.alongLines);
    expect(said).toBeGreaterThan(100);
  });

  test('proposes as many whole diamonds as go across the piece', () => {
    const known = { outfit: sleeve, garment: sleeve.garments[0]! };
    const { spacing } = beadedLattice.propose(known, putting(beadedLattice, called));
    const { left, right } = boundingBox(flattenOutline(known.garment.pieces[0]!.outline));
    const wide = Number(spacing!.value) / Math.sin(Math.PI / 3);
    const across = (right - left) / wide;
    expect(across).toBeCloseTo(Math.round(across), 5);
    expect(spacing!.because).toContain(`${Math.round(across)} diamonds`);
  });

  test('is beaded flat, after the tacked try-on, before the sleeve is closed', () => {
    expect(
      forcedPairs(
        put(sleeve, beadedLattice, called).outfit,
        ['beads/mark', 'beads/bead'],
        ['beads/cluster', 'sleeve-seam/pin'],
        ['beads/cluster', 'sleeve-widest/pin'],
        ['sleeve-try/untack', 'beads/mark'],
      ),
    ).toEqual([]);
  });

  test('says what cannot be sewn', () => {
    const fault = (entries: Readonly<Record<string, string>>) =>
      faults(sleeve, beadedLattice, { ...called, entries })[0]?.split(':')[0];
    expect(fault({ angle: '2' })).toBe('angle');
    expect(fault({ spacing: '0' })).toBe('spacing');
    expect(fault({ spacing: '0.01' })).toBe('spacing');
    expect(fault({ long: '0' })).toBe('long');
    expect(fault({ long: '200' })).toBe('long');
    expect(fault({ cluster: '40' })).toBe('cluster');
    expect(fault({ clusterLong: '0' })).toBe('clusterLong');
    expect(fault({ cluster: '0' })).toBeUndefined();
  });
});
