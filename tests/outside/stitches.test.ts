import { describe, expect, test } from 'vitest';
import type { SewnCloth } from '../../src/cloth/needles.ts';
import { STITCHES, type StitchPurpose, type StitchType, stitchFor } from '../../src/cloth/stitches.ts';
import { toInches } from '../../src/length/index.ts';
import { made } from '../cloth/good.ts';

const cotton: SewnCloth = { weight: 'medium', knit: false, stretches: false };

describe('stitches against published figures', () => {
  // TM 10-8400-201-23, US Army, undated, Table 5-1 (seen as an excerpt): 301 shirts 10-14, trousers 12-16; overedge 502/504 6-10 to the
  // inch. Making Bound Buttonholes, tailoring series, step II (seen as an excerpt): baste 6, reinforce 16.
  test.each<[StitchPurpose, number, number]>([
    ['seam', 12, 14],
    ['neaten', 6, 10],
    ['baste', 6, 6],
    ['reinforce', 16, 16],
  ])('%s: %s to %s stitches to the inch', (purpose, least, most) => {
    const perInch = 1 / toInches(made(stitchFor({ cloths: [cotton], purpose })).length);
    expect(perInch).toBeGreaterThan(least - 0.001);
    expect(perInch).toBeLessThan(most + 0.001);
  });

  // Thread formulas for an inch of seam, Sewing thread consumption (textile-engineering notes, 2015; seen as an excerpt of a
  // secondary page): 101: 3 + 2TS; 301: 2 + 2TS; 401: 4 + 2TS. With usual cloth (0.03 in for both layers, 10 stitches) the
  // ratios must agree within a quarter; published figures for 401 alone go from 5.0 to 5.67 (other excerpts).
  test.each<[StitchType, number]>([
    [101, 3],
    [301, 2],
    [401, 4],
  ])('the ratio of %s agrees with its formula', (type, across) => {
    const formula = across + 2 * 0.03 * 10;
    expect(Math.abs(STITCHES[type].thread / formula - 1)).toBeLessThan(0.25);
  });
});
