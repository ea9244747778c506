import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { latticeBeads, segmentBeads } from '../../src/cloth/beads.ts';
import { lattice } from '../../src/cloth/lattice.ts';
import { mm, nm, zero } from '../../src/length/index.ts';
import { at, rectangle } from '../shape/shapes.ts';
import { made } from './good.ts';

const singly = { bead: mm(2), pairs: false, clear: zero };

describe('beads on a segment', () => {
  test('as many as fit, and the rest of the room spread evenly', () => {
    expect(made(segmentBeads(mm(21), singly))).toEqual({ count: 10, gap: nm(1_000_000 / 11) });
    expect(made(segmentBeads(mm(20), singly))).toEqual({ count: 10, gap: 0 });
    expect(made(segmentBeads(mm(27), { bead: mm(4), pairs: true, clear: mm(1) }))).toEqual({
      count: 6,
      gap: nm(1e6 / 7),
    });
  });

  test('two at a time is always even', () => {
    expect(made(segmentBeads(mm(23), { bead: mm(3), pairs: true, clear: zero })).count).toBe(6);
  });

  test.each([
    [mm(1), singly, 'bead'],
    [mm(3), { ...singly, pairs: true }, 'pairs'],
    [mm(3), { ...singly, clear: mm(1) }, 'bead'],
    [mm(20), { ...singly, bead: zero }, 'bead'],
    [mm(20), { ...singly, clear: mm(-1) }, 'clear'],
    [zero, singly, 'bead'],
  ])('refuses %s with %j', (segment, way, field) => {
    expect(segmentBeads(segment, way)).toMatchObject({ ok: false, error: { field } });
  });

  test('beads, gaps and clear room fill the segment, and one step more would not fit', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200_000_000 }),
        fc.integer({ min: 1_000_000, max: 30_000_000 }),
        fc.nat(3_000_000),
        fc.boolean(),
        (segment, bead, clear, pairs) => {
          const result = segmentBeads(nm(segment), { bead: nm(bead), clear: nm(clear), pairs });
          const step = pairs ? 2 : 1;
          if (!result.ok) {
            expect(segment - 2 * clear).toBeLessThan(step * bead);
            return;
          }
          const { count, gap } = result.value;
          expect(count % step).toBe(0);
          const filled = 2 * clear + count * bead + (count + 1) * gap;
          expect(filled).toBeLessThanOrEqual(segment);
          expect(segment - filled).toBeLessThanOrEqual(count + 1);
          expect(2 * clear + (count + step) * bead).toBeGreaterThan(segment);
        },
      ),
    );
  });
});

describe('beads on a lattice', () => {
  const grid = made(
    lattice({
      outline: rectangle(100, 60),
      clear: mm(10),
      families: [
        { angle: 0, spacing: mm(20), through: at(20, 20) },
        { angle: 90, spacing: mm(20), through: at(20, 20) },
      ],
    }),
  );
  const bugles = {
    lattice: grid,
    bead: mm(6),
    pairs: true,
    clear: mm(3),
    cluster: 4,
    clusterBead: mm(3),
    spare: 10,
    needleful: mm(450),
  };

  test('counted line by line: two between crossings, none on the stubs at the edge', () => {
    const result = made(latticeBeads(bugles));
    expect(result.lines.map((l) => l.count)).toEqual([6, 6, 2, 2, 2, 2]);
    expect(result).toMatchObject({
      alongLines: 20,
      clusters: 8,
      inClusters: 32,
      total: 52,
      toBuy: 58,
      bare: 12,
      grams: undefined,
    });
    expect(result.lines[0]?.segments[1]).toEqual({ count: 2, gap: nm(666_666) });
  });

  test('thread along its path, in needlefuls', () => {
    const { thread, needlefuls } = made(latticeBeads(bugles));
    expect(thread).toBe(mm(320 + 20 * 6 + 32 * 3 * 3));
    expect(needlefuls).toBe(Math.ceil((320 + 120 + 288) / (450 - 80)));
  });

  test('weight if the weight of one bead is given, and no clusters if none are wanted', () => {
    const result = made(latticeBeads({ ...bugles, cluster: 0, milligrams: 25 }));
    expect(result).toMatchObject({ clusters: 0, inClusters: 0, total: 20, grams: 0.5 });
  });

  test('says what it assumed', () => {
    const { assumed } = made(latticeBeads({ lattice: grid, bead: mm(2), pairs: false, clear: zero }));
    expect(assumed).toEqual(expect.arrayContaining(['Four beads to a cluster.', 'A needleful of 45 cm.']));
  });

  test.each([
    [{ bead: mm(30) }, 'bead'],
    [{ bead: zero }, 'bead'],
    [{ cluster: 2.5 }, 'cluster'],
    [{ spare: -1 }, 'spare'],
    [{ clusterBead: zero }, 'clusterBead'],
    [{ needleful: mm(80) }, 'needleful'],
    [{ milligrams: 0 }, 'milligrams'],
  ])('refuses %j', (change, field) => {
    expect(latticeBeads({ ...bugles, ...change })).toMatchObject({ ok: false, error: { field } });
  });

  test('the lines add up to the whole', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 18 }), fc.boolean(), fc.nat(5), (bead, pairs, cluster) => {
        const result = latticeBeads({ ...bugles, bead: mm(bead), pairs, cluster });
        if (!result.ok) return;
        const { lines, alongLines, inClusters, total } = result.value;
        expect(lines.reduce((n, l) => n + l.count, 0)).toBe(alongLines);
        for (const l of lines) expect(l.segments.reduce((n, s) => n + s.count, 0)).toBe(l.count);
        expect(total).toBe(alongLines + inClusters);
      }),
    );
  });
});
