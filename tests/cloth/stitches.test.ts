import { describe, expect, test } from 'vitest';
import type { SewnCloth } from '../../src/cloth/needles.ts';
import { type StitchPurpose, stitchFor } from '../../src/cloth/stitches.ts';
import { mm } from '../../src/length/index.ts';
import { made } from './good.ts';

const shirting: SewnCloth = { weight: 'light', knit: false, stretches: false };
const jersey: SewnCloth = { weight: 'medium', knit: true, stretches: true };

describe('the stitch for a seam', () => {
  test('plain where neither cloth stretches', () => {
    expect(made(stitchFor({ cloths: [shirting, shirting], purpose: 'seam' }))).toMatchObject({
      type: 301,
      width: undefined,
    });
  });

  test.each<StitchPurpose>(['seam', 'reinforce', 'neaten'])('gives where either stretches: %s', (purpose) => {
    for (const cloths of [
      [shirting, jersey],
      [jersey, shirting],
      [jersey, jersey],
    ]) {
      expect(made(stitchFor({ cloths, purpose })).stitch.gives).toBe(true);
    }
  });

  test('a seam that gives is a narrow zigzag', () => {
    expect(made(stitchFor({ cloths: [shirting, jersey], purpose: 'seam' }))).toMatchObject({
      type: 304,
      width: mm(0.5),
    });
  });

  test('basting is plain, and says that it does not give', () => {
    const { type, advice } = made(stitchFor({ cloths: [jersey], purpose: 'baste' }));
    expect(type).toBe(301);
    expect(advice).toHaveLength(2);
  });

  test('an overlocker neatens where there is one', () => {
    const type = (overlocker: boolean) =>
      made(stitchFor({ cloths: [shirting], purpose: 'neaten', overlocker })).type;
    expect(type(true)).toBe(504);
    expect(type(false)).toBe(304);
  });

  test('refuses no cloth', () => {
    expect(stitchFor({ cloths: [], purpose: 'seam' })).toMatchObject({
      ok: false,
      error: { field: 'cloths' },
    });
  });
});
