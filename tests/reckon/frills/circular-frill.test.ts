import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { circularFrill } from '../../../src/reckon/frills/circular-frill.ts';
import { pathLength } from '../../../src/shape/measure.ts';
import { extent, figure, marksOf, refusedAt, worked } from './worked.ts';

describe('circular frill', () => {
  // (314.159 + 0) / 2 pi = 50.
  const cuff: Entries = { seam: '314.159', depth: '60', circles: '1', allowance: '10', hem: '5', slit: '0' };

  test('one circle in millimetres', () => {
    const frill = worked(circularFrill, cuff);
    expect(figure(frill, 'Radius of the seam line')).toBe(50);
    expect(figure(frill, 'Radius to cut inside')).toBe(40);
    expect(figure(frill, 'Radius to cut outside')).toBe(115);
    expect(figure(frill, 'Side of the cloth square')).toBe(230);
    expect(figure(frill, 'Finished lower edge')).toBe(691.15);
    expect(figure(frill, 'Rings and joins')).toBe('1 whole ring, 1 join');
    expect(marksOf(frill, 0)).toEqual([0, 78.54, 157.08, 235.619, 314.159]);
    expect(frill.sheets[0]?.notes).toContain('cut 1');
  });

  test('one and a half circles in inches: a ring and a part', () => {
    const frill = worked(circularFrill, { seam: '30', circles: '1.5', slit: '0', ends: 'open' }, 'in');
    expect(figure(frill, 'Radius of the seam line', 'in')).toBe(3.183);
    expect(figure(frill, 'Rings and joins')).toBe('1 whole ring and 1 part of 180 degrees, 1 join');
    expect(frill.sheets).toHaveLength(2);
  });

  test('the ring is printed at true size, and a wide one as a quarter', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 1200 }), fc.integer({ min: 20, max: 250 }), (seam, depth) => {
        const frill = worked(circularFrill, { ...cuff, seam: `${seam}`, depth: `${depth}` });
        const { wide, high } = extent(frill.sheets[0] ?? frill.drawing);
        const square = Number(figure(frill, 'Side of the cloth square'));
        // The curve is flattened within 0.05 mm on either side.
        const shown = square > 400 ? square / 2 : square;
        expect(Math.abs(wide - shown)).toBeLessThan(0.11);
        expect(Math.abs(high - shown)).toBeLessThan(0.11);
      }),
      { numRuns: 40 },
    );
  });

  test('the seam lines drawn on all rings, less their allowances, are as long as the seam', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 200, max: 900 }),
        fc.integer({ min: 2, max: 7 }),
        fc.integer({ min: 0, max: 10 }),
        (seam, halves, slit) => {
          const circles = halves / 2;
          const frill = worked(circularFrill, {
            ...cuff,
            seam: `${seam}`,
            depth: '40',
            circles: `${circles}`,
            slit: `${slit}`,
            allowance: '5',
          });
          let long = 0;
          for (const { name, drawn, notes } of frill.sheets) {
            const cut = Number(notes[0]?.replace('cut ', ''));
            const arcs = drawn.filter(
              (one) => one.kind === 'path' && one.stroke === 'seam' && one.points.length > 2,
            );
            const [arc] = arcs;
            if (arc?.kind !== 'path') throw new Error('no seam line is drawn');
            const points = arc.closed ? [...arc.points, ...arc.points.slice(0, 1)] : arc.points;
            const quarters = name.includes('quarter') ? 4 : 1;
            long += cut * ((quarters * pathLength(points)) / 1e6 - 2 * slit);
          }
          expect(Math.abs(long - seam)).toBeLessThan(seam * 0.005);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('a ring too large to print is drawn and told all the same', () => {
    const frill = worked(circularFrill, { ...cuff, seam: '20 m' });
    expect(frill.sheets).toEqual([]);
    expect(frill.drawing.drawn.length).toBeGreaterThan(0);
  });

  test.each<[Entries, string]>([
    [{ seam: '0' }, 'seam'],
    [{ depth: '0' }, 'depth'],
    [{ circles: '0' }, 'circles'],
    [{ circles: '20' }, 'circles'],
    [{ circles: '0.000001' }, 'circles'],
    [{ circles: '1.01', slit: '10' }, 'circles'],
    [{ allowance: '-1' }, 'allowance'],
    [{ hem: '-1' }, 'hem'],
    [{ slit: '-1' }, 'slit'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(circularFrill, { ...cuff, ...entries })).toEqual([field]);
  });
});
