import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/length/length.ts';
import { beadsOnALine } from '../../../src/reckon/lattice/beads-on-a-line.ts';
import { figures, places, reckoned, refusedAt } from '../reckoned.ts';

describe('beads along a line', () => {
  test('quarter-inch beads on six inches with a sixteenth between', () => {
    const given = reckoned(beadsOnALine);
    // (6 - 1/16) / (5/16) = 19: an even 18; 1 1/2 in left over 19 gaps.
    expect(figures(given)).toMatchObject({ Beads: 18, Thread: inches(21, 2), 'Needlefuls of 45 cm': 1 });
    expect(Number(figures(given)['Gap, evened'])).toBeCloseTo(inches(3, 2) / 19, -1);
    expect(figures(reckoned(beadsOnALine, { sewn: 'singly' })).Beads).toBe(19);
    expect(places(given)).toHaveLength(18);
  });

  test('with many beads every tenth is marked', () => {
    const given = reckoned(beadsOnALine, { length: '200', bead: '2', gap: '0' }, 'mm');
    expect(figures(given)).toMatchObject({ Beads: 100, 'Gap, evened': mm(0) });
    expect(places(given)).toEqual([0, 20, 40, 60, 80, 100, 120, 140, 160, 180].map((x) => mm(x)));
    expect(given.strips[0]?.name).toContain('tenth');
  });

  test.each([
    [{ length: '0' }, 'length'],
    [{ bead: '0' }, 'bead'],
    [{ bead: '7' }, 'bead'],
    [{ gap: '-1' }, 'gap'],
    [{ bead: '4' }, 'sewn'],
    [{ length: '900 m', gap: '0' }, 'bead'],
  ])('refuses %j at its field', (entries, field) => {
    expect(refusedAt(beadsOnALine, entries)).toEqual([field]);
  });
});
