import { describe, expect, test } from 'vitest';
import { CLUSTER, latticeBeads, NEEDLEFUL, segmentBeads } from '../../src/cloth/beads.ts';
import { lattice } from '../../src/cloth/lattice.ts';
import { mm, nm, toMm, zero } from '../../src/length/index.ts';
import { at, rectangle } from '../shape/shapes.ts';

function made<T>(result: { ok: true; value: T } | { ok: false; error: unknown }): T {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

describe('beads against published figures', () => {
  // Trade table, undated (secondary, seen as an excerpt, low confidence): size 11/0, about 11 beads in 20 mm, 1.82 mm each.
  test('eleven of 20/11 mm fill 20 mm', () => {
    const eleventh = nm(Math.floor(20_000_000 / 11));
    expect(toMm(eleventh)).toBeCloseTo(1.82, 2);
    expect(made(segmentBeads(mm(20), { bead: eleventh, pairs: false, clear: zero })).count).toBe(11);
  });

  const grid = made(
    lattice({
      outline: rectangle(210, 210),
      clear: zero,
      families: [
        { angle: 0, spacing: mm(20), through: at(10, 10) },
        { angle: 90, spacing: mm(20), through: at(10, 10) },
      ],
    }),
  );

  // Encyclopedia of Needlework, Dillmont, undated, The thread: 40 to 50 cm.
  test('a needleful lies within 40 to 50 cm, and all of them hold the thread', () => {
    expect(NEEDLEFUL.value.map(toMm)).toEqual([400, 500]);
    const { thread, needlefuls } = made(
      latticeBeads({ lattice: grid, bead: mm(6), pairs: true, clear: mm(2) }),
    );
    expect(needlefuls * mm(450)).toBeGreaterThan(thread);
    expect(needlefuls).toBeGreaterThan(thread / mm(500));
  });

  // Common practice, no source: four beads make a cluster; bugle beads are sewn two at a time.
  test('four to a cluster, and even numbers two at a time', () => {
    const beads = made(latticeBeads({ lattice: grid, bead: mm(5), pairs: true, clear: mm(2) }));
    expect(CLUSTER.value).toBe(4);
    expect(beads.inClusters).toBe(4 * grid.crossings);
    for (const line of beads.lines) for (const s of line.segments) expect(s.count % 2).toBe(0);
  });
});
