import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CLEANER_ALONG, type FrillCutInput, frillCut } from '../../src/cloth/frill-cut.ts';
import { inches, mm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const cuff: FrillCutInput = {
  place: inches(8),
  depth: inches(2),
  kind: 'usual',
  grain: 'along',
  clothWidth: inches(45),
  allowance: inches(1, 2),
  hem: inches(1, 4),
  ring: true,
  parts: 4,
};
const skirt: FrillCutInput = { ...cuff, place: inches(100), ring: false };

describe('a frill cut from the cloth', () => {
  test('a cuff frill along the grain is one strip, joined into a ring', () => {
    const frill = made(frillCut(cuff));
    expect(frill).toMatchObject({
      strip: inches(20),
      cutDepth: inches(11, 4),
      cutLengths: [inches(21)],
      cloth: inches(21),
      strips: 1,
      joins: 1,
    });
    expect(frill.advice).not.toContain(CLEANER_ALONG);
  });

  test('across the cloth, strips lie below each other', () => {
    const frill = made(frillCut({ ...skirt, grain: 'across' }));
    // 250 in, 44 in a strip.
    expect(frill).toMatchObject({ strips: 6, joins: 5, cloth: inches(66, 4) });
    expect(frill.advice).toContain(CLEANER_ALONG);
  });

  test('along a short cloth, strips lie side by side', () => {
    // 250 in, 39 in a strip: 7 strips, 16 side by side.
    const frill = made(frillCut({ ...skirt, clothLength: inches(40) }));
    expect(frill.strips).toBe(7);
    expect(frill.cloth).toBe(frill.cutLengths[0]);
    expect(frill.cloth).toBeLessThanOrEqual(inches(40));
  });

  test('a plain ruffle on the bias is less full than a straight one', () => {
    const straight = made(frillCut({ ...cuff, kind: 'plain ruffle', grain: 'across' }));
    const bias = made(frillCut({ ...cuff, kind: 'plain ruffle', grain: 'bias' }));
    expect(straight.fullness).toBeCloseTo(17 / 12, 9);
    expect(bias.fullness).toBeCloseTo(31 / 24, 9);
    expect(bias.fullnessFrom?.range).toEqual([5 / 4, 4 / 3]);
  });

  test('a fullness of the maker has no source', () => {
    expect(made(frillCut({ ...cuff, fullness: 2 }))).toMatchObject({ fullness: 2, fullnessFrom: undefined });
  });

  test('what is cut is never less than the strip and its joins', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('along', 'across', 'bias'),
        fc.integer({ min: 50, max: 3000 }),
        fc.integer({ min: 10, max: 90 }),
        fc.boolean(),
        fc.integer({ min: 700, max: 1600 }),
        (grain, place, depth, ring, width) => {
          const input = { ...cuff, grain, place: mm(place), depth: mm(depth), ring, clothWidth: mm(width) };
          const frill = made(frillCut(input as FrillCutInput));
          const cut = frill.cutLengths.reduce((sum, one) => sum + one, 0);
          const lost = 2 * frill.joins * cuff.allowance * (grain === 'bias' ? Math.SQRT2 : 1);
          expect(cut - lost).toBeGreaterThanOrEqual(frill.strip - frill.strips);
          // Cloth is never made out of nothing.
          expect(cut * frill.cutDepth).toBeLessThanOrEqual(frill.cloth * mm(width) * 1.000001);
        },
      ),
      { numRuns: 60 },
    );
  });

  test.each<[Partial<FrillCutInput>, string]>([
    [{ place: zero }, 'place'],
    [{ depth: zero }, 'depth'],
    [{ hem: mm(-1) }, 'hem'],
    [{ fullness: 0.5 }, 'fullness'],
    [{ allowance: inches(1, 4) }, 'allowance'],
    [{ clothWidth: inches(2) }, 'clothWidth'],
    [{ clothWidth: zero }, 'clothWidth'],
    [{ clothWidth: zero, grain: 'across' }, 'clothWidth'],
    [{ clothWidth: inches(3), grain: 'bias' }, 'clothWidth'],
    [{ clothLength: inches(1) }, 'clothLength'],
  ])('refuses %j', (change, field) => {
    expect(frillCut({ ...cuff, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
