import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/length/length.ts';
import { beadedLattice } from '../../../src/reckon/lattice/beaded-lattice.ts';
import { figures, places, reckoned, refusedAt } from '../reckoned.ts';

/** A square of 40 mm, lines at 45 degrees that meet its top every 20 mm: three lines each way and five crossings. */
const small = {
  top: '40',
  bottom: '40',
  height: '40',
  spacing: '14.142136',
  angle: '45',
  clear: '0.5',
  bead: '2',
};

describe('a beaded lattice', () => {
  test('counted by hand on a small square', () => {
    const found = figures(reckoned(beadedLattice, small, 'mm'));
    // Crossing to crossing 14.142 mm, less 2 mm at both ends: 10.14 holds 4 of 2 mm (5 would be odd); 2.142 over 5 gaps.
    expect(Number(found['Crossing to crossing'])).toBeCloseTo(mm(14.142136), -1);
    expect(found['Beads, crossing to crossing']).toBe(4);
    expect(Number(found['Gap between those beads'])).toBeCloseTo(2_142_136 / 5, -2);
    expect(found.Lines).toBe(6);
    expect(found['Beads at crossings']).toBe(20);
    // Each way: the line through the middle has two whole stretches and two of 14.142 - 0.707 mm; the two short lines
    // have two stretches of 14.142 - 0.707 each, with one crossing. All of them hold four beads.
    expect(found['Beads along the lines']).toBe(2 * (4 * 4 + 2 * 2 * 4));
    expect(found['Beads to buy']).toBe(Math.ceil((64 + 20) * 1.1));
    expect(found['Beads, line by line']).toBe('1: 8 · 2: 16 · 3 to 4: 8 · 5: 16 · 6: 8');
  });

  test('marks along the top of nine inches, from the corner, with one in the middle', () => {
    const given = reckoned(beadedLattice);
    const step = inches(1) / Math.sin(Math.PI / 3);
    const wanted = [-3, -2, -1, 0, 1, 2, 3].map((k) => inches(9, 2) + k * step);
    places(given).forEach((at, i) => {
      expect(Math.abs(at - (wanted[i] ?? 0))).toBeLessThan(10);
    });
    expect(places(given)).toHaveLength(7);
    expect(given.strips.map(({ from }) => from)).toEqual([
      'the left upper corner',
      'the upper corner',
      'the left lower corner',
    ]);
  });

  test('the weight, if a hundred are weighed; the tucks, if the lines are tucked', () => {
    const plain = figures(reckoned(beadedLattice, small, 'mm'));
    expect(plain['Weight of the beads']).toBeUndefined();
    const weighed = figures(reckoned(beadedLattice, { ...small, weight: '0.5' }, 'mm'));
    expect(weighed['Weight of the beads']).toBe('0.420 g');
    const tucked = reckoned(beadedLattice, { ...small, tuck: '3' }, 'mm');
    expect(figures(tucked)).toMatchObject({
      'Cloth the first tucks take': mm(18),
      'Cloth the second tucks take': mm(18),
    });
    expect(tucked.strips).toHaveLength(5);
    // Half a spacing, then fold 3 mm on; the next 14.142 + 6 further, flat.
    expect(places(tucked)[1]).toBe(mm(7.071068 + 3));
    expect(places(tucked)[4]! - places(tucked)[1]!).toBe(mm(20.142136));
  });

  test.each([
    [{ top: '0' }, 'top'],
    [{ bottom: '0' }, 'bottom'],
    [{ height: '0' }, 'height'],
    [{ spacing: '0' }, 'spacing'],
    [{ spacing: '1/64' }, 'spacing'],
    [{ angle: '90' }, 'angle'],
    [{ angle: '0' }, 'angle'],
    [{ clear: '-1' }, 'clear'],
    [{ clear: '5' }, 'clear'],
    [{ bead: '0' }, 'bead'],
    [{ bead: '2' }, 'bead'],
    [{ tuck: '0' }, 'tuck'],
    [{ tuck: '1 1/4' }, 'tuck'],
    [{ weight: '0' }, 'weight'],
  ])('refuses %j at its field', (entries, field) => {
    expect(refusedAt(beadedLattice, entries)).toEqual([field]);
  });
});
